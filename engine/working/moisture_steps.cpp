// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/gas/species.hpp"
#include "engine/moisture/condensation.hpp"
#include "engine/moisture/saturation.hpp"
#include "engine/working/slice_case.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

void add_condensing(Sheet& sheet, const SliceCase& c, Pressure vapour, MassFlow carried) {
  const Temperature t = midway(c.heat.wall, c.heat.mean);
  const GasTable& gas = *c.gas;
  const Pressure p = c.absolute();
  const Density rho = gas.density(t, p);
  const SpecificHeat cp = gas.specific_heat(t);
  const Conductivity k = gas.conductivity(t);
  const Diffusivity d = vapour_diffusivity(t, p);
  const Ratio lewis = k / (rho * cp * d);
  const double root = std::cbrt(lewis.value());
  const Velocity transfer = c.heat.convective / (rho * cp) / (root * root);
  const Density scale = p * molar_mass(Species::water) / (molar_gas_constant * t.above_zero());
  const Pressure at_wall = saturation_pressure(c.heat.wall);
  const MassFlux flux = condensing_flux(c.heat.convective, gas, vapour, p, c.heat.wall, c.heat.mean);
  const MassFlow could = c.slice->surface * flux;
  sheet.step("T_d", "midway between gas and wall", "T_m - dT_w / 2", t, by_definition());
  sheet.step("rho_d", "density there", "p / (R_g * T_d)", rho, published("ideal gas"));
  sheet.read("cp_d", "heat capacity there", {"T_d"}, cp, published("NASA TM-4513"), "by polynomial");
  sheet.read("k_d", "conductivity there", {"T_d"}, k, published("Perry, 8th ed., Table 2-314; Mason & Saxena 1958"),
             "by table");
  sheet.step("D_v", "diffusivity of vapour there",
             "min(1.87e-10 * T_d^2.072, 2.75e-9 * T_d^1.632) / (p / 101325)", d, from_memory("Marrero & Mason 1972"))
      .within("282 to 1070 K", t > kelvins(282.0) && t < kelvins(1070.0));
  sheet.step("Le", "Lewis number", "k_d / (rho_d * cp_d * D_v)", lewis, by_definition());
  sheet.step("h_m", "mass transfer coefficient", "h_c / (rho_d * cp_d * Le^(2 / 3))", transfer,
             published("Chilton & Colburn analogy"));
  sheet.step("rho_v", "density of vapour alone there", "p * 0.01801528 / (8.314462618 * T_d)", scale,
             published("ideal gas"));
  sheet.read("p_sw", "saturation pressure at the wall", {"T_w"}, at_wall, published(std::string{saturation_range().source}),
             "by the published equation");
  sheet.step("m_f", "water that the wall takes per surface", "h_m * rho_v * ln((p - p_sw) / (p - p_v))", flux,
             published("Stefan flow, Incropera & DeWitt ch. 14"))
      .losing(0.1 * (p / (vapour - at_wall)));
  sheet.step("m_w", "water that condenses in the slice", "min(A_s * m_f, m_v * x_v)",
             std::min(could, MassFlow(carried * c.visit->vapour_left)), by_definition());
}

}  // namespace

void add_moisture(Sheet& sheet, const SliceCase& c) {
  sheet.part("Moisture");
  const Citation iapws = published(std::string{saturation_range().source});
  const Ratio y = c.gas->mixture().mole_fraction(Species::water);
  Pressure vapour = y * c.absolute();
  MassFlow carried{};
  if (c.burnt) {
    const Ratio left = y * c.visit->vapour_left;
    vapour = c.absolute() * left / (1.0 - y + left);
    carried = c.visit->flow * y * (molar_mass(Species::water) / c.gas->mixture().molar_mass());
    sheet.given("x_v", "share of the vapour that has not condensed before", c.visit->vapour_left, from_the_walk());
    sheet.step("m_v", "vapour in the gas as it left the fire", "mdot * y_H2O * 0.01801528 / M", carried, by_definition());
    sheet.step("p_v", "its partial pressure here", "p * y_H2O * x_v / (1 - y_H2O + y_H2O * x_v)", vapour,
               published("Dalton's law"));
  } else if (c.by_species) {
    sheet.step("p_v", "partial pressure of the vapour", "p * y_H2O", vapour, published("Dalton's law"));
  } else {
    sheet.step("p_v", "partial pressure of the vapour", "p * x_w", vapour, published("Dalton's law"));
  }
  const Temperature dew = dew_point(vapour);
  sheet.read("T_dew", "dew point", {"p_v"}, dew, iapws, "by the published equation");
  sheet.step("dT_dew", "inner face above the dew point: wet where this is not positive", "T_w - T_dew",
             TemperatureDifference(sheet.value<Temperature>("T_w") - dew), by_definition(), Carries::sum);
  if (c.burnt && c.heat.wall < dew) add_condensing(sheet, c, vapour, carried);
}

}  // namespace fluewright
