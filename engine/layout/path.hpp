// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/stretch.hpp"
#include "engine/layout/finding.hpp"
#include "engine/pieces/shape.hpp"

#include <optional>
#include <vector>

namespace fluewright {

/// A piece as the gas passes it.
struct Passage {
  std::size_t piece = 0;  ///< index in Design::pieces
  std::string entry;
  std::string exit;
};

/// What the joints make of the pieces.
struct TracedPath {
  /// From the inlet as far as the joints lead. Complete if it ends in outdoor air.
  std::vector<Passage> passages;
  bool complete = false;
  FlueNetwork network;          ///< one branch: the passages; holds the partial path too (its `to` end is then a node)
  std::vector<Finding> findings;///< everything wrong with the drawing
};

/// Geometry of every piece, in the order of Design::pieces; empty for pieces of unknown type.
[[nodiscard]] std::vector<PieceGeometry> geometries(const Design& design, const Library& library);

/// Fields against their allowed ranges, ids against the library. Never throws.
[[nodiscard]] std::vector<Finding> check_values(const Design& design, const Library& library);

/// Follow the joints from the inlet to the cap. Finds gaps, loops, open ends, second inlets. Never throws.
[[nodiscard]] TracedPath trace_path(const Design& design, const Library& library);

}  // namespace fluewright
