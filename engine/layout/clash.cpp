// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/clash.hpp"

#include "engine/layout/edit_joints.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

namespace fluewright {

namespace {

struct Vector {
  double x = 0.0;
  double y = 0.0;
  double z = 0.0;
};

Vector metres(const Position& at) { return {in(at.x, metre), in(at.y, metre), in(at.z, metre)}; }
Vector operator-(const Vector& a, const Vector& b) { return {a.x - b.x, a.y - b.y, a.z - b.z}; }
Vector operator+(const Vector& a, const Vector& b) { return {a.x + b.x, a.y + b.y, a.z + b.z}; }
Vector operator*(double by, const Vector& a) { return {by * a.x, by * a.y, by * a.z}; }
double dot(const Vector& a, const Vector& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }
double length(const Vector& a) { return std::sqrt(dot(a, a)); }

/// A round, flat-ended length of a piece.
struct Rod {
  Vector from;
  Vector step;
  double long_ = 0.0;
  double radius = 0.0;
};

struct Body {
  std::vector<Rod> rods;
  Vector low{1e9, 1e9, 1e9};
  Vector high{-1e9, -1e9, -1e9};
};

Body body_of(const PieceGeometry& geometry) {
  Body body;
  for (const CentreLine& line : geometry.lines) {
    const double radius = 0.5 * in(line.width, metre);
    for (std::size_t i = 1; i < line.points.size(); ++i) {
      const Vector from = metres(line.points[i - 1]);
      const Vector to = metres(line.points[i]);
      const Vector step = to - from;
      const double long_ = length(step);
      if (!(long_ > 1e-6) || !(radius > 0.0)) continue;
      body.rods.push_back({from, step, long_, radius});
      for (const Vector& end : {from, to}) {
        body.low = {std::min(body.low.x, end.x - radius), std::min(body.low.y, end.y - radius), std::min(body.low.z, end.z - radius)};
        body.high = {std::max(body.high.x, end.x + radius), std::max(body.high.y, end.y + radius), std::max(body.high.z, end.z + radius)};
      }
    }
  }
  return body;
}

bool apart(const Body& a, const Body& b) {
  return a.high.x < b.low.x || b.high.x < a.low.x || a.high.y < b.low.y || b.high.y < a.low.y || a.high.z < b.low.z ||
         b.high.z < a.low.z;
}

struct Overlap {
  Vector at;
  double depth = 0.0;
};

/// How far balls on the axis of one rod go into the other. A ball stays within its own flat ends.
void go_into(const Rod& balls, const Rod& rod, Overlap& deepest) {
  constexpr double sample_step = 0.025;
  const double margin = std::min(balls.radius, 0.5 * balls.long_);
  const double radius = std::min(balls.radius, 0.5 * balls.long_ + 1e-9);
  const int samples = std::max(1, static_cast<int>(std::ceil((balls.long_ - 2.0 * margin) / sample_step)));
  for (int i = 0; i <= samples; ++i) {
    const double along = margin + (balls.long_ - 2.0 * margin) * i / samples;
    const Vector at = balls.from + (along / balls.long_) * balls.step;
    const Vector arm = at - rod.from;
    const double on_axis = dot(arm, rod.step) / rod.long_;
    // Beside the rod's flat ends nothing overlaps for certain.
    if (on_axis < 0.0 || on_axis > rod.long_) continue;
    const Vector away = arm - (on_axis / rod.long_) * rod.step;
    const double depth = rod.radius + radius - length(away);
    const double out_of_end = std::min(on_axis, rod.long_ - on_axis) + radius;
    const double least = std::min(depth, out_of_end);
    if (least > deepest.depth) deepest = {at, least};
  }
}

std::optional<Overlap> overlap(const Body& a, const Body& b) {
  Overlap deepest;
  for (const Rod& rod_a : a.rods) {
    for (const Rod& rod_b : b.rods) {
      go_into(rod_a, rod_b, deepest);
      go_into(rod_b, rod_a, deepest);
    }
  }
  if (!(deepest.depth > in(clash_play, metre))) return std::nullopt;
  return deepest;
}

bool near_in_path(const edit::JointIndex& index, std::size_t a, std::size_t b) {
  for (const edit::Link& link : index.links(a)) {
    if (link.other == b) return true;
    for (const edit::Link& next : index.links(link.other)) {
      if (next.other == b) return true;
    }
  }
  return false;
}

}  // namespace

std::vector<Clash> clashes(const Design& design, const std::vector<const PieceGeometry*>& geometries) {
  const edit::JointIndex index{design};
  std::vector<Body> bodies;
  bodies.reserve(geometries.size());
  for (const PieceGeometry* geometry : geometries) {
    bodies.push_back(geometry == nullptr ? Body{} : body_of(*geometry));
  }
  // In order from west to east only neighbours need comparing.
  std::vector<std::size_t> order;
  for (std::size_t i = 0; i < bodies.size(); ++i) {
    if (!bodies[i].rods.empty()) order.push_back(i);
  }
  std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) { return bodies[a].low.x < bodies[b].low.x; });
  std::vector<Clash> found;
  for (std::size_t i = 0; i < order.size(); ++i) {
    for (std::size_t j = i + 1; j < order.size() && bodies[order[j]].low.x <= bodies[order[i]].high.x; ++j) {
      const auto [a, b] = std::minmax(order[i], order[j]);
      if (apart(bodies[a], bodies[b]) || near_in_path(index, a, b)) continue;
      if (const auto deepest = overlap(bodies[a], bodies[b])) {
        found.push_back({a, b, {deepest->at.x * metre, deepest->at.y * metre, deepest->at.z * metre}, deepest->depth * metre});
      }
    }
  }
  std::sort(found.begin(), found.end(), [](const Clash& a, const Clash& b) { return a.a != b.a ? a.a < b.a : a.b < b.b; });
  return found;
}

}  // namespace fluewright
