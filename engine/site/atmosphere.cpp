// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/site/atmosphere.hpp"

#include "engine/moisture/saturation.hpp"

#include <cmath>

namespace fluewright {

Pressure pressure_at_altitude(Length altitude) {
  return 101325.0 * std::pow(1.0 - 2.25577e-5 * in(altitude, metre), 5.25588) * pascal;
}

Density moist_air_density(Temperature t, Pressure absolute, Ratio relative_humidity) {
  return (absolute - 0.378 * (relative_humidity * saturation_pressure(t))) / (dry_air_gas_constant * t.above_zero());
}

Ratio water_mole_fraction(Temperature t, Pressure absolute, Ratio relative_humidity) {
  return relative_humidity * saturation_pressure(t) / absolute;
}

}  // namespace fluewright
