// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/layout/space.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

GridPoint point([[maybe_unused]] Length east) { return GridPoint{TWIN(1500, east), 0, 0}; }
