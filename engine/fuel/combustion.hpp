// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/fuel/wood.hpp"
#include "engine/gas/mixture.hpp"

namespace fluewright {

/// Dry air per kilogram of wood as fired that just burns it completely [kg/kg], by the oxygen that its carbon and
/// hydrogen need less the oxygen it brings, with dry air as in dry_air(). Source: stoichiometry.
[[nodiscard]] Ratio stoichiometric_air(const WoodFuel& fuel);

/// What leaves the fire.
struct FlueGas {
  GasMixture mixture;
  /// Flue gas per kilogram of wood as fired [kg/kg].
  Ratio per_fuel;
  /// Moist air drawn per kilogram of wood as fired [kg/kg].
  Ratio air_per_fuel;
  /// Share of the wood that the air can burn: 1, or the excess-air ratio where that is below 1.
  Ratio burnt_share;
};

/// Flue gas of complete combustion with an excess-air ratio (air drawn over stoichiometric air, > 0) and air of
/// a given water mole fraction. The mass flow is that of the wholly burnt wood: the unburned share is
/// deducted from the heat only.
///
/// Below a ratio of 1 the oxygen allows only that share of the wood to burn; the rest stays in the feed. The
/// gas is then that of a ratio of 1 and both flows per kilogram of wood shrink by the ratio (burnt_share).
[[nodiscard]] FlueGas flue_gas(const WoodFuel& fuel, Ratio excess_air_ratio, Ratio air_water_mole_fraction);

/// What a kilogram of wood as fired does to the gas that passes it when it burns completely.
struct Reaction {
  /// Put into the gas, in the order of Species; oxygen is taken out and so negative.
  std::array<SpecificAmount, species_count> added{};
  SpecificAmount oxygen_needed{};
  /// Mass that the gas gains: all but the ash [kg/kg].
  Ratio mass = 1.0;
};

/// The same chemistry as flue_gas(), for a stream of any make: air that already carries flue gas, say.
[[nodiscard]] Reaction reaction_of(const WoodFuel& fuel);

/// Carbon dioxide by volume in the dry flue gas when no air is in excess, the CO2max of flue-gas analysers.
[[nodiscard]] Ratio maximum_carbon_dioxide(const WoodFuel& fuel);

/// The temperature at which the flue gas's sensible enthalpy holds all the heat released and the enthalpy that
/// the air brought: per_fuel h_gas(T) = burnt_share H (1 - unburned) + air_per_fuel h_air(T_air), with the wood
/// entering at 25 degC. Dissociation is neglected: it lowers real flames above about 2000 K.
/// Only the water content of `air` is used beyond its enthalpy: its other gases are taken as dry air's.
[[nodiscard]] Temperature adiabatic_flame_temperature(const WoodFuel& fuel, Ratio excess_air_ratio,
                                                      const GasMixture& air, Temperature air_temperature);

}  // namespace fluewright
