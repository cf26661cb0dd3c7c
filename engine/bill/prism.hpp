// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/piece_check.hpp"

#include <vector>

namespace fluewright {

/// A body with upright sides: what a bench, a barrel or a bell takes up.
struct Prism {
  std::vector<Position> outline;  ///< on the floor plan, in order; heights mean nothing
  Length bottom{};
  Length top{};
};

/// Area of the floor that the outlines cover together; what lies over one another counts once.
[[nodiscard]] Area covered_area(const std::vector<Prism>& prisms);
/// Volume that the prisms fill together, overlaps once.
[[nodiscard]] Volume filled_volume(const std::vector<Prism>& prisms);

/// The mass around the lines of a piece: `width` across and `height` high around a level line, `width` both ways around
/// a standing one. Where a line bends, the corner is built out square, as masons do.
[[nodiscard]] std::vector<Prism> mass_around(const PieceGeometry& geometry, Length width, Length height);

/// What a piece stands on: the ring under a barrel, the walls of a bell, a strip under a level run.
[[nodiscard]] std::vector<Prism> standing_on(const PieceView& piece, const PieceGeometry& geometry);

}  // namespace fluewright
