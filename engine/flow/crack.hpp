// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

#include <cmath>

namespace fluewright {

/// Share of a sharp-edged hole's area that the jet through it fills: 0.6 (from memory: 0.6 to 0.61 in handbooks of
/// hydraulics and in ISO 5167 for a small orifice).
inline constexpr double discharge_coefficient = 0.6;

/// Under this difference the flow through a crack goes over from the square root to a straight line through zero
/// (chosen: a thousandth of what a weak draft is).
inline constexpr Pressure crack_stillness = 1e-3 * pascal;

/// Flow through a sharp-edged hole or crack, C A sqrt(2 rho dp) with the sign of the difference; `gas` is what passes.
/// Written as C A sqrt(2 rho) dp / (dp^2 + dp0^2)^(1/4), it has a slope at rest; at 1 Pa it is low by 3e-7.
/// Source: Bernoulli with the vena contracta; ASHRAE Handbook of Fundamentals, ch. Ventilation and Infiltration.
[[nodiscard]] inline MassFlow crack_flow(Area area, Density gas, Pressure difference) {
  const double dp = in(difference, pascal);
  const double still = in(crack_stillness, pascal);
  const double root = std::sqrt(std::sqrt(dp * dp + still * still));
  return discharge_coefficient * in(area, square_metre) * std::sqrt(2.0 * in(gas, kilogram_per_cubic_metre)) * (dp / root) *
         kilogram_per_second;
}

/// How far a weighted flap stands open: shut up to its set draft, wide open `span` above it, smoothly between
/// (3x^2 - 2x^3; chosen, a flap on a shaft swings with its weight's lever). `draft` is how far the flue lies under the
/// room, `span` is positive.
[[nodiscard]] inline Ratio flap_opening(Pressure draft, Pressure set_draft, Pressure span) {
  const double x = in((draft - set_draft) / span, Ratio(1.0));
  if (x <= 0.0) return 0.0;
  if (x >= 1.0) return 1.0;
  return x * x * (3.0 - 2.0 * x);
}

}  // namespace fluewright
