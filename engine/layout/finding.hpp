// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"

#include <string>
#include <vector>

namespace fluewright {

enum class Severity { note, caution, fault };

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
  unknown_port,
  port_taken,         ///< a port in two joints
  joined_to_air,      ///< a joint on a port that is open to the air; piece, field = port name
  bore_mismatch,      ///< two joined ports of different size (works, with a step; a caution); text = the other piece,
                      ///< value and highest = the diameters of equal area on this side and on the other
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
  beyond_validity,    ///< a relation left its published range; text = which
  left_out            ///< piece acts on the draft in a way that a series calculation leaves out (a fan's pressure,
                      ///< the room air a draft regulator lets in); field = the field that describes it
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
