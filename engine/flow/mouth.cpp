// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/mouth.hpp"

#include <limits>

namespace fluewright {

Ratio mouth_froude(Velocity inflow, Length height, Temperature hot, Temperature air) {
  const double lighter = (hot - air) / hot.above_zero();
  if (!(lighter > 0.0)) return std::numeric_limits<double>::infinity();
  return inflow / bu::sqrt(standard_gravity * height * lighter);
}

}  // namespace fluewright
