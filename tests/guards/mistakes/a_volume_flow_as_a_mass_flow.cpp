// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

#include "engine/quantities/quantities.hpp"
#include "tests/guards/mistakes/twin.hpp"

using namespace fluewright;

Velocity mean([[maybe_unused]] MassFlow gas, [[maybe_unused]] VolumeFlow air, Density density, Area section) {
  return TWIN(gas, air) / (density * section);
}
