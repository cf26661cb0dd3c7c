// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"

#include <string>
#include <vector>

namespace fluewright {

/// `fault`: the drawing must be mended before there is an answer. `unsafe`: there is an answer, and nobody should build it.
enum class Severity { note, caution, fault, unsafe };

/// What is wrong or worth saying. The engine gives the code and the arguments; the application has the words.
enum class FindingCode {
  // faults of the drawing: no steady answer until mended
  no_pieces,
  no_inlet,           ///< nothing lets air in
  no_outlet,          ///< no cap or open stack head
  several_inlets,     ///< piece: one that the path does not reach
  several_outlets,
  no_fire,
  several_fires,
  open_end,           ///< piece, field = port name
  gap,                ///< two joined ports do not meet; piece, field = port name, text = the other piece;
                      ///< value = distance, or the angle between them where they touch and do not face one another
  loop,               ///< piece: gas could only go round behind it, the way leads nowhere
  unreached,          ///< piece that no joint connects with the path; a caution
  unknown_type,
  unknown_material,
  unknown_wall,
  unknown_wood,
  unknown_fan,
  fan_curve,          ///< the points of a fan's data sheet make no curve; text = the sheet, field = "fans"
  unknown_port,
  port_taken,         ///< a port in two joints
  joined_to_air,      ///< a joint on a port that is open to the air; piece, field = port name
  bore_mismatch,      ///< two joined ports of different size (works, with a step; a caution); text = the other piece,
                      ///< value and highest = the diameters of equal area on this side and on the other
  clash,              ///< two pieces in the same place, a caution; text = the other piece, value = depth
  through_house,      ///< a pipe through the house without a passage, a caution; field = wall, ceiling or roof
  out_of_range,       ///< piece (empty: site/room/fire), field, value, lowest, highest
  wrong_kind,         ///< field holds another kind of value
  duplicate_id,
  // physics worth saying
  smoke_leak,         ///< piece = first of a stretch, text = its last if another; value = most gauge above the room
  wet_wall,
  short_of_air,       ///< operating excess air under 1.5
  overdrawn,          ///< operating excess air over 6
  can_run_backwards,  ///< a stable reversed state exists; value = standing draft; a caution where that is negative, else a note
  never_draws_forward,
  will_not_draw,      ///< text = the bench age's id, value = margin there
  marginal,           ///< the same, with a margin that is positive and small
  choke_inlet,        ///< the fire is given too much air; value = free share, highest = the one that gives the wanted air
  exit_too_hot,       ///< value = temperature at the cap, highest = the limit
  house_suction,      ///< value = how far exhaust pulls the house under outdoors, highest = the limit
  // what practice says of the drawing
  water_pools,        ///< piece = the lowest place, where no drain is; value = water that runs there
  wrong_fall,         ///< a level run that falls along the flow to a place without a drain; value = rise per run
  narrowing,          ///< value = diameter of equal area, lowest = that of the system
  low_outlet,         ///< piece = the head; field empty: over the roof at the chimney, else the condition;
                      ///< value = height over it, lowest = the least
  near_combustibles,  ///< a single wall too near; value = distance, lowest = the least
  hidden_single_wall, ///< a single wall where nobody sees it: attic or roof
  missing_cleanout,   ///< a bend that no brush reaches; value = length of the brush, lowest = what it would take, if known
  gas_too_fast,       ///< value = velocity, highest = the limit
  gas_too_slow,       ///< value = velocity, lowest = the limit
  seat_too_hot,       ///< value = temperature of the mass's surface, highest = the limit
  floor_overloaded,   ///< value = load under the mass, highest = what the floor is said to carry
  no_alarm_note,      ///< the design does not say that there is a carbon-monoxide alarm
  beyond_validity,    ///< a material's conductivity left the temperatures at which it is known; text = which, value = the
                      ///< wall's temperature, lowest and highest = the range (lowest is nothing for one known value)
  left_out,           ///< piece acts on the draft in a way that the calculation leaves out; field = the field that describes it
  // fans
  fan_dependent,      ///< it draws only while a fan runs; value = margin with the fans off, highest = with them on
  fan_gas_too_hot,    ///< piece, value = hottest gas at the fan, highest = what its sheet allows
  fan_motor_too_hot,  ///< piece, value = hottest the motor gets, highest = what its sheet allows
  fan_motor_wet,      ///< piece, value = dew point of the gas around a motor in the stream, lowest = how warm its wall is
  fan_curve_rises,    ///< piece, text = the sheet; between `lowest` and `highest` flow its head rises with the flow: not
                      ///< stable; value = Count of forward states, stable or not
  fan_beyond_sheet,   ///< piece, text = the sheet; value = flow through it at speed, highest = the last that its sheet covers
  fan_against_flow,   ///< piece; it blows against the way the gas should go
  // branches
  branch_smokes,      ///< piece: where a side branch lets gas that has been through the fire into the room; value = flow
  branch_blows_out,   ///< piece: a way in by which air goes out; value = flow
  branch_draws_air,   ///< piece: where air comes in that joins the gas behind the fire; value = its share of the cap's flow
  flap_opens,         ///< piece: a draft regulator; value = how far its flap stands open
  unsolved,           ///< the flows in the branches could not be found: no number rather than a wrong one
  // more on values
  wall_layers,        ///< field = "walls.N": layer N of the wall `text` is still air and lies at a face or beside still air
  relation_left       ///< a relation left its published range; text = which and whose, piece where furthest, value = the
                      ///< temperature there, lowest and highest = the range
};

/// One thing found. Empty strings mean "does not apply".
struct Finding {
  FindingCode code{};
  Severity severity = Severity::fault;
  PieceId piece;
  std::string field;
  FieldValue value;                      ///< meaning depends on the code
  std::optional<FieldValue> lowest;
  std::optional<FieldValue> highest;
  std::string text;                      ///< an id or name as argument
};

/// The code's name in design files and in JSON: "wet_wall".
[[nodiscard]] std::string_view finding_name(FindingCode code);

}  // namespace fluewright
