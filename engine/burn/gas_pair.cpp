// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/gas_pair.hpp"

#include "engine/fuel/combustion.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright::kernel {

GasPair::GasPair(const WoodFuel& fuel, Ratio air_water)
    : air_mixture_{moist_air(air_water)},
      burnt_mixture_{flue_gas(fuel, 1.0, air_water).mixture},
      air_{air_mixture_.polynomial()},
      burnt_{burnt_mixture_.polynomial()} {
  const double of_air = in(air_mixture_.gas_constant(), joule_per_kilogram_kelvin);
  const double of_burnt = in(burnt_mixture_.gas_constant(), joule_per_kilogram_kelvin);
  gas_constant_ = {of_air, of_burnt - of_air};

  const auto per_mass = [](const GasMixture& m, Species s) {
    return m.mole_fraction(s).value() / in(m.molar_mass(), kilogram_per_mole);
  };
  moles_ = {1.0 / in(air_mixture_.molar_mass(), kilogram_per_mole), 1.0 / in(burnt_mixture_.molar_mass(), kilogram_per_mole)};
  carbon_dioxide_ = {per_mass(air_mixture_, Species::carbon_dioxide), per_mass(burnt_mixture_, Species::carbon_dioxide)};
  water_ = {per_mass(air_mixture_, Species::water), per_mass(burnt_mixture_, Species::water)};

  transport_.resize(nodes);
  for (std::size_t j = 0; j < share_nodes; ++j) {
    const GasTable table{mixture(static_cast<double>(j) / static_cast<double>(share_nodes - 1))};
    for (std::size_t i = 0; i < nodes; ++i) {
      const Temperature t = kelvins(first_node + spacing * static_cast<double>(i));
      transport_[i][j] = {in(table.viscosity(t), pascal_second), in(table.conductivity(t), watt_per_metre_kelvin)};
    }
  }
  const FlueGas one = flue_gas(fuel, 1.0, air_water);
  air_per_fuel_ = one.air_per_fuel;
  solid_per_fuel_ = one.per_fuel - one.air_per_fuel;
  heat_ = in(net_heating_value(fuel), joule_per_kilogram);
  unburned_ = fuel.unburned_share;
}

GasMixture GasPair::mixture(double share) const {
  const MassFlow one = 1.0 * kilogram_per_second;
  return blend(air_mixture_, (1.0 - share) * one, burnt_mixture_, share * one);
}

double GasPair::temperature_at(double h, double share, double guess) const {
  double t = guess;
  for (int step = 0; step < 60; ++step) {
    const double next = std::max(t - (enthalpy(t, share) - h) / specific_heat(t, share), 0.5 * t);
    const double change = std::abs(next - t);
    t = next;
    if (change <= 1e-6 * t) break;  // Newton squares the error
  }
  return t;
}

GasPair::Transport GasPair::transport(double t, double share) const {
  constexpr double last_piece = static_cast<double>(nodes - 2);
  const double x = std::clamp((t - first_node) * (1.0 / spacing), 0.0, last_piece + 1.0);
  const auto i = static_cast<std::size_t>(std::min(x, last_piece));
  const double wx = x - static_cast<double>(i);
  const double y = std::clamp(share, 0.0, 1.0) * static_cast<double>(share_nodes - 1);
  const auto j = std::min(static_cast<std::size_t>(y), share_nodes - 2);
  const double wy = y - static_cast<double>(j);
  const Transport& a = transport_[i][j];
  const Transport& b = transport_[i][j + 1];
  const Transport& c = transport_[i + 1][j];
  const Transport& d = transport_[i + 1][j + 1];
  const auto mixed = [&](double p, double q, double r, double s) {
    return (1.0 - wx) * ((1.0 - wy) * p + wy * q) + wx * ((1.0 - wy) * r + wy * s);
  };
  return {mixed(a.viscosity, b.viscosity, c.viscosity, d.viscosity),
          mixed(a.conductivity, b.conductivity, c.conductivity, d.conductivity)};
}

}  // namespace fluewright::kernel
