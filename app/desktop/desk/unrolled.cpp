// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/unrolled.hpp"

#include "engine/layout/edit_joints.hpp"

#include <algorithm>
#include <cmath>
#include <deque>
#include <optional>

namespace fluewright {

namespace {

double across(const Position& a, const Position& b) { return std::hypot(in(b.x - a.x, metre), in(b.y - a.y, metre)); }

bool is_vertical(const Heading& heading) { return std::abs(in(heading.elevation, degree)) > 80.0; }

/// One piece laid along the east from where it is entered.
class LaidOut {
 public:
  LaidOut(const PieceGeometry& given, const Port& entry, double start) : flat_{given}, entry_{entry.at}, start_{start} {
    for (CentreLine& line : flat_.lines) lay(line);
    for (std::size_t i = 0; i < flat_.ports.size(); ++i) {
      Port& port = flat_.ports[i];
      const bool entered = port.name == entry.name;
      const double u = entered ? start_ : place_of(given, given.ports[i].at);
      port.at = {u * metre, 0.0 * metre, port.at.z};
      if (!is_vertical(port.outward)) port.outward = {(entered ? 180.0 : 0.0) * degree, port.outward.elevation};
    }
  }

  [[nodiscard]] PieceGeometry take() && { return std::move(flat_); }

 private:
  void lay(CentreLine& line) {
    if (line.points.empty()) return;
    // From the end that is nearer to where one comes in.
    const bool back = across(entry_, line.points.back()) < across(entry_, line.points.front()) - 1e-9;
    std::vector<Position> points = line.points;
    if (back) std::reverse(points.begin(), points.end());
    double u = start_ + across(entry_, points.front());
    std::vector<Position> laid;
    for (std::size_t i = 0; i < points.size(); ++i) {
      if (i > 0) u += across(points[i - 1], points[i]);
      laid.push_back({u * metre, 0.0 * metre, points[i].z});
    }
    if (back) std::reverse(laid.begin(), laid.end());
    line.points = std::move(laid);
  }

  /// Where a port is now: at the end of the line it was at the end of, else straight away from the entry.
  [[nodiscard]] double place_of(const PieceGeometry& given, const Position& port) const {
    for (std::size_t i = 0; i < given.lines.size(); ++i) {
      const auto& was = given.lines[i].points;
      if (was.empty()) continue;
      if (distance(was.front(), port) < 1.0 * millimetre) return in(flat_.lines[i].points.front().x, metre);
      if (distance(was.back(), port) < 1.0 * millimetre) return in(flat_.lines[i].points.back().x, metre);
    }
    return start_ + across(entry_, port);
  }

  PieceGeometry flat_;
  Position entry_;
  double start_;
};

}  // namespace

std::vector<PieceGeometry> unrolled(const Design& design, const TracedPath& path,
                                    const std::vector<PieceGeometry>& geometries) {
  const edit::JointIndex index{design};
  std::vector<PieceGeometry> flat(geometries.size());
  std::vector<char> laid(geometries.size(), 0);
  std::deque<std::size_t> queue;
  double farthest = 0.0;
  const auto lay = [&](std::size_t piece, const Port& entry, double start) {
    flat[piece] = LaidOut(geometries[piece], entry, start).take();
    laid[piece] = 1;
    queue.push_back(piece);
    for (const Port& port : flat[piece].ports) farthest = std::max(farthest, in(port.at.x, metre));
  };
  // What is joined to a laid piece goes on from there, the path first.
  const auto follow_joints = [&] {
    while (!queue.empty()) {
      const std::size_t piece = queue.front();
      queue.pop_front();
      for (const edit::Link& link : index.links(piece)) {
        if (link.other >= laid.size() || laid[link.other] != 0) continue;
        const Port* from = flat[piece].port(link.port);
        const Port* into = geometries[link.other].port(link.other_port);
        if (from != nullptr && into != nullptr) lay(link.other, *into, in(from->at.x, metre));
      }
    }
  };
  double start = 0.0;
  for (const Passage& passage : path.passages) {
    if (passage.piece >= geometries.size() || laid[passage.piece] != 0) continue;
    const Port* entry = geometries[passage.piece].port(passage.entry);
    if (entry == nullptr) continue;
    lay(passage.piece, *entry, start);
    const Port* exit = flat[passage.piece].port(passage.exit);
    if (exit != nullptr) start = in(exit->at.x, metre);
  }
  follow_joints();
  constexpr double apart = 0.6;
  for (std::size_t i = 0; i < geometries.size(); ++i) {
    if (laid[i] != 0 || geometries[i].ports.empty()) continue;
    lay(i, geometries[i].ports.front(), farthest + (farthest > 0.0 ? apart : 0.0));
    follow_joints();
  }
  return flat;
}

}  // namespace fluewright
