// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/tube.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fluewright {

namespace {

Metres cross(const Metres& a, const Metres& b) {
  return {a.y * b.z - a.z * b.y, a.z * b.x - a.x * b.z, a.x * b.y - a.y * b.x};
}

Metres scaled(const Metres& a, double by) { return {a.x * by, a.y * by, a.z * by}; }

Metres sum(const Metres& a, const Metres& b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }

Metres unit(const Metres& a) { return scaled(a, 1.0 / std::sqrt(dot(a, a))); }

/// Two unit vectors across `axis`: `level` at right angles to the line of sight, `near` towards the viewer.
struct Across {
  Metres level;
  Metres near;
};

Across across(const Projection& projection, const Metres& axis) {
  Metres level = cross(axis, projection.toward_viewer());
  if (dot(level, level) < 1e-9) {
    // Seen end on: any pair will do.
    const Metres helper = std::abs(axis.z) < 0.9 ? Metres{0, 0, 1} : Metres{1, 0, 0};
    level = cross(axis, helper);
  }
  level = unit(level);
  Metres near = cross(level, axis);
  if (dot(near, projection.toward_viewer()) < 0.0) near = scaled(near, -1.0);
  return {level, near};
}

constexpr int ring_steps = 32;

/// From `first` to `last` of the ring's steps; step 0 is `level`, a quarter later `near`.
QPolygonF arc(const Projection& projection, const Metres& at, const Metres& axis, double width, int first, int last) {
  const auto [level, near] = across(projection, axis);
  QPolygonF points;
  points.reserve(last - first + 1);
  for (int i = first; i <= last; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / ring_steps;
    const Metres out = sum(scaled(level, std::cos(angle)), scaled(near, std::sin(angle)));
    points << projection.on_sheet(sum(at, scaled(out, 0.5 * width)));
  }
  return points;
}

}  // namespace

bool end_on(const Projection& projection, const Metres& axis) {
  return std::abs(dot(axis, projection.toward_viewer())) > 0.999;
}

QPolygonF ring(const Projection& projection, const Metres& at, const Metres& axis, double width) {
  return arc(projection, at, axis, width, 0, ring_steps);
}

QPolygonF near_half_ring(const Projection& projection, const Metres& at, const Metres& axis, double width) {
  if (end_on(projection, axis)) return ring(projection, at, axis, width);
  return arc(projection, at, axis, width, 0, ring_steps / 2);
}

QPolygonF tube(const Projection& projection, const Metres& from, const Metres& to, double width, double width_to) {
  const Metres step{to.x - from.x, to.y - from.y, to.z - from.z};
  if (dot(step, step) < 1e-12) return {};
  const Metres axis = unit(step);
  if (end_on(projection, axis)) return ring(projection, to, axis, std::max(width, width_to));
  // The far end shows the half of its ring that bulges away from the tube, the near end likewise: which half is the
  // outer one depends on whether the axis leans towards the viewer.
  const bool leans_near = dot(axis, projection.toward_viewer()) > 0.0;
  const int half = ring_steps / 2;
  const int at_to = leans_near ? half : 0;    // the ring's near side lies "down" the axis when it leans near
  const int at_from = leans_near ? 0 : half;
  QPolygonF outline = arc(projection, to, axis, width_to, at_to, at_to + half);
  outline << arc(projection, from, axis, width, at_from, at_from + half);
  outline << outline.front();
  return outline;
}

QPolygonF box(const Projection& projection, const Metres& low, const Metres& high) {
  const auto at = [&](double x, double y, double z) { return projection.on_sheet(Metres{x, y, z}); };
  switch (projection.kind()) {
    case ViewKind::plan:
      return {{at(low.x, low.y, low.z), at(high.x, low.y, low.z), at(high.x, high.y, low.z), at(low.x, high.y, low.z)}};
    case ViewKind::front:
    case ViewKind::unrolled:
      return {{at(low.x, low.y, low.z), at(high.x, low.y, low.z), at(high.x, low.y, high.z), at(low.x, low.y, high.z)}};
    case ViewKind::side:
      return {{at(low.x, low.y, low.z), at(low.x, high.y, low.z), at(low.x, high.y, high.z), at(low.x, low.y, high.z)}};
    case ViewKind::isometric: break;
  }
  return {{at(low.x, low.y, low.z), at(high.x, low.y, low.z), at(high.x, low.y, high.z), at(high.x, high.y, high.z),
           at(low.x, high.y, high.z), at(low.x, high.y, low.z)}};
}

}  // namespace fluewright
