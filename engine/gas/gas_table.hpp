// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/gas/mixture.hpp"

#include <array>
#include <cstddef>

namespace fluewright {

/// A GasMixture made ready for many look-ups: heat capacity and enthalpy exact (the mixture's own NASA
/// polynomial), viscosity and conductivity interpolated by cubic Hermite pieces over 220-2620 K to better than
/// 1e-4 of GasMixture's values. Outside 220-2620 K the first and last pieces run on; above a species'
/// published transport range its fit runs on smoothly (water vapour above 1073 K), see viscosity_range().
class GasTable {
 public:
  explicit GasTable(const GasMixture& mixture);

  [[nodiscard]] const GasMixture& mixture() const { return mixture_; }
  /// [J/(kg K)]
  [[nodiscard]] SpecificHeat gas_constant() const { return gas_constant_ * joule_per_kilogram_kelvin; }
  /// [J/(kg K)]
  [[nodiscard]] SpecificHeat specific_heat(Temperature t) const {
    return mixture_.polynomial().specific_heat(in_kelvin(t)) * joule_per_kilogram_kelvin;
  }
  /// Sensible, zero at 298.15 K [J/kg]
  [[nodiscard]] SpecificEnergy specific_enthalpy(Temperature t) const {
    return mixture_.polynomial().specific_enthalpy(in_kelvin(t)) * joule_per_kilogram;
  }
  /// Inverse of specific_enthalpy to 1e-12, from a temperature thought to be near.
  [[nodiscard]] Temperature temperature_at(SpecificEnergy h, Temperature guess) const {
    return kelvins(mixture_.polynomial().temperature_at(in(h, joule_per_kilogram), in_kelvin(guess)));
  }
  /// Inverse of specific_enthalpy to 1e-12.
  [[nodiscard]] Temperature temperature_at(SpecificEnergy h) const { return mixture_.temperature_at(h); }
  /// [Pa s]
  [[nodiscard]] DynamicViscosity viscosity(Temperature t) const {
    return interpolated(viscosity_, in_kelvin(t)) * pascal_second;
  }
  /// [W/(m K)]
  [[nodiscard]] Conductivity conductivity(Temperature t) const {
    return interpolated(conductivity_, in_kelvin(t)) * watt_per_metre_kelvin;
  }
  /// cp mu / k
  [[nodiscard]] Ratio prandtl(Temperature t) const { return specific_heat(t) * viscosity(t) / conductivity(t); }
  /// Ideal gas at an absolute pressure [kg/m3]
  [[nodiscard]] Density density(Temperature t, Pressure absolute) const {
    return in(absolute, pascal) / (gas_constant_ * in_kelvin(t)) * kilogram_per_cubic_metre;
  }

  static constexpr double first_node = 220.0;   ///< [K]
  static constexpr double node_spacing = 40.0;  ///< [K]
  static constexpr std::size_t node_count = 61;

 private:
  /// Value and slope times spacing, side by side, at each node.
  struct Node {
    double value;
    double slope;
  };
  using Column = std::array<Node, node_count>;

  [[nodiscard]] static double interpolated(const Column& column, double t) {
    const double x = (t - first_node) * (1.0 / node_spacing);
    constexpr double last_piece = static_cast<double>(node_count - 2);
    const double held = x < 0.0 ? 0.0 : (x > last_piece ? last_piece : x);
    const auto i = static_cast<std::size_t>(held);
    const double s = x - static_cast<double>(i);
    const Node& a = column[i];
    const Node& b = column[i + 1];
    const double rise = b.value - a.value;
    return a.value + s * (a.slope + s * (3.0 * rise - 2.0 * a.slope - b.slope + s * (a.slope + b.slope - 2.0 * rise)));
  }

  static void set_slopes(Column& column);

  GasMixture mixture_;
  double gas_constant_;
  Column viscosity_;
  Column conductivity_;
};

}  // namespace fluewright
