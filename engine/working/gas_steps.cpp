// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/friction.hpp"
#include "engine/gas/species.hpp"
#include "engine/working/slice_case.hpp"

#include <cmath>

namespace fluewright {

namespace {

constexpr const char* found = "found by repetition; it comes back at the end of the heat";

/// Where the gas that enters a slice comes from.
const char* arrives(const SliceCase& c) {
  const bool first = c.source != nullptr ? c.source->first : c.row == 0;
  if (!first) return "as the slice before leaves it";
  const bool at_node = c.source != nullptr && c.run->answer->path.network.branches[c.source->branch].from.kind == EndKind::node;
  return at_node ? "what has mixed where the branches meet" : "the air outside the inlet";
}

void add_section(Sheet& sheet, const SliceCase& c) {
  const Section& s = c.stretch->section;
  const Citation geometry = published("geometry");
  switch (s.form()) {
    case Section::Form::circle:
      sheet.given("D", "bore", s.first_size(), as_drawn());
      sheet.step("A", "free area", "pi / 4 * D^2", s.area(), geometry);
      sheet.step("P_w", "wetted perimeter", "pi * D", s.wetted_perimeter(), geometry);
      sheet.step("P_h", "perimeter that gives heat away", "P_w", s.heated_perimeter(), geometry);
      break;
    case Section::Form::rectangle:
      sheet.given("a", "width", s.first_size(), as_drawn());
      sheet.given("b", "height", s.second_size(), as_drawn());
      sheet.step("A", "free area", "a * b", s.area(), geometry);
      sheet.step("P_w", "wetted perimeter", "2 * (a + b)", s.wetted_perimeter(), geometry);
      sheet.step("P_h", "perimeter that gives heat away", "P_w", s.heated_perimeter(), geometry);
      break;
    case Section::Form::annulus:
      sheet.given("D_a", "inside diameter of the jacket", s.first_size(), as_drawn());
      sheet.given("D_k", "outside diameter of the core", s.second_size(), as_drawn());
      sheet.step("A", "free area", "pi / 4 * (D_a^2 - D_k^2)", s.area(), geometry);
      sheet.step("P_w", "wetted perimeter", "pi * (D_a + D_k)", s.wetted_perimeter(), geometry);
      sheet.step("P_h", "perimeter that gives heat away: the outer one", "pi * D_a", s.heated_perimeter(), geometry);
      break;
    case Section::Form::half_round:
      sheet.given("D", "diameter of the half round", s.first_size(), as_drawn());
      sheet.step("A", "free area", "pi / 8 * D^2", s.area(), geometry);
      sheet.step("P_w", "wetted perimeter", "(pi / 2 + 1) * D", s.wetted_perimeter(), geometry);
      sheet.step("P_h", "perimeter that gives heat away", "P_w", s.heated_perimeter(), geometry);
      break;
  }
  sheet.step("D_h", "hydraulic diameter", "4 * A / P_w", s.hydraulic_diameter(), by_definition());
}

void add_slice(Sheet& sheet, const SliceCase& c) {
  const Slice& slice = *c.slice;
  sheet.given("ds", "length of the slice", slice.length, as_drawn());
  sheet.given("dz", "rise of the slice", slice.rise, as_drawn());
  if (slice.lid) {
    sheet.given("A_s", "surface of the lid", slice.surface, as_drawn());
  } else {
    sheet.step("A_s", "surface that gives heat away", "P_h * ds", slice.surface, published("geometry"));
  }
}

/// The gas by its species: all that its properties depend on.
std::vector<std::string> composition(const SliceCase& c, const std::string& temperature) {
  if (!c.by_species) return {temperature, "x_w"};
  return {temperature, "y_CO2", "y_H2O", "y_O2", "y_N2", "y_Ar"};
}

bool transport_covers(const GasMixture& gas, Temperature t) {
  for (const Species s : all_species) {
    if (gas.mole_fraction(s) > 0.0 && !(viscosity_range(s).contains(t) && conductivity_range(s).contains(t))) return false;
  }
  return true;
}

void add_density(Sheet& sheet, const SliceCase& c) {
  if (!c.by_species) {
    sheet.step("M_m", "molar mass of the moist air", "(1 - x_w) * M_a + x_w * 0.01801528", c.gas->mixture().molar_mass(),
               published("ISO 2533; IUPAC conventional atomic weights"));
  }
  sheet.step("R_g", "gas constant of the gas", c.by_species ? "8.314462618 / M" : "8.314462618 / M_m", c.gas->gas_constant(), published("CODATA 2018"));
  sheet.step("rho", "density", "p / (R_g * T_m)", c.gas->density(c.heat.mean, c.absolute()), published("ideal gas"));
}

void add_friction_factor(Sheet& sheet, const SliceCase& c) {
  const Citation churchill = published("Churchill 1977");
  const double re = c.heat.reynolds;
  const double relative = in(c.stretch->roughness / c.stretch->section.hydraulic_diameter(), Ratio(1.0));
  sheet.given("eps", "roughness", c.stretch->roughness, c.stretch->roughness_citation);
  sheet.step("eps_r", "relative roughness", "eps / D_h", Ratio(relative), by_definition())
      .within("0 to 0.05", relative <= 0.05);
  sheet.step("Ch_A", "rough and turbulent part", "2.457 * ln(1 / ((7 / Re)^0.9 + 0.27 * eps_r))",
             Ratio(-2.457 * std::log(std::pow(7.0 / re, 0.9) + 0.27 * relative)), churchill);
  sheet.step("Ch_B", "transitional part", "37530 / Re", Ratio(37530.0 / re), churchill);
  sheet.step("f", "Darcy friction factor", "8 * ((8 / Re)^12 + (abs(Ch_A)^16 + Ch_B^16)^(-1.5))^(1 / 12)",
             c.heat.friction_factor, churchill)
      .within("all Re, e/D up to 0.05", relative <= 0.05);
}

}  // namespace

void add_mixture(Sheet& sheet, const SliceCase& c) {
  sheet.part("What flows in this branch");
  const GasMixture& mix = c.gas->mixture();
  const char* const how = "as it has mixed where the branches meet, by the balance of each gas";
  sheet.given("y_CO2", "carbon dioxide by volume", mix.mole_fraction(Species::carbon_dioxide), from_the_walk()).remark(how);
  sheet.given("y_H2O", "water vapour by volume", mix.mole_fraction(Species::water), from_the_walk()).remark(how);
  sheet.given("y_O2", "oxygen by volume", mix.mole_fraction(Species::oxygen), from_the_walk()).remark(how);
  sheet.given("y_N2", "nitrogen by volume", mix.mole_fraction(Species::nitrogen), from_the_walk()).remark(how);
  sheet.given("y_Ar", "argon by volume", mix.mole_fraction(Species::argon), from_the_walk()).remark(how);
  sheet.step("M", "molar mass of the gas",
             "y_CO2 * 0.0440095 + y_H2O * 0.01801528 + y_O2 * 0.0319988 + y_N2 * 0.0280134 + y_Ar * 0.039948",
             mix.molar_mass(), published("IUPAC conventional atomic weights"), Carries::sum);
  sheet.step("M_a", "molar mass of dry air",
             "(0.78084 * 0.0280134 + 0.209476 * 0.0319988 + 0.00934 * 0.039948 + 0.000314 * 0.0440095) / 0.99997",
             dry_air().molar_mass(), published("ISO 2533"));
  if (!c.burnt) return;
  sheet.given("p_c", "partial pressure of the CO2 that the fire has put into it", c.setting().co2, from_the_walk());
  sheet.given("p_w", "partial pressure of the vapour that the fire has put into it", c.setting().h2o, from_the_walk());
}

void add_gas(Sheet& sheet, const SliceCase& c) {
  const Temperature t = c.heat.mean;
  const GasMixture& mix = c.gas->mixture();
  const Section& section = c.stretch->section;
  sheet.part("Section");
  add_section(sheet, c);
  add_slice(sheet, c);
  sheet.part("Gas");
  sheet.given("mdot", "gas that passes", c.visit->flow, from_the_walk())
      .remark(c.mixed() ? "what flows in this branch"
              : c.burnt ? "the flue gas mdot_g"
                        : "the air mdot_a, before the fire");
  if (burns_here(c)) {
    sheet.step("T_in", "gas that enters the slice", "T_fire", c.visit->entering, by_definition());
  } else {
    sheet.given("T_in", "gas that enters the slice", c.visit->entering, from_the_walk())
        .remark(arrives(c));
  }
  sheet.given("T_m", "gas, mean over the slice", t, from_the_walk()).remark(found);
  sheet.given("dT_w", "gas above the wall's inner face", c.above_wall(), from_the_walk()).remark(found);
  sheet.step("T_w", "inner face of the wall", "T_m - dT_w", Temperature(t - c.above_wall()), by_definition(),
             Carries::sum);
  add_density(sheet, c);
  const bool covered = transport_covers(mix, t);
  const char* const range = "each gas as published; water vapour 273 to 1073 K";
  sheet.read("cp", "heat capacity", composition(c, "T_m"), c.gas->specific_heat(t), published("NASA TM-4513"),
             "by polynomial, mixed by mole fraction")
      .within("200 to 6000 K", heat_capacity_range(Species::nitrogen).contains(t));
  sheet.read("mu", "viscosity", composition(c, "T_m"), c.gas->viscosity(t),
             published("Perry, 8th ed., Table 2-312; mixed by Wilke 1950"), "by table")
      .within(range, covered);
  sheet.read("k", "conductivity", composition(c, "T_m"), c.gas->conductivity(t),
             published("Perry, 8th ed., Table 2-314; mixed by Mason & Saxena 1958"), "by table")
      .within(range, covered);
  sheet.step("Pr", "Prandtl number", "cp * mu / k", c.gas->prandtl(t), by_definition());
  const MassFlux flux = c.visit->flow / section.area();
  sheet.step("G", "mass flux", "mdot / A", flux, by_definition());
  sheet.step("v", "velocity", "G / rho", Velocity(flux / c.gas->density(t, c.absolute())), by_definition());
  sheet.step("Re", "Reynolds number", "G * D_h / mu", c.heat.reynolds, by_definition());
  add_friction_factor(sheet, c);
}

}  // namespace fluewright
