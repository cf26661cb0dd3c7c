// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

namespace fluewright {

/// Thermal resistance of a metre of run [m K/W].
using LineResistance = detail::quotient<Ratio, LineConductance>;

/// Resistance of a plane layer, thickness / conductivity [m2 K/W].
[[nodiscard]] ThermalResistance plane_layer(Length thickness, Conductivity conductivity);

/// Resistance of a metre of tube wall, ln(outer/inner) / (2 pi k) [m K/W]. Source: Fourier's law.
[[nodiscard]] LineResistance cylinder_layer(Length inner_diameter, Length outer_diameter, Conductivity conductivity);

/// The same tube wall per area of a reference diameter (the bore, usually): D_ref ln(outer/inner) / (2 k) [m2 K/W].
[[nodiscard]] ThermalResistance cylinder_layer_on(Length reference_diameter, Length inner_diameter,
                                                  Length outer_diameter, Conductivity conductivity);

// Conduction shape factors per metre of run: heat flow = S k (T1 - T2), S a pure number.

/// Pipe of diameter D centred in a square mass of side w > D: 2 pi / ln(1.08 w/D).
/// Source: Incropera & DeWitt, Table 4.1 case 6.
[[nodiscard]] Ratio centred_in_square_shape_factor(Length side, Length diameter);

/// Pipe whose centre lies z > D/2 below a plane: 2 pi / acosh(2 z/D).
/// Source: Incropera & DeWitt, Table 4.1 case 2.
[[nodiscard]] Ratio buried_pipe_shape_factor(Length depth, Length diameter);

/// Two parallel pipes with their centres c apart: 2 pi / acosh((4c^2 - D1^2 - D2^2)/(2 D1 D2)).
/// Source: Incropera & DeWitt, Table 4.1 case 4.
[[nodiscard]] Ratio parallel_pipes_shape_factor(Length spacing, Length first_diameter, Length second_diameter);

/// Pipe in a mass w x h taken as a cylinder of equal area: 2 pi / ln(1.128 sqrt(w h)/D). About 3 % more resistance
/// than the square of the table. Source: geometry, 1.128 = 2/sqrt(pi).
[[nodiscard]] Ratio equal_area_shape_factor(Length width, Length height, Length diameter);

// How a cold mass takes up heat, for the quick estimate of a bench's age.

/// Resistance, per area of the bore, between the bore's surface and a wide mass at its starting temperature, a time
/// after the surface was heated to a steady temperature. With Fo = alpha t/a^2:
/// (a/k) / (1/sqrt(pi Fo) + 1/2 - sqrt(Fo/pi)/4 + Fo/8) for Fo < 1 (Carslaw & Jaeger, Conduction of Heat in Solids,
/// 13.5 eq. 8); for Fo >= 1 the line source's (a/k)/2 (ln(4 Fo) - gamma + c(Fo)) with a correction
/// c = 1/(c1 + 0.384 ln Fo) of our own, c1 chosen so that the two meet at Fo = 1. Against the exact integral (13.5
/// eq. 5) it is up to 6.5 % low about Fo = 1, within 1 % below 0.3 and above 50. Rises without bound: cap it by the
/// steady path of the real mass. Zero at time zero.
[[nodiscard]] ThermalResistance penetration_resistance(Length radius, Conductivity conductivity,
                                                       Diffusivity diffusivity, Time time);

/// The same for a plane surface of a thick mass: sqrt(pi alpha t)/k. Source: Carslaw & Jaeger 2.4.
[[nodiscard]] ThermalResistance plane_penetration_resistance(Conductivity conductivity, Diffusivity diffusivity,
                                                             Time time);

/// Share of its final warming that a thin wall has reached, 1 - exp(-h t/C''), h the sum of the film coefficients
/// on its two sides and C'' its heat capacity per area. Source: lumped capacitance, Incropera & DeWitt 5.1.
[[nodiscard]] Ratio thin_wall_warmed_share(Time time, FilmCoefficient both_films, ArealHeatCapacity capacity);

}  // namespace fluewright
