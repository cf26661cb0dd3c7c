// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

#include <cstdint>

namespace fluewright {

/// A point of the drawing, counted in whole tenths of a millimetre so that both the 25 mm and the 1 in grid are
/// exact. x east, y north, z up from the room's floor. An integer type on purpose: a point is not a length.
struct GridPoint {
  std::int32_t x = 0;
  std::int32_t y = 0;
  std::int32_t z = 0;
  friend bool operator==(const GridPoint&, const GridPoint&) = default;
};

/// One count of a GridPoint.
inline constexpr Length grid_count = 0.1 * millimetre;

/// A point or a step in space, as lengths.
struct Position {
  Length x{};
  Length y{};
  Length z{};

  friend constexpr Position operator+(const Position& a, const Position& b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
  friend constexpr Position operator-(const Position& a, const Position& b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
};

[[nodiscard]] Position position_of(const GridPoint& point);
/// The nearest grid count.
[[nodiscard]] GridPoint grid_point_near(const Position& position);
[[nodiscard]] Length distance(const Position& a, const Position& b);

/// A direction as azimuth (0 east, 90 deg north) and elevation (90 deg straight up).
/// A vertical heading keeps its azimuth: it says which way the piece faces and so where its turns go.
struct Heading {
  Angle azimuth{};
  Angle elevation{};
  friend bool operator==(const Heading&, const Heading&) = default;
};

[[nodiscard]] bool same_direction(const Heading& a, const Heading& b);
[[nodiscard]] Heading opposite(const Heading& h);

inline constexpr Heading heading_east{};
inline constexpr Heading heading_north{90.0 * degree, {}};
inline constexpr Heading heading_west{180.0 * degree, {}};
inline constexpr Heading heading_south{270.0 * degree, {}};
/// Up or down while facing the given azimuth.
[[nodiscard]] constexpr Heading heading_up(Angle facing = {}) { return {facing, 90.0 * degree}; }
[[nodiscard]] constexpr Heading heading_down(Angle facing = {}) { return {facing, -90.0 * degree}; }

/// Which way a bend turns or a branch leaves, seen by someone walking along the heading with the frame's up
/// overhead. Straight up, `down` leads towards the facing azimuth and `up` away from it; straight down it is the
/// other way round. `left` and `right` stay left and right of the facing azimuth on every heading.
enum class Turn { left, right, up, down };

/// Right-handed frame of a heading: forward, left, up as direction cosines (east, north, up).
struct Frame {
  Ratio forward[3];
  Ratio left[3];
  Ratio up[3];
};

[[nodiscard]] Frame frame_of(const Heading& heading);
/// The heading after turning by `angle` towards `turn`. A result that is vertical keeps the azimuth it came with.
[[nodiscard]] Heading turned(const Heading& heading, Turn turn, Angle angle);
/// Step of `forward`, `left`, `up` in the frame of `heading`.
[[nodiscard]] Position step_along(const Heading& heading, Length forward, Length left = {}, Length up = {});

}  // namespace fluewright
