// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/fuel/combustion.hpp"

#include <algorithm>
#include <cassert>

namespace fluewright {

namespace {

// Molar masses of the elements and of O2 [kg/mol], IUPAC conventional atomic weights.
constexpr double carbon_molar_mass = 12.0107e-3;
constexpr double hydrogen_molar_mass = 1.00794e-3;
constexpr double nitrogen_molar_mass = 14.0067e-3;
constexpr double oxygen_molecule_molar_mass = 31.9988e-3;

/// Amounts per kilogram of wood as fired [mol/kg].
struct Amounts {
  double carbon_dioxide;  ///< formed
  double water_formed;
  double water_evaporated;
  double nitrogen;  ///< from the wood
  double oxygen_needed;
  double dry_air_needed;
};

Amounts amounts(const WoodFuel& fuel) {
  const WoodAnalysis& a = fuel.analysis;
  const double organic = combustible_share(fuel);
  Amounts n{};
  n.carbon_dioxide = organic * a.carbon / carbon_molar_mass;
  n.water_formed = organic * a.hydrogen / (2.0 * hydrogen_molar_mass);
  n.water_evaporated = fuel.moisture * kilogram_per_mole / molar_mass(Species::water);
  n.nitrogen = organic * a.nitrogen / (2.0 * nitrogen_molar_mass);
  n.oxygen_needed = n.carbon_dioxide + 0.5 * n.water_formed - organic * a.oxygen / oxygen_molecule_molar_mass;
  static const double air_oxygen = dry_air().mole_fraction(Species::oxygen);
  n.dry_air_needed = n.oxygen_needed / air_oxygen;
  return n;
}

/// Amounts of the flue gas per kilogram of wood with `dry_air` mol of dry air [mol/kg].
std::array<Ratio, species_count> flue_amounts(const Amounts& n, double dry_air_amount, double air_water) {
  static const GasMixture air = dry_air();
  std::array<Ratio, species_count> y{};
  for (const Species s : all_species) {
    y[index_of(s)] = dry_air_amount * air.mole_fraction(s);
  }
  y[index_of(Species::oxygen)] = std::max(y[index_of(Species::oxygen)].value() - n.oxygen_needed, 0.0);
  y[index_of(Species::carbon_dioxide)] += n.carbon_dioxide;
  y[index_of(Species::nitrogen)] += n.nitrogen;
  y[index_of(Species::water)] += n.water_formed + n.water_evaporated + air_water;
  return y;
}

}  // namespace

Ratio stoichiometric_air(const WoodFuel& fuel) {
  static const double air_molar_mass = in(dry_air().molar_mass(), kilogram_per_mole);
  return amounts(fuel).dry_air_needed * air_molar_mass;
}

FlueGas flue_gas(const WoodFuel& fuel, Ratio excess_air_ratio, Ratio air_water_mole_fraction) {
  assert(excess_air_ratio.value() > 0.0);
  assert(air_water_mole_fraction.value() >= 0.0 && air_water_mole_fraction.value() < 1.0);
  static const double air_molar_mass = in(dry_air().molar_mass(), kilogram_per_mole);
  static const double water_molar_mass = in(molar_mass(Species::water), kilogram_per_mole);

  const Amounts n = amounts(fuel);
  const double supplied = std::max(excess_air_ratio.value(), 1.0);
  const double burnt = std::min(excess_air_ratio.value(), 1.0);
  const double dry = supplied * n.dry_air_needed;
  const double air_water = dry * air_water_mole_fraction / (1.0 - air_water_mole_fraction);
  const double air_mass = dry * air_molar_mass + air_water * water_molar_mass;
  const double ash = fuel.analysis.ash * (1.0 - fuel.moisture);
  return {GasMixture{flue_amounts(n, dry, air_water)}, burnt * (air_mass + 1.0 - ash), burnt * air_mass, burnt};
}

Reaction reaction_of(const WoodFuel& fuel) {
  const Amounts n = amounts(fuel);
  Reaction r;
  r.added[index_of(Species::carbon_dioxide)] = n.carbon_dioxide * mole_per_kilogram;
  r.added[index_of(Species::water)] = (n.water_formed + n.water_evaporated) * mole_per_kilogram;
  r.added[index_of(Species::nitrogen)] = n.nitrogen * mole_per_kilogram;
  r.added[index_of(Species::oxygen)] = -n.oxygen_needed * mole_per_kilogram;
  r.oxygen_needed = n.oxygen_needed * mole_per_kilogram;
  r.mass = 1.0 - fuel.analysis.ash * (1.0 - fuel.moisture);
  return r;
}

Ratio maximum_carbon_dioxide(const WoodFuel& fuel) {
  const GasMixture gas = flue_gas(fuel, 1.0, 0.0).mixture;
  return gas.mole_fraction(Species::carbon_dioxide) / (1.0 - gas.mole_fraction(Species::water));
}

Temperature adiabatic_flame_temperature(const WoodFuel& fuel, Ratio excess_air_ratio, const GasMixture& air,
                                        Temperature air_temperature) {
  const FlueGas gas = flue_gas(fuel, excess_air_ratio, air.mole_fraction(Species::water));
  const SpecificEnergy heat = gas.burnt_share * (1.0 - fuel.unburned_share) * net_heating_value(fuel) +
                              gas.air_per_fuel * air.specific_enthalpy(air_temperature);
  return gas.mixture.temperature_at(heat / gas.per_fuel);
}

}  // namespace fluewright
