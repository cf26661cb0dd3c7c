// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Verbs on the runs of a bench and on single pieces of a path: a longer bench with all its return runs, a run laid in
// loops, a piece turned end for end, a piece for another one, a reducer between two bores.

#include "engine/layout/edit.hpp"

#include <vector>

namespace fluewright {

/// The level runs that lie side by side with a run and are one winding flue with it: reached from it through level
/// runs and bends alone, and parallel to it. The run itself is the first. Empty for anything but a level run.
[[nodiscard]] std::vector<PieceId> bench_runs(const Design&, const Library&, const PieceId& run);

/// Make the bench longer: every one of bench_runs() by as much, each away from where it began, so that the near ends
/// stay side by side and the far ends do. What hangs on behind follows.
[[nodiscard]] EditResult stretch_bench(const Design&, const Library&, const PieceId& run, Length by);

/// A run laid in loops.
struct Serpentine {
  int passes = 3;                       ///< 1 to 20
  Length length = 2.0 * metre;          ///< of each straight pass, without the turns
  Length spacing = 300.0 * millimetre;  ///< between the axes of neighbouring passes
  Turn side = Turn::left;               ///< to which side the passes go on: left or right
};
inline constexpr int most_passes = 20;

/// Grow such a run from an open level end. Refused as too_short where two bends are wider than the spacing.
[[nodiscard]] EditResult grow_serpentine(const Design&, const Library&, const PortRef& open_port, const Serpentine&,
                                         std::string_view run_type, std::string_view bend_type);

/// Turn a piece with two joint ports end for end: what came in at one comes in at the other. A sloping pipe that rose
/// then falls, a reducer widens where it narrowed. The side that its first port was joined to stays.
[[nodiscard]] EditResult reverse_piece(const Design&, const Library&, const PieceId&);

/// Other types that can stand in a piece's place with all its joints: those for which set_type() goes through.
[[nodiscard]] std::vector<const PieceType*> types_that_fit(const Design&, const Library&, const PieceId&);

/// Whether the two ends of a joint differ in bore so that a reducer belongs between them.
[[nodiscard]] bool wants_reducer(const Design&, const Library&, const PortRef& joint);
/// Put a piece of a two-bore type between the two ends, its bores theirs; what hangs on behind moves on by its length.
[[nodiscard]] EditResult put_reducer(const Design&, const Library&, const PortRef& joint, std::string_view type);

}  // namespace fluewright
