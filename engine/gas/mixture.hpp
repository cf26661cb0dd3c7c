// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/gas/mixture_polynomial.hpp"
#include "engine/gas/species.hpp"

#include <array>

namespace fluewright {

/// An ideal mixture of ideal gases, held as mole fractions that add up to one.
/// For many evaluations of one mixture build a GasTable from it.
class GasMixture {
 public:
  /// Amounts of each species in the order of Species; any common scale, normalised here.
  /// No amount may be negative and at least one must be positive.
  explicit GasMixture(const std::array<Ratio, species_count>& amounts);

  /// Mole fraction = volume fraction = partial pressure over total pressure.
  [[nodiscard]] Ratio mole_fraction(Species s) const { return fractions_[index_of(s)]; }
  /// [kg/mol]
  [[nodiscard]] MolarMass molar_mass() const { return polynomial_.molar_mass() * kilogram_per_mole; }
  /// Molar gas constant over molar mass [J/(kg K)].
  [[nodiscard]] SpecificHeat gas_constant() const;
  /// At constant pressure [J/(kg K)]; NASA TM-4513, 200-6000 K.
  [[nodiscard]] SpecificHeat specific_heat(Temperature t) const;
  /// Sensible enthalpy, zero at 298.15 K [J/kg]; NASA TM-4513, 200-6000 K.
  [[nodiscard]] SpecificEnergy specific_enthalpy(Temperature t) const;
  /// The inverse of specific_enthalpy, to 1e-12.
  [[nodiscard]] Temperature temperature_at(SpecificEnergy h) const;
  /// Ideal gas at an absolute pressure [kg/m3].
  [[nodiscard]] Density density(Temperature t, Pressure absolute) const;
  /// Wilke's rule on the species' viscosities [Pa s]. Source: Wilke, J. Chem. Phys. 18 (1950) 517.
  [[nodiscard]] DynamicViscosity viscosity(Temperature t) const;
  /// Wassiljewa's rule with the factors of Mason & Saxena taken equal to Wilke's [W/(m K)].
  /// Source: Mason & Saxena, Phys. Fluids 1 (1958) 361.
  [[nodiscard]] Conductivity conductivity(Temperature t) const;
  /// cp mu / k
  [[nodiscard]] Ratio prandtl(Temperature t) const;

  /// The mole fractions as plain numbers in the order of Species, for the gas room's own tables.
  [[nodiscard]] const std::array<double, species_count>& fractions() const { return fractions_; }
  [[nodiscard]] const gas_data::MixturePolynomial& polynomial() const { return polynomial_; }

  friend bool operator==(const GasMixture& a, const GasMixture& b) { return a.fractions_ == b.fractions_; }

 private:
  std::array<double, species_count> fractions_;
  gas_data::MixturePolynomial polynomial_;
};

/// Dry air by mole fraction: N2 0.78084, O2 0.209476, Ar 0.00934, CO2 0.000314, normalised.
/// Source: ISO 2533 / U.S. Standard Atmosphere 1976.
[[nodiscard]] GasMixture dry_air();

/// Dry air with a mole fraction of water vapour, 0 to below 1.
[[nodiscard]] GasMixture moist_air(Ratio water_mole_fraction);

/// The gas that two streams become when they join; mass flows of either size, not both zero, none negative.
[[nodiscard]] GasMixture blend(const GasMixture& a, MassFlow flow_a, const GasMixture& b, MassFlow flow_b);

}  // namespace fluewright
