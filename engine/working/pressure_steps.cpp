// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/bends.hpp"
#include "engine/working/fan_steps.hpp"
#include "engine/working/slice_case.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

Pressure head_of(MassFlux g, Density rho) { return 0.5 * g * g / rho; }

/// The gas where it enters the slice: before a fire that burns there, if one does.
struct Entry {
  const GasTable* gas = nullptr;
  MassFlow flow{};
  Temperature temperature;
  const char* flow_symbol = "mdot";
  const char* temperature_symbol = "T_in";
  const char* constant_symbol = "R_g";
};

Entry entry_of(const SliceCase& c) {
  if (!burns_here(c)) return {c.gas, c.visit->flow, c.visit->entering, "mdot", "T_in", "R_g"};
  return {&*c.run->air, c.run->fire.air, before_fire(c), "mdot_a", "T_air", "R_a"};
}

/// Losses at one end of the slice's stretch, added up into `sum`.
struct Losses {
  std::string sum;
  Pressure total{};
  int count = 0;
  Pressure fan{};       ///< raised by a fan
  bool has_fan = false;

  void add(const std::string& symbol, Pressure value) {
    sum += (sum.empty() ? "" : " + ") + symbol;
    total += value;
  }
};

void add_local(Sheet& sheet, const SliceCase& c, const LocalLoss& loss, const Entry& at, const std::string& head,
               Pressure head_value, Losses& losses) {
  const std::string n = std::to_string(++losses.count);
  const Section& section = c.stretch->section;
  const std::string name = loss.name.empty() ? std::string{"local loss"} : loss.name;
  Ratio zeta = loss.forward;
  std::string product = "zeta_" + n;
  sheet.given(product, name, zeta, loss.citation);
  if (loss.correction == LocalLoss::Reynolds::mitre) {
    const Ratio reynolds = at.flow / section.area() * section.hydraulic_diameter() / at.gas->viscosity(at.temperature);
    const Ratio factor = mitre_reynolds_factor(reynolds);
    sheet.read("x_Re" + n, "what a low Reynolds number adds to it", {at.temperature_symbol, at.flow_symbol}, factor,
               loss::mitre_reynolds.citation(), "by table from the Reynolds number at that end")
        .within("1e4 to 1.4e5, end rows beyond", loss::mitre_reynolds.covers(reynolds));
    zeta *= factor;
    product += " * x_Re" + n;
  }
  const Pressure value = zeta * head_value;
  sheet.step("dp_" + n, "loss: " + name, product + " * " + head, value, by_definition());
  losses.add("dp_" + n, value);
}

void add_area_step(Sheet& sheet, const SliceCase& c, const Entry& at, Losses& losses) {
  const AreaStep& step = c.run->path.steps[c.slice->stretch];
  if (!(step.narrow > Area{})) return;
  const Area before = c.run->path.branch->stretches[c.slice->stretch - 1].section.area();
  const bool wider = step.narrow == before;
  sheet.given("A_v", "free area before the step", before, as_drawn());
  const Ratio ratio = wider ? Ratio(before / c.stretch->section.area()) : Ratio(c.stretch->section.area() / before);
  sheet.step("zeta_v", wider ? "step to a wider area, on the narrow head" : "step to a narrower area, on the narrow head",
             wider ? "(1 - A_v / A)^2" : "(1 - A / A_v) / 2", step.forward,
             wider ? published("Borda-Carnot") : from_memory("Idelchik"))
      .losing(wider ? Ratio(2.0 * ratio / (1.0 - ratio)) : Ratio(ratio / (1.0 - ratio)));
  const Pressure value = step.forward * head_of(at.flow / step.narrow, at.gas->density(at.temperature, c.absolute()));
  sheet.step("dp_v", "loss: step in area",
             std::string{"zeta_v * 0.5 * ("} + at.flow_symbol + (wider ? " / A_v" : " / A") + ")^2 / rho_in", value,
             by_definition());
  losses.add("dp_v", value);
}

void add_fan_at(Sheet& sheet, const SliceCase& c, const FanPlace& at, Losses& losses) {
  std::vector<std::string> symbols;
  losses.fan = add_fan(sheet, *c.stretch, at, symbols);
  losses.has_fan = sheet.has("dp_fan");
  for (const std::string& symbol : symbols) losses.add(symbol, sheet.value<Pressure>(symbol));
}

bool fan_here(const SliceCase& c, bool at_end) {
  return c.stretch->fan && c.stretch->fan->at_end == at_end &&
         (at_end ? c.slice->closes_stretch : c.slice->opens_stretch);
}

void add_entry_losses(Sheet& sheet, const SliceCase& c, Losses& losses) {
  const bool step = c.run->path.steps[c.slice->stretch].narrow > Area{};
  const bool fan = fan_here(c, false);
  if (!c.slice->opens_stretch || (c.stretch->at_start.empty() && !step && !fan)) return;
  const Entry at = entry_of(c);
  const Density rho = at.gas->density(at.temperature, c.absolute());
  if (!sheet.has("rho_in")) {
    sheet.step("rho_in", "density on entering", std::string{"p / ("} + at.constant_symbol + " * " + at.temperature_symbol + ")",
               rho, published("ideal gas"));
  }
  add_area_step(sheet, c, at, losses);
  if (c.stretch->at_start.empty() && !fan) return;
  const Pressure head = head_of(at.flow / c.stretch->section.area(), rho);
  sheet.step("K_in", "velocity head on entering", std::string{"0.5 * ("} + at.flow_symbol + " / A)^2 / rho_in", head,
             by_definition());
  for (const LocalLoss& loss : c.stretch->at_start) add_local(sheet, c, loss, at, "K_in", head, losses);
  if (fan) add_fan_at(sheet, c, {at.flow, rho, at.flow_symbol, "rho_in", "K_in"}, losses);
}

void add_leaving_head(Sheet& sheet, const SliceCase& c) {
  const Density rho = c.gas->density(c.heat.out, c.absolute());
  sheet.step("rho_out", "density on leaving", "p / (R_g * T_out)", rho, published("ideal gas"));
  sheet.step("K_out", "velocity head on leaving", "0.5 * G^2 / rho_out",
             head_of(c.visit->flow / c.stretch->section.area(), rho), by_definition());
}

void add_gauge(Sheet& sheet, const SliceCase& c, Pressure buoyancy, const Losses& losses) {
  const Surround& s = c.run->surround;
  const Pressure total = c.visit->total_before + buoyancy + losses.fan - losses.total;
  const auto before = sheet.given("p_t0", "gauge and velocity head on entering", c.visit->total_before, from_the_walk());
  const bool first = c.source != nullptr ? c.source->first : c.row == 0;
  const bool at_node =
      c.source != nullptr && c.run->answer->path.network.branches[c.source->branch].from.kind == EndKind::node;
  if (first) before.remark(at_node ? "behind the junction" : "the gauge of the air that the inlet draws from");
  sheet.step("p_t1", "the same on leaving", losses.has_fan ? "p_t0 + dp_b + dp_fan - dp" : "p_t0 + dp_b - dp", total, by_definition(), Carries::sum);
  sheet.step("p_g", "gauge pressure on leaving", "p_t1 - K_out", Pressure(total - sheet.value<Pressure>("K_out")),
             by_definition(), Carries::sum);
  sheet.given("z", "height of the slice's end above the floor", c.slice->end_height, as_drawn());
  const Pressure room = s.room_gauge(c.slice->end_height);
  sheet.step("p_room", "gauge of the room at that height", "(rho_o - rho_r) * 9.80665 * (z - z_np) - dp_house", room,
             published("hydrostatics"))
      .losing(Ratio(s.outdoor_air / abs(s.outdoor_air - s.room_air)) *
              (1.0 + abs(c.run->surround.depressurisation) / abs(room)) *
              ((abs(c.slice->end_height) + abs(s.neutral_plane)) / abs(c.slice->end_height - s.neutral_plane)));
  sheet.step("p_leak", "path above room: smoke leaks out where this is positive", "p_g - p_room",
             Pressure(total - sheet.value<Pressure>("K_out") - room), by_definition(), Carries::sum);
}

}  // namespace

void add_pressure(Sheet& sheet, const SliceCase& c) {
  sheet.part("Pressure");
  const Stretch& stretch = *c.stretch;
  const MassFlux g = c.visit->flow / stretch.section.area();
  const Density rho = c.gas->density(c.heat.mean, c.absolute());
  const Density outdoor = c.run->surround.outdoor_air;
  Losses losses;
  add_entry_losses(sheet, c, losses);
  const Pressure friction = c.heat.friction_factor * c.slice->length / stretch.section.hydraulic_diameter() * head_of(g, rho);
  sheet.step("dp_f", "loss: friction", "f * ds / D_h * 0.5 * G^2 / rho", friction, by_definition());
  losses.add("dp_f", friction);
  const Density in_density = c.gas->density(c.visit->entering, c.absolute());
  const Density out_density = c.gas->density(c.heat.out, c.absolute());
  const Pressure slowing = 0.5 * g * g * (1.0 / out_density - 1.0 / in_density);
  sheet.step("dp_a", "loss: acceleration of the gas, negative where it cools", "-0.5 * G^2 * R_g * dT / p", slowing,
             published("momentum at constant area"));
  losses.add("dp_a", slowing);
  if (burns_here(c)) {
    const Entry at = entry_of(c);
    const MassFlux before = at.flow / stretch.section.area();
    const Pressure jump = 0.5 * (g * g / in_density - before * before / at.gas->density(at.temperature, c.absolute()));
    sheet.step("dp_fire", "loss: acceleration by the fire",
               "0.5 * (G^2 * R_g * T_in - (mdot_a / A)^2 * R_a * T_air) / p", jump, published("momentum at constant area"));
    losses.add("dp_fire", jump);
  }
  add_leaving_head(sheet, c);
  if (c.slice->closes_stretch) {
    const Entry at{c.gas, c.visit->flow, c.heat.out, "mdot", "T_out", "R_g"};
    if (fan_here(c, true)) {
      add_fan_at(sheet, c, {at.flow, sheet.value<Density>("rho_out"), at.flow_symbol, "rho_out", "K_out"}, losses);
    }
    for (const LocalLoss& loss : stretch.at_end) {
      add_local(sheet, c, loss, at, "K_out", sheet.value<Pressure>("K_out"), losses);
    }
  }
  const Pressure buoyancy = (outdoor - rho) * standard_gravity * c.slice->rise;
  sheet.step("dp_b", "buoyancy", "(rho_o - rho) * 9.80665 * dz", buoyancy, published("hydrostatics"))
      .losing(std::max(outdoor, rho) / abs(outdoor - rho));
  sheet.step("dp", "losses together", losses.sum, losses.total, by_definition(), Carries::sum);
  add_gauge(sheet, c, buoyancy, losses);
  if (c.source != nullptr ? c.source->last : c.row + 1 == c.run->rows.size()) {
    sheet.step("dp_exit", "loss at the mouth: the jet's velocity head, not in dp", "K_out", sheet.value<Pressure>("K_out"),
               published("free exit"));
  }
}

}  // namespace fluewright
