// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

namespace fluewright {

/// Specific gas constant of dry air, 287.05 J/(kg K) (ISO 2533).
inline constexpr SpecificHeat dry_air_gas_constant = 287.05 * joule_per_kilogram_kelvin;

/// Absolute pressure of the standard atmosphere at an altitude above sea level:
/// 101325 (1 - 2.25577e-5 z)^5.25588 Pa, -2 to 11 km. Source: ISO 2533 (ICAO standard atmosphere).
[[nodiscard]] Pressure pressure_at_altitude(Length altitude);

/// Density of moist air (p - 0.378 e)/(R_a T), e = relative humidity x saturation pressure.
/// Source: ideal gas, 0.378 = 1 - 18.015/28.96.
[[nodiscard]] Density moist_air_density(Temperature t, Pressure absolute, Ratio relative_humidity);

/// Mole fraction of water vapour in moist air, e/p. Relative humidity is over water (over ice below freezing).
[[nodiscard]] Ratio water_mole_fraction(Temperature t, Pressure absolute, Ratio relative_humidity);

}  // namespace fluewright
