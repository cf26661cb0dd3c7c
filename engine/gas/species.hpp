// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"
#include "engine/quantities/valid_range.hpp"

#include <array>
#include <cstddef>

namespace fluewright {

/// The gases that air and the flue gas of wood are made of.
enum class Species : unsigned char { nitrogen, oxygen, carbon_dioxide, water, argon, carbon_monoxide };

inline constexpr std::size_t species_count = 6;

inline constexpr std::array<Species, species_count> all_species{Species::nitrogen,       Species::oxygen,
                                                                Species::carbon_dioxide, Species::water,
                                                                Species::argon,          Species::carbon_monoxide};

/// Position of a species in arrays that hold one value a species.
[[nodiscard]] constexpr std::size_t index_of(Species s) { return static_cast<std::size_t>(s); }

/// Energy per amount of substance [J/mol].
using MolarEnergy = detail::quotient<Energy, AmountOfSubstance>;

inline constexpr MolarEnergy joule_per_mole = joule / mole;

/// Molar gas constant, 8.314462618 J/(mol K) (CODATA 2018, exact to the digits given).
inline constexpr MolarHeat molar_gas_constant = 8.314462618 * joule_per_mole_kelvin;

/// The temperature at which sensible enthalpies are zero and heating values are counted.
inline constexpr Temperature reference_temperature = kelvins(298.15);

/// Molar mass [kg/mol]. Source: IUPAC conventional atomic weights (N 14.0067, O 15.9994, C 12.0107,
/// H 1.00794, Ar 39.948).
[[nodiscard]] MolarMass molar_mass(Species species);

/// Molar heat capacity at constant pressure of the ideal gas [J/(mol K)].
/// NASA 7-coefficient polynomial, 200-1000 K and 1000-6000 K.
/// Source: McBride, Gordon & Reno, NASA TM-4513 (1993), as transcribed in Cantera's nasa_gas data.
[[nodiscard]] MolarHeat molar_heat_capacity(Species species, Temperature t);

/// Molar enthalpy of the ideal gas, enthalpy of formation included [J/mol]; same source and range as
/// the heat capacity. The upper range's constant is shifted by less than 0.1 J/mol so that the two ranges
/// meet at 1000 K to the last digit.
[[nodiscard]] MolarEnergy molar_enthalpy(Species species, Temperature t);

/// Dynamic viscosity of the pure dilute gas [Pa s]: C1 T^C2 / (1 + C3/T + C4/T^2).
/// Source: Perry's Chemical Engineers' Handbook, 8th ed., Table 2-312. Outside the fit's range (see
/// viscosity_range) the same expression is used; it runs on smoothly.
[[nodiscard]] DynamicViscosity viscosity(Species species, Temperature t);

/// Thermal conductivity of the pure dilute gas [W/(m K)]: C1 T^C2 / (1 + C3/T + C4/T^2).
/// Source: Perry's Chemical Engineers' Handbook, 8th ed., Table 2-314. Outside the fit's range (see
/// conductivity_range) the same expression is used; it runs on smoothly.
[[nodiscard]] Conductivity conductivity(Species species, Temperature t);

/// Published range of the heat capacity and enthalpy polynomials.
[[nodiscard]] ValidRange<Temperature> heat_capacity_range(Species species);
/// Published range of the viscosity fit.
[[nodiscard]] ValidRange<Temperature> viscosity_range(Species species);
/// Published range of the conductivity fit.
[[nodiscard]] ValidRange<Temperature> conductivity_range(Species species);

}  // namespace fluewright
