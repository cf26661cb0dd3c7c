// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/outside_film.hpp"

#include "engine/gas/gas_table.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

/// Dry air at a film temperature, in plain SI.
struct FilmAir {
  double film;  ///< [K]
  double kinematic_viscosity;
  double conductivity;
  double prandtl;
};

FilmAir film_air(Temperature surface, Temperature ambient, Pressure absolute) {
  static const GasTable air{dry_air()};
  const Temperature film = midway(surface, ambient);
  const double mu = in(air.viscosity(film), pascal_second);
  const double k = in(air.conductivity(film), watt_per_metre_kelvin);
  const double cp = in(air.specific_heat(film), joule_per_kilogram_kelvin);
  const double rho = in(air.density(film, absolute), kilogram_per_cubic_metre);
  return {in_kelvin(film), mu / rho, k, cp * mu / k};
}

/// Rayleigh number of a length for the size of the temperature difference.
double rayleigh(const FilmAir& air, double length, Temperature surface, Temperature ambient) {
  const double difference = std::abs(in(surface - ambient, kelvin));
  const double g = standard_gravity.value();
  return g * difference / air.film * length * length * length / (air.kinematic_viscosity * air.kinematic_viscosity) *
         air.prandtl;
}

FilmCoefficient film(Ratio nusselt, const FilmAir& air, Length length) {
  return nusselt * air.conductivity * watt_per_metre_kelvin / length;
}

/// Churchill and Chu's common form.
double churchill_chu(double base, double prandtl_number, double rayleigh_number, double prandtl) {
  const double bracket = 1.0 + std::pow(prandtl_number / prandtl, 9.0 / 16.0);
  const double sum = base + 0.387 * std::sqrt(std::cbrt(rayleigh_number)) / std::pow(bracket, 8.0 / 27.0);
  return sum * sum;
}

}  // namespace

Ratio horizontal_cylinder_nusselt(Ratio rayleigh_number, Ratio prandtl) {
  return churchill_chu(0.60, 0.559, rayleigh_number, prandtl);
}

Ratio vertical_wall_nusselt(Ratio rayleigh_number, Ratio prandtl) {
  return churchill_chu(0.825, 0.492, rayleigh_number, prandtl);
}

Ratio plate_facing_up_nusselt(Ratio rayleigh_number) {
  const double ra = rayleigh_number;
  return std::max(0.54 * std::sqrt(std::sqrt(ra)), 0.15 * std::cbrt(ra));
}

Ratio plate_facing_down_nusselt(Ratio rayleigh_number) { return 0.27 * std::sqrt(std::sqrt(rayleigh_number.value())); }

Ratio cross_flow_nusselt(Ratio reynolds, Ratio prandtl) {
  const double re = reynolds;
  const double pr = prandtl;
  const double pr_root = std::cbrt(0.4 / pr);
  const double bracket = std::sqrt(std::sqrt(1.0 + pr_root * pr_root));
  return 0.3 + 0.62 * std::sqrt(re) * std::cbrt(pr) / bracket * std::pow(1.0 + std::pow(re / 282000.0, 0.625), 0.8);
}

FilmCoefficient horizontal_cylinder_film(Length diameter, Temperature surface, Temperature ambient, Pressure absolute) {
  const FilmAir air = film_air(surface, ambient, absolute);
  return film(horizontal_cylinder_nusselt(rayleigh(air, in(diameter, metre), surface, ambient), air.prandtl), air,
              diameter);
}

FilmCoefficient vertical_wall_film(Length height, Temperature surface, Temperature ambient, Pressure absolute) {
  const FilmAir air = film_air(surface, ambient, absolute);
  return film(vertical_wall_nusselt(rayleigh(air, in(height, metre), surface, ambient), air.prandtl), air, height);
}

FilmCoefficient plate_facing_up_film(Length area_over_perimeter, Temperature surface, Temperature ambient,
                                     Pressure absolute) {
  const FilmAir air = film_air(surface, ambient, absolute);
  const Ratio ra = rayleigh(air, in(area_over_perimeter, metre), surface, ambient);
  const bool stirred = !(surface < ambient);
  return film(stirred ? plate_facing_up_nusselt(ra) : plate_facing_down_nusselt(ra), air, area_over_perimeter);
}

FilmCoefficient plate_facing_down_film(Length area_over_perimeter, Temperature surface, Temperature ambient,
                                       Pressure absolute) {
  const FilmAir air = film_air(surface, ambient, absolute);
  const Ratio ra = rayleigh(air, in(area_over_perimeter, metre), surface, ambient);
  const bool stirred = surface < ambient;
  return film(stirred ? plate_facing_up_nusselt(ra) : plate_facing_down_nusselt(ra), air, area_over_perimeter);
}

FilmCoefficient cross_flow_film(Length diameter, Temperature surface, Temperature ambient, Pressure absolute,
                                Velocity wind) {
  const FilmAir air = film_air(surface, ambient, absolute);
  const double re = in(wind, metre_per_second) * in(diameter, metre) / air.kinematic_viscosity;
  return film(cross_flow_nusselt(re, air.prandtl), air, diameter);
}

}  // namespace fluewright
