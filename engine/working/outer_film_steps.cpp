// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/inside_film.hpp"
#include "engine/heat/outside_film.hpp"
#include "engine/working/slice_case.hpp"

#include <cmath>

namespace fluewright {

namespace {

/// Dry air midway between the outer face and what it faces.
struct OuterAir {
  Temperature film;
  Density density{};
  DynamicViscosity viscosity{};
  Conductivity conductivity{};
  Ratio prandtl = 0.7;
};

OuterAir outer_air(const SliceCase& c) {
  static const GasTable air{dry_air()};
  const Temperature t = midway(c.heat.surface, c.setting().beyond);
  return {t, air.density(t, c.absolute()), air.viscosity(t), air.conductivity(t), air.prandtl(t)};
}

void add_outer_air(Sheet& sheet, const OuterAir& air) {
  sheet.step("T_a", "midway between outer face and surroundings", "T_b + dT_s / 2", air.film, by_definition());
  sheet.step("rho_a", "density of dry air there", "p * M_a / (8.314462618 * T_a)", air.density, published("ideal gas"));
  sheet.read("mu_a", "viscosity there", {"T_a"}, air.viscosity, published("Perry, 8th ed., Table 2-312; Wilke 1950"),
             "by table");
  sheet.read("k_a", "conductivity there", {"T_a"}, air.conductivity,
             published("Perry, 8th ed., Table 2-314; Mason & Saxena 1958"), "by table");
  sheet.read("Pr_a", "Prandtl number there", {"T_a", "mu_a", "k_a"}, air.prandtl, by_definition(),
             "with cp by polynomial");
}

/// What kind of free convection the outer face has.
struct FreeFilm {
  const char* what;
  const char* size;      ///< meaning of the length
  const char* relation;
  const char* source;
  const char* range;
  Length length{};
  double lowest = 0.0;
  double highest = 1e12;
  Ratio (*nusselt)(Ratio, Ratio);
};

Ratio facing_up(Ratio rayleigh, Ratio) { return plate_facing_up_nusselt(rayleigh); }
Ratio facing_down(Ratio rayleigh, Ratio) { return plate_facing_down_nusselt(rayleigh); }

FreeFilm level_plate(const SliceCase& c, Length size, bool seat) {
  const bool cold = c.heat.surface < c.setting().beyond;
  const char* const where = seat ? "area over perimeter of the seat" : "area over perimeter of the lid";
  if (cold) {
    return {seat ? "a seat colder than the air" : "a lid colder than the air", where, "0.27 * Ra_o^(1 / 4)",
            "McAdams 1954, in Incropera & DeWitt eq. 9.32", "1e5 < Ra < 1e10", size, 1e5, 1e10, facing_down};
  }
  return {seat ? "a seat facing up" : "a lid facing up", where, "max(0.54 * Ra_o^(1 / 4), 0.15 * Ra_o^(1 / 3))",
          "McAdams 1954, in Incropera & DeWitt eq. 9.30-9.31", "1e4 < Ra < 1e11", size, 1e4, 1e11, facing_up};
}

FreeFilm free_film(const SliceCase& c) {
  if (c.slice->lid) return level_plate(c, 0.25 * c.stretch->lid->across, false);
  if (c.stretch->place == Place::mass) return level_plate(c, c.wall->seat_size, true);
  if (c.stretch->stands_upright) {
    return {"an upright wall", "height of the wall",
            "(0.825 + 0.387 * Ra_o^(1 / 6) / (1 + (0.492 / Pr_a)^(9 / 16))^(8 / 27))^2", "Churchill & Chu 1975",
            "all Ra", c.wall->upright_height, 0.0, 1e99, vertical_wall_nusselt};
  }
  return {"a level cylinder", "outside diameter",
          "(0.60 + 0.387 * Ra_o^(1 / 6) / (1 + (0.559 / Pr_a)^(9 / 16))^(8 / 27))^2", "Churchill & Chu 1975",
          "Ra < 1e12", c.wall->outside_diameter, 0.0, 1e12, horizontal_cylinder_nusselt};
}

FilmCoefficient add_free(Sheet& sheet, const SliceCase& c, const OuterAir& air, const char* symbol) {
  const FreeFilm kind = free_film(c);
  const double nu = in(air.viscosity / air.density, Diffusivity(square_metre / second));
  const double length = in(kind.length, metre);
  const double above = std::abs(in(c.heat.surface - c.setting().beyond, kelvin));
  const double rayleigh = standard_gravity.value() * above / in_kelvin(air.film) * length * length * length / (nu * nu) *
                          air.prandtl.value();
  const Ratio nusselt = kind.nusselt(rayleigh, air.prandtl);
  const FilmCoefficient film = nusselt * air.conductivity / kind.length;
  sheet.given("L_o", kind.size, kind.length, as_drawn());
  sheet.step("Ra_o", "Rayleigh number", "9.80665 * abs(dT_s) / T_a * L_o^3 * (rho_a / mu_a)^2 * Pr_a", Ratio(rayleigh),
             by_definition());
  sheet.step("Nu_o", std::string{"Nusselt number of free convection on "} + kind.what, kind.relation, nusselt,
             published(kind.source))
      .within(kind.range, rayleigh >= kind.lowest && rayleigh <= kind.highest);
  sheet.step(symbol, "free film", "Nu_o * k_a / L_o", film, by_definition());
  return film;
}

FilmCoefficient add_wind(Sheet& sheet, const SliceCase& c, const OuterAir& air, FilmCoefficient free) {
  const Velocity wind = c.run->surround.wind;
  const Length d = c.wall->outside_diameter;
  const Ratio reynolds = wind * d * air.density / air.viscosity;
  const Ratio nusselt = cross_flow_nusselt(reynolds, air.prandtl);
  const FilmCoefficient across = nusselt * air.conductivity / d;
  const std::string outer = "d_" + std::to_string(c.wall->layers.size());
  sheet.given("v_w", "wind", wind, as_drawn());
  sheet.step("Re_w", "Reynolds number across the pipe", "v_w * " + outer + " * rho_a / mu_a", reynolds, by_definition());
  sheet.step("Nu_w", "Nusselt number across a cylinder",
             "0.3 + 0.62 * sqrt(Re_w) * Pr_a^(1 / 3) / (1 + (0.4 / Pr_a)^(2 / 3))^(1 / 4) * (1 + (Re_w / 282000)^(5 / 8))^(4 / 5)",
             nusselt, published("Churchill & Bernstein 1977"))
      .within("Re Pr > 0.2", reynolds * air.prandtl > 0.2);
  sheet.step("h_w", "film of the wind", "Nu_w * k_a / " + outer, across, by_definition());
  const double x = in(free, watt_per_square_metre_kelvin);
  const double y = in(across, watt_per_square_metre_kelvin);
  const FilmCoefficient both = detail::cube_root(x * x * x + y * y * y) * watt_per_square_metre_kelvin;
  sheet.step("h_oc", "both together", "(h_of^3 + h_w^3)^(1 / 3)", both,
             published("mixed convection, Incropera & DeWitt ch. 9"));
  return both;
}

Citation emissivity_source(const SliceCase& c) {
  if (c.stretch->place == Place::mass) return c.stretch->embedding.material->emissivity_citation;
  if (c.stretch->wall.empty()) return chosen("no wall drawn");
  return c.stretch->wall.back().material->emissivity_citation;
}

}  // namespace

void add_outer_film(Sheet& sheet, const SliceCase& c) {
  sheet.part("Film outside");
  const Place place = c.stretch->place;
  if (place == Place::ground) {
    sheet.given("R_o", "film outside", ThermalResistance{}, chosen("it is in the cover")).remark("none of its own");
    return;
  }
  if (place == Place::jacket) {
    const FilmCoefficient film = c.setting().jacket_film;
    sheet.given("h_o", "film of the gas around the riser", film, from_the_walk())
        .remark("mean of the slices around it, walked through until both agree");
    sheet.step("R_o", "film outside, on the inner face", "d_0 / (d_" + std::to_string(c.wall->layers.size()) + " * h_o)",
               ThermalResistance(1.0 / (film * c.wall->outer_share)), by_definition());
    return;
  }
  const OuterAir air = outer_air(c);
  add_outer_air(sheet, air);
  const bool windy = place == Place::outdoors && c.run->surround.wind > Velocity{};
  FilmCoefficient convective = add_free(sheet, c, air, windy ? "h_of" : "h_oc");
  if (windy) convective = add_wind(sheet, c, air, convective);
  const FilmCoefficient radiation = radiation_film(c.wall->outer_emissivity, c.heat.surface, c.setting().beyond);
  sheet.given("e_o", "emissivity of the outer face", c.wall->outer_emissivity, emissivity_source(c));
  sheet.step("h_or", "film of its radiation", "e_o * 5.670374419e-8 * (T_s^2 + T_b^2) * (T_s + T_b)", radiation,
             published("Stefan-Boltzmann law"));
  const FilmCoefficient film = convective + radiation;
  sheet.step("h_o", "film outside", "h_oc + h_or", film, by_definition(), Carries::sum);
  if (place == Place::mass) {
    const Embedding& e = c.stretch->embedding;
    sheet.given("x_e", "share of the mass's outline that faces the room", e.exposed_share, as_drawn());
    sheet.step("a_o", "surface of the seat over the inner face", "2 * (W + H) * x_e / P_h", c.wall->seat_share,
               published("geometry"));
    sheet.step("R_o", "film outside, on the inner face", "1 / (h_o * a_o)",
               ThermalResistance(1.0 / (film * c.wall->seat_share)), by_definition());
  } else {
    sheet.step("R_o", "film outside, on the inner face", "d_0 / (d_" + std::to_string(c.wall->layers.size()) + " * h_o)",
               ThermalResistance(1.0 / (film * c.wall->outer_share)), by_definition());
  }
}

}  // namespace fluewright
