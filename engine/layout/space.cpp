// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/space.hpp"

#include <cmath>
#include <numbers>

namespace fluewright {

namespace {

/// Sines and cosines that are zero or one but for rounding, so that a turn of four right angles ends where it began.
double tidy_cosine(double value) {
  constexpr double dust = 1e-14;
  if (std::abs(value) < dust) return 0.0;
  if (std::abs(value - 1.0) < dust) return 1.0;
  if (std::abs(value + 1.0) < dust) return -1.0;
  return value;
}

/// Whole billionths of a degree: right angles come out as the very number a person would type.
Angle tidy_angle(double radians) {
  constexpr double billion = 1e9;
  return std::round(radians * 180.0 / std::numbers::pi * billion) / billion * degree;
}

/// In [0, 360) degrees.
Angle tidy_azimuth(double radians) {
  const Angle tidy = tidy_angle(radians);
  const double degrees = in(tidy, degree);
  if (degrees < 0.0) return tidy_angle(radians + 2.0 * std::numbers::pi);
  if (degrees >= 360.0) return tidy_angle(radians - 2.0 * std::numbers::pi);
  return tidy;
}

bool is_vertical(const Frame& frame) { return frame.forward[0] == 0.0 && frame.forward[1] == 0.0; }

std::int32_t nearest_count(Length length) { return static_cast<std::int32_t>(std::lround(in(length, grid_count))); }

}  // namespace

Position position_of(const GridPoint& point) {
  return {static_cast<double>(point.x) * grid_count, static_cast<double>(point.y) * grid_count,
          static_cast<double>(point.z) * grid_count};
}

GridPoint grid_point_near(const Position& position) {
  return {nearest_count(position.x), nearest_count(position.y), nearest_count(position.z)};
}

Length distance(const Position& a, const Position& b) {
  const Position d = a - b;
  return bu::sqrt(d.x * d.x + d.y * d.y + d.z * d.z);
}

Frame frame_of(const Heading& heading) {
  const double azimuth = in(heading.azimuth, radian);
  const double elevation = in(heading.elevation, radian);
  const double ca = tidy_cosine(std::cos(azimuth));
  const double sa = tidy_cosine(std::sin(azimuth));
  const double ce = tidy_cosine(std::cos(elevation));
  const double se = tidy_cosine(std::sin(elevation));
  return {{ce * ca, ce * sa, se}, {-sa, ca, 0.0}, {-se * ca, -se * sa, ce}};
}

bool same_direction(const Heading& a, const Heading& b) {
  constexpr double tolerance = 2e-4;  // radians; headings in files are written to a hundredth of a degree
  const Frame fa = frame_of(a);
  const Frame fb = frame_of(b);
  double square = 0.0;
  for (int i = 0; i < 3; ++i) {
    const double d = fa.forward[i] - fb.forward[i];
    square += d * d;
  }
  return square < tolerance * tolerance;
}

Heading opposite(const Heading& h) {
  const Angle elevation = tidy_angle(-in(h.elevation, radian));
  if (is_vertical(frame_of(h))) return {h.azimuth, elevation};
  return {tidy_azimuth(in(h.azimuth, radian) + std::numbers::pi), elevation};
}

Heading turned(const Heading& heading, Turn turn, Angle angle) {
  const Frame frame = frame_of(heading);
  const Ratio* side = turn == Turn::left || turn == Turn::right ? frame.left : frame.up;
  const double sign = turn == Turn::left || turn == Turn::up ? 1.0 : -1.0;
  const double c = tidy_cosine(std::cos(in(angle, radian)));
  const double s = sign * tidy_cosine(std::sin(in(angle, radian)));

  double way[3];
  for (int i = 0; i < 3; ++i) way[i] = tidy_cosine(c * frame.forward[i] + s * side[i]);
  const double level = std::hypot(way[0], way[1]);
  const Angle elevation = tidy_angle(std::atan2(way[2], level));
  // A sine within rounding of one leaves a level part that is all noise: then the old azimuth stands.
  constexpr double vertical_below = 1e-9;
  if (level < vertical_below) return {heading.azimuth, elevation};
  return {tidy_azimuth(std::atan2(way[1], way[0])), elevation};
}

Position step_along(const Heading& heading, Length forward, Length left, Length up) {
  const Frame f = frame_of(heading);
  return {forward * f.forward[0] + left * f.left[0] + up * f.up[0],
          forward * f.forward[1] + left * f.left[1] + up * f.up[1],
          forward * f.forward[2] + left * f.left[2] + up * f.up[2]};
}

}  // namespace fluewright
