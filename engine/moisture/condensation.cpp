// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/moisture/condensation.hpp"

#include "engine/moisture/saturation.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

template <class Gas>
MassFlux flux(FilmCoefficient convective, const Gas& gas, Pressure vapour_bulk, Pressure total, Temperature wall,
              Temperature gas_temperature) {
  const Pressure vapour_wall = saturation_pressure(wall);
  if (!(vapour_wall < vapour_bulk)) {
    return 0.0 * kilogram_per_second / square_metre;
  }
  const Temperature film = midway(wall, gas_temperature);
  const Density density = gas.density(film, total);
  const SpecificHeat heat = gas.specific_heat(film);
  const Ratio lewis = gas.conductivity(film) / (density * heat * vapour_diffusivity(film, total));
  const double lewis_root = std::cbrt(lewis.value());
  const Velocity transfer = convective / (density * heat) / (lewis_root * lewis_root);
  const Density vapour_scale = total * molar_mass(Species::water) / (molar_gas_constant * film.above_zero());
  const Ratio drive = (total - vapour_wall) / (total - vapour_bulk);
  return transfer * vapour_scale * std::log(drive.value());
}

}  // namespace

Diffusivity vapour_diffusivity(Temperature t, Pressure absolute) {
  const double kelvin_t = in_kelvin(t);
  const double atmospheres = in(absolute, pascal) / 101325.0;
  // The two power laws cross at 450.2 K, and each is the smaller one within its own range.
  return std::min(1.87e-10 * std::pow(kelvin_t, 2.072), 2.75e-9 * std::pow(kelvin_t, 1.632)) / atmospheres *
         square_metre / second;
}

MassFlux condensing_flux(FilmCoefficient convective, const GasTable& gas, Pressure vapour_bulk, Pressure total,
                         Temperature wall, Temperature gas_temperature) {
  return flux(convective, gas, vapour_bulk, total, wall, gas_temperature);
}

MassFlux condensing_flux(FilmCoefficient convective, const GasMixture& gas, Pressure vapour_bulk, Pressure total,
                         Temperature wall, Temperature gas_temperature) {
  return flux(convective, gas, vapour_bulk, total, wall, gas_temperature);
}

}  // namespace fluewright
