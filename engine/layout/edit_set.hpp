// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Verbs on several pieces at once, connected or not. What hung on them and cannot follow is left as open ends, which
// the path check lists; nothing is pulled along by surprise.

#include "engine/layout/edit.hpp"

#include <vector>

namespace fluewright {

/// Pieces cut out of a design with the joints among them.
struct Clip {
  std::vector<Piece> pieces;
  std::vector<Joint> joints;
  std::vector<Wall> walls;      ///< build-ups of the design's own that the pieces name
  std::vector<FanSheet> fans;   ///< and its own fans' data sheets
};

/// An edit of several pieces; `pieces` are those to be selected afterwards, under the names they have in the result.
struct SetResult {
  EditResult edit;
  std::vector<PieceId> pieces;
};

/// Names that are on no piece are passed over.
[[nodiscard]] Clip copy_pieces(const Design&, const Library&, const std::vector<PieceId>&);

/// Put a copy of the clip's pieces `step` away from where they were cut, under fresh names. It is joined to nothing
/// else. A build-up or a data sheet of the clip's that the design lacks comes along.
[[nodiscard]] SetResult paste_pieces(const Design&, const Library&, const Clip&, GridPoint step);

/// Take the pieces out; neighbours close up as for remove_piece().
[[nodiscard]] SetResult remove_pieces(const Design&, const Library&, const std::vector<PieceId>&);

/// Move the pieces by a step. A straight run beside them that lies along the step takes it up with its length, so that
/// its far end stays; any other joint to the rest comes apart.
[[nodiscard]] SetResult move_pieces(const Design&, const Library&, const std::vector<PieceId>&, GridPoint step);

/// Turn the pieces by quarter turns to the left about the vertical through `pivot`. Joints to the rest whose ports no
/// longer meet come apart.
[[nodiscard]] SetResult turn_pieces(const Design&, const Library&, const std::vector<PieceId>&, int quarters,
                                    GridPoint pivot);

/// Mirror the pieces in the upright plane through `pivot` that faces `across` (east: left and right change places on
/// the plan; north: up and down do). Joints to the rest whose ports no longer meet come apart.
[[nodiscard]] SetResult mirror_pieces(const Design&, const Library&, const std::vector<PieceId>&, const Heading& across,
                                      GridPoint pivot);

/// The middle of the box around the pieces' ports, on the grid `step`; the origin where there is none.
[[nodiscard]] GridPoint middle_of(const Design&, const Library&, const std::vector<PieceId>&, Length step);

/// Pull a joint apart where it is; both ends are then open.
[[nodiscard]] EditResult break_joint(const Design&, const PortRef&);
/// Join all open ends that meet already: what break_joint() or a paste left. `touched` is one of them; refused as
/// not_an_open_end where there are none.
[[nodiscard]] EditResult heal_joints(const Design&, const Library&);

}  // namespace fluewright
