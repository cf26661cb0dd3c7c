// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/site/atmosphere.hpp"

#include "engine/moisture/saturation.hpp"

#include <cmath>

namespace fluewright {

namespace {

/// Dry air may be hotter than the critical point of water, where a relative humidity means nothing.
Pressure vapour_pressure(Temperature t, Ratio relative_humidity) {
  return relative_humidity.value() > 0.0 ? relative_humidity * saturation_pressure(t) : 0.0 * pascal;
}

}  // namespace

Pressure pressure_at_altitude(Length altitude) {
  return 101325.0 * std::pow(1.0 - 2.25577e-5 * in(altitude, metre), 5.25588) * pascal;
}

Density moist_air_density(Temperature t, Pressure absolute, Ratio relative_humidity) {
  return (absolute - 0.378 * vapour_pressure(t, relative_humidity)) / (dry_air_gas_constant * t.above_zero());
}

Ratio water_mole_fraction(Temperature t, Pressure absolute, Ratio relative_humidity) {
  return vapour_pressure(t, relative_humidity) / absolute;
}

}  // namespace fluewright
