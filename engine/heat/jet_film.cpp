// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/jet_film.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

Ratio jet_nusselt(Ratio reynolds, Ratio prandtl, Ratio diameter_over_radius, Ratio gap_over_diameter) {
  const double re = reynolds.value();
  const double d = std::min(diameter_over_radius.value(), jet_smallest_spread);
  const double spread = d * (1.0 - 1.1 * d) / (1.0 + 0.1 * (gap_over_diameter.value() - 6.0) * d);
  return std::pow(prandtl.value(), 0.42) * spread * 2.0 * std::sqrt(re * (1.0 + 0.005 * std::pow(re, 0.55)));
}

bool jet_within_range(Ratio reynolds, Ratio diameter_over_radius, Ratio gap_over_diameter) {
  const double re = reynolds.value();
  const double r = 1.0 / diameter_over_radius.value();
  const double h = gap_over_diameter.value();
  return re > 2000.0 && re < 4e5 && r > 2.5 && r < 7.5 && h > 2.0 && h < 12.0;
}

}  // namespace fluewright
