// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/piece_painter.hpp"

#include "app/desktop/desk/motifs.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QLinearGradient>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

constexpr double outline_pixels = 1.3;
constexpr double selected_pixels = 2.4;
/// A shorter line has one colour, and a narrower pipe no seams: nobody could see more, and a thousand of them cost time.
constexpr double shaded_pixels = 20.0;
constexpr double seam_pixels = 4.0;

/// Closed lines that are almost lines (a ring seen from its side) are drawn but not filled.
bool is_flat(const QPolygonF& polygon) {
  const QRectF box = polygon.boundingRect();
  return box.width() < 0.5 || box.height() < 0.5;
}

QBrush fill_of(const Camera& camera, const DrawnLine& line) {
  if (line.stops.isEmpty()) return theme().inks.bare;
  if (line.seen_end_on) return fill_at(line, line.flow_toward_viewer == (line.flow > 0) ? 1.0 : 0.0);
  const QPointF from = camera.to_screen(line.axis.front());
  const QPointF to = camera.to_screen(line.axis.back());
  if (std::hypot(to.x() - from.x(), to.y() - from.y()) < shaded_pixels) return fill_at(line, 0.5);
  QLinearGradient gradient(from, to);
  gradient.setStops(line.stops);
  return gradient;
}

void paint_straight(QPainter& painter, const Camera& camera, const DrawnLine& line, const QPen& pen) {
  painter.setPen(pen);
  painter.setBrush(fill_of(camera, line));
  painter.drawPolygon(to_screen(camera, line.outline));
  const QPolygonF end = to_screen(camera, line.near_end);
  if (!line.near_end.isEmpty() && !is_flat(end)) {
    const QPointF middle = line.near_end.boundingRect().center();
    const bool at_front = QLineF(middle, line.axis.front()).length() < QLineF(middle, line.axis.back()).length();
    painter.setBrush(fill_at(line, at_front ? 0.0 : 1.0).lighter(line.body ? 112 : 106));
    painter.drawPolygon(end);
  }
}

void paint_bent(QPainter& painter, const Camera& camera, const DrawnLine& line, const QPen& pen) {
  const QPolygonF axis = to_screen(camera, line.axis);
  const double width = std::max(1.0, line.width * camera.scale());
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(pen.brush(), width + pen.widthF(), Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
  painter.drawPolyline(axis);
  painter.setPen(QPen(fill_of(camera, line), std::max(1.0, width - pen.widthF()), Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
  painter.drawPolyline(axis);
}

/// The axis as a long-dashed dotted line (ISO 128-2, line type 04), where the pipe is wide enough to carry one.
void paint_axis(QPainter& painter, const Camera& camera, const DrawnLine& line) {
  if (line.seen_end_on || line.body || line.width * camera.scale() < 12.0) return;
  QColor colour = ink_on(fill_at(line, 0.5));
  colour.setAlphaF(0.45F);
  QPen pen(colour, 0.8);
  pen.setCapStyle(Qt::FlatCap);
  pen.setDashPattern({16.0, 4.0, 2.0, 4.0});
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  painter.drawPolyline(to_screen(camera, line.axis));
}

/// Gas that comes out of the sheet shows a dot, gas that goes into it a cross, as the head and the tail of an arrow.
void paint_end_on_flow(QPainter& painter, const Camera& camera, const DrawnLine& line) {
  const double radius = 0.5 * line.width * camera.scale();
  if (!line.seen_end_on || line.flow == 0 || radius < 5.0) return;
  const QPointF centre = camera.to_screen(line.axis.back());
  const QColor ink = ink_on(fill_at(line, 0.5));
  painter.setPen(QPen(ink, 1.2));
  if (line.flow_toward_viewer) {
    painter.setBrush(ink);
    painter.drawEllipse(centre, 2.5, 2.5);
  } else {
    const double arm = radius * 0.7071;
    painter.drawLine(centre + QPointF(-arm, -arm), centre + QPointF(arm, arm));
    painter.drawLine(centre + QPointF(-arm, arm), centre + QPointF(arm, -arm));
  }
}

/// On the screen, whatever the scale of the drawing.
constexpr double arrow_pixels_per_metre_per_second = 22.0;

void paint_flow_arrow(QPainter& painter, const Camera& camera, const DrawnLine& line) {
  if (line.flow == 0 || line.seen_end_on || line.body || line.axis.size() != 2) return;
  const QPointF from = camera.to_screen(line.axis.front());
  const QPointF to = camera.to_screen(line.axis.back());
  const QPointF step = line.flow > 0 ? to - from : from - to;
  const double length = std::hypot(step.x(), step.y());
  if (length < 44.0) return;
  const QPointF forward = step / length;
  const QPointF aside{-forward.y(), forward.x()};
  const double size = std::clamp(line.width * camera.scale() * 0.32, 4.0, 9.0);
  const QColor ink = ink_on(fill_at(line, 0.5));
  QPointF tip = 0.5 * (from + to) + forward * size;
  if (line.speed) {
    // A moment is played: the faster the gas, the longer the arrow; gas that stands still has none.
    const double shaft = std::min(arrow_pixels(*line.speed), length - 12.0);
    if (shaft < 3.0) return;
    tip = 0.5 * (from + to) + forward * (0.5 * shaft + size);
    painter.setPen(QPen(ink, std::max(1.5, 0.5 * size), Qt::SolidLine, Qt::FlatCap));
    painter.drawLine(tip - forward * (shaft + size), tip - forward * size);
  }
  painter.setPen(Qt::NoPen);
  painter.setBrush(ink);
  painter.drawPolygon(QPolygonF{tip, tip - forward * (2.0 * size) + aside * (0.62 * size),
                                tip - forward * (2.0 * size) - aside * (0.62 * size)});
}

void paint_seams(QPainter& painter, const Camera& camera, const DrawnPiece& piece, const QPen& pen) {
  painter.setPen(pen);
  painter.setBrush(Qt::NoBrush);
  for (const DrawnPort& port : piece.ports) {
    if (port.width * camera.scale() < seam_pixels) continue;
    painter.drawPolyline(to_screen(camera, port.seam));
  }
}

void paint_glow(QPainter& painter, const Camera& camera, const DrawnPiece& piece) {
  QColor glow = theme().inks.accent;
  glow.setAlphaF(0.28F);
  painter.setBrush(Qt::NoBrush);
  for (const DrawnLine& line : piece.lines) {
    if (!line.outline.isEmpty()) {
      painter.setPen(QPen(glow, 9.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
      painter.drawPolygon(to_screen(camera, line.outline));
    } else {
      painter.setPen(QPen(glow, line.width * camera.scale() + 9.0, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin));
      painter.drawPolyline(to_screen(camera, line.axis));
    }
  }
}

}  // namespace

QPolygonF to_screen(const Camera& camera, const QPolygonF& sheet) {
  QPolygonF screen;
  screen.reserve(sheet.size());
  for (const QPointF& point : sheet) screen << camera.to_screen(point);
  return screen;
}

QColor fill_at(const DrawnLine& line, double part) {
  if (line.stops.isEmpty()) return theme().inks.bare;
  const auto last = line.stops.size() - 1;
  const auto nearest = static_cast<qsizetype>(std::lround(std::clamp(part, 0.0, 1.0) * static_cast<double>(last)));
  return line.stops[nearest].second;
}

double arrow_pixels(Velocity speed) { return arrow_pixels_per_metre_per_second * in(speed, metre_per_second); }

QColor ink_on(const QColor& fill) {
  static const QColor dark = day_inks().ink;
  static const QColor light = day_inks().paper;
  return contrast(fill, dark) >= contrast(fill, light) ? dark : light;
}

void paint_masses(QPainter& painter, const Camera& camera, const Drawing& drawing) {
  QPainterPath all;
  all.setFillRule(Qt::WindingFill);
  const QRectF sight = camera.in_sight();
  for (const DrawnPiece& piece : drawing.pieces()) {
    if (piece.mass.empty() || !piece.bounds.intersects(sight)) continue;
    for (const QPolygonF& outline : piece.mass) {
      all.addPolygon(to_screen(camera, outline));
      all.closeSubpath();
    }
  }
  if (all.isEmpty()) return;
  const Inks& inks = theme().inks;
  // Outlines first, then the paper over all of them: what is left is the outline around touching runs as one body.
  painter.setPen(QPen(inks.mass_line, 3.0, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(all);
  painter.setPen(Qt::NoPen);
  painter.setBrush(inks.paper);
  painter.drawPath(all);
  painter.setBrush(inks.mass);
  painter.drawPath(all);
  QColor hatch = inks.mass_line;
  hatch.setAlphaF(0.35F);
  painter.setBrush(QBrush(hatch, Qt::BDiagPattern));
  painter.drawPath(all);
}

void paint_piece(QPainter& painter, const Camera& camera, const DrawnPiece& piece, const Emphasis& emphasis) {
  const Inks& inks = theme().inks;
  if (emphasis.pointed) paint_glow(painter, camera, piece);
  const QPen pen(emphasis.selected ? inks.accent : inks.ink, emphasis.selected ? selected_pixels : outline_pixels,
                 Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin);
  for (const DrawnLine& line : piece.lines) {
    if (line.outline.isEmpty()) {
      paint_bent(painter, camera, line, pen);
    } else {
      paint_straight(painter, camera, line, pen);
    }
  }
  for (const DrawnLine& line : piece.lines) {
    paint_axis(painter, camera, line);
    paint_end_on_flow(painter, camera, line);
    paint_flow_arrow(painter, camera, line);
  }
  paint_seams(painter, camera, piece, pen);
  paint_motif(painter, camera, piece, pen);
}

}  // namespace fluewright
