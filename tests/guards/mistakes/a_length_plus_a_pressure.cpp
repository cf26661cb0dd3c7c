// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/quantities.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

Length sum(Length rise, [[maybe_unused]] Pressure draft) { return rise + TWIN(rise, draft); }
