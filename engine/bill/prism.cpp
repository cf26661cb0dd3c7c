// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/bill/prism.hpp"

#include "engine/pieces/parts.hpp"

// Coordinates are whole counts already: rescaling would only lose them.
#define BOOST_GEOMETRY_NO_ROBUSTNESS
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <set>

namespace fluewright {

namespace {

namespace bg = boost::geometry;
using Point = bg::model::d2::point_xy<double>;
using Polygon = bg::model::polygon<Point>;
using Polygons = bg::model::multi_polygon<Polygon>;

/// Plans are worked in whole tenths of a millimetre: touching outlines touch exactly.
constexpr double grid(double metres) { return metres * 1e4; }

Polygon polygon_of(const Prism& prism) {
  Polygon polygon;
  for (const Position& p : prism.outline) {
    bg::append(polygon.outer(), Point{std::round(grid(in(p.x, metre))), std::round(grid(in(p.y, metre)))});
  }
  bg::correct(polygon);
  return polygon;
}

double covered_counts(const std::vector<const Prism*>& prisms) {
  Polygons all;
  for (const Prism* prism : prisms) {
    Polygons sum;
    bg::union_(all, polygon_of(*prism), sum);
    all = std::move(sum);
  }
  return bg::area(all);
}

Area area_of(double counts) { return counts * 1e-8 * square_metre; }

/// Level directions along and left of a line's start.
struct Across {
  double fx, fy;
};

Across direction(const Position& from, const Position& to) {
  const double x = in(to.x - from.x, metre);
  const double y = in(to.y - from.y, metre);
  const double length = std::hypot(x, y);
  if (length < 1e-9) return {1.0, 0.0};
  return {x / length, y / length};
}

/// The way a port lets gas out; where no port is, that of the line's own end. A bend's line is a polygon: its first and
/// last sides are chords and point a little aside.
Across direction_at(const PieceGeometry& geometry, const Position& end, const Across& chord, double sign) {
  for (const Port& port : geometry.ports) {
    if (distance(port.at, end) > grid_count) continue;
    const Frame frame = frame_of(port.outward);
    const double length = std::hypot(frame.forward[0].value(), frame.forward[1].value());
    if (length > 0.7) return {sign * frame.forward[0].value() / length, sign * frame.forward[1].value() / length};
  }
  return chord;
}

Position at(const Position& origin, const Across& a, Length forward, Length left) {
  return {origin.x + a.fx * forward - a.fy * left, origin.y + a.fy * forward + a.fx * left, origin.z};
}

std::vector<Position> rectangle(const Position& origin, const Across& a, Length back, Length front, Length right,
                                Length left) {
  return {at(origin, a, back, right), at(origin, a, front, right), at(origin, a, front, left),
          at(origin, a, back, left)};
}

struct Reach {
  Length least{};
  Length most{};
  void take(Length value) {
    least = std::min(least, value);
    most = std::max(most, value);
  }
};

bool stands(const CentreLine& line) {
  const Position step = line.points.back() - line.points.front();
  return bu::abs(step.z) > 0.7071 * distance({}, step);
}

Prism standing_mass(const CentreLine& line, Length width) {
  const Position& foot = line.points.front();
  const Length half = 0.5 * width;
  const Length other = line.points.back().z;
  return {rectangle(foot, {1.0, 0.0}, -half, half, -half, half), std::min(foot.z, other), std::max(foot.z, other)};
}

/// In the frame of the line's start: flat at the start, flat at the end where the line is straight or has turned
/// square, built out by half the width wherever it turns.
Prism lying_mass(const PieceGeometry& geometry, const CentreLine& line, Length width, Length height) {
  const Position& start = line.points.front();
  const Across a = direction_at(geometry, start, direction(start, line.points[1]), -1.0);
  Reach forward;
  Reach left;
  Length middle{};
  for (const Position& p : line.points) {
    const Position d = p - start;
    forward.take(d.x * a.fx + d.y * a.fy);
    left.take(d.y * a.fx - d.x * a.fy);
    middle += p.z / static_cast<double>(line.points.size());
  }
  const Across end = direction_at(geometry, line.points.back(),
                                  direction(line.points[line.points.size() - 2], line.points.back()), 1.0);
  const double along = end.fx * a.fx + end.fy * a.fy;
  const double aside = end.fy * a.fx - end.fx * a.fy;
  constexpr double square = 0.02;
  const Length half = 0.5 * width;
  const Length front = along > 1.0 - square ? forward.most : forward.most + half;
  const Length left_most = std::abs(along) < square && aside > 0.0 ? left.most : left.most + half;
  const Length right_most = std::abs(along) < square && aside < 0.0 ? left.least : left.least - half;
  return {rectangle(start, a, forward.least, front, right_most, left_most), middle - 0.5 * height,
          middle + 0.5 * height};
}

std::vector<Position> circle(const Position& centre, Length width) {
  constexpr int corners = 72;
  // As large as the circle, not inscribed in it.
  const double step = 2.0 * std::numbers::pi / corners;
  const Length radius = 0.5 * width * std::sqrt(step / std::sin(step));
  std::vector<Position> outline;
  for (int i = 0; i < corners; ++i) {
    outline.push_back({centre.x + std::cos(i * step) * radius, centre.y + std::sin(i * step) * radius, centre.z});
  }
  return outline;
}

Prism body(const PieceView& piece, const CentreLine& line) {
  const Position& foot = line.points.front();
  std::vector<Position> outline = circle(foot, line.width);
  if (piece.has("width") && piece.has("depth")) {
    const Length walls = parts::wall_thickness(piece);
    const double azimuth = in(piece.piece().heading.azimuth, radian);
    const Length across = 0.5 * piece.length("width") + walls;
    const Length along = 0.5 * piece.length("depth") + walls;
    outline = rectangle(foot, {std::cos(azimuth), std::sin(azimuth)}, -along, along, -across, across);
  }
  const Length other = line.points.back().z;
  return {std::move(outline), std::min(foot.z, other), std::max(foot.z, other)};
}

}  // namespace

Area covered_area(const std::vector<Prism>& prisms) {
  std::vector<const Prism*> all;
  for (const Prism& prism : prisms) all.push_back(&prism);
  return area_of(covered_counts(all));
}

Volume filled_volume(const std::vector<Prism>& prisms) {
  std::set<double> levels;
  for (const Prism& p : prisms) levels.insert({in(p.bottom, metre), in(p.top, metre)});
  Volume sum{};
  for (auto low = levels.begin(); low != levels.end() && std::next(low) != levels.end(); ++low) {
    const Length middle = 0.5 * (*low + *std::next(low)) * metre;
    std::vector<const Prism*> through;
    for (const Prism& p : prisms) {
      if (p.bottom < middle && middle < p.top) through.push_back(&p);
    }
    sum += area_of(covered_counts(through)) * ((*std::next(low) - *low) * metre);
  }
  return sum;
}

std::vector<Prism> mass_around(const PieceGeometry& geometry, Length width, Length height) {
  std::vector<Prism> prisms;
  for (const CentreLine& line : geometry.lines) {
    if (line.points.size() < 2) continue;
    prisms.push_back(stands(line) ? standing_mass(line, width) : lying_mass(geometry, line, width, height));
  }
  return prisms;
}

std::vector<Prism> standing_on(const PieceView& piece, const PieceGeometry& geometry) {
  std::vector<Prism> prisms;
  for (const CentreLine& line : geometry.lines) {
    if (line.points.size() < 2) continue;
    if (line.upright_body) {
      prisms.push_back(body(piece, line));
    } else if (!stands(line)) {
      prisms.push_back(lying_mass(geometry, line, line.width, line.width));
    } else {
      const Length other = line.points.back().z;
      prisms.push_back({circle(line.points.front(), line.width), std::min(line.points.front().z, other),
                        std::max(line.points.front().z, other)});
    }
  }
  return prisms;
}

}  // namespace fluewright
