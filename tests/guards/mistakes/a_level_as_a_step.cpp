// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/temperature.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

TemperatureDifference step(Temperature room, [[maybe_unused]] Temperature outdoors) {
  return TWIN(room - outdoors, room);
}
