// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/drawing.hpp"

#include "app/desktop/desk/tube.hpp"
#include "engine/layout/edit_joints.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

Metres axis_between(const Metres& from, const Metres& to) {
  const Metres step{to.x - from.x, to.y - from.y, to.z - from.z};
  const double length = std::sqrt(dot(step, step));
  if (length < 1e-9) return {0, 0, 1};
  return {step.x / length, step.y / length, step.z / length};
}

/// Colours along a line: one every ten centimetres or so.
QGradientStops stops_along(const CentreLine& line, std::size_t piece, PathMeasure::LineShares shares, const Tint& tint) {
  const int steps = std::clamp(static_cast<int>(std::lround(in(length_of(line), metre) / 0.1)), 1, 24);
  QGradientStops stops;
  for (int i = 0; i <= steps; ++i) {
    const double part = static_cast<double>(i) / steps;
    const auto colour = tint.at(piece, shares.first + part * (shares.last - shares.first));
    if (!colour) return {};
    stops << QGradientStop(part, *colour);
  }
  return stops;
}

/// `widening`: width at the line's end over that at its start.
DrawnLine draw_line(const CentreLine& line, double widening, const Projection& projection) {
  DrawnLine drawn;
  drawn.width = in(line.width, metre) * projection.widening();
  drawn.body = line.upright_body;
  for (const Position& point : line.points) drawn.axis << projection.on_sheet(point);
  if (line.points.size() == 2) {
    const Metres from = metres(line.points.front());
    const Metres to = metres(line.points.back());
    const Metres axis = axis_between(from, to);
    const double width = in(line.width, metre);
    drawn.seen_end_on = end_on(projection, axis);
    drawn.outline = tube(projection, from, to, width, width * widening);
    const bool to_is_near = projection.nearness(to) >= projection.nearness(from);
    if (!drawn.seen_end_on) drawn.near_end = ring(projection, to_is_near ? to : from, axis, to_is_near ? width * widening : width);
  }
  return drawn;
}

/// A taper's two ports differ; every other straight piece is as wide at its end as at its start.
double widening_of(const PieceGeometry& geometry, const PieceType* type) {
  if (type == nullptr || type->shape != "taper" || geometry.ports.size() != 2) return 1.0;
  return geometry.ports[1].section.equal_area_diameter() / geometry.ports[0].section.equal_area_diameter();
}

DrawnPort draw_port(const Port& port, const PieceId& id, bool joined, const Projection& projection) {
  DrawnPort drawn;
  drawn.ref = {id, port.name};
  drawn.at = projection.on_sheet(port.at);
  const Metres outward = unit_of(port.outward);
  drawn.outward = projection.on_sheet(outward);
  const double width = in(port.section.equal_area_diameter(), metre);
  drawn.seam = near_half_ring(projection, metres(port.at), outward, width);
  drawn.width = width * projection.widening();
  drawn.kind = port.kind;
  drawn.joined = joined;
  drawn.may_stay_shut = port.may_stay_shut;
  return drawn;
}

QRectF bounds_of(const DrawnPiece& piece) {
  QRectF bounds;
  for (const DrawnLine& line : piece.lines) {
    const double half = 0.5 * line.width;
    bounds |= line.outline.boundingRect() | line.axis.boundingRect().adjusted(-half, -half, half, half);
  }
  for (const DrawnPort& port : piece.ports) {
    bounds |= QRectF(port.at, port.at).adjusted(-0.5 * port.width, -0.5 * port.width, 0.5 * port.width, 0.5 * port.width);
  }
  for (const QPolygonF& mass : piece.mass) bounds |= mass.boundingRect();
  return bounds;
}

DrawnPiece draw_piece(const PieceGeometry& geometry, const PieceType* type, const PieceId& id,
                      const Projection& projection) {
  DrawnPiece drawn;
  drawn.id = id;
  drawn.type = type;
  double nearest = -1e9;
  double farthest = 1e9;
  for (std::size_t i = 0; i < geometry.lines.size(); ++i) {
    const CentreLine& line = geometry.lines[i];
    if (line.points.size() < 2) continue;
    drawn.lines.push_back(draw_line(line, widening_of(geometry, type), projection));
    drawn.lines.back().line = i;
    for (const Position& point : line.points) {
      nearest = std::max(nearest, projection.nearness(metres(point)));
      farthest = std::min(farthest, projection.nearness(metres(point)));
    }
  }
  drawn.nearness = 0.5 * (nearest + farthest);
  return drawn;
}

/// The bench or the trench around a straight line: a box of the embedding's size about the axis.
QPolygonF mass_box(const CentreLine& line, Length width, Length height, const Projection& projection) {
  const Metres a = metres(line.points.front());
  const Metres b = metres(line.points.back());
  const Metres axis = axis_between(a, b);
  const double half_width = 0.5 * in(width, metre);
  const double half_height = 0.5 * in(height, metre);
  // Across a level run the mass is `width` wide and `height` high; around a standing one `width` both ways.
  const bool standing = std::abs(axis.z) > 0.7;
  const double rx = standing || std::abs(axis.y) > 0.5 ? half_width : 0.0;
  const double ry = standing || std::abs(axis.x) > 0.5 ? half_width : 0.0;
  const double rz = standing ? 0.0 : half_height;
  const Metres low{std::min(a.x, b.x) - rx, std::min(a.y, b.y) - ry, std::min(a.z, b.z) - rz};
  const Metres high{std::max(a.x, b.x) + rx, std::max(a.y, b.y) + ry, std::max(a.z, b.z) + rz};
  return box(projection, low, high);
}

void add_masses(std::vector<DrawnPiece>& pieces, const Document& document, const std::vector<PieceGeometry>& geometries,
                const Projection& projection) {
  for (const Branch& branch : document.assessment().path.network.branches) {
    for (const Stretch& stretch : branch.stretches) {
      if (stretch.place != Place::mass || stretch.piece >= pieces.size()) continue;
      DrawnPiece& piece = pieces[stretch.piece];
      if (!piece.mass.empty()) continue;
      for (const CentreLine& line : geometries[stretch.piece].lines) {
        if (line.points.size() < 2) continue;
        piece.mass.push_back(mass_box(line, stretch.embedding.width, stretch.embedding.height, projection));
      }
    }
  }
}

/// A riser stands in its barrel: it is drawn before the barrel's wall, whatever the middle of its height is.
void put_inside(std::vector<DrawnPiece>& pieces, const std::vector<PieceGeometry>& geometries) {
  for (DrawnPiece& body : pieces) {
    for (const CentreLine& wall : geometries[body.index].lines) {
      if (!wall.upright_body || wall.points.size() < 2) continue;
      const Metres low = metres(wall.points.front());
      const double radius = 0.5 * in(wall.width, metre);
      const double top = std::max(low.z, metres(wall.points.back()).z);
      for (DrawnPiece& other : pieces) {
        if (other.index == body.index || geometries[other.index].lines.empty()) continue;
        const Metres end = metres(geometries[other.index].lines.front().points.back());
        const bool inside = std::hypot(end.x - low.x, end.y - low.y) < 0.6 * radius && end.z > std::min(low.z, top) && end.z <= top;
        if (inside) other.nearness = std::min(other.nearness, body.nearness - 1e-6);
      }
    }
  }
}

std::optional<Length> straight_run(const PieceGeometry& geometry, const PieceType* type) {
  if (type == nullptr || type->field("length") == nullptr || geometry.lines.size() != 1 ||
      geometry.lines.front().points.size() != 2 || geometry.lines.front().upright_body) {
    return std::nullopt;
  }
  return length_of(geometry.lines.front());
}

}  // namespace

Drawing::Drawing(const Document& document, const PathMeasure& measure, const Tint& tint, const Projection& projection) {
  const Design& design = document.design();
  const auto& geometries = measure.geometries();
  const edit::JointIndex joints{design};
  for (std::size_t i = 0; i < design.pieces.size() && i < geometries.size(); ++i) {
    const Piece& piece = design.pieces[i];
    const PieceType* type = document.library().piece_type(piece.type);
    DrawnPiece drawn = draw_piece(geometries[i], type, piece.id, projection);
    drawn.index = i;
    for (const Port& port : geometries[i].ports) {
      drawn.ports.push_back(draw_port(port, piece.id, joints.link(i, port.name) != nullptr, projection));
    }
    for (DrawnLine& line : drawn.lines) {
      const CentreLine& centre = geometries[i].lines[line.line];
      const auto shares = measure.shares(i, line.line);
      line.stops = stops_along(centre, i, shares, tint);
      line.flow = shares.last > shares.first ? 1 : shares.last < shares.first ? -1 : 0;
      if (const auto speed = tint.speed(i, 0.5 * (shares.first + shares.last))) {
        if (*speed < Velocity{}) line.flow = -line.flow;
        line.speed = bu::abs(*speed);
      }
      const double nearer = projection.nearness(metres(centre.points.back())) - projection.nearness(metres(centre.points.front()));
      line.flow_toward_viewer = nearer * line.flow > 0.0;
    }
    drawn.run_length = straight_run(geometries[i], type);
    pieces_.push_back(std::move(drawn));
  }
  add_masses(pieces_, document, geometries, projection);
  put_inside(pieces_, geometries);
  for (DrawnPiece& piece : pieces_) {
    piece.bounds = bounds_of(piece);
    bounds_ |= piece.bounds;
  }
  std::stable_sort(pieces_.begin(), pieces_.end(),
                   [](const DrawnPiece& a, const DrawnPiece& b) { return a.nearness < b.nearness; });
  for (std::size_t i = 0; i < pieces_.size(); ++i) places_.emplace(pieces_[i].id, i);
}

Drawing Drawing::of_one(const PieceGeometry& geometry, const PieceType& type, const Projection& projection) {
  Drawing drawing;
  DrawnPiece piece = draw_piece(geometry, &type, {}, projection);
  for (const Port& port : geometry.ports) {
    piece.ports.push_back(draw_port(port, {}, true, projection));
    piece.ports.back().kind = PortKind::joint;  // no air goes in or out of a piece on the rack
  }
  piece.bounds = bounds_of(piece);
  drawing.bounds_ = piece.bounds;
  drawing.places_.emplace(piece.id, 0);
  drawing.pieces_.push_back(std::move(piece));
  return drawing;
}

const DrawnPiece* Drawing::piece(const PieceId& id) const {
  const auto found = places_.find(id);
  return found == places_.end() ? nullptr : &pieces_[found->second];
}

const DrawnPort* Drawing::port(const PortRef& ref) const {
  const DrawnPiece* owner = piece(ref.piece);
  if (owner == nullptr) return nullptr;
  const auto found = std::find_if(owner->ports.begin(), owner->ports.end(), [&](const DrawnPort& p) { return p.ref == ref; });
  return found == owner->ports.end() ? nullptr : &*found;
}

}  // namespace fluewright
