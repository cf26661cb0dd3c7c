// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"
#include "engine/pieces/shape.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace fluewright {

enum class HousePart { wall, ceiling, roof };

[[nodiscard]] std::string_view word(HousePart part);

/// Which part of the house a point lies in; nothing in the room, in the attic or outdoors.
[[nodiscard]] std::optional<HousePart> house_part_at(const HouseOutline&, const Position&);

/// The middle of the roof's thickness over a place, whether or not that is within the house.
[[nodiscard]] Length roof_height_at(const HouseOutline&, const Position&);
/// The ridge runs east-west: the house is at least as long that way.
[[nodiscard]] bool ridge_runs_east(const HouseOutline&);

struct HouseCrossing {
  std::size_t piece = 0;  ///< index in Design::pieces
  HousePart part{};
};

/// Pieces whose axis goes through a wall, the ceiling or the roof and that are not made for it
/// (PieceType::passes_house): one for each piece and part. Empty where no house is drawn.
[[nodiscard]] std::vector<HouseCrossing> house_crossings(const Design&, const Library&,
                                                         const std::vector<const PieceGeometry*>& geometries);

/// A house around what is drawn, `clearance` away from it on the plan, its roof a metre under the path's top or as by
/// HouseOutline's own heights where that is lower.
[[nodiscard]] HouseOutline house_around(const std::vector<PieceGeometry>& geometries, Length clearance);

}  // namespace fluewright
