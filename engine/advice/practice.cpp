// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/practice.hpp"

#include "engine/solve/assessment.hpp"

namespace fluewright {

const Practice& practice() {
  constexpr Standing published = Standing::published;
  constexpr Standing memory = Standing::from_memory;
  constexpr Standing common = Standing::common_practice;
  constexpr Standing chosen = Standing::chosen;
  static const Practice all{
      .marginal = {marginal_below, {"common practice, no source", common}},
      .choke_over = {3.95, {"EN 15544 scope: tested fireboxes run at 1.95-3.95 times the air they need", published}},
      .exit_hottest = {celsius(150.0),
                       {"masonry heaters leave the chimney at about 120 °C at most; 150 °C is well over it", common}},
      .house_suction = {5.0 * pascal,
                        {"Canadian practice for houses with a chimney; CSA F300:22 no longer sets it for solid fuel "
                         "and asks for carbon-monoxide alarms instead",
                         published}},
      .area_share = {0.97, {"never narrower than the system's own section; a few per cent are within a sheet's play", common}},
      .level_slope = {0.5, {"what the catalogue allows a lying pipe", chosen}},
      .over_the_roof = {3.0 * foot, {"3-2-10: IRC R1003.9 and NFPA 211, 3 ft over the roof where it comes through", memory}},
      .over_the_near = {2.0 * foot, {"3-2-10: IRC R1003.9 and NFPA 211, 2 ft over whatever is within 10 ft", memory}},
      .single_wall_clearance = {18.0 * inch, {"NFPA 211, single-wall connector", memory}},
      .drum_clearance = {36.0 * inch, {"NFPA 211, unlisted appliance", memory}},
      .masonry_clearance = {4.0 * inch, {"IRC R1002.5, masonry heater with walls 8 in thick", memory}},
      .layered_pipe_clearance = {2.0 * inch, {"usual for listed chimney pipe: the maker's sheet decides", common}},
      .thin_wall = {3.0 * millimetre, {"sheet metal", chosen}},
      .brush_turns = {95.0 * degree, {"rods bend round one turn and not round two", common}},
      .gas_fastest = {6.0 * metre_per_second, {"EN 15544, gas velocity in the channels 1.2-6 m/s", memory}},
      .gas_slowest = {0.3 * metre_per_second, {"below it fly ash settles and the cap takes every gust", common}},
      .seat_hottest = {celsius(43.0), {"ISO 13732-1, skin in contact for eight hours and more", memory}},
  };
  return all;
}

const Citation& finding_source(FindingCode code) {
  static const Citation drawing{"the drawing itself", Standing::chosen};
  static const Citation physics{"the calculation: see the working of the piece", Standing::chosen};
  static const Citation settling{"how a stick fire burns: common practice, no source", Standing::common_practice};
  static const Citation sheet{"the fan's data sheet against the calculation", Standing::chosen};
  static const Citation water{"dew point of the gas against the wall (see the working)", Standing::chosen};
  static const Citation falls{"condensate and cleanings run down: common practice, no source", Standing::common_practice};
  static const Citation hidden{"IRC M1803 and NFPA 211: no connector through attics and concealed spaces",
                               Standing::from_memory};
  static const Citation floor{"residential live load of the building codes, 40 psf (1.9 kPa)", Standing::published};
  static const Citation alarm{"IRC R315; CSA F300:22", Standing::published};
  const Practice& p = practice();
  switch (code) {
    case FindingCode::smoke_leak:
    case FindingCode::never_draws_forward:
    case FindingCode::can_run_backwards:
    case FindingCode::beyond_validity:
    case FindingCode::left_out:
    case FindingCode::will_not_draw: return physics;
    case FindingCode::fan_dependent:
    case FindingCode::fan_curve_rises:
    case FindingCode::fan_against_flow:
    case FindingCode::relation_left:
    case FindingCode::branch_smokes:
    case FindingCode::branch_blows_out:
    case FindingCode::branch_draws_air:
    case FindingCode::flap_opens: return physics;
    case FindingCode::fan_gas_too_hot:
    case FindingCode::fan_motor_too_hot:
    case FindingCode::fan_motor_wet:
    case FindingCode::fan_beyond_sheet: return sheet;
    case FindingCode::wet_wall: return water;
    case FindingCode::short_of_air:
    case FindingCode::overdrawn: return settling;
    case FindingCode::marginal: return p.marginal.citation;
    case FindingCode::choke_inlet: return p.choke_over.citation;
    case FindingCode::exit_too_hot: return p.exit_hottest.citation;
    case FindingCode::house_suction: return p.house_suction.citation;
    case FindingCode::water_pools:
    case FindingCode::wrong_fall: return falls;
    case FindingCode::narrowing: return p.area_share.citation;
    case FindingCode::low_outlet: return p.over_the_roof.citation;
    case FindingCode::near_combustibles: return p.single_wall_clearance.citation;
    case FindingCode::hidden_single_wall: return hidden;
    case FindingCode::missing_cleanout: return p.brush_turns.citation;
    case FindingCode::gas_too_fast: return p.gas_fastest.citation;
    case FindingCode::gas_too_slow: return p.gas_slowest.citation;
    case FindingCode::seat_too_hot: return p.seat_hottest.citation;
    case FindingCode::floor_overloaded: return floor;
    case FindingCode::no_alarm_note: return alarm;
    default: break;
  }
  return drawing;
}

}  // namespace fluewright
