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
  /// From the inlet as far as the joints lead.
  std::vector<Passage> passages;
  /// The path ends in outdoor air, nothing about the drawing is a fault and every piece on it can be computed.
  bool complete = false;
  /// One branch: the stretches of the passages. A partial path is in it too, as far as pieces can be computed; its `to`
  /// end is then a node. Empty where there is no inlet to start from.
  FlueNetwork network;
  std::vector<Finding> findings;  ///< everything wrong with the drawing
};

/// Geometry of every piece, in the order of Design::pieces; empty for pieces of unknown type. A piece with a value out
/// of range is drawn with its fallback in that value's place.
[[nodiscard]] std::vector<PieceGeometry> geometries(const Design& design, const Library& library);

/// Fields against their allowed ranges and one another, ids against the library; site, room and fire too. Never throws.
[[nodiscard]] std::vector<Finding> check_values(const Design& design, const Library& library);

/// Follow the joints from the inlet to the cap: the first port that is open to the room, or to the outdoors where gas
/// goes in, to the first that is open to the outdoors where it comes out. Finds gaps, loops, open ends, second inlets;
/// check_values() has the rest. Legs that lead nowhere and are shut at their end carry no flow and are no fault; loose
/// pieces are a caution. Never throws.
[[nodiscard]] TracedPath trace_path(const Design& design, const Library& library);

}  // namespace fluewright
