// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The pieces of a design beside what the library knows of them, each type looked up once.

#include "engine/layout/finding.hpp"
#include "engine/pieces/shape.hpp"

#include <string_view>
#include <unordered_map>
#include <vector>

namespace fluewright {

/// What the library knows of a piece; both null where its type is unknown.
struct KnownPiece {
  const PieceType* type = nullptr;
  const Shape* shape = nullptr;
};

/// Types and shapes of all pieces, in the order of Design::pieces.
[[nodiscard]] std::vector<KnownPiece> known_pieces(const Design& design, const Library& library);

/// What is wrong with one piece's own values: unknown type, field of another kind, value out of its range, unknown wall
/// or material, values that do not go together, a heading that is no number.
[[nodiscard]] std::vector<Finding> check_piece(const Design& design, const Library& library, const Piece& piece,
                                               const KnownPiece& known);

/// A piece as it can be drawn.
struct CheckedPiece {
  KnownPiece known;
  PieceGeometry geometry;  ///< empty for an unknown type; with fallbacks in the place of faulty values
  bool sound = false;      ///< check_piece() finds nothing, so that its flue can be computed
};

/// What callers call it. No type of its own: the desk has a class of this name, and two classes of one name in one program
/// share their destructor.
using DrawnPiece = CheckedPiece;

/// All pieces, in the order of Design::pieces, each checked once.
[[nodiscard]] std::vector<DrawnPiece> drawn_pieces(const Design& design, const Library& library);

/// A faulty piece's value in question taken out, so that the fallback stands in and the piece can still be drawn.
[[nodiscard]] Piece mended(const Design& design, const Library& library, const Piece& piece, const KnownPiece& known,
                           const std::vector<Finding>& faults);

}  // namespace fluewright
