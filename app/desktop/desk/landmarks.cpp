// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/landmarks.hpp"

#include "app/desktop/desk/desk_view.hpp"
#include "app/desktop/document.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace {
constexpr double same_place = 0.0006;  // metres: points stand on tenths of a millimetre
constexpr double too_near = 0.02;      // a line to oneself says nothing
}  // namespace

Landmarks::Landmarks(const Document& document, const PieceId& without) {
  const Design& design = document.design();
  const auto& geometries = document.geometries();
  for (std::size_t i = 0; i < design.pieces.size() && i < geometries.size(); ++i) {
    if (design.pieces[i].id == without) continue;
    for (const Port& port : geometries[i].ports) {
      const bool open = port.kind == PortKind::joint && !port.may_stay_shut && !design.joined_to({design.pieces[i].id, port.name});
      marks_.push_back({metres(port.at), open});
    }
  }
}

std::optional<double> Landmarks::in_line(const Metres& unit, double coordinate, double reach) const {
  std::optional<double> nearest;
  for (const Mark& mark : marks_) {
    const double there = dot(mark.at, unit);
    if (std::abs(there - coordinate) > reach) continue;
    if (!nearest || std::abs(there - coordinate) < std::abs(*nearest - coordinate)) nearest = there;
  }
  return nearest;
}

std::vector<Landmarks::Guide> Landmarks::along_the_axes(const Metres& point) const {
  static constexpr std::array axes{&Metres::x, &Metres::y, &Metres::z};
  std::vector<Guide> found;
  for (const auto square : axes) {
    // How far a mark is away counts along the other two axes; off this one it must not be.
    const Mark* best = nullptr;
    double best_away = 0.0;
    bool best_straight = false;
    for (const Mark& mark : marks_) {
      if (std::abs(mark.at.*square - point.*square) > same_place) continue;
      double away = 0.0;
      int apart = 0;
      for (const auto axis : axes) {
        const double step = std::abs(mark.at.*axis - point.*axis);
        away += step;
        apart += step > same_place ? 1 : 0;
      }
      const bool straight = apart == 1;
      if (away < too_near || (!straight && !mark.open)) continue;
      const bool better = best == nullptr || (mark.open && !best->open) ||
                          (mark.open == best->open && (straight && !best_straight)) ||
                          (mark.open == best->open && straight == best_straight && away < best_away);
      if (!better) continue;
      best = &mark;
      best_away = away;
      best_straight = straight;
    }
    if (best == nullptr) continue;
    // Along the first of the other two axes to the corner, then along the second.
    Metres corner = point;
    const auto first = square == axes[0] ? axes[1] : axes[0];
    corner.*first = best->at.*first;
    const bool known = std::any_of(found.begin(), found.end(), [&](const Guide& guide) {
      return std::abs(guide.to.at.x - best->at.x) + std::abs(guide.to.at.y - best->at.y) + std::abs(guide.to.at.z - best->at.z) < same_place;
    });
    if (!known) found.push_back({*best, corner});
  }
  return found;
}

std::vector<Landmarks::Guide> Landmarks::level_with(const Metres& point, const Projection& projection) const {
  if (projection.kind() == ViewKind::isometric) return along_the_axes(point);
  std::vector<Guide> found;
  const QPointF here = projection.on_sheet(point);
  for (const bool upright : {false, true}) {
    const Mark* best = nullptr;
    double best_away = 0.0;
    for (const Mark& mark : marks_) {
      const QPointF away = projection.on_sheet(mark.at) - here;
      const double off = upright ? away.x() : away.y();
      const double along = std::abs(upright ? away.y() : away.x());
      if (std::abs(off) > same_place || along < too_near) continue;
      const bool better = best == nullptr || (mark.open && !best->open) || (mark.open == best->open && along < best_away);
      if (!better) continue;
      best = &mark;
      best_away = along;
    }
    if (best != nullptr) found.push_back({*best, best->at});
  }
  return found;
}

void paint_guides(QPainter& painter, const DeskView& view, const Landmarks& landmarks, const Position& end) {
  const Projection& projection = view.projection();
  const QPointF here = view.camera().to_screen(projection.on_sheet(end));
  const Inks& inks = theme().inks;
  for (const Landmarks::Guide& guide : landmarks.level_with(metres(end), projection)) {
    const QPointF there = view.camera().to_screen(projection.on_sheet(guide.to.at));
    const QPointF corner = view.camera().to_screen(projection.on_sheet(guide.corner));
    QPen pen(inks.calm, guide.to.open ? 1.6 : 1.0);
    pen.setDashPattern({3.0, 3.0});
    painter.setPen(pen);
    painter.drawPolyline(QPolygonF{here, corner, there});
    painter.setBrush(inks.paper);
    painter.setPen(QPen(inks.calm, 1.4));
    painter.drawRect(QRectF(there - QPointF(3.0, 3.0), QSizeF(6.0, 6.0)));
  }
}

}  // namespace fluewright
