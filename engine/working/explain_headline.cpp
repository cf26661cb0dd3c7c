// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/moisture/saturation.hpp"
#include "engine/solve/design_flow.hpp"
#include "engine/working/explain.hpp"
#include "engine/working/explain_network.hpp"
#include "engine/working/path_sums.hpp"
#include "engine/working/slice_case.hpp"

#include <algorithm>

namespace fluewright {

namespace {

constexpr NamedHeadline all_headlines[] = {{HeadlineNumber::draft_margin_cold_bench, "draft_margin_cold_bench"},
                                           {HeadlineNumber::draft_margin_one_hour, "draft_margin_one_hour"},
                                           {HeadlineNumber::draft_margin_charged, "draft_margin_charged"},
                                           {HeadlineNumber::standing_draft, "standing_draft"},
                                           {HeadlineNumber::excess_air, "excess_air"},
                                           {HeadlineNumber::fire_temperature, "fire_temperature"},
                                           {HeadlineNumber::exit_temperature, "exit_temperature"},
                                           {HeadlineNumber::condensation, "condensation"},
                                           {HeadlineNumber::heat_to_room, "heat_to_room"},
                                           {HeadlineNumber::heat_into_mass, "heat_into_mass"},
                                           {HeadlineNumber::stack_loss, "stack_loss"}};

/// Ratio of the larger term over what is left of a difference.
template <class Quantity>
Ratio lost_in(Quantity a, Quantity b) {
  return a == b ? Ratio(1e9) : Ratio(std::max(abs(a), abs(b)) / abs(a - b));
}

/// Gauge of the air the inlet draws from and of the wind at the cap.
void add_ends(Sheet& sheet, const Retrace& run) {
  const Surround& s = run.surround;
  const BranchEnd& inlet = run.path.branch->from;
  sheet.part("Ends of the path");
  const Pressure gauge = s.gauge_at(inlet);
  if (inlet.kind == EndKind::room_air) {
    sheet.given("z_in", "height of the inlet above the floor", inlet.height, as_drawn());
    sheet.step("p_in", "gauge of the room at the inlet", "(rho_o - rho_r) * 9.80665 * (z_in - z_np) - dp_house", gauge,
               published("hydrostatics"))
        .losing(lost_in(s.outdoor_air, s.room_air) * lost_in(inlet.height, s.neutral_plane));
  } else {
    sheet.given("p_in", "gauge of the air the inlet draws from", gauge, by_definition()).remark("outdoor air");
  }
  sheet.given("C_cap", "wind pressure coefficient at the cap", run.design->site.wind_coefficient, as_drawn());
  sheet.given("v_w", "wind", run.design->site.wind_speed, as_drawn());
  sheet.step("p_cap", "gauge of the wind at the cap", "C_cap * 0.5 * rho_o * v_w^2", s.cap_gauge, by_definition());
}

void add_pressure_terms(Sheet& sheet, const std::vector<PieceSum>& pieces) {
  sheet.part("Piece by piece");
  add_piece_terms(sheet, pieces, "dp_b", "buoyancy in the piece", "buoyancy", &PieceSum::buoyancy);
  add_piece_terms(sheet, pieces, "dp_r", "friction and fittings in the piece", "resistance of friction and fittings",
                  &PieceSum::resistance);
  add_piece_terms(sheet, pieces, "dp_a", "acceleration in the piece", "loss by acceleration", &PieceSum::acceleration);
  const bool fans = std::any_of(pieces.begin(), pieces.end(), [](const PieceSum& p) { return p.fan != Pressure{}; });
  if (fans) add_piece_terms(sheet, pieces, "dp_fan", "raised by the fan of the piece", "raised by fans", &PieceSum::fan);
}

Working explain_margin(const Retrace& run, const DesignFlow& flow) {
  Sheet sheet{"draft to spare"};
  add_air(sheet, run);
  add_fire(sheet, run);
  add_ends(sheet, run);
  add_pressure_terms(sheet, piece_sums(run));
  sheet.part("Draft to spare");
  const Citation standard = from_memory("EN 13384-1");
  const Ratio safety = run.design->fire.flow_safety;
  const bool brakes = run.totals.acceleration > Pressure{};
  sheet.given("S_E", "safety on the resistance", safety, as_drawn());
  sheet.given("S_a", "safety on the acceleration", brakes ? safety : Ratio(1.0), standard)
      .remark(brakes ? "S_E, it is a loss" : "1, it is a gain");
  sheet.given("p_wind", "allowance for wind", flow.wind_allowance, as_drawn());
  sheet.step("margin", "draft to spare", "p_in + dp_b - S_E * dp_r - S_a * dp_a - p_wind - p_cap", flow.margin, standard,
             Carries::sum);
  if (flow.margin_with_fans) {
    sheet.given("dp_on", "what running fans add, and what they no longer stand in the way",
                Pressure(*flow.margin_with_fans - flow.margin), from_the_walk())
        .remark("the same walk with the fans at their speed");
    sheet.step("margin_on", "draft to spare while the fans run", "margin + dp_on", *flow.margin_with_fans, by_definition(),
               Carries::sum);
  }
  return sheet.take();
}

Working explain_standing(const Retrace& run) {
  Sheet sheet{"draft before anything burns"};
  const Surround& s = run.surround;
  add_air(sheet, run);
  add_ends(sheet, run);
  sheet.part("Stretch by stretch");
  std::string relation;
  for (std::size_t i = 0; i < run.path.branch->stretches.size(); ++i) {
    const Stretch& stretch = run.path.branch->stretches[i];
    if (stretch.rise == Length{}) continue;
    const std::string n = std::to_string(i + 1);
    const Temperature level =
        stretch.place == Place::ground ? s.ground : s.beyond(stretch.place, stretch.embedding);
    const Density air = s.room_air * (s.room.above_zero() / level.above_zero());
    sheet.given("dz_" + n, "rise of the stretch", stretch.rise, as_drawn()).piece(stretch.piece);
    sheet.given("T_" + n, "what stands around it", level, as_drawn()).piece(stretch.piece);
    sheet.step("dp_b" + n, "buoyancy of the air that stands in it",
               "(rho_o - rho_r * T_r / T_" + n + ") * 9.80665 * dz_" + n,
               Pressure((s.outdoor_air - air) * standard_gravity * stretch.rise), published("hydrostatics"))
        .losing(lost_in(s.outdoor_air, air))
        .piece(stretch.piece);
    relation += " + dp_b" + n;
  }
  sheet.part("Draft before anything burns");
  sheet.step("draft", "standing draft; negative: air comes down the stack", "p_in" + relation + " - p_cap",
             run.answer->standing_draft, published("hydrostatics"), Carries::sum);
  return sheet.take();
}

Working explain_excess_air(const Retrace& run) {
  Sheet sheet{"excess air"};
  add_air(sheet, run);
  add_fire(sheet, run, FlowFrom::flue_gas);
  add_ends(sheet, run);
  add_pressure_terms(sheet, piece_sums(run));
  sheet.part("Balance at that flow");
  const bool fans = sheet.has("dp_fan");
  const Pressure fan = fans ? sheet.value<Pressure>("dp_fan") : Pressure{};
  const Pressure drive =
      sheet.value<Pressure>("p_in") + sheet.value<Pressure>("dp_b") + fan - sheet.value<Pressure>("p_cap");
  const Pressure losses = sheet.value<Pressure>("dp_r") + sheet.value<Pressure>("dp_a");
  sheet.step("drive", "what drives the gas", fans ? "p_in + dp_b + dp_fan - p_cap" : "p_in + dp_b - p_cap", drive, by_definition(), Carries::sum);
  sheet.step("losses", "what holds it back; the same, so the flow stays", "dp_r + dp_a", losses, by_definition(),
             Carries::sum);
  return sheet.take();
}

/// The air as it comes to the fire.
Temperature air_at_fire(const Retrace& run) {
  for (std::size_t row = 0; row < run.visits.size(); ++row) {
    if (run.path.stretch_of(run.path.slices[run.visits[row].slice]).fire) return before_fire(slice_case(run, row));
  }
  return run.surround.room;
}

Working explain_fire(const Retrace& run) {
  Sheet sheet{"temperature behind the fire"};
  add_air(sheet, run);
  add_fire(sheet, run);
  add_flue_gas(sheet, run);
  add_burning(sheet, run, air_at_fire(run));
  return sheet.take();
}

/// From the fire on, piece by piece: what each takes from the gas and what is left of its temperature.
void add_cooling(Sheet& sheet, const Retrace& run) {
  sheet.part("From the fire to the cap");
  const GasTable& gas = *run.gas;
  Temperature before = run.totals.fire;
  std::string name = "T_fire";
  const std::vector<PieceSum> pieces = piece_sums(run);
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const PieceSum& piece = pieces[i];
    if (!run.visits[piece.last - 1].setting.flue_gas) continue;  // still air
    Power lost{};
    for (std::size_t row = piece.first; row < piece.last; ++row) {
      const SliceVisit& visit = run.visits[row];
      if (visit.setting.flue_gas) lost += visit.heat.through_wall - visit.gained;
    }
    const std::string n = std::to_string(i + 1);
    const Temperature after = run.rows[piece.last - 1].gas;
    sheet.given("q_" + n, "heat the gas loses in the piece", lost, from_the_walk())
        .remark("added over the piece's slices")
        .piece(piece.piece);
    sheet.read("cp_" + n, "heat capacity, mean over the piece", {name, "q_" + n}, mean_heat(gas, before, after),
               published("NASA TM-4513"), "by polynomial, from the enthalpies at both ends");
    sheet.step("T_" + n, "gas that leaves the piece", name + " - q_" + n + " / (mdot_g * cp_" + n + ")", after,
               published("first law"), Carries::sum)
        .piece(piece.piece);
    before = after;
    name = "T_" + n;
  }
}

Working explain_exit(const Retrace& run) {
  Sheet sheet{"temperature of the gas that leaves"};
  add_air(sheet, run);
  add_fire(sheet, run);
  add_flue_gas(sheet, run);
  add_burning(sheet, run, air_at_fire(run));
  add_cooling(sheet, run);
  sheet.part("Exit");
  sheet.given("T_exit", "gas at the cap", run.totals.exit, from_the_walk()).remark("what the last piece leaves");
  return sheet.take();
}

Working explain_condensation(const Retrace& run) {
  std::size_t row = 0;
  bool wet = false;
  TemperatureDifference nearest = 1e9 * kelvin;
  for (std::size_t i = 0; i < run.rows.size() && !wet; ++i) {
    if (!run.visits[i].setting.flue_gas) continue;
    const TemperatureDifference above = run.rows[i].wall - run.rows[i].dew_point;
    wet = run.rows[i].condensing > MassFlow{};
    if (wet || above < nearest) {
      nearest = above;
      row = i;
    }
  }
  Working working = explain_slice(run, row);
  working.subject = wet ? "where walls begin to be wet: " + working.subject
                        : "no wall is wet; the one nearest to its dew point: " + working.subject;
  return working;
}

/// What side branches give beside the main path: `of` reads the term.
void add_side_branches(Sheet& sheet, const RetracedNetwork& n, Power MarchTotals::*of, const char* subject) {
  const FlueNetwork& network = *n.sliced.network;
  std::string relation = "Q";
  Power sum = sheet.value<Power>("Q");
  sheet.part("Side branches");
  for (std::size_t b = 0; b < network.branches.size(); ++b) {
    if (std::find(network.main_path.begin(), network.main_path.end(), b) != network.main_path.end()) continue;
    const Power value = n.solution.state.branches[b].totals.*of;
    if (value == Power{}) continue;
    const std::string name = "Q_b" + std::to_string(b + 1);
    sheet.given(name, "through the walls of a side branch", value, from_the_walk()).remark("added over its slices");
    relation += " + " + name;
    sum += value;
  }
  sheet.step("Q_all", subject, relation, sum, by_definition(), Carries::sum);
}

Working explain_heat(const Retrace& run, Power PieceSum::*where, Power MarchTotals::*beside, const char* subject) {
  Sheet sheet{subject};
  sheet.part("Piece by piece");
  add_piece_terms(sheet, piece_sums(run), "Q", "through the walls of the piece", subject, where);
  if (run.network != nullptr) add_side_branches(sheet, *run.network, beside, subject);
  return sheet.take();
}

Working explain_stack(const Retrace& run) {
  Sheet sheet{"heat that leaves with the gas"};
  const bool from_room = run.path.branch->from.kind == EndKind::room_air;
  const Temperature drawn = from_room ? run.surround.room : run.surround.outdoor;
  add_air(sheet, run);
  add_fire(sheet, run);
  add_flue_gas(sheet, run);
  const Citation nasa = published("NASA TM-4513");
  sheet.part("Stack");
  sheet.given("T_exit", "gas at the cap", run.totals.exit, from_the_walk());
  sheet.read("h_exit", "its enthalpy, nought at 25 degC", {"T_exit"}, run.gas->specific_enthalpy(run.totals.exit), nasa,
             "by polynomial");
  sheet.read("h_in", "enthalpy of the air that came in", {from_room ? "T_r" : "T_o", "x_w"},
             run.air->specific_enthalpy(drawn), nasa, "by polynomial");
  sheet.step("Q_stack", "heat that leaves with the gas, above the air that came in", "mdot_g * h_exit - mdot_a * h_in",
             run.totals.stack, published("first law"))
      .losing(lost_in(Power(run.fire.flue * run.gas->specific_enthalpy(run.totals.exit)),
                      Power(run.fire.air * run.air->specific_enthalpy(drawn))));
  return sheet.take();
}

std::optional<BenchAge> age_of(HeadlineNumber headline) {
  switch (headline) {
    case HeadlineNumber::draft_margin_cold_bench: return BenchAge::cold_bench;
    case HeadlineNumber::draft_margin_one_hour: return BenchAge::one_hour;
    case HeadlineNumber::draft_margin_charged: return BenchAge::charged;
    default: return std::nullopt;
  }
}

}  // namespace

std::span<const NamedHeadline> headlines() { return all_headlines; }

HeadlineNumber draft_margin(BenchAge age) {
  switch (age) {
    case BenchAge::cold_bench: return HeadlineNumber::draft_margin_cold_bench;
    case BenchAge::one_hour: return HeadlineNumber::draft_margin_one_hour;
    case BenchAge::charged: break;
  }
  return HeadlineNumber::draft_margin_charged;
}

std::optional<Working> explain_headline(const Design& design, const Library& library, const Assessment& answer,
                                        HeadlineNumber headline, Length slice) {
  if (const auto age = age_of(headline)) {
    const auto flow = std::find_if(answer.design_flow.begin(), answer.design_flow.end(),
                                   [&](const DesignFlow& f) { return f.age == *age; });
    if (flow == answer.design_flow.end()) return std::nullopt;
    const auto run = retrace_design_flow(design, library, answer, *age, slice);
    return run == nullptr ? std::nullopt : std::optional{explain_margin(*run, *flow)};
  }
  const auto run = retrace_profile(design, library, answer, slice);
  if (run == nullptr) return std::nullopt;
  const bool running = answer.profile_is_operating;
  switch (headline) {
    case HeadlineNumber::standing_draft:
      return answer.path.complete ? std::optional{explain_standing(*run)} : std::nullopt;
    case HeadlineNumber::excess_air: return running ? std::optional{explain_excess_air(*run)} : std::nullopt;
    case HeadlineNumber::fire_temperature: return explain_fire(*run);
    case HeadlineNumber::exit_temperature:
      return run->network == nullptr ? explain_exit(*run) : explain_network_exit(*run);
    case HeadlineNumber::condensation: return explain_condensation(*run);
    case HeadlineNumber::heat_to_room: return explain_heat(*run, &PieceSum::to_room, &MarchTotals::to_room, "heat to the room");
    case HeadlineNumber::heat_into_mass: return explain_heat(*run, &PieceSum::into_mass, &MarchTotals::into_mass, "heat into the mass");
    case HeadlineNumber::stack_loss:
      return run->network == nullptr ? explain_stack(*run) : explain_network_stack(*run);
    default: return std::nullopt;
  }
}

}  // namespace fluewright
