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
  several_inlets,     ///< piece: the second one
  several_outlets,
  no_fire,
  several_fires,
  open_end,           ///< piece, field = port name
  gap,                ///< two joined ports do not meet; piece, field = port name, text = the other piece;
                      ///< value = distance, or the angle between them where they touch and do not face one another
  loop,               ///< the path comes back to a piece it already passed
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
  smoke_leak,         ///< piece; value = gauge above the room
  wet_wall,
  short_of_air,       ///< operating excess air under 1.5
  overdrawn,          ///< operating excess air over 6
  can_run_backwards,  ///< a stable reversed state exists; value = standing draft; a caution where that is negative, else a note
  never_draws_forward,
  beyond_validity,    ///< a material's conductivity left the temperatures at which it is known; text = which, value = the
                      ///< wall's temperature, lowest and highest = the range (lowest is nothing for one known value)
  left_out,           ///< piece acts on the draft in a way that a series calculation leaves out (the
                      ///< room air a draft regulator lets in); field = the field that describes it
  // fans
  fan_dependent,      ///< it draws only while a fan runs; value = margin with the fans off, highest = with them on
  fan_gas_too_hot,    ///< piece, value = hottest gas at the fan, highest = what its sheet allows
  fan_motor_too_hot,  ///< piece, value = hottest the motor gets, highest = what its sheet allows
  fan_motor_wet,      ///< piece, value = dew point of the gas around a motor in the stream, lowest = how warm its wall is
  fan_curve_rises,    ///< piece, text = the sheet; between `lowest` and `highest` flow its head rises with the flow: not
                      ///< stable; value = Count of forward states, stable or not
  fan_beyond_sheet,   ///< piece, text = the sheet; value = flow through it at speed, highest = the last that its sheet covers
  fan_against_flow,   ///< piece; it blows against the way the gas should go
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

}  // namespace fluewright
