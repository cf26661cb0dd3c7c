// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/layout/space.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

Position place(const GridPoint& point) { return TWIN(position_of(point), point); }
