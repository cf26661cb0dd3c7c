// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/conduction.hpp"

#include <cmath>
#include <numbers>

namespace fluewright {

namespace {

constexpr double two_pi = 2.0 * std::numbers::pi;

/// Dimensionless flux from a cylinder whose surface was heated in a step, Fo < 1. Carslaw & Jaeger 13.5 eq. 8.
double early_flux(double fourier) {
  return 1.0 / std::sqrt(std::numbers::pi * fourier) + 0.5 - 0.25 * std::sqrt(fourier * std::numbers::inv_pi) +
         fourier / 8.0;
}

}  // namespace

ThermalResistance plane_layer(Length thickness, Conductivity conductivity) { return thickness / conductivity; }

LineResistance cylinder_layer(Length inner_diameter, Length outer_diameter, Conductivity conductivity) {
  const Ratio growth = outer_diameter / inner_diameter;
  return std::log(growth.value()) / (two_pi * conductivity);
}

ThermalResistance cylinder_layer_on(Length reference_diameter, Length inner_diameter, Length outer_diameter,
                                    Conductivity conductivity) {
  const Ratio growth = outer_diameter / inner_diameter;
  return 0.5 * std::log(growth.value()) * reference_diameter / conductivity;
}

Ratio centred_in_square_shape_factor(Length side, Length diameter) {
  const Ratio w = side / diameter;
  return two_pi / std::log(1.08 * w.value());
}

Ratio buried_pipe_shape_factor(Length depth, Length diameter) {
  const Ratio z = depth / diameter;
  return two_pi / std::acosh(2.0 * z.value());
}

Ratio parallel_pipes_shape_factor(Length spacing, Length first_diameter, Length second_diameter) {
  const Ratio x = (4.0 * spacing * spacing - first_diameter * first_diameter - second_diameter * second_diameter) /
                  (2.0 * first_diameter * second_diameter);
  return two_pi / std::acosh(x.value());
}

Ratio equal_area_shape_factor(Length width, Length height, Length diameter) {
  const Ratio growth_squared = width * height / (diameter * diameter);
  return two_pi / (0.5 * std::log(4.0 * std::numbers::inv_pi * growth_squared.value()));
}

ThermalResistance penetration_resistance(Length radius, Conductivity conductivity, Diffusivity diffusivity, Time time) {
  const Ratio fourier = diffusivity * time / (radius * radius);
  const double fo = fourier.value();
  if (fo < 1.0) {
    return radius / conductivity / early_flux(fo);
  }
  // Twice the resistance is ln(4 Fo) - gamma plus a correction that dies away like 1/ln Fo. Its start is set by the
  // join at Fo = 1, its decay by the exact integral at Fo = 100.
  constexpr double decay = 0.384;
  static const double start = 1.0 / (2.0 / early_flux(1.0) - std::log(4.0) + std::numbers::egamma);
  const double log_fo = std::log(fo);
  return 0.5 * (std::log(4.0) + log_fo - std::numbers::egamma + 1.0 / (start + decay * log_fo)) * radius / conductivity;
}

ThermalResistance plane_penetration_resistance(Conductivity conductivity, Diffusivity diffusivity, Time time) {
  const Area depth_squared = std::numbers::pi * diffusivity * time;
  return bu::sqrt(depth_squared) / conductivity;
}

Ratio thin_wall_warmed_share(Time time, FilmCoefficient both_films, ArealHeatCapacity capacity) {
  const Ratio exponent = both_films * time / capacity;
  return -std::expm1(-exponent.value());
}

}  // namespace fluewright
