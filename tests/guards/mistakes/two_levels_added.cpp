// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/temperature.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

Temperature sum(Temperature room, [[maybe_unused]] TemperatureDifference rise) { return room + TWIN(rise, room); }
