// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/fuel/siegert.hpp"

namespace fluewright {

Ratio siegert_stack_loss(Temperature gas, Temperature air, Ratio dry_oxygen) {
  return 0.01 * in(gas - air, kelvin) * siegert_wood_a2 / (21.0 - 100.0 * dry_oxygen.value());
}

}  // namespace fluewright
