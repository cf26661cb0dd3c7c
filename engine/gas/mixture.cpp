// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/gas/mixture.hpp"

#include <cassert>
#include <cmath>
#include <numeric>

namespace fluewright {

namespace {

std::array<double, species_count> normalised(const std::array<Ratio, species_count>& amounts) {
  std::array<double, species_count> y{};
  double total = 0.0;
  for (std::size_t i = 0; i < species_count; ++i) {
    y[i] = amounts[i].value();
    assert(y[i] >= 0.0);
    total += y[i];
  }
  assert(total > 0.0);
  for (double& fraction : y) {
    fraction /= total;
  }
  return y;
}

/// A property of the mixture by sum y_i v_i / sum_j y_j phi_ij.
template <class OfSpecies>
double mixed(const std::array<double, species_count>& y, double t, OfSpecies&& value) {
  std::array<double, species_count> mu{};
  for (std::size_t i = 0; i < species_count; ++i) {
    mu[i] = gas_data::viscosity[i].at(t);
  }
  double sum = 0.0;
  for (std::size_t i = 0; i < species_count; ++i) {
    if (y[i] == 0.0) {
      continue;
    }
    double weight = 0.0;
    for (std::size_t j = 0; j < species_count; ++j) {
      weight += y[j] * gas_data::wilke_factor(mu[i], mu[j], gas_data::molar_mass[i], gas_data::molar_mass[j]);
    }
    sum += y[i] * value(i, mu[i]) / weight;
  }
  return sum;
}

}  // namespace

GasMixture::GasMixture(const std::array<Ratio, species_count>& amounts)
    : fractions_{normalised(amounts)}, polynomial_{fractions_} {}

SpecificHeat GasMixture::gas_constant() const { return molar_gas_constant / molar_mass(); }

SpecificHeat GasMixture::specific_heat(Temperature t) const {
  return polynomial_.specific_heat(in_kelvin(t)) * joule_per_kilogram_kelvin;
}

SpecificEnergy GasMixture::specific_enthalpy(Temperature t) const {
  return polynomial_.specific_enthalpy(in_kelvin(t)) * joule_per_kilogram;
}

Temperature GasMixture::temperature_at(SpecificEnergy h) const {
  const double guess = in_kelvin(reference_temperature) + in(h, joule_per_kilogram) / 1100.0;
  return kelvins(polynomial_.temperature_at(in(h, joule_per_kilogram), std::max(guess, 150.0)));
}

Density GasMixture::density(Temperature t, Pressure absolute) const {
  return absolute / (gas_constant() * t.above_zero());
}

DynamicViscosity GasMixture::viscosity(Temperature t) const {
  return mixed(fractions_, in_kelvin(t), [](std::size_t, double mu) { return mu; }) * pascal_second;
}

Conductivity GasMixture::conductivity(Temperature t) const {
  const double kelvin_t = in_kelvin(t);
  return mixed(fractions_, kelvin_t,
               [kelvin_t](std::size_t i, double) { return gas_data::conductivity[i].at(kelvin_t); }) *
         watt_per_metre_kelvin;
}

Ratio GasMixture::prandtl(Temperature t) const { return specific_heat(t) * viscosity(t) / conductivity(t); }

GasMixture dry_air() { return moist_air(0.0); }

GasMixture moist_air(Ratio water_mole_fraction) {
  std::array<Ratio, species_count> y{};
  y[index_of(Species::nitrogen)] = 0.78084;
  y[index_of(Species::oxygen)] = 0.209476;
  y[index_of(Species::argon)] = 0.00934;
  y[index_of(Species::carbon_dioxide)] = 0.000314;
  const Ratio dry = std::accumulate(y.begin(), y.end(), Ratio{0.0});
  y[index_of(Species::water)] = dry * water_mole_fraction / (1.0 - water_mole_fraction);
  return GasMixture{y};
}

GasMixture blend(const GasMixture& a, MassFlow flow_a, const GasMixture& b, MassFlow flow_b) {
  const double moles_a = in(flow_a, kilogram_per_second) / in(a.molar_mass(), kilogram_per_mole);
  const double moles_b = in(flow_b, kilogram_per_second) / in(b.molar_mass(), kilogram_per_mole);
  std::array<Ratio, species_count> y{};
  for (const Species s : all_species) {
    y[index_of(s)] = moles_a * a.mole_fraction(s) + moles_b * b.mole_fraction(s);
  }
  return GasMixture{y};
}

}  // namespace fluewright
