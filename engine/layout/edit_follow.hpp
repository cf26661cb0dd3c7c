// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/edit_geometry.hpp"
#include "engine/layout/edit_joints.hpp"

#include <cstddef>
#include <functional>
#include <string_view>

namespace fluewright::edit {

/// After piece `changed` went from `before` to its present state: whatever is joined to a port that moved follows, and
/// so on outwards; what is joined to a port that stayed stays. Only pieces that move are looked at.
/// False if two ports that met before cannot be made to meet again; the design is then half done.
[[nodiscard]] bool follow(Design& design, const Library& library, const JointIndex& index, std::size_t changed,
                          const PieceGeometry& before);

/// The port that stays where it is when a piece changes: its first port, unless that is free and another is joined.
[[nodiscard]] std::string_view staying_port(const JointIndex& index, std::size_t piece, const PieceGeometry& geometry);

/// Change a piece's fields or turn in place while the port `stays` stays, and let the rest follow. False as follow().
[[nodiscard]] bool reshape(Design& design, const Library& library, const JointIndex& index, std::size_t piece,
                           std::string_view stays, const std::function<void(Piece&)>& change);

/// What is joined to the port and has come away from it by more than rounding is brought back to it, with all that hangs
/// on it. False as follow(); true as well if nothing is joined there.
[[nodiscard]] bool mend_joint(Design& design, const Library& library, const PortRef& port);

/// Move the pieces by whole grid counts; false if one would leave the grid.
[[nodiscard]] bool shift(Design& design, const std::vector<std::size_t>& pieces, const GridPoint& step);

}  // namespace fluewright::edit
