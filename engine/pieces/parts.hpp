// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the shapes are put together from: sections, walls, surroundings, ports and lines of a piece's fields.

#include "engine/pieces/shape.hpp"

#include <string>
#include <string_view>
#include <vector>

namespace fluewright::parts {

inline constexpr Angle right_angle = 90.0 * degree;

/// A field's choice that means yes.
inline constexpr std::string_view yes = "yes";

/// The piece's section by the fields it has: `bore` a circle, `half_barrel` half a circle, else `width` x `height`.
[[nodiscard]] Section section_of(const PieceView& piece);
/// The section at the far end where a piece has one of its own: `out_bore`, or `out_width` x `out_height`, else the
/// piece's one section.
[[nodiscard]] Section out_section_of(const PieceView& piece);
/// A circle for `key`.
[[nodiscard]] Section circle_of(const PieceView& piece, std::string_view key);

/// Thickness of the build-up named by the field `wall`, zero where there is none.
[[nodiscard]] Length wall_thickness(const PieceView& piece);
/// Outside width of a section in the piece's wall.
[[nodiscard]] Length outside_width(const PieceView& piece, const Section& section);

/// A stretch of the piece with its wall, roughness and surroundings set from the fields it has.
///
/// Wall: field `wall`. Roughness: of the innermost layer, else of the mass around, else `bare_roughness`.
/// Place: field `place` (room, outdoors, attic, bench, ground) where there is one; else a piece with `mass_material`
/// lies in the bench, one with `soil` in the ground, one that is `jacketed` in a jacket, and all others stand in the
/// room.
[[nodiscard]] Stretch stretch_of(const PieceView& piece, std::size_t index, const Section& section, Length length,
                                 Length rise);
/// A stretch of gas inside the piece's own gas: no wall, no loss of heat (a riser's throw, a plume).
[[nodiscard]] Stretch inner_stretch(const PieceView& piece, std::size_t index, const Section& section, Length length,
                                    Length rise);

/// Roughness of a way with neither wall nor mass around it (chosen: as brushed-out brick and welded steel, 1 mm).
inline constexpr Length bare_roughness = 1.0 * millimetre;

/// The fan of the piece's fields `fan` and `speed`, blowing the way the piece is written.
[[nodiscard]] Fan fan_of(const PieceView& piece);

/// The same flue walked the other way.
[[nodiscard]] std::vector<Stretch> reversed(std::vector<Stretch> stretches);
/// Stretches written from port `first`, as they are or reversed.
[[nodiscard]] std::vector<Stretch> entered_by(std::vector<Stretch> from_first, std::string_view first,
                                              std::string_view entry);

/// Half of a straight piece between a port and its middle, and where a side opening is in it: in the middle, out to the
/// room or, where the piece stands outdoors or in the attic, to outdoor air (an attic is open to the wind; chosen).
[[nodiscard]] std::vector<Stretch> half_leg(const PieceView& piece, std::size_t index, std::string_view port,
                                            bool inwards);
[[nodiscard]] Meeting side_opening(const PieceView& piece, const Opening& opening);
/// What is beside the piece where it is open: see side_opening().
[[nodiscard]] PortKind air_beside(const PieceView& piece);

/// What a pipe's open end costs the air that comes in by it; what goes out loses its velocity head by itself.
[[nodiscard]] LocalLoss open_end_loss(const PieceView& piece);

[[nodiscard]] LocalLoss loss(std::string name, Ratio forward, Ratio backward, Citation citation,
                             LocalLoss::Reynolds correction = LocalLoss::Reynolds::none);

[[nodiscard]] Port joint_port(std::string name, const Position& at, const Heading& outward, const Section& section);
[[nodiscard]] Port open_port(std::string name, PortKind kind, const Position& at, const Heading& outward,
                             const Section& section);

/// What a port of a straight piece is called and opens to.
struct End {
  std::string_view name;
  PortKind kind = PortKind::joint;
};

/// From the first port of a straight piece to its second: `length` along the heading. `slope`, where the piece has
/// one, is rise per run: it lifts the far end without turning it, so that what follows stays square, and means nothing
/// on a standing piece.
[[nodiscard]] Position straight_step(const PieceView& piece);
/// A straight piece of one section between two ends.
[[nodiscard]] PieceGeometry straight(const PieceView& piece, End first, End second);
/// Its flue, written from the first end.
[[nodiscard]] Stretch straight_stretch(const PieceView& piece, std::size_t index);

/// Height of `b` above `a`.
[[nodiscard]] Length rise(const Position& a, const Position& b);

/// Note a clash unless low < high by at least `room`.
void want_below(std::vector<FieldClash>& clashes, const PieceView& piece, std::string_view low_key, Length high,
                Length room);

/// Where the piece lies in a bench or in the ground: the mass must be wider and higher than the piece with its wall,
/// the ground deeper than half of it.
[[nodiscard]] std::vector<FieldClash> embedding_clashes(const PieceView& piece);

/// Least room between two dimensions that must differ (chosen).
inline constexpr Length least_room = 10.0 * millimetre;

}  // namespace fluewright::parts
