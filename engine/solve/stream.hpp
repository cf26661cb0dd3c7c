// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/gas/gas_table.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

#include <array>

namespace fluewright {

/// Amounts of each species per mass of gas, in the order of Species: what adds up when streams mix.
using Composition = std::array<SpecificAmount, species_count>;

[[nodiscard]] inline Composition composition_of(const GasMixture& gas) {
  Composition c{};
  for (const Species s : all_species) c[index_of(s)] = gas.mole_fraction(s) / gas.molar_mass();
  return c;
}

[[nodiscard]] inline GasMixture mixture_of(const Composition& composition) {
  std::array<Ratio, species_count> amounts{};
  for (std::size_t i = 0; i < species_count; ++i) amounts[i] = in(composition[i], mole_per_kilogram);
  return GasMixture{amounts};
}

/// Still air is taken as this much flow: the films and friction factors have their limits there.
inline constexpr MassFlow still_air = 1e-9 * kilogram_per_second;

/// Gas on its way into a branch, by either end.
struct Stream {
  const GasTable* gas = nullptr;
  MassFlow flow{};             ///< > 0
  bool forward = true;         ///< it runs the way the branch is written
  Temperature temperature;
  bool flue_gas = false;       ///< the fire's gas is in it
  Pressure co2{};              ///< partial pressures of what the fire has put into it: the part that radiates
  Pressure h2o{};
  Pressure total{};            ///< gauge, total, where it enters; of use to rows only
  Ratio vapour_left = 1.0;     ///< of its water, what has not yet condensed; of use to rows only
};

}  // namespace fluewright
