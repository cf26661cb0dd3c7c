// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/gas/species.hpp"

#include "engine/gas/species_data.hpp"

namespace fluewright {

namespace {

const gas_data::NasaRange& nasa_range(Species s, double t) {
  const auto& n = gas_data::nasa[index_of(s)];
  return t < gas_data::nasa_border ? n.low : n.high;
}

}  // namespace

MolarMass molar_mass(Species species) { return gas_data::molar_mass[index_of(species)] * kilogram_per_mole; }

MolarHeat molar_heat_capacity(Species species, Temperature t) {
  const double kelvin_t = in_kelvin(t);
  return nasa_range(species, kelvin_t).heat_capacity(kelvin_t) * molar_gas_constant;
}

MolarEnergy molar_enthalpy(Species species, Temperature t) {
  const double kelvin_t = in_kelvin(t);
  return nasa_range(species, kelvin_t).enthalpy(kelvin_t) * kelvin * molar_gas_constant;
}

DynamicViscosity viscosity(Species species, Temperature t) {
  return gas_data::viscosity[index_of(species)].at(in_kelvin(t)) * pascal_second;
}

Conductivity conductivity(Species species, Temperature t) {
  return gas_data::conductivity[index_of(species)].at(in_kelvin(t)) * watt_per_metre_kelvin;
}

ValidRange<Temperature> heat_capacity_range(Species /*species*/) {
  return {kelvins(200.0), kelvins(6000.0), "heat capacity and enthalpy of the ideal gas", "NASA TM-4513 (1993)"};
}

ValidRange<Temperature> viscosity_range(Species species) {
  const auto& fit = gas_data::viscosity[index_of(species)];
  return {kelvins(fit.low), kelvins(fit.high), "viscosity of the dilute gas", "Perry, 8th ed., Table 2-312"};
}

ValidRange<Temperature> conductivity_range(Species species) {
  const auto& fit = gas_data::conductivity[index_of(species)];
  return {kelvins(fit.low), kelvins(fit.high), "conductivity of the dilute gas", "Perry, 8th ed., Table 2-314"};
}

}  // namespace fluewright
