// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

#include <cmath>

namespace fluewright {

// Gas that cools along a flue towards surroundings of one temperature, with constant properties.
// Source: the cooling number of EN 13384-1 (formula from memory); it is the exact solution of mdot cp dT = -U P (T -
// Tu) ds.

/// Cooling number K = U P L/(mdot cp); U P is the heat flow per metre of run and kelvin.
[[nodiscard]] inline Ratio cooling_number(LineConductance conductance, Length length, MassFlow flow,
                                          SpecificHeat specific_heat) {
  return conductance * length / (flow * specific_heat);
}

/// Temperature at the end: Tu + (T - Tu) exp(-K).
[[nodiscard]] inline Temperature cooled(Temperature entering, Temperature surroundings, Ratio cooling_number_value) {
  return surroundings + std::exp(-cooling_number_value.value()) * (entering - surroundings);
}

/// Mean temperature over the length: Tu + (T - Tu) (1 - exp(-K))/K, and T itself where K is zero.
[[nodiscard]] inline Temperature mean_while_cooling(Temperature entering, Temperature surroundings,
                                                    Ratio cooling_number_value) {
  const double k = cooling_number_value;
  const double share = std::abs(k) < 1e-8 ? 1.0 - 0.5 * k : -std::expm1(-k) / k;
  return surroundings + share * (entering - surroundings);
}

}  // namespace fluewright
