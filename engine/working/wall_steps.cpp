// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/conduction.hpp"
#include "engine/working/slice_case.hpp"

#include <algorithm>
#include <numbers>

namespace fluewright {

namespace {

void add_layers(Sheet& sheet, const SliceCase& c) {
  const WallGeometry& wall = *c.wall;
  const Temperature level = c.embedded() ? c.heat.wall : midway(c.heat.wall, c.heat.surface);
  sheet.step("d_0", "bore that the resistances refer to", "P_h / pi", wall.bore, by_definition());
  if (!wall.layers.empty() && !c.embedded()) {
    sheet.step("T_l", "the wall's own temperature", "(T_w + T_s) / 2", level, chosen("midway between its faces"));
  }
  std::string sum;
  Length inside = wall.bore;
  ThermalResistance all{};
  for (std::size_t i = 0; i < wall.layers.size(); ++i) {
    const WallGeometry::Layer& layer = wall.layers[i];
    const Material& m = *layer.material;
    const std::string n = std::to_string(i + 1);
    const std::string before = "d_" + std::to_string(i);
    const Conductivity k = m.conductivity(level);
    const ThermalResistance r = layer.spread / k;
    sheet.given("s_" + n, "thickness of the " + m.name, layer.thickness, as_drawn());
    sheet.read("k_" + n, "conductivity of the " + m.name, {c.embedded() ? "T_w" : "T_l"}, k, m.thermal_citation,
               "linear between the material's points")
        .within("where the material was measured", m.covers(level));
    sheet.step("R_" + n, "resistance of the " + m.name + ", on the inner face",
               "d_0 * ln(1 + 2 * s_" + n + " / " + before + ") / (2 * k_" + n + ")", r, published("Fourier's law"));
    inside += 2.0 * layer.thickness;
    sheet.step("d_" + n, "outside diameter of the " + m.name, before + " + 2 * s_" + n, inside, published("geometry"));
    sum += (sum.empty() ? "R_" : " + R_") + n;
    all += r;
  }
  if (sum.empty()) {
    sheet.given("R_w", "layers of the wall", ThermalResistance{}, as_drawn()).remark("none drawn");
  } else {
    sheet.step("R_w", "layers of the wall", sum, all, by_definition(), Carries::sum);
  }
}

std::string outermost(const SliceCase& c) { return "d_" + std::to_string(c.wall->layers.size()); }

void add_mass(Sheet& sheet, const SliceCase& c) {
  const Embedding& e = c.stretch->embedding;
  const Length d = c.wall->outside_diameter;
  const Length perimeter = c.stretch->section.heated_perimeter();
  const Ratio shape = perimeter / c.wall->embedding_spread;
  sheet.given("W", "width of the mass", e.width, as_drawn());
  sheet.given("H", "height of the mass", e.height, as_drawn());
  if (c.wall->mass_too_narrow) {
    const Length side = std::max(bu::sqrt(Area(e.width * e.height)), 1.02 * d);
    sheet.step("W_sq", "the mass is no wider than its pipe: a skin stands in", "max(sqrt(W * H), 1.02 * " + outermost(c) + ")",
               side, chosen("until the drawing is mended"))
        .within("wider than the pipe", false);
  } else {
    sheet.step("W_sq", "side of the square of equal area", "sqrt(W * H)", Length(bu::sqrt(Area(e.width * e.height))),
               chosen("equal area"));
  }
  sheet.step("S", "conduction shape factor, per metre of run", "2 * pi / ln(1.08 * W_sq / " + outermost(c) + ")", shape,
             published("Incropera & DeWitt Table 4.1 case 6"))
      .within("W > D", !c.wall->mass_too_narrow)
      .losing(2.0 * std::numbers::pi / shape < 1.0 ? Ratio(shape / (2.0 * std::numbers::pi)) : Ratio(1.0));
}

void add_ground(Sheet& sheet, const SliceCase& c) {
  const Embedding& e = c.stretch->embedding;
  const Length d = c.wall->outside_diameter;
  const FilmCoefficient film = (e.under_open_sky ? 23.0 : 8.0) * watt_per_square_metre_kelvin;
  const Conductivity k = e.material->conductivity(celsius(20.0));
  const Length depth = std::max(Length(e.depth + k / film), 0.51 * d);
  const Ratio shape = c.stretch->section.heated_perimeter() / c.wall->embedding_spread;
  sheet.given("Z", "centre line under the surface", e.depth, as_drawn());
  sheet.given("h_g", "film on the ground", film, from_memory("EN 13384-1, external values"));
  sheet.read("k_20", "conductivity of the " + e.material->name + " at 20 degC", {}, k, e.material->thermal_citation,
             "linear between the material's points");
  sheet.step("Z_e", "depth with the film turned into cover", "max(Z + k_20 / h_g, 0.51 * " + outermost(c) + ")", depth,
             chosen("a film acts like k/h of cover"));
  sheet.step("S", "conduction shape factor, per metre of run", "2 * pi / acosh(2 * Z_e / " + outermost(c) + ")", shape,
             published("Incropera & DeWitt Table 4.1 case 2"))
      .within("z > D/2", e.depth + k / film >= 0.51 * d);
}

}  // namespace

void add_wall(Sheet& sheet, const SliceCase& c) {
  sheet.part("Wall");
  const Temperature level = c.setting().beyond;
  sheet.given("T_b", "what the wall loses heat to", level, from_the_walk())
      .remark(c.stretch->place == Place::jacket ? "the gas around the riser" : "the air around it");
  const TemperatureDifference above = c.heat.surface - level;
  sheet.given("dT_s", "outer face above it", above, from_the_walk())
      .remark("found by repetition; it comes back at the end of the heat");
  sheet.step("T_s", "outer face", "T_b + dT_s", c.heat.surface, by_definition(), Carries::sum);
  add_layers(sheet, c);
  if (!c.embedded()) return;
  const Material& m = *c.stretch->embedding.material;
  const Temperature midst = midway(c.heat.wall, c.heat.surface);
  if (c.stretch->place == Place::mass) {
    add_mass(sheet, c);
  } else {
    add_ground(sheet, c);
  }
  sheet.step("T_e", "the " + m.name + "'s own temperature", "(T_w + T_s) / 2", midst, chosen("midway between its faces"));
  const Conductivity k = m.conductivity(midst);
  sheet.read("k_e", "conductivity of the " + m.name, {"T_e"}, k, m.thermal_citation,
             "linear between the material's points")
      .within("where the material was measured", m.covers(midst));
  sheet.step("R_e", "resistance of the " + m.name + ", on the inner face", "P_h / (S * k_e)",
             ThermalResistance(c.wall->embedding_spread / k), by_definition());
}

}  // namespace fluewright
