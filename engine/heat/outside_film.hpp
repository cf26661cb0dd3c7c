// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

namespace fluewright {

/// Stefan-Boltzmann constant, 5.670374419e-8 W/(m2 K4) (CODATA 2018).
inline constexpr double stefan_boltzmann = 5.670374419e-8;

// Films of dry air around a body; properties at the film temperature midway between surface and air, density from
// the absolute pressure. Either sign of the temperature difference. Where the two temperatures meet the films go to
// their small conduction limit without a jump, but steeply (like the sixth root of the difference).

/// Nusselt number of free convection on a long horizontal cylinder, over its diameter:
/// {0.60 + 0.387 Ra^(1/6) / [1 + (0.559/Pr)^(9/16)]^(8/27)}^2, Ra < 1e12.
/// Source: Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049.
[[nodiscard]] Ratio horizontal_cylinder_nusselt(Ratio rayleigh, Ratio prandtl);

/// Nusselt number of free convection on a vertical wall, over its height:
/// {0.825 + 0.387 Ra^(1/6) / [1 + (0.492/Pr)^(9/16)]^(8/27)}^2, all Ra.
/// Source: Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1323.
[[nodiscard]] Ratio vertical_wall_nusselt(Ratio rayleigh, Ratio prandtl);

/// Nusselt number over a hot plate facing up (or a cold one facing down), over area/perimeter:
/// 0.54 Ra^(1/4) and 0.15 Ra^(1/3), the larger of the two, which hands over at 4.7e6 without a jump (published as
/// changing at 1e7). Source: McAdams, Heat Transmission (1954), in Incropera & DeWitt eq. 9.30-9.31.
[[nodiscard]] Ratio plate_facing_up_nusselt(Ratio rayleigh);

/// Nusselt number under a hot plate facing down (or over a cold one facing up), over area/perimeter:
/// 0.27 Ra^(1/4), 1e5 < Ra < 1e10. Source: McAdams (1954), in Incropera & DeWitt eq. 9.32.
[[nodiscard]] Ratio plate_facing_down_nusselt(Ratio rayleigh);

/// Nusselt number of a cylinder in cross-flow, over its diameter:
/// 0.3 + 0.62 Re^(1/2) Pr^(1/3) / [1 + (0.4/Pr)^(2/3)]^(1/4) [1 + (Re/282000)^(5/8)]^(4/5), Re Pr > 0.2.
/// Source: Churchill & Bernstein, J. Heat Transfer 99 (1977) 300.
[[nodiscard]] Ratio cross_flow_nusselt(Ratio reynolds, Ratio prandtl);

/// Free convection around a long horizontal pipe [W/(m2 K)].
[[nodiscard]] FilmCoefficient horizontal_cylinder_film(Length diameter, Temperature surface, Temperature ambient,
                                                       Pressure absolute);
/// Free convection on a vertical wall, or an upright cylinder that is not slender [W/(m2 K)].
[[nodiscard]] FilmCoefficient vertical_wall_film(Length height, Temperature surface, Temperature ambient,
                                                 Pressure absolute);
/// Free convection on a horizontal surface facing up; length = area / perimeter. A surface colder than the air
/// takes the facing-down relation by itself [W/(m2 K)].
[[nodiscard]] FilmCoefficient plate_facing_up_film(Length area_over_perimeter, Temperature surface, Temperature ambient,
                                                   Pressure absolute);
/// Free convection on a horizontal surface facing down; length = area / perimeter [W/(m2 K)].
[[nodiscard]] FilmCoefficient plate_facing_down_film(Length area_over_perimeter, Temperature surface,
                                                     Temperature ambient, Pressure absolute);
/// Wind across a pipe [W/(m2 K)].
[[nodiscard]] FilmCoefficient cross_flow_film(Length diameter, Temperature surface, Temperature ambient,
                                              Pressure absolute, Velocity wind);

/// Radiation of a grey surface to large surroundings, e sigma (Ts^2 + Ta^2)(Ts + Ta) [W/(m2 K)].
/// Source: Stefan-Boltzmann law.
[[nodiscard]] inline FilmCoefficient radiation_film(Ratio emissivity, Temperature surface, Temperature surroundings) {
  const double a = in_kelvin(surface);
  const double b = in_kelvin(surroundings);
  return emissivity * stefan_boltzmann * (a * a + b * b) * (a + b) * watt_per_square_metre_kelvin;
}

}  // namespace fluewright
