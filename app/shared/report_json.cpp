// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/branch_words.hpp"
#include "app/shared/report.hpp"
#include "app/shared/words.hpp"
#include "engine/advice/findings.hpp"

#include <cmath>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

constexpr MassFlow gram_per_hour = gram / hour;

ordered_json age_key(BenchAge age) {
  std::string key(word(age));
  for (char& c : key) c = c == ' ' ? '_' : c;
  return key;
}

ordered_json margins_json(const Assessment& assessment) {
  ordered_json json = {{"cold_bench", nullptr}, {"one_hour", nullptr}, {"charged", nullptr}};
  for (const DesignFlow& flow : assessment.design_flow)
    json[age_key(flow.age).get<std::string>()] = in(flow.margin, pascal);
  return json;
}

ordered_json flows_json(const std::vector<MassFlow>& flows) {
  ordered_json json = ordered_json::array();
  for (const MassFlow& flow : flows) json.push_back(in(flow, kilogram_per_second));
  return json;
}

ordered_json design_flow_json(const DesignFlow& flow, const Design& design) {
  return {{"bench_age", age_key(flow.age)},
          {"quick_estimate", flow.quick_estimate},
          {"margin_Pa", in(flow.margin, pascal)},
          {"margin_with_fans_Pa", flow.margin_with_fans ? ordered_json(in(*flow.margin_with_fans, pascal)) : ordered_json()},
          {"buoyancy_Pa", in(flow.buoyancy, pascal)},
          {"resistance_Pa", in(flow.resistance, pascal)},
          {"flow_safety", design.fire.flow_safety.value()},
          {"room_gauge_Pa", in(flow.room_gauge, pascal)},
          {"cap_gauge_Pa", in(flow.cap_gauge, pascal)},
          {"wind_allowance_Pa", in(flow.wind_allowance, pascal)},
          {"flue_gas_kg_s", in(flow.flue_gas, kilogram_per_second)},
          {"fire_temperature_C", in_celsius(flow.fire_temperature)},
          {"exit_temperature_C", in_celsius(flow.exit_temperature)},
          {"branch_flows_kg_s", flows_json(flow.branch_flows)}};
}

const DesignFlow* worst_flow(const Assessment& assessment) {
  for (const DesignFlow& flow : assessment.design_flow) {
    if (flow.age == assessment.worst_age) return &flow;
  }
  return nullptr;
}

ordered_json point_json(const OperatingPoint& point) {
  return {{"excess_air_ratio", point.excess_air_ratio.value()},
          {"flue_gas_kg_s", in(point.flue_gas, kilogram_per_second)},
          {"exit_temperature_C", in_celsius(point.exit_temperature)},
          {"heat_released_W", in(point.heat.released, watt)},
          {"heat_to_room_W", in(point.heat.to_room, watt)},
          {"heat_into_mass_W", in(point.heat.into_mass, watt)},
          {"stack_loss_W", in(point.heat.stack_loss, watt)},
          {"unburned_W", in(point.heat.unburned, watt)},
          {"closure_relative", point.heat.closure.value()},
          {"heat_to_outdoors_W", in(point.heat.to_outdoors, watt)},
          {"burn_rate_kg_h", in(point.burn_rate, kilogram_per_hour)},
          {"short_of_air", point.short_of_air},
          {"fire_temperature_C", in_celsius(point.fire_temperature)},
          {"forward", point.forward},
          {"stable", point.stable},
          {"residual_Pa", in(point.residual, pascal)},
          {"smoke_to_room_kg_s", in(point.smoke_to_room, kilogram_per_second)},
          {"branch_flows_kg_s", flows_json(point.branch_flows)}};
}

ordered_json points_json(const Assessment& assessment) {
  ordered_json json = ordered_json::array();
  for (const OperatingPoint& point : assessment.operating_points) json.push_back(point_json(point));
  return json;
}

ordered_json power_cut_json(const Assessment& assessment) {
  if (!assessment.fans_off) return nullptr;
  const OperatingPoint* running = assessment.fans_off->running_point();
  ordered_json json = {{"operating_point", running != nullptr ? point_json(*running) : ordered_json()},
                       {"operating_points", ordered_json::array()}};
  for (const OperatingPoint& point : assessment.fans_off->operating_points) {
    json["operating_points"].push_back(point_json(point));
  }
  return json;
}

ordered_json fan_json(const FanAnswer& fan, const Design& design, const Library& library) {
  constexpr VolumeFlow hourly = cubic_metre / hour;
  return {{"piece", design.pieces[fan.state.piece].id},
          {"piece_name", piece_name(design, library, fan.state.piece)},
          {"speed_share", fan.state.speed.value()},
          {"flow_m3_h", in(fan.state.flow, hourly)},
          {"density_kg_m3", in(fan.state.density, kilogram_per_cubic_metre)},
          {"head_Pa", in(fan.state.effect.head, pascal)},
          {"loss_Pa", in(fan.state.effect.loss, pascal)},
          {"range", word(fan.state.effect.range)},
          {"power_W", in(fan.power, watt)},
          {"gas_C", in_celsius(fan.state.gas)},
          {"hottest_gas_C", in_celsius(fan.hottest_gas)},
          {"motor_C", in_celsius(fan.motor)},
          {"motor_wet", fan.wet}};
}

ordered_json fans_json(const Design& design, const Library& library, const Assessment& assessment) {
  ordered_json json = ordered_json::array();
  for (const FanAnswer& fan : assessment.fans) json.push_back(fan_json(fan, design, library));
  return json;
}

ordered_json condensation_json(const Design& design, const Library& library, const Assessment& assessment) {
  if (!assessment.condensation) return nullptr;
  const Condensation& wet = *assessment.condensation;
  ordered_json json = {{"starts_at_m", nullptr},
                       {"piece", nullptr},
                       {"dew_point_C", in_celsius(wet.dew_point)},
                       {"rate_g_h", in(wet.rate, gram_per_hour)},
                       {"piece_name", nullptr},
                       {"into_piece_m", nullptr}};
  if (wet.starts_at && wet.piece) {
    json["starts_at_m"] = in(*wet.starts_at, metre);
    json["piece"] = design.pieces[*wet.piece].id;
    json["piece_name"] = piece_name(design, library, *wet.piece);
    json["into_piece_m"] = in(wet.into_piece, metre);
  }
  return json;
}

ordered_json slice_json(const SliceState& slice, const Design& design) {
  return {{"piece", design.pieces[slice.piece].id},
          {"s_m", in(slice.s, metre)},
          {"z_m", in(slice.z, metre)},
          {"gauge_Pa", in(slice.gauge, pascal)},
          {"room_gauge_Pa", in(slice.room_gauge, pascal)},
          {"gas_C", in_celsius(slice.gas)},
          {"wall_C", in_celsius(slice.wall)},
          {"surface_C", in_celsius(slice.surface)},
          {"velocity_m_s", in(slice.velocity, metre_per_second)},
          {"density_kg_m3", in(slice.density, kilogram_per_cubic_metre)},
          {"reynolds", slice.reynolds.value()},
          {"friction_factor", slice.friction_factor.value()},
          {"nusselt", slice.nusselt.value()},
          {"film_W_m2K", in(slice.film, watt_per_square_metre_kelvin)},
          {"u_W_m2K", in(slice.overall, watt_per_square_metre_kelvin)},
          {"loss_Pa", in(slice.loss - slice.fan, pascal)},
          {"buoyancy_Pa", in(slice.buoyancy, pascal)},
          {"fan_Pa", in(slice.fan, pascal)},
          {"length_m", in(slice.length, metre)},
          {"dew_point_C", in_celsius(slice.dew_point)},
          {"friction_Pa", in(slice.friction, pascal)},
          {"local_Pa", in(slice.local, pascal)},
          {"acceleration_Pa", in(slice.acceleration, pascal)},
          {"heat_W", in(slice.heat, watt)},
          {"condensing_g_h", in(slice.condensing, gram_per_hour)}};
}

ordered_json end_json(const BranchEnd& end, const FlueNetwork& network, const Design& design) {
  if (end.kind == EndKind::node) return {{"opens_to", nullptr}, {"piece", design.pieces[network.nodes[end.node].piece].id}};
  return {{"opens_to", end.kind == EndKind::room_air ? "room" : "outdoors"}, {"piece", nullptr}};
}

/// As the branch is written; a flow below nothing runs against it.
ordered_json branch_json(const BranchState& state, const Design& design, const Library& library,
                         const Assessment& assessment) {
  const FlueNetwork& network = assessment.path.network;
  const Branch& branch = network.branches[state.branch];
  ordered_json json = {{"name", branch_words(assessment, state, design, library).name},
                       {"main_path", state.on_main_path},
                       {"from", end_json(branch.from, network, design)},
                       {"to", end_json(branch.to, network, design)},
                       {"pieces", ordered_json::array()},
                       {"flow_kg_s", in(state.flow, kilogram_per_second)},
                       {"share_of_cap_flow", state.share.value()},
                       {"entering_C", in_celsius(state.entering)},
                       {"leaving_C", in_celsius(state.leaving)},
                       {"flue_gas_share", state.flue_share.value()},
                       {"flap_open_share", nullptr},
                       {"profile", ordered_json::array()}};
  for (const Passage& passage : assessment.path.ways[state.branch]) json["pieces"].push_back(design.pieces[passage.piece].id);
  if (state.flap) json["flap_open_share"] = state.flap->value();
  for (const SliceState& slice : state.profile) json["profile"].push_back(slice_json(slice, design));
  return json;
}

ordered_json findings_json(const Design& design, const Library& library, const Assessment& assessment) {
  ordered_json json = ordered_json::array();
  for (const Finding& finding : all_findings(design, library, assessment)) {
    ordered_json entry = {{"finding", finding_name(finding.code)},
                          {"severity", word(finding.severity)},
                          {"piece", nullptr},
                          {"sentence", nullptr}};
    if (!finding.piece.empty()) entry["piece"] = finding.piece;
    entry["sentence"] = sentence(finding, design, library, UnitSystem::metric);
    json.push_back(std::move(entry));
  }
  return json;
}

template <class Value>
ordered_json or_null(const std::optional<Value>& value) {
  if (!value) return nullptr;
  return word(*value);
}

}  // namespace

ordered_json assessment_json(const Design& design, const Library& library, const Assessment& assessment) {
  ordered_json json;
  json["title"] = design.title;
  json["verdict"] = or_null(assessment.verdict);
  json["draft_margin_Pa"] = margins_json(assessment);
  const DesignFlow* worst = worst_flow(assessment);
  json["buoyancy_Pa"] = worst != nullptr ? ordered_json(in(worst->buoyancy, pascal)) : ordered_json();
  json["resistance_Pa"] = worst != nullptr ? ordered_json(in(worst->resistance, pascal)) : ordered_json();
  json["room_gauge_Pa"] = worst != nullptr ? ordered_json(in(worst->room_gauge, pascal)) : ordered_json();
  const OperatingPoint* running = assessment.running_point();
  json["operating_point"] = running != nullptr ? point_json(*running) : ordered_json();
  json["condensation"] = condensation_json(design, library, assessment);
  json["worst_age"] = assessment.worst_age ? age_key(*assessment.worst_age) : ordered_json();
  json["standing_draft_Pa"] =
      assessment.path.complete ? ordered_json(in(assessment.standing_draft, pascal)) : ordered_json();
  json["path_length_m"] = in(assessment.path_length, metre);
  json["path_complete"] = assessment.path.complete;
  json["findings"] = findings_json(design, library, assessment);
  json["design_flow"] = ordered_json::array();
  for (const DesignFlow& flow : assessment.design_flow) json["design_flow"].push_back(design_flow_json(flow, design));
  json["operating_points"] = points_json(assessment);
  json["fans"] = fans_json(design, library, assessment);
  json["power_cut"] = power_cut_json(assessment);
  json["profile_is_operating"] = assessment.profile_is_operating;
  json["profile"] = ordered_json::array();
  for (const SliceState& slice : assessment.profile) json["profile"].push_back(slice_json(slice, design));
  json["branches"] = ordered_json::array();
  for (const BranchState& state : assessment.branches) {
    json["branches"].push_back(branch_json(state, design, library, assessment));
  }
  if (!design.scene.empty()) json["scene"] = design.scene;
  return json;
}

}  // namespace fluewright
