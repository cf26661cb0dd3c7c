// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/hit.hpp"

#include <QLineF>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

constexpr double handle_reach = 13.0;
constexpr double joint_reach = 7.0;
constexpr double least_reach = 6.0;

/// The foot of a pixel on a polyline.
struct Foot {
  double distance = 1e9;  ///< pixels
  double part = 0.0;      ///< of the polyline's length on the sheet
};

Foot foot_on(const QPolygonF& axis, const Camera& camera, QPointF pixel) {
  Foot best;
  double whole = 0.0;
  double at_best = 0.0;
  for (qsizetype i = 1; i < axis.size(); ++i) {
    const QPointF a = camera.to_screen(axis[i - 1]);
    const QPointF step = camera.to_screen(axis[i]) - a;
    const double square = QPointF::dotProduct(step, step);
    const double length = std::sqrt(square);
    const double t = square > 0.0 ? std::clamp(QPointF::dotProduct(pixel - a, step) / square, 0.0, 1.0) : 0.0;
    const double distance = QLineF(pixel, a + t * step).length();
    if (distance < best.distance) {
      best.distance = distance;
      at_best = whole + t * length;
    }
    whole += length;
  }
  best.part = whole > 0.0 ? at_best / whole : 0.5;
  return best;
}

void hit_piece(Hit& found, const DrawnPiece& piece, const Camera& camera, const PathMeasure& measure, QPointF pixel) {
  for (const DrawnLine& line : piece.lines) {
    const Foot foot = foot_on(line.axis, camera, pixel);
    const double reach = std::max(least_reach, 0.5 * line.width * camera.scale());
    const bool inside = line.body && line.outline.containsPoint(camera.to_sheet(pixel), Qt::WindingFill);
    if (foot.distance > reach && !inside) continue;
    found.piece = piece.id;
    found.index = piece.index;
    found.s = measure.s_at(piece.index, line.line, foot.part);
    found.into_run = foot.part * length_of(measure.geometries()[piece.index].lines[line.line]);
    return;
  }
}

std::optional<PortRef> handle_at(const Drawing& drawing, const Camera& camera, const std::vector<OpenEnd>& ends,
                                 QPointF pixel, double reach) {
  std::optional<PortRef> found;
  for (const OpenEnd& end : ends) {
    const DrawnPort* port = drawing.port(end.ref);
    if (port == nullptr) continue;
    const double distance = std::min(QLineF(pixel, handle_of(*port, camera)).length(),
                                     QLineF(pixel, camera.to_screen(port->at)).length());
    if (distance <= reach) {
      reach = distance;
      found = end.ref;
    }
  }
  return found;
}

std::optional<PortRef> joint_at(const Drawing& drawing, const Camera& camera, QPointF pixel) {
  double reach = joint_reach;
  std::optional<PortRef> found;
  for (const DrawnPiece& piece : drawing.pieces()) {
    for (const DrawnPort& port : piece.ports) {
      if (!port.joined) continue;
      const double distance = QLineF(pixel, camera.to_screen(port.at)).length();
      if (distance > reach) continue;
      reach = distance;
      found = port.ref;
    }
  }
  return found;
}

}  // namespace

QPointF handle_of(const DrawnPort& port, const Camera& camera) {
  const QPointF at = camera.to_screen(port.at);
  const double length = std::hypot(port.outward.x(), port.outward.y());
  if (length < 0.2) return at;
  const QPointF outward(port.outward.x() / length, -port.outward.y() / length);
  return at + outward * (handle_radius + 6.0);
}

Hit hit(const Drawing& drawing, const Camera& camera, const Ends& ends, const PathMeasure& measure, QPointF pixel) {
  Hit found;
  found.end = handle_at(drawing, camera, ends.open, pixel, handle_reach);
  if (!found.end) found.end = handle_at(drawing, camera, ends.capped, pixel, handle_reach);
  if (found.end) return found;
  found.joint = joint_at(drawing, camera, pixel);
  const auto& pieces = drawing.pieces();
  for (auto piece = pieces.rbegin(); piece != pieces.rend() && found.piece.empty(); ++piece) {
    hit_piece(found, *piece, camera, measure, pixel);
  }
  return found;
}

std::optional<PortRef> end_near(const Drawing& drawing, const Camera& camera, const Ends& ends, QPointF pixel,
                                double reach_pixels) {
  if (auto open = handle_at(drawing, camera, ends.open, pixel, reach_pixels)) return open;
  return handle_at(drawing, camera, ends.capped, pixel, handle_reach);
}

}  // namespace fluewright
