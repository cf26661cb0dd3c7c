// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/temperature.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

auto twice([[maybe_unused]] Temperature room, [[maybe_unused]] TemperatureDifference step) {
  return 2.0 * TWIN(step, room);
}
