// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/finding.hpp"

namespace fluewright {

std::string_view finding_name(FindingCode code) {
  switch (code) {
    case FindingCode::no_pieces: return "no_pieces";
    case FindingCode::no_inlet: return "no_inlet";
    case FindingCode::no_outlet: return "no_outlet";
    case FindingCode::several_inlets: return "several_inlets";
    case FindingCode::several_outlets: return "several_outlets";
    case FindingCode::no_fire: return "no_fire";
    case FindingCode::several_fires: return "several_fires";
    case FindingCode::open_end: return "open_end";
    case FindingCode::gap: return "gap";
    case FindingCode::loop: return "loop";
    case FindingCode::unreached: return "unreached";
    case FindingCode::unknown_type: return "unknown_type";
    case FindingCode::unknown_material: return "unknown_material";
    case FindingCode::unknown_wall: return "unknown_wall";
    case FindingCode::unknown_wood: return "unknown_wood";
    case FindingCode::unknown_fan: return "unknown_fan";
    case FindingCode::fan_curve: return "fan_curve";
    case FindingCode::unknown_port: return "unknown_port";
    case FindingCode::port_taken: return "port_taken";
    case FindingCode::joined_to_air: return "joined_to_air";
    case FindingCode::bore_mismatch: return "bore_mismatch";
    case FindingCode::out_of_range: return "out_of_range";
    case FindingCode::wrong_kind: return "wrong_kind";
    case FindingCode::duplicate_id: return "duplicate_id";
    case FindingCode::smoke_leak: return "smoke_leak";
    case FindingCode::wet_wall: return "wet_wall";
    case FindingCode::short_of_air: return "short_of_air";
    case FindingCode::overdrawn: return "overdrawn";
    case FindingCode::can_run_backwards: return "can_run_backwards";
    case FindingCode::never_draws_forward: return "never_draws_forward";
    case FindingCode::will_not_draw: return "will_not_draw";
    case FindingCode::marginal: return "marginal";
    case FindingCode::choke_inlet: return "choke_inlet";
    case FindingCode::exit_too_hot: return "exit_too_hot";
    case FindingCode::house_suction: return "house_suction";
    case FindingCode::water_pools: return "water_pools";
    case FindingCode::wrong_fall: return "wrong_fall";
    case FindingCode::narrowing: return "narrowing";
    case FindingCode::low_outlet: return "low_outlet";
    case FindingCode::near_combustibles: return "near_combustibles";
    case FindingCode::hidden_single_wall: return "hidden_single_wall";
    case FindingCode::missing_cleanout: return "missing_cleanout";
    case FindingCode::gas_too_fast: return "gas_too_fast";
    case FindingCode::gas_too_slow: return "gas_too_slow";
    case FindingCode::seat_too_hot: return "seat_too_hot";
    case FindingCode::floor_overloaded: return "floor_overloaded";
    case FindingCode::no_alarm_note: return "no_alarm_note";
    case FindingCode::beyond_validity: return "beyond_validity";
    case FindingCode::left_out: return "left_out";
    case FindingCode::fan_dependent: return "fan_dependent";
    case FindingCode::fan_gas_too_hot: return "fan_gas_too_hot";
    case FindingCode::fan_motor_too_hot: return "fan_motor_too_hot";
    case FindingCode::fan_motor_wet: return "fan_motor_wet";
    case FindingCode::fan_curve_rises: return "fan_curve_rises";
    case FindingCode::fan_beyond_sheet: return "fan_beyond_sheet";
    case FindingCode::fan_against_flow: return "fan_against_flow";
    case FindingCode::wall_layers: return "wall_layers";
    case FindingCode::relation_left: return "relation_left";
    case FindingCode::clash: return "clash";
    case FindingCode::through_house: return "through_house";
    case FindingCode::branch_smokes: return "branch_smokes";
    case FindingCode::branch_blows_out: return "branch_blows_out";
    case FindingCode::branch_draws_air: return "branch_draws_air";
    case FindingCode::flap_opens: return "flap_opens";
    case FindingCode::unsolved: return "unsolved";
  }
  return {};
}

}  // namespace fluewright
