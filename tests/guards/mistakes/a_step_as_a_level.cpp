// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/temperature.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

double read(Temperature level) { return in_celsius(level); }
double wrong([[maybe_unused]] Temperature room, [[maybe_unused]] TemperatureDifference step) {
  return read(TWIN(room, step));
}
