// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/gas_radiation.hpp"
#include "engine/heat/inside_film.hpp"
#include "engine/heat/outside_film.hpp"
#include "engine/working/slice_case.hpp"

#include <cmath>

namespace fluewright {

namespace {

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

/// Free convection along a chamber's wall, joined to the forced film.
void add_chamber(Sheet& sheet, const SliceCase& c) {
  const Temperature t = midway(c.heat.mean, c.heat.wall);
  const Length height = c.wall->upright_height;
  const DynamicViscosity mu = c.gas->viscosity(t);
  const Density rho = c.gas->density(t, c.absolute());
  const Ratio prandtl = c.gas->prandtl(t);
  const Conductivity k = c.gas->conductivity(t);
  const auto nu = mu / rho;
  const double cubed = in(standard_gravity * height * height * height / (nu * nu), Ratio(1.0));
  const Ratio rayleigh = cubed * std::abs(in(c.heat.mean - c.heat.wall, kelvin)) / in_kelvin(t) * prandtl.value();
  const Ratio nusselt = vertical_wall_nusselt(rayleigh, prandtl);
  sheet.given("H_c", "height of the chamber", height, as_drawn());
  sheet.step("T_f", "midway between gas and wall", "T_m - dT_w / 2", t, by_definition());
  sheet.step("rho_f", "density there", "p / (R_g * T_f)", rho, published("ideal gas"));
  sheet.read("mu_f", "viscosity there", {"T_f"}, mu, published("Perry, 8th ed., Table 2-312; Wilke 1950"), "by table");
  sheet.read("k_f", "conductivity there", {"T_f"}, k, published("Perry, 8th ed., Table 2-314; Mason & Saxena 1958"),
             "by table");
  sheet.read("Pr_f", "Prandtl number there", {"T_f", "mu_f", "k_f"}, prandtl, by_definition(), "with cp by polynomial");
  sheet.step("Ra", "Rayleigh number", "9.80665 * abs(dT_w) / T_f * H_c^3 * (rho_f / mu_f)^2 * Pr_f", rayleigh,
             by_definition());
  sheet.step("Nu_f", "Nusselt number of free convection on an upright wall",
             "(0.825 + 0.387 * Ra^(1 / 6) / (1 + (0.492 / Pr_f)^(9 / 16))^(8 / 27))^2", nusselt,
             published("Churchill & Chu 1975"))
      .within("Ra up to 1e12", rayleigh <= 1e12);
  sheet.step("h_free", "free film", "Nu_f * k_f / H_c", FilmCoefficient(nusselt * k / height), by_definition());
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
  sheet.read("e_g", "emissivity of the gas", {"T_m", "p", "y_CO2", "y_H2O", "L_b"}, from_gas, smith,
             "by polynomial: weighted sum of grey gases")
      .within("600 to 2400 K, weights held beyond", range.contains(c.heat.mean));
  sheet.read("a_g", "share of the wall's radiation that the gas absorbs", {"T_w", "p", "y_CO2", "y_H2O", "L_b"},
             from_wall, smith, "by the same polynomial at T_w")
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

}  // namespace

void add_inner_film(Sheet& sheet, const SliceCase& c) {
  sheet.part("Film inside");
  add_nusselt(sheet, c);
  const Length dh = c.stretch->section.hydraulic_diameter();
  const FilmCoefficient forced = c.heat.nusselt * c.gas->conductivity(c.heat.mean) / dh;
  if (c.stretch->chamber) {
    sheet.step("h_forced", "forced film", "Nu * k / D_h", forced, by_definition());
    add_chamber(sheet, c);
    sheet.step("h_c", "both together", "(h_forced^3 + h_free^3)^(1 / 3)", c.heat.convective,
               published("mixed convection, Incropera & DeWitt ch. 9"));
  } else {
    sheet.step("h_c", "convective film", "Nu * k / D_h", c.heat.convective, by_definition());
  }
  if (c.burnt) {
    add_radiation(sheet, c);
    sheet.step("h_i", "film inside", "h_c + h_r", c.heat.film, by_definition(), Carries::sum);
  } else {
    sheet.step("h_i", "film inside", "h_c", c.heat.film, by_definition()).remark("air does not radiate");
  }
}

}  // namespace fluewright
