// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/gas_radiation.hpp"
#include "engine/heat/inside_film.hpp"
#include "engine/heat/jet_film.hpp"
#include "engine/heat/outside_film.hpp"
#include "engine/working/slice_case.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fluewright {

namespace {

Citation mixed_convection() { return published("mixed convection, Incropera & DeWitt ch. 9"); }

void add_laminar(Sheet& sheet, const SliceCase& c, const char* symbol) {
  const Ratio prandtl = c.gas->prandtl(c.heat.mean);
  const Ratio run = c.setting().diameter_over_run;
  sheet.step("Gz", "Graetz number", "Re * Pr * DL", c.heat.reynolds * prandtl * run, by_definition());
  sheet.step(symbol, "Nusselt number, laminar", "3.66 + 0.0668 * Gz / (1 + 0.04 * Gz^(2 / 3))",
             laminar_entry_nusselt(c.heat.reynolds, prandtl, run), published("Hausen 1943, in Incropera & DeWitt"))
      .within("Re < 2300", c.heat.reynolds <= laminar_film_ends);
}

void add_turbulent(Sheet& sheet, const SliceCase& c, const char* symbol) {
  const Ratio prandtl = c.gas->prandtl(c.heat.mean);
  const double entry = detail::cube_root(c.setting().diameter_over_run);
  const Ratio gnielinski = gnielinski_nusselt(c.heat.reynolds, prandtl, c.heat.friction_factor);
  const bool holds = c.heat.reynolds > laminar_film_ends && c.heat.reynolds < 5e6 && prandtl > 0.5;
  sheet.step("Nu_G", "Nusselt number, turbulent, far from the entry",
             "f / 8 * (Re - 1000) * Pr / (1 + 12.7 * sqrt(f / 8) * (Pr^(2 / 3) - 1))", gnielinski,
             published("Gnielinski 1976"))
      .within("2300 < Re < 5e6, 0.5 < Pr < 2000", holds);
  sheet.step(symbol, "the same with the entry", "(1 + DL^(2 / 3)) * Nu_G", (1.0 + entry * entry) * gnielinski,
             published("entry factor of Hausen 1959"));
}

void add_nusselt(Sheet& sheet, const SliceCase& c) {
  const double re = c.heat.reynolds;
  const Length dh = c.stretch->section.hydraulic_diameter();
  sheet.given("L", "unbroken length of this section", Length(dh / c.setting().diameter_over_run), as_drawn());
  sheet.step("DL", "diameter over that length", "D_h / L", c.setting().diameter_over_run, by_definition());
  if (re <= laminar_film_ends) {
    add_laminar(sheet, c, "Nu");
  } else if (re >= turbulent_film_begins) {
    add_turbulent(sheet, c, "Nu");
  } else {
    add_laminar(sheet, c, "Nu_l");
    add_turbulent(sheet, c, "Nu_t");
    sheet.step("Nu", "between laminar and turbulent", "Nu_l + (Re - 2300) / 1700 * (Nu_t - Nu_l)", c.heat.nusselt,
               chosen("linear blend between Re 2300 and 4000"));
  }
}

/// The gas midway between its own temperature and the wall's, and its Rayleigh number over a length.
struct NearWall {
  Ratio rayleigh = 0.0;
  Ratio prandtl = 0.7;
  Conductivity conductivity{};
};

NearWall add_near_wall(Sheet& sheet, const SliceCase& c, Length length) {
  const Temperature t = midway(c.heat.mean, c.heat.wall);
  const DynamicViscosity mu = c.gas->viscosity(t);
  const Density rho = c.gas->density(t, c.absolute());
  const auto nu = mu / rho;
  const double cubed = in(standard_gravity * length * length * length / (nu * nu), Ratio(1.0));
  NearWall near{0.0, c.gas->prandtl(t), c.gas->conductivity(t)};
  near.rayleigh = cubed * std::abs(in(c.heat.mean - c.heat.wall, kelvin)) / in_kelvin(t) * near.prandtl.value();
  sheet.step("T_f", "midway between gas and wall", "T_m - dT_w / 2", t, by_definition());
  sheet.step("rho_f", "density there", "p / (R_g * T_f)", rho, published("ideal gas"));
  sheet.read("mu_f", "viscosity there", {"T_f"}, mu, published("Perry, 8th ed., Table 2-312; Wilke 1950"), "by table");
  sheet.read("k_f", "conductivity there", {"T_f"}, near.conductivity,
             published("Perry, 8th ed., Table 2-314; Mason & Saxena 1958"), "by table");
  sheet.read("Pr_f", "Prandtl number there", {"T_f", "mu_f", "k_f"}, near.prandtl, by_definition(), "with cp by polynomial");
  sheet.step("Ra", "Rayleigh number", "9.80665 * abs(dT_w) / T_f * L_c^3 * (rho_f / mu_f)^2 * Pr_f", near.rayleigh,
             by_definition());
  return near;
}

/// Free convection along a chamber's wall.
void add_chamber(Sheet& sheet, const SliceCase& c) {
  const Length height = c.wall->upright_height;
  sheet.given("L_c", "height of the chamber", height, as_drawn());
  const NearWall near = add_near_wall(sheet, c, height);
  const Ratio nusselt = vertical_wall_nusselt(near.rayleigh, near.prandtl);
  sheet.step("Nu_f", "Nusselt number of free convection on an upright wall",
             "(0.825 + 0.387 * Ra^(1 / 6) / (1 + (0.492 / Pr_f)^(9 / 16))^(8 / 27))^2", nusselt,
             published("Churchill & Chu 1975"));
  sheet.step("h_free", "free film", "Nu_f * k_f / L_c", FilmCoefficient(nusselt * near.conductivity / height),
             by_definition());
}

/// Hot gas under a colder plate: the plate facing up turned over.
void add_lid(Sheet& sheet, const SliceCase& c, const Lid& lid, const char* symbol) {
  const Length size = 0.25 * lid.across;
  sheet.given("D_l", "lid across", lid.across, as_drawn());
  sheet.step("L_c", "its area over its perimeter", "D_l / 4", size, published("geometry"));
  const NearWall near = add_near_wall(sheet, c, size);
  const Ratio nusselt = plate_facing_up_nusselt(near.rayleigh);
  sheet.step("Nu_f", "Nusselt number of free convection under a lid", "max(0.54 * Ra^(1 / 4), 0.15 * Ra^(1 / 3))", nusselt,
             published("McAdams 1954, in Incropera & DeWitt eq. 9.30-9.31"))
      .within("1e4 < Ra < 1e11", near.rayleigh > 1e4 && near.rayleigh < 1e11);
  sheet.step(symbol, "free film", "Nu_f * k_f / L_c", FilmCoefficient(nusselt * near.conductivity / size), by_definition());
}

/// The riser's gas that strikes a lid.
void add_jet(Sheet& sheet, const SliceCase& c, const Lid& lid) {
  const Length d = lid.jet_diameter;
  const Temperature t = c.heat.mean;
  const Ratio reynolds = 4.0 * c.visit->flow / (std::numbers::pi * d * c.gas->viscosity(t));
  const Ratio spread = 2.0 * (d / lid.across);
  const Ratio nusselt = jet_nusselt(reynolds, c.gas->prandtl(t), spread, lid.jet_gap / d);
  sheet.given("D_j", "bore of the riser below", d, as_drawn());
  sheet.given("H_j", "from its rim to the lid", lid.jet_gap, as_drawn());
  sheet.step("x_j", "its bore over the lid's radius; at most where the relation turns", "min(2 * D_j / D_l, 1 / 2.2)",
             Ratio(std::min(spread.value(), jet_smallest_spread)), by_definition());
  sheet.step("Re_j", "Reynolds number of the jet", "4 * mdot / (pi * D_j * mu)", reynolds, by_definition());
  sheet.step("Nu_j", "Nusselt number of a jet on a plate",
             "Pr^0.42 * x_j * (1 - 1.1 * x_j) / (1 + 0.1 * (H_j / D_j - 6) * x_j) * 2 * sqrt(Re_j * (1 + 0.005 * Re_j^0.55))",
             nusselt, from_memory("Martin 1977, in Incropera & DeWitt ch. 7"))
      .within("2000 < Re < 4e5, 2.5 < r/D < 7.5, 2 < H/D < 12", jet_within_range(reynolds, spread, lid.jet_gap / d));
  sheet.step("h_jet", "film of the jet", "Nu_j * k / D_j", FilmCoefficient(nusselt * c.gas->conductivity(t) / d),
             by_definition());
}

/// What the lid sees of the glowing riser.
void add_mouth(Sheet& sheet, const SliceCase& c, const Lid& lid, FilmCoefficient film) {
  const Area mouth = 0.25 * std::numbers::pi * lid.jet_diameter * lid.jet_diameter;
  const FilmCoefficient black = radiation_film(1.0, c.heat.mean, c.heat.wall);
  const FilmCoefficient seen = (mouth / lid.surface) * (black * (8.0 * film) / (black + 8.0 * film));
  sheet.step("h_0", "film of a black mouth's radiation", "5.670374419e-8 * (T_m^2 + T_w^2) * (T_m + T_w)", black,
             published("Stefan-Boltzmann law"));
  sheet.step("h_mouth", "what the lid gets of it, fed by the gas through two bores of the riser's wall",
             "pi / 4 * D_j^2 / A_s * h_0 * 8 * (h_c + h_r) / (h_0 + 8 * (h_c + h_r))", seen,
             chosen("black mouth, two bores of wall"));
}

void add_radiation(Sheet& sheet, const SliceCase& c) {
  const SliceSetting& s = c.setting();
  const Length beam = mean_beam_length(c.stretch->section.hydraulic_diameter());
  const Ratio from_gas = emissivity(c.heat.mean, s.co2, s.h2o, beam);
  const Ratio from_wall = absorptivity(c.heat.wall, s.co2, s.h2o, beam);
  const Citation smith = published("Smith, Shen & Friedman 1982");
  const ValidRange<Temperature> range = gas_radiation_range();
  const bool holds = range.contains(c.heat.mean) && range.contains(c.heat.wall);
  sheet.step("L_b", "mean beam length", "0.95 * D_h", beam, published("Hottel, in McAdams 1954"));
  const auto of = [&c](const char* temperature) -> std::vector<std::string> {
    if (c.mixed()) return {temperature, "p_c", "p_w", "L_b"};
    return {temperature, "p", "y_CO2", "y_H2O", "L_b"};
  };
  sheet.read("e_g", "emissivity of the gas", of("T_m"), from_gas, smith,
             "by polynomial: weighted sum of grey gases")
      .within("600 to 2400 K, weights held beyond", range.contains(c.heat.mean));
  sheet.read("a_g", "share of the wall's radiation that the gas absorbs", of("T_w"), from_wall,
             smith, "by the same polynomial at T_w")
      .within("600 to 2400 K, weights held beyond", range.contains(c.heat.wall));
  sheet.given("e_w", "emissivity of the sooted wall", Ratio(soot_emissivity), common_practice("no source"));
  const FilmCoefficient film = gas_radiation_film(c.heat.mean, c.heat.wall, s.co2, s.h2o, beam, soot_emissivity);
  const Citation hottel = published("Hottel, in McAdams 1954; Stefan-Boltzmann law");
  // (e T_m^4 - a T_w^4)/(T_m - T_w), written so that little is lost where the two are near.
  if (from_gas == from_wall) {
    sheet.step("h_r", "film of the gas's radiation",
               "(1 + e_w) / 2 * 5.670374419e-8 * e_g * (T_m^2 + T_w^2) * (T_m + T_w)", film, hottel)
        .within("as e_g and a_g", holds);
    return;
  }
  const Ratio second = (from_gas - from_wall) * std::pow(in_kelvin(c.heat.wall), 4) / in(c.above_wall(), kelvin);
  sheet.step("h_r", "film of the gas's radiation",
             "(1 + e_w) / 2 * 5.670374419e-8 * (e_g * (T_m^2 + T_w^2) * (T_m + T_w) + (e_g - a_g) * T_w^4 / dT_w)", film,
             hottel)
      .within("as e_g and a_g", holds)
      .losing(abs(second) / (in(film, watt_per_square_metre_kelvin) / (0.5 * (1.0 + soot_emissivity) * stefan_boltzmann)) *
              (from_gas / abs(from_gas - from_wall)));
}

void add_convective(Sheet& sheet, const SliceCase& c) {
  if (c.slice->lid) {
    const Lid& lid = *c.stretch->lid;
    const bool struck = lid.jet_diameter > Length{};
    add_lid(sheet, c, lid, struck ? "h_free" : "h_c");
    if (!struck) return;
    add_jet(sheet, c, lid);
    sheet.step("h_c", "both together", "(h_jet^3 + h_free^3)^(1 / 3)", c.heat.convective, mixed_convection());
    return;
  }
  add_nusselt(sheet, c);
  const Length dh = c.stretch->section.hydraulic_diameter();
  const FilmCoefficient forced = c.heat.nusselt * c.gas->conductivity(c.heat.mean) / dh;
  if (!c.stretch->chamber) {
    sheet.step("h_c", "convective film", "Nu * k / D_h", c.heat.convective, by_definition());
    return;
  }
  sheet.step("h_forced", "forced film", "Nu * k / D_h", forced, by_definition());
  add_chamber(sheet, c);
  sheet.step("h_c", "both together", "(h_forced^3 + h_free^3)^(1 / 3)", c.heat.convective, mixed_convection());
}

}  // namespace

void add_inner_film(Sheet& sheet, const SliceCase& c) {
  sheet.part("Film inside");
  add_convective(sheet, c);
  if (!c.burnt) {
    sheet.step("h_i", "film inside", "h_c", c.heat.film, by_definition()).remark("air does not radiate");
    return;
  }
  add_radiation(sheet, c);
  std::string sum = "h_c + h_r";
  if (c.slice->lid && c.stretch->lid->jet_diameter > Length{}) {
    add_mouth(sheet, c, *c.stretch->lid, c.heat.convective + sheet.value<FilmCoefficient>("h_r"));
    sum += " + h_mouth";
  }
  sheet.step("h_i", "film inside", sum, c.heat.film, by_definition(), Carries::sum);
}

}  // namespace fluewright
