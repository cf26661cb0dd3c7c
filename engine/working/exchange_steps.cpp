// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/conduction.hpp"
#include "engine/solve/design_flow.hpp"
#include "engine/working/slice_case.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

SpecificHeat mean_heat(const GasTable& gas, Temperature a, Temperature b) {
  const TemperatureDifference apart = a - b;
  if (abs(apart) < 1e-3 * kelvin) return gas.specific_heat(a);
  return (gas.specific_enthalpy(a) - gas.specific_enthalpy(b)) / apart;
}

namespace {

/// Whether the heat reaches the outer face; while a wall soaks it does not.
enum class Reach { outer_face, soaks_in };

ThermalResistance add_behind(Sheet& sheet, const SliceCase& c) {
  ThermalResistance all = sheet.value<ThermalResistance>("R_w") + sheet.value<ThermalResistance>("R_o");
  if (c.embedded()) all += sheet.value<ThermalResistance>("R_e");
  sheet.step("R_b", "all that lies behind the inner face", c.embedded() ? "R_w + R_e + R_o" : "R_w + R_o", all,
             by_definition(), Carries::sum);
  return all;
}

/// Thin layers in front and the first thick one, or the mass, behind them.
struct Soaking {
  std::string skin;  ///< relation of the skin's heat capacity
  ArealHeatCapacity capacity{};
  const Material* material = nullptr;
  std::size_t layers_before = 0;
  Length bore{};     ///< inner diameter of what soaks
};

Soaking add_skin(Sheet& sheet, const SliceCase& c) {
  Soaking s;
  s.bore = c.wall->bore;
  for (const WallGeometry::Layer& layer : c.wall->layers) {
    const Material& m = *layer.material;
    if (layer.thickness > thin_layer) {
      s.material = &m;
      return s;
    }
    const std::string n = std::to_string(s.layers_before + 1);
    const std::string inside = "d_" + std::to_string(s.layers_before);
    sheet.given("rho_" + n, "density of the " + m.name, m.density, m.thermal_citation);
    sheet.given("c_" + n, "heat capacity of the " + m.name, m.specific_heat, m.thermal_citation);
    s.skin += (s.skin.empty() ? "" : " + ");
    s.skin += "rho_" + n + " * c_" + n + " * s_" + n + " * " + inside + " / d_0";
    s.capacity += m.density * m.specific_heat * layer.thickness * (s.bore / c.wall->bore);
    s.bore += 2.0 * layer.thickness;
    ++s.layers_before;
  }
  if (c.embedded()) s.material = c.stretch->embedding.material;
  return s;
}

ThermalResistance add_penetration(Sheet& sheet, const SliceCase& c, const Soaking& s, Time age) {
  const Material& m = *s.material;
  const Conductivity k = m.conductivity(c.heat.wall);
  const Diffusivity alpha = m.diffusivity(c.heat.wall);
  const Length radius = 0.5 * s.bore;
  const Ratio fourier = alpha * age / (radius * radius);
  const ThermalResistance r = penetration_resistance(radius, k, alpha, age) * (c.wall->bore / s.bore);
  sheet.read("k_p", "conductivity of the " + m.name + " at the inner face", {"T_w"}, k, m.thermal_citation,
             "linear between the material's points")
      .within("where the material was measured", m.covers(c.heat.wall));
  sheet.given("rho_p", "density of the " + m.name, m.density, m.thermal_citation);
  sheet.given("c_p", "heat capacity of the " + m.name, m.specific_heat, m.thermal_citation);
  sheet.step("Fo", "Fourier number", "4 * k_p * t / (rho_p * c_p * d_" + std::to_string(s.layers_before) + "^2)", fourier,
             by_definition());
  const bool early = fourier < Ratio(1.0);
  sheet.step("R_p", "resistance of the cold " + m.name + ", on the inner face",
             early ? "d_0 / (2 * k_p) / (1 / sqrt(pi * Fo) + 1 / 2 - sqrt(Fo / pi) / 4 + Fo / 8)"
                   : "d_0 / (4 * k_p) * (ln(4 * Fo) - 0.5772156649 + 1 / (0.9098691 + 0.384 * ln(Fo)))",
             r,
             early ? published("Carslaw & Jaeger 13.5 eq. 8")
                   : chosen("line source, Carslaw & Jaeger 13.5, with a correction of our own"))
      .remark("an estimate: as if the face had been as warm since the fire was lit");
  return r;
}

Reach add_aged(Sheet& sheet, const SliceCase& c, Time age) {
  sheet.given("t", "time since the fire was lit", age, chosen("10 minutes: cold bench; 60 minutes: one hour"));
  const Soaking s = add_skin(sheet, c);
  const ThermalResistance steady = sheet.value<ThermalResistance>("R_b");
  Reach reach = Reach::outer_face;
  ThermalResistance behind = steady;
  std::string back = "R_b";
  if (s.material != nullptr) {
    const ThermalResistance soaks = add_penetration(sheet, c, s, age);
    reach = soaks < steady ? Reach::soaks_in : Reach::outer_face;
    behind = std::min(soaks, steady);
    back = "min(R_p, R_b)";
  }
  const FilmCoefficient inward = 1.0 / behind;
  sheet.step("h_b", "what lies behind the skin, as a film", "1 / " + back, inward, by_definition())
      .remark(reach == Reach::soaks_in ? "the wall still soaks up heat" : "the steady way through is the greater resistance");
  if (s.skin.empty()) {
    sheet.step("U", "overall coefficient on the inner face", "1 / (1 / h_i + 1 / h_b)", c.heat.overall, by_definition());
    return reach;
  }
  const Citation lumped = published("lumped capacitance, Incropera & DeWitt 5.1");
  const Ratio warmed = thin_wall_warmed_share(age, c.heat.film + inward, s.capacity);
  sheet.step("C_s", "heat capacity of the thin layers", s.skin, s.capacity, by_definition());
  sheet.step("x_s", "share of their warming that they have behind them", "1 - exp(-(h_i + h_b) * t / C_s)", warmed, lumped);
  sheet.step("U", "overall coefficient on the inner face", "h_i * (1 - x_s * h_i / (h_i + h_b))", c.heat.overall, lumped)
      .losing(c.heat.film / c.heat.overall);
  return reach;
}

/// What the gas loses on the way, and with it the temperature it leaves with.
void add_loss(Sheet& sheet, const SliceCase& c, Reach reach) {
  const GasTable& gas = *c.gas;
  const SliceHeat& heat = c.heat;
  const MassFlow flow = c.visit->flow;
  const Conductance through = heat.overall * c.slice->surface;
  const Temperature towards = reach == Reach::soaks_in ? c.setting().rest : c.setting().beyond;
  const Temperature level = towards + c.visit->gained / through;
  const bool soaks_elsewhere = towards != c.setting().beyond;
  if (soaks_elsewhere) sheet.given("T_0", "the wall before the fire was lit", towards, as_drawn());
  sheet.step("UA", "what the slice's wall lets through", "U * A_s", through, by_definition());
  sheet.given("Q_g", "heat put in by the riser within", c.visit->gained, from_the_walk());
  sheet.step("T_L", "level the gas tends to", soaks_elsewhere ? "T_0 + Q_g / UA" : "T_b + Q_g / UA", level, by_definition(),
             Carries::sum);
  sheet.step("th_in", "gas above that level on entering", "T_in - T_L", TemperatureDifference(c.visit->entering - level),
             by_definition(), Carries::sum);
  const SpecificHeat cp = mean_heat(gas, c.visit->entering, level);
  sheet.read("cp_L", "heat capacity, mean from T_L to T_in", {"T_L", "T_in"}, cp, published("NASA TM-4513"),
             "by polynomial: (h(T_in) - h(T_L)) / (T_in - T_L)");
  const Ratio ntu = through / (flow * cp);
  const double fallen = -std::expm1(-ntu.value());
  const Power lost = heat.through_wall - c.visit->gained;
  sheet.step("NTU", "number of transfer units of the slice", "UA / (mdot * cp_L)", ntu, by_definition());
  sheet.step("q", "heat the gas loses", "mdot * cp_L * th_in * (1 - exp(-NTU))", lost,
             published("exact for one level and constant properties"));
  sheet.step("q_w", "heat through the wall", "q + Q_g", heat.through_wall, by_definition(), Carries::sum);
  sheet.step("T_m_again", "gas, mean over the slice", "T_L + th_in * (1 - exp(-NTU)) / NTU",
             Temperature(level + (c.visit->entering - level) * (fallen / ntu.value())), published("exact, as q"),
             Carries::sum)
      .remark("the T_m set out with");
  sheet.step("qq", "heat through the inner face", "q_w / A_s", c.through(), by_definition());
  sheet.step("dT_w_again", "gas above the wall's inner face", "qq / h_i", c.above_wall(), by_definition())
      .remark("the dT_w set out with");
  if (reach == Reach::outer_face) {
    sheet.step("dT_s_again", "outer face above T_b", "qq * R_o", TemperatureDifference(heat.surface - c.setting().beyond),
               by_definition())
        .remark("the dT_s set out with");
  }
  const SpecificHeat along = mean_heat(gas, c.visit->entering, heat.out);
  const TemperatureDifference fall = lost / (flow * along);
  sheet.read("cp_s", "heat capacity, mean over the slice", {"T_in"}, along, published("NASA TM-4513"),
             "by polynomial: (h(T_in) - h(T_out)) / (T_in - T_out)");
  sheet.step("dT", "fall of the gas's temperature", "q / (mdot * cp_s)", fall, by_definition());
  sheet.step("T_out", "gas that leaves the slice", "T_in - dT", heat.out, by_definition(), Carries::sum);
}

}  // namespace

void add_exchange(Sheet& sheet, const SliceCase& c) {
  sheet.part("Heat");
  add_behind(sheet, c);
  const WallAge age = c.run->age ? wall_age(*c.run->age) : std::nullopt;
  Reach reach = Reach::outer_face;
  if (age) {
    reach = add_aged(sheet, c, *age);
  } else {
    sheet.step("R_i", "film inside as a resistance", "1 / h_i", ThermalResistance(1.0 / c.heat.film), by_definition());
    sheet.step("R", "from gas to surroundings", "R_i + R_b", ThermalResistance(1.0 / c.heat.overall), by_definition(),
               Carries::sum);
    sheet.step("U", "overall coefficient on the inner face", "1 / R", c.heat.overall, by_definition());
  }
  add_loss(sheet, c, reach);
}

}  // namespace fluewright
