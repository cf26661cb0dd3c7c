// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/edit_geometry.hpp"
#include "engine/layout/edit_joints.hpp"

#include <cstddef>
#include <string_view>

namespace fluewright::edit {

/// Give the piece the section of the port it is pushed onto, by whichever of its fields make the section of its own
/// `port`; between round and rectangular, the same area. Sizes that cannot be had stay as they are; the step in
/// section is then a caution of the path check.
void follow_section(const Design& design, const Library& library, Piece& piece, const PieceType& type,
                    std::string_view port, const Section& section);

/// Bring fields that do not go together within the limits the shape names (a tee's branch is no wider than its run, a
/// bench no narrower than its pipe).
void resolve_clashes(const Design& design, const Library& library, Piece& piece, const PieceType& type);

/// Whether the changed piece has a value out of its range, or at odds with the others, that it did not have before.
[[nodiscard]] bool has_new_faults(const Design& design, const Library& library, const Piece& before, const Piece& after,
                                  const PieceType& type);

/// What a new piece takes over besides its section. From a piece of its own type, at most a few fittings back: wall,
/// surroundings and make. From the neighbour: the mass or ground both lie in; a fitting also its place, and its wall
/// where both are round.
void inherit_fields(const Design& design, const Library& library, const JointIndex& index, std::size_t neighbour,
                    Piece& piece, const PieceType& type);

}  // namespace fluewright::edit
