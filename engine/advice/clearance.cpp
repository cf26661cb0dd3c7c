// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/clearance.hpp"

#include "engine/pieces/parts.hpp"

namespace fluewright {

namespace {

std::optional<ClearanceKind> kind_of(const PieceView& piece) {
  constexpr Conductivity metal_conducts = 5.0 * watt_per_metre_kelvin;  // well over any stone, well under any metal
  const Stretch stretch = parts::stretch_of(piece, 0, Section::circle(millimetre), millimetre, {});
  if (stretch.place == Place::mass) return ClearanceKind::masonry;
  if (stretch.place != Place::room || stretch.wall.empty() || stretch.wall.front().material == nullptr)
    return std::nullopt;
  if (stretch.wall.front().material->conductivity(celsius(20.0)) <= metal_conducts) return ClearanceKind::masonry;
  if (stretch.wall.size() > 1) return ClearanceKind::layered_pipe;
  return piece.type().family == "exchange" ? ClearanceKind::drum : ClearanceKind::single_wall;
}

}  // namespace

std::optional<Clearance> clearance_of(const PieceView& piece) {
  const auto kind = kind_of(piece);
  if (!kind) return std::nullopt;
  const Practice& limits = practice();
  switch (*kind) {
    case ClearanceKind::drum: return Clearance{*kind, limits.drum_clearance};
    case ClearanceKind::single_wall: return Clearance{*kind, limits.single_wall_clearance};
    case ClearanceKind::layered_pipe: return Clearance{*kind, limits.layered_pipe_clearance};
    case ClearanceKind::masonry: break;
  }
  return Clearance{*kind, limits.masonry_clearance};
}

}  // namespace fluewright
