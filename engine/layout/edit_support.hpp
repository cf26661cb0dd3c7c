// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Steps that several verbs share. They change a design in place; a verb hands back the copy it worked on, or drops it.

#include "engine/layout/edit.hpp"
#include "engine/layout/edit_follow.hpp"
#include "engine/layout/edit_geometry.hpp"
#include "engine/layout/edit_joints.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace fluewright::edit {

[[nodiscard]] inline EditResult refused(Refusal why) { return {std::nullopt, why, {}}; }
[[nodiscard]] inline EditResult done(Design&& design, PieceId touched) {
  return {std::move(design), {}, std::move(touched)};
}

/// Nothing if the field may hold the value: its kind, its range, one of its choices, a wall or material that exists.
[[nodiscard]] std::optional<Refusal> check_value(const Design& design, const Library& library, const FieldSpec& spec,
                                                 const FieldValue& value);
/// The same for the length of a straight run: too short is said apart from out of range.
[[nodiscard]] std::optional<Refusal> check_run_length(const PieceType& type, Length length);

/// A port that something can be pushed onto.
struct OpenPort {
  std::size_t piece = 0;
  Port port;
  bool upstream = false;  ///< the piece's first port: what is pushed on stands before it in the flow
};
[[nodiscard]] std::variant<OpenPort, Refusal> find_open_port(const Design& design, const Library& library,
                                                             const JointIndex& index, const PortRef& ref);

/// A new piece of a type, not yet standing anywhere, with what it takes over from the open port and the piece behind
/// it: the bore, the mass it lies in, and all that a like piece nearby has except its length.
[[nodiscard]] Piece new_piece(const Design& design, const Library& library, const JointIndex& index,
                              const PieceType& type, const OpenPort& open);

/// The ports by which a piece can be pushed onto an open port, the fittest first: with the flow its first, against
/// the flow another one.
[[nodiscard]] std::vector<std::string> joining_ports(const PieceGeometry& geometry, bool upstream);

/// Make the piece stand on the open port by one of its ports; the name of that port, or nothing.
[[nodiscard]] std::optional<std::string> stand_on(const Design& design, const Library& library, Piece& piece,
                                                  const OpenPort& open);

/// Put the piece into the design and join it to the open port.
void add_joined(Design& design, const OpenPort& open, Piece piece, const std::string& port);

/// Take a piece and its joints out, moving nothing. Indices become void.
void erase_piece(Design& design, std::size_t piece);

}  // namespace fluewright::edit
