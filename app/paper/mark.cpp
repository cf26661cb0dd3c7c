// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/mark.hpp"

#include "app/paper/type.hpp"

#include <QTransform>

#include <cmath>
#include <numbers>

namespace fluewright::paper {

void Figure::line(QPointF from, QPointF to, Stroke stroke, Layer layer) {
  marks.emplace_back(Stroked{{from, to}, false, stroke, Fill::none, layer});
}

void Figure::poly(QPolygonF points, bool closed, Stroke stroke, Fill fill, Layer layer) {
  if (points.size() < 2) return;
  marks.emplace_back(Stroked{std::move(points), closed, stroke, fill, layer});
}

void Figure::box(const QRectF& rect, Stroke stroke, Fill fill, Layer layer) {
  poly({rect.topLeft(), rect.topRight(), rect.bottomRight(), rect.bottomLeft()}, true, stroke, fill, layer);
}

void Figure::circle(QPointF centre, double radius, Stroke stroke, Fill fill, Layer layer) {
  constexpr int corners = 40;
  QPolygonF points;
  for (int i = 0; i < corners; ++i) {
    const double angle = 2.0 * std::numbers::pi * i / corners;
    points << centre + radius * QPointF(std::cos(angle), std::sin(angle));
  }
  poly(std::move(points), true, stroke, fill, layer);
}

void Figure::words(QPointF at, const QString& text, Type type, Anchor anchor, double turn, Layer layer) {
  if (text.isEmpty()) return;
  marks.emplace_back(Words{at, text, type, anchor, turn, layer, false});
}

void Figure::put(const Figure& other, QPointF by) {
  for (const Mark& mark : other.marks) {
    Mark moved = mark;
    if (auto* stroked = std::get_if<Stroked>(&moved)) stroked->points.translate(by);
    if (auto* words = std::get_if<Words>(&moved)) words->at += by;
    marks.push_back(std::move(moved));
  }
}

QRectF Figure::bounds() const {
  QRectF all;
  for (const Mark& mark : marks) {
    if (const auto* stroked = std::get_if<Stroked>(&mark)) {
      // A level line has no height of its own; united() would drop it.
      constexpr double hair = 0.05;
      all |= stroked->points.boundingRect().adjusted(-hair, -hair, hair, hair);
    }
    if (const auto* words = std::get_if<Words>(&mark); words != nullptr && !words->ghost) all |= extent(*words);
  }
  return all;
}

}  // namespace fluewright::paper
