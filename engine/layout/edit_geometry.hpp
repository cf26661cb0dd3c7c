// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the drawing's verbs need to know about directions, ports and where a piece must stand to meet a port.

#include "engine/layout/design.hpp"
#include "engine/pieces/shape.hpp"

#include <optional>
#include <string_view>
#include <vector>

namespace fluewright::edit {

/// Two joined ports closer than this meet. Points are whole tenths of a millimetre, so a slanted piece may miss its
/// neighbour by up to 0.09 mm without anything being wrong.
inline constexpr Length meeting_distance = 0.2 * millimetre;
/// A piece farther off than this is put anew, so that misses never add up to a gap.
inline constexpr Length mending_distance = 0.1 * millimetre;
/// Lengths that differ by less are the same length to a builder: half a grid count.
inline constexpr Length length_tolerance = 0.05 * millimetre;

/// A direction as cosines: east, north, up.
struct Direction {
  Ratio x = 1.0;
  Ratio y = 0.0;
  Ratio z = 0.0;
};

[[nodiscard]] Direction direction_of(const Heading& heading);
[[nodiscard]] Ratio cosine_between(const Direction& a, const Direction& b);
/// The share of a step that lies along a direction.
[[nodiscard]] Length along(const Position& step, const Direction& direction);
[[nodiscard]] Position stepped(const Direction& direction, Length length);
/// 0 to 180 degrees.
[[nodiscard]] Angle angle_between(const Heading& a, const Heading& b);
[[nodiscard]] bool is_vertical(const Heading& heading);

/// The heading a piece is drawn with: that of a heading that is no number is east.
[[nodiscard]] Heading drawn_heading(const Heading& heading);
/// Rounded to a hundredth of a degree, azimuth in [0, 360), as a design file keeps it: what is saved is what was drawn.
[[nodiscard]] Heading tidy(const Heading& heading);
/// Rounded to a millionth of a millimetre.
[[nodiscard]] Length tidy(Length length);
[[nodiscard]] Heading with_azimuth(const Heading& heading, Angle azimuth);

/// Sum and difference of points or steps; nothing where it leaves the range of a GridPoint.
[[nodiscard]] std::optional<GridPoint> sum(const GridPoint& a, const GridPoint& b);
[[nodiscard]] std::optional<GridPoint> difference(const GridPoint& a, const GridPoint& b);

/// grid_point_near() where the grid reaches as far, else nothing.
[[nodiscard]] std::optional<GridPoint> grid_point_at(const Position& position);

/// Whether both ports are at one place and look at one another.
[[nodiscard]] bool meet(const Port& a, const Port& b, Length within = meeting_distance);

/// The type of a piece if both the type and its shape are known.
[[nodiscard]] const PieceType* known_type(const Library& library, std::string_view type);
/// Ports and axis of a piece, as geometries() has them; nothing for an unknown type.
[[nodiscard]] std::optional<PieceGeometry> geometry_of(const Design& design, const Library& library, const Piece& piece);

/// The value a piece has for a field: its own, else its type's fallback, else nothing.
[[nodiscard]] const FieldValue* value_of(const Piece& piece, const PieceType& type, std::string_view key);

/// A straight run: a piece of the shape "run", whose far end moves along `way` as its length grows.
struct StraightRun {
  const PieceType* type = nullptr;
  Port first;
  Port last;
  Length length{};
  Direction way;  ///< step of the far end per length; longer than one where the pipe slopes
};
[[nodiscard]] std::optional<StraightRun> straight_run(const Design& design, const Library& library, const Piece& piece);

/// Whether one walks straight on from `a`, which one leaves by its outward heading, to `b`: on one axis, or on a level
/// axis that slopes.
[[nodiscard]] bool straight_on(const Port& a, const Port& b);

/// The way straight through a piece: from its first port to another that lies straight on and looks on.
struct Through {
  Port entry;
  Port exit;
  Length length{};
};
[[nodiscard]] std::optional<Through> straight_through(const PieceGeometry& geometry);

/// Where a piece stands.
struct Stand {
  GridPoint at;
  Heading heading;
};

/// A stand and the piece's ports and axis there.
struct Placed {
  Stand stand;
  PieceGeometry geometry;
};

/// Where a piece must stand for its `port` to meet `target`: turned about the vertical by `swing`, as its neighbour
/// was; else straight on through its first port; else with the least change of heading. Nothing where no heading does.
[[nodiscard]] std::optional<Placed> stand_to_meet(const Design& design, const Library& library, const Piece& piece,
                                                  const PieceGeometry& given, std::string_view port, const Port& target,
                                                  Angle swing = {});

/// Every heading in which `port` of the piece meets `target`, the least change first.
[[nodiscard]] std::vector<Placed> stands_to_meet(const Design& design, const Library& library, const Piece& piece,
                                                 std::string_view port, const Port& target, Angle swing = {});

}  // namespace fluewright::edit
