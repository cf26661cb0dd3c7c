// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

#include <cmath>

namespace fluewright {

namespace detail {
/// pow is twice as fast as cbrt here and as exact as the relations need.
[[nodiscard]] inline double cube_root(double x) { return std::pow(x, 1.0 / 3.0); }
}  // namespace detail

/// Reynolds numbers between which the laminar and the turbulent film are blended linearly.
inline constexpr double laminar_film_ends = 2300.0;
inline constexpr double turbulent_film_begins = 4000.0;

/// Nusselt number of laminar flow at a constant wall temperature, mean over the length from the entrance:
/// 3.66 + 0.0668 Gz / (1 + 0.04 Gz^(2/3)), Gz = Re Pr D/L. Source: Hausen (1943), in Incropera & DeWitt eq. 8.56.
[[nodiscard]] inline Ratio laminar_entry_nusselt(Ratio reynolds, Ratio prandtl, Ratio diameter_over_length) {
  const double graetz = reynolds.value() * prandtl.value() * diameter_over_length.value();
  const double root = detail::cube_root(graetz);
  return 3.66 + 0.0668 * graetz / (1.0 + 0.04 * root * root);
}

/// Nusselt number of fully developed turbulent flow:
/// (f/8)(Re - 1000) Pr / (1 + 12.7 sqrt(f/8) (Pr^(2/3) - 1)), f the Darcy factor; 2300 < Re < 5e6, 0.5 < Pr < 2000.
/// Source: Gnielinski, Int. Chem. Eng. 16 (1976) 359.
[[nodiscard]] inline Ratio gnielinski_nusselt(Ratio reynolds, Ratio prandtl, Ratio friction_factor) {
  const double eighth = friction_factor.value() / 8.0;
  const double pr_root = detail::cube_root(prandtl.value());
  return eighth * (reynolds.value() - 1000.0) * prandtl.value() /
         (1.0 + 12.7 * std::sqrt(eighth) * (pr_root * pr_root - 1.0));
}

/// Nusselt number inside a flue, mean from the entrance to the place: Hausen's laminar entry below Re 2300,
/// Gnielinski times the entry factor 1 + (D/L)^(2/3) above 4000, between them a linear blend of the two, each at
/// the flow's own Reynolds number. D/L is the hydraulic diameter over the distance from the entrance, >= 0.
/// Sources: Hausen (1943); Gnielinski (1976) with the entry factor of Hausen (1959).
[[nodiscard]] inline Ratio inside_nusselt(Ratio reynolds, Ratio prandtl, Ratio friction_factor,
                                          Ratio diameter_over_length) {
  const double re = reynolds.value();
  if (re <= laminar_film_ends) {
    return laminar_entry_nusselt(reynolds, prandtl, diameter_over_length);
  }
  const double entry_root = detail::cube_root(diameter_over_length.value());
  const Ratio turbulent = (1.0 + entry_root * entry_root) * gnielinski_nusselt(reynolds, prandtl, friction_factor);
  if (re >= turbulent_film_begins) {
    return turbulent;
  }
  const double share = (re - laminar_film_ends) / (turbulent_film_begins - laminar_film_ends);
  return (1.0 - share) * laminar_entry_nusselt(reynolds, prandtl, diameter_over_length) + share * turbulent;
}

}  // namespace fluewright
