// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/stretch.hpp"
#include "engine/layout/finding.hpp"
#include "engine/pieces/shape.hpp"

#include <optional>
#include <vector>

namespace fluewright {

/// A piece as the gas passes it. A side branch starts or ends in the middle of a piece in which streams meet: that end
/// has no name, and an opening in a piece's side has none at all.
struct Passage {
  std::size_t piece = 0;  ///< index in Design::pieces
  std::string entry;
  std::string exit;
};

/// What the joints make of the pieces.
struct TracedPath {
  /// The main path from the inlet as far as the joints lead.
  std::vector<Passage> passages;
  /// The path ends in outdoor air, nothing about the drawing is a fault and every piece on it can be computed.
  bool complete = false;
  /// The main path's branches and those beside it. Of a path that is not complete one branch only: the stretches of the
  /// passages as far as pieces can be computed; its `to` end is then a node. Empty where there is no inlet to start from.
  FlueNetwork network;
  /// What each branch leads through, in the order of the network's branches.
  std::vector<std::vector<Passage>> ways;
  std::vector<Finding> findings;  ///< everything wrong with the drawing
};

/// Geometry of every piece, in the order of Design::pieces; empty for pieces of unknown type. A piece with a value out
/// of range is drawn with its fallback in that value's place.
[[nodiscard]] std::vector<PieceGeometry> geometries(const Design& design, const Library& library);

/// Fields against their allowed ranges and one another, ids against the library; site, room and fire too. Never throws.
[[nodiscard]] std::vector<Finding> check_values(const Design& design, const Library& library);

/// Follow the joints. The main path leads from an inlet (a port open to the room, else one to the outdoors where air
/// goes in) through the fire to the cap; where it could go two ways it takes the longer, and the shorter is a bypass
/// beside it. Whatever else leads from free air to it, or from one place on it to another, is a branch: a second way in,
/// a lid that is off, a crack, a regulator's flap. Legs that lead nowhere and are shut at their end carry no flow and are
/// no branch. Finds gaps, open ends, loose inlets, loops that lead nowhere; check_values() has the rest. Loose pieces are
/// a caution. Never throws.
[[nodiscard]] TracedPath trace_path(const Design& design, const Library& library);

}  // namespace fluewright
