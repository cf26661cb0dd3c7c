// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/fuel/wood.hpp"
#include "engine/gas/gas_table.hpp"

#include <array>
#include <cstddef>
#include <vector>

namespace fluewright::kernel {

// The kernel of the burn keeps its state as plain SI doubles (K, kg/s, Pa, W, m): this folder's `kernel` namespace is the
// one place that does so. Everything that enters or leaves it is typed.

/// Every gas between clean air and the gas that has used up all its air, as a mixture of the two: moist air, and the
/// flue gas at an excess-air ratio of 1. `share` is the mass share of the latter, 0 to 1; flue gas at an excess-air
/// ratio L has the share (A + s)/(L A + s), with A the air and s the rest that a kilogram of wood makes flue gas of.
class GasPair {
 public:
  /// `air_water` is the mole fraction of vapour in the air that feeds the fire.
  GasPair(const WoodFuel& fuel, Ratio air_water);

  [[nodiscard]] double gas_constant(double share) const { return gas_constant_[0] + share * gas_constant_[1]; }
  [[nodiscard]] double enthalpy(double t, double share) const {
    return (1.0 - share) * air_.specific_enthalpy(t) + share * burnt_.specific_enthalpy(t);
  }
  [[nodiscard]] double specific_heat(double t, double share) const {
    return (1.0 - share) * air_.specific_heat(t) + share * burnt_.specific_heat(t);
  }
  [[nodiscard]] double air_enthalpy(double t) const { return air_.specific_enthalpy(t); }
  [[nodiscard]] double burnt_enthalpy(double t) const { return burnt_.specific_enthalpy(t); }
  /// Inverse of enthalpy() to 1e-9.
  [[nodiscard]] double temperature_at(double enthalpy, double share, double guess) const;

  struct Transport {
    double viscosity;
    double conductivity;
  };
  /// Linear in a table of 10 K and quarters of the share: within 1e-3 of GasMixture's values.
  [[nodiscard]] Transport transport(double t, double share) const;

  /// Mole fractions of the radiating gases.
  [[nodiscard]] double carbon_dioxide(double share) const { return mole_fraction(carbon_dioxide_, share); }
  [[nodiscard]] double water(double share) const { return mole_fraction(water_, share); }
  /// The mixture itself, for what is rarely asked.
  [[nodiscard]] GasMixture mixture(double share) const;

  [[nodiscard]] double air_per_fuel() const { return air_per_fuel_; }      ///< kg of moist air per kg of wood, just enough
  [[nodiscard]] double solid_per_fuel() const { return solid_per_fuel_; }  ///< kg of flue gas per kg of wood that is not air
  [[nodiscard]] double heat_per_fuel() const { return heat_; }             ///< net heating value as fired [J/kg]
  [[nodiscard]] double heat_to_gas() const { return heat_ * (1.0 - unburned_); }
  /// The share at an excess-air ratio.
  [[nodiscard]] double share_at(double excess) const {
    return (air_per_fuel_ + solid_per_fuel_) / (excess * air_per_fuel_ + solid_per_fuel_);
  }
  /// The excess-air ratio of a share above 0.
  [[nodiscard]] double excess_at(double share) const {
    return ((air_per_fuel_ + solid_per_fuel_) / share - solid_per_fuel_) / air_per_fuel_;
  }

 private:
  static constexpr std::size_t share_nodes = 5;
  static constexpr double first_node = 220.0;
  static constexpr double spacing = 10.0;
  static constexpr std::size_t nodes = 241;
  using Row = std::array<Transport, share_nodes>;

  struct PerMass {
    double in_air;    ///< mol of the species per kg
    double in_burnt;
  };
  [[nodiscard]] double mole_fraction(const PerMass& species, double share) const {
    return ((1.0 - share) * species.in_air + share * species.in_burnt) /
           ((1.0 - share) * moles_.in_air + share * moles_.in_burnt);
  }

  GasMixture air_mixture_;
  GasMixture burnt_mixture_;
  gas_data::MixturePolynomial air_;
  gas_data::MixturePolynomial burnt_;
  std::array<double, 2> gas_constant_{};
  std::vector<Row> transport_;
  PerMass moles_{};
  PerMass carbon_dioxide_{};
  PerMass water_{};
  double air_per_fuel_ = 0.0;
  double solid_per_fuel_ = 0.0;
  double heat_ = 0.0;
  double unburned_ = 0.0;
};

}  // namespace fluewright::kernel
