// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// How far hot surfaces keep from what burns: the findings ask it, and the outlines on paper.

#include "engine/advice/practice.hpp"
#include "engine/layout/design.hpp"

#include <optional>

namespace fluewright {

enum class ClearanceKind {
  drum,          ///< drum or box of a single metal wall
  single_wall,   ///< pipe of a single metal wall
  layered_pipe,  ///< of several layers
  masonry        ///< masonry, or a mass of earth around the flue
};

struct Clearance {
  ClearanceKind kind{};
  Limit<Length> least;  ///< of practice()
};

/// Of a piece whose outside stands in the room. Nothing in the ground, outdoors, in an attic or inside another piece.
[[nodiscard]] std::optional<Clearance> clearance_of(const PieceView& piece);

}  // namespace fluewright
