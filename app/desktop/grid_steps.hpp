// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"

#include <array>

namespace fluewright {

/// The grid's steps to choose from, each a whole number of grid counts. Both lists are of one length: switching units
/// keeps the place in the list, so 25 mm becomes 1 in.
[[nodiscard]] inline std::array<Length, 5> grid_steps(UnitSystem units) {
  if (units == UnitSystem::metric) {
    return {10.0 * millimetre, 25.0 * millimetre, 50.0 * millimetre, 100.0 * millimetre, 250.0 * millimetre};
  }
  return {0.5 * inch, 1.0 * inch, 2.0 * inch, 4.0 * inch, 10.0 * inch};
}

}  // namespace fluewright
