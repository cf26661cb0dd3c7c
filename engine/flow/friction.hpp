// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

#include <cmath>

namespace fluewright {

namespace detail {
[[nodiscard]] inline double power_16(double x) {
  const double x2 = x * x;
  const double x4 = x2 * x2;
  const double x8 = x4 * x4;
  return x8 * x8;
}
}  // namespace detail

/// Darcy friction factor for laminar, transitional and turbulent flow in smooth and rough ducts, one smooth
/// expression: f = 8 [(8/Re)^12 + (A + B)^-1.5]^(1/12), A = {2.457 ln 1/[(7/Re)^0.9 + 0.27 e/D]}^16,
/// B = (37530/Re)^16. Relative roughness e/D_h from 0 to 0.05; within a few percent of Colebrook when turbulent.
/// Below a Reynolds number of 1e-6 it holds, so that the loss f rho w^2/2 goes to zero with the flow.
/// Source: Churchill, Chem. Eng. 84 (24) (1977) 91.
[[nodiscard]] inline Ratio friction_factor(Ratio reynolds, Ratio relative_roughness) {
  const double re = reynolds.value() > 1e-6 ? reynolds.value() : 1e-6;
  const double a =
      detail::power_16(-2.457 * std::log(std::exp(0.9 * std::log(7.0 / re)) + 0.27 * relative_roughness.value()));
  const double b = detail::power_16(37530.0 / re);
  const double laminar = 8.0 / re;
  const double laminar_4 = (laminar * laminar) * (laminar * laminar);
  const double sum = a + b;
  const double inside = laminar_4 * laminar_4 * laminar_4 + 1.0 / (sum * std::sqrt(sum));
  return 8.0 * std::pow(inside, 1.0 / 12.0);
}

/// Darcy friction factor of turbulent flow by the implicit relation 1/sqrt f = -2 lg(e/3.7D + 2.51/(Re sqrt f)),
/// solved to 1e-13. A reference for checks and for the working; the engine computes with friction_factor.
/// Re from 4000. Source: Colebrook, J. ICE 11 (1939) 133.
[[nodiscard]] Ratio colebrook_friction_factor(Ratio reynolds, Ratio relative_roughness);

}  // namespace fluewright
