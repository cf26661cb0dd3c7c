// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/ruler_painter.hpp"

#include "app/desktop/desk/sheet_painter.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QLocale>
#include <QPainter>

#include <cmath>

namespace fluewright {

namespace {

QString figure(double metres, UnitSystem units) {
  const double number = units == UnitSystem::metric ? metres : metres / 0.3048;
  return QLocale().toString(std::abs(number) < 1e-9 ? 0.0 : number, 'g', 4);
}

}  // namespace

void paint_rulers(QPainter& painter, const Camera& camera, UnitSystem units, std::optional<QPointF> mouse) {
  const Inks& inks = theme().inks;
  const double width = camera.size().width();
  const double height = camera.size().height();
  const QRectF below(0.0, height - ruler_depth, width, ruler_depth);
  const QRectF beside(width - ruler_depth, 0.0, ruler_depth, height - ruler_depth);
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.fillRect(below, inks.margin);
  painter.fillRect(beside, inks.margin);
  painter.setPen(QPen(inks.hairline, 1.0));
  painter.drawLine(below.topLeft(), below.topRight());
  painter.drawLine(beside.topLeft(), beside.bottomLeft());
  QFont font = type(TypeRole::caption);
  font.setPointSizeF(0.85 * font.pointSizeF());
  painter.setFont(font);
  const double step = SheetPainter::strong_step(camera.scale(), units);
  const QRectF sight = camera.in_sight();
  painter.setPen(QPen(inks.faint_ink, 1.0));
  for (double x = std::ceil(sight.left() / step) * step; x <= sight.right(); x += step) {
    const double px = std::round(camera.to_screen({x, 0.0}).x());
    if (px > width - ruler_depth - 4.0) break;
    painter.drawLine(QPointF(px, below.top()), QPointF(px, below.top() + 5.0));
    painter.drawText(QRectF(px + 3.0, below.top(), 60.0, ruler_depth), Qt::AlignLeft | Qt::AlignVCenter, figure(x, units));
  }
  for (double y = std::ceil(sight.top() / step) * step; y <= sight.bottom(); y += step) {
    const double py = std::round(camera.to_screen({0.0, y}).y());
    if (py > beside.bottom() - 4.0 || py < 4.0) continue;
    painter.drawLine(QPointF(beside.left(), py), QPointF(beside.left() + 5.0, py));
    painter.save();
    painter.translate(beside.left(), py - 3.0);
    painter.rotate(-90.0);
    painter.drawText(QRectF(0.0, 0.0, 60.0, ruler_depth), Qt::AlignLeft | Qt::AlignVCenter, figure(y, units));
    painter.restore();
  }
  if (mouse) {
    painter.setPen(QPen(inks.accent, 1.0));
    painter.drawLine(QPointF(mouse->x(), below.top()), QPointF(mouse->x(), below.bottom()));
    painter.drawLine(QPointF(beside.left(), mouse->y()), QPointF(beside.right(), mouse->y()));
  }
  painter.setRenderHint(QPainter::Antialiasing, true);
}

}  // namespace fluewright
