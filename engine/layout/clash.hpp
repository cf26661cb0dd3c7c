// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"
#include "engine/pieces/shape.hpp"

#include <vector>

namespace fluewright {

/// Two pieces in the same place.
struct Clash {
  std::size_t a = 0;  ///< index in Design::pieces, the lower of the two
  std::size_t b = 0;
  Position at;        ///< on the axis of one, inside the other
  Length depth{};     ///< how far they would have to be moved apart there, at the least
};

/// Pipes that only touch do not clash: less than this is a builder's play (chosen).
inline constexpr Length clash_play = 5.0 * millimetre;

/// Pieces whose bodies, round and flat-ended about the axes of their geometry, go into one another by more than
/// clash_play. Pieces that are joined, or joined to a common third (the runs on either side of an elbow, a barrel over
/// its riser), may overlap by design and are passed over. Axes are sampled, so what is reported is certain and a graze
/// may go unseen. `geometries` in the order of Design::pieces.
[[nodiscard]] std::vector<Clash> clashes(const Design&, const std::vector<const PieceGeometry*>& geometries);

}  // namespace fluewright
