// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/paint.hpp"

#include "app/paper/type.hpp"

#include <QPainter>
#include <QPainterPath>

#include <cmath>

namespace fluewright::paper {

namespace {

constexpr double hatch_step = 1.8;  // mm

QPolygonF in_units(const QPolygonF& points) {
  QPolygonF scaled;
  scaled.reserve(points.size());
  for (const QPointF& p : points) scaled << p * font_units;
  return scaled;
}

QPen pen_of(Stroke stroke) {
  if (stroke == Stroke::none) return Qt::NoPen;
  QPen pen(Qt::black, width_of(stroke) * font_units, Qt::SolidLine, Qt::FlatCap, Qt::RoundJoin);
  const QList<double> dashes = dashes_of(stroke);
  if (!dashes.isEmpty()) {
    QList<qreal> pattern;  // in widths of the pen
    for (const double dash : dashes) pattern << dash / width_of(stroke);
    pen.setDashPattern(pattern);
  }
  return pen;
}

/// Slanted lines across an area, drawn as lines: a fax and a copier keep them, grey they do not.
void hatch(QPainter& painter, const QPolygonF& area, bool rising, bool falling, double step) {
  const QRectF box = area.boundingRect();
  QPainterPath path;
  path.addPolygon(area);
  painter.save();
  painter.setClipPath(path, Qt::IntersectClip);
  painter.setPen(QPen(Qt::black, 0.10 * font_units, Qt::SolidLine, Qt::FlatCap));
  const double pitch = step * font_units * std::sqrt(2.0);
  const double span = box.height();
  // Counted from the sheet's own corner, so that touching areas hatch as one.
  for (double x = std::floor((box.left() - span) / pitch) * pitch; x < box.right() + span; x += pitch) {
    if (rising) {
      const double at = x - std::fmod(box.bottom(), pitch);
      painter.drawLine(QPointF(at, box.bottom()), QPointF(at + span, box.top()));
    }
    if (falling) {
      const double at = x + std::fmod(box.top(), pitch);
      painter.drawLine(QPointF(at, box.top()), QPointF(at + span, box.bottom()));
    }
  }
  painter.restore();
}

void dots(QPainter& painter, const QPolygonF& area) {
  const QRectF box = area.boundingRect();
  QPainterPath path;
  path.addPolygon(area);
  painter.save();
  painter.setClipPath(path, Qt::IntersectClip);
  painter.setPen(Qt::NoPen);
  painter.setBrush(Qt::black);
  const double pitch = 2.2 * font_units;
  bool odd = false;
  for (double y = std::floor(box.top() / pitch) * pitch; y < box.bottom(); y += pitch, odd = !odd) {
    for (double x = std::floor(box.left() / pitch) * pitch + (odd ? 0.5 * pitch : 0.0); x < box.right(); x += pitch) {
      painter.drawEllipse(QPointF(x, y), 0.13 * font_units, 0.13 * font_units);
    }
  }
  painter.restore();
}

void fill(QPainter& painter, const QPolygonF& area, Fill fill) {
  painter.setPen(Qt::NoPen);
  switch (fill) {
    case Fill::none:
      return;
    case Fill::white:
      painter.setBrush(Qt::white);
      break;
    case Fill::black:
      painter.setBrush(Qt::black);
      break;
    case Fill::slanted:
      hatch(painter, area, true, false, hatch_step);
      return;
    case Fill::crossed:
      hatch(painter, area, true, true, 0.8 * hatch_step);
      return;
    case Fill::dotted:
      dots(painter, area);
      return;
  }
  painter.drawPolygon(area);
}

void paint(QPainter& painter, const Stroked& mark) {
  const QPolygonF points = in_units(mark.points);
  if (mark.closed) fill(painter, points, mark.fill);
  painter.setBrush(Qt::NoBrush);
  painter.setPen(pen_of(mark.stroke));
  if (mark.stroke == Stroke::none) return;
  if (mark.closed) {
    painter.drawPolygon(points);
  } else {
    painter.drawPolyline(points);
  }
}

/// The word across a draft: large, in thin outlines, behind everything.
void paint_ghost(QPainter& painter, const Words& words) {
  QFont font = font_of(Type::title);
  constexpr int huge = 4200;  // 42 mm
  font.setPixelSize(huge);
  font.setWeight(QFont::Black);
  QPainterPath path;
  path.addText(QPointF(), font, words.text);
  painter.save();
  painter.translate(words.at * font_units);
  painter.rotate(-words.turn);
  painter.translate(-0.5 * path.boundingRect().width(), 0.35 * huge);
  painter.setPen(QPen(QColor(0x70, 0x70, 0x70), 0.25 * font_units));
  painter.setBrush(Qt::NoBrush);
  painter.drawPath(path);
  painter.restore();
}

void paint(QPainter& painter, const Words& words) {
  if (words.ghost) {
    paint_ghost(painter, words);
    return;
  }
  const double width = width_of(words.text, words.type) * font_units;
  const double shift = words.anchor == Anchor::left ? 0.0 : words.anchor == Anchor::right ? -width : -0.5 * width;
  painter.save();
  painter.translate(words.at * font_units);
  if (words.turn != 0.0) painter.rotate(-words.turn);
  painter.setPen(Qt::black);
  painter.setFont(font_of(words.type));
  painter.drawText(QPointF(shift, 0.0), words.text);
  painter.restore();
}

}  // namespace

double width_of(Stroke stroke) {
  switch (stroke) {
    case Stroke::outline:
      return 0.35;
    case Stroke::clearance:
      return 0.35;
    case Stroke::bold:
      return 0.5;
    case Stroke::hidden:
      return 0.25;
    case Stroke::thin:
    case Stroke::axis:
      return 0.18;
    case Stroke::grid:
      return 0.13;
    case Stroke::none:
      break;
  }
  return 0.0;
}

QList<double> dashes_of(Stroke stroke) {
  switch (stroke) {
    case Stroke::hidden:
      return {1.6, 0.9};
    case Stroke::grid:
      return {0.3, 1.2};
    case Stroke::axis:
      return {5.0, 0.9, 0.5, 0.9};
    case Stroke::clearance:
      return {4.0, 0.9, 0.5, 0.9, 0.5, 0.9};
    default:
      return {};
  }
}

void paint(QPainter& painter, const Figure& figure) {
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setRenderHint(QPainter::TextAntialiasing);
  for (const Mark& mark : figure.marks) {
    std::visit([&painter](const auto& m) { paint(painter, m); }, mark);
  }
}

}  // namespace fluewright::paper
