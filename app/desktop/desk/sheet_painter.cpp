// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/sheet_painter.hpp"

#include "app/desktop/desk/ruler_painter.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace {

constexpr std::array metric_steps{0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 2.5, 5.0, 10.0, 25.0};
constexpr std::array imperial_steps{0.0254, 0.0762, 0.1524, 0.3048, 0.6096, 1.524, 3.048, 6.096, 15.24, 30.48};

constexpr double fine_pixels = 9.0;     // closer lines would be a grey wash
constexpr double strong_pixels = 44.0;
constexpr double edge = 12.0;           // of furniture to the view's border

const std::array<double, 10>& steps(UnitSystem units) {
  return units == UnitSystem::metric ? metric_steps : imperial_steps;
}

double step_of_at_least(double pixels, double scale, UnitSystem units) {
  for (const double step : steps(units)) {
    if (step * scale >= pixels) return step;
  }
  return steps(units).back();
}


QFont title_font() {
  QFont font = type(TypeRole::caption);
  font.setCapitalization(QFont::AllUppercase);
  font.setLetterSpacing(QFont::AbsoluteSpacing, 1.2);
  return font;
}

}  // namespace

SheetPainter::SheetPainter(QPainter& painter, const Camera& camera, const Projection& projection,
                           const Document& document)
    : painter_{painter}, camera_{camera}, projection_{projection}, document_{document} {}

double SheetPainter::fine_step(double scale, UnitSystem units, Length grid_step) {
  const double snap = in(grid_step, metre);
  if (snap * scale >= fine_pixels) return snap;
  return step_of_at_least(fine_pixels, scale, units);
}

double SheetPainter::strong_step(double scale, UnitSystem units) {
  return step_of_at_least(strong_pixels, scale, units);
}

void SheetPainter::paint_ground() {
  painter_.fillRect(QRect(QPoint(), camera_.size()), theme().inks.paper);
  painter_.setRenderHint(QPainter::Antialiasing, false);
  if (projection_.kind() == ViewKind::isometric) {
    painter_.setRenderHint(QPainter::Antialiasing, true);
    paint_isometric_grid();
  } else {
    paint_square_grid();
  }
  painter_.setRenderHint(QPainter::Antialiasing, true);
  if (projection_.kind() != ViewKind::plan && projection_.kind() != ViewKind::isometric) {
    paint_levels();
    paint_floor();
  }
}

void SheetPainter::paint_square_grid() {
  const QRectF sight = camera_.in_sight();
  const auto rule = [&](double step, const QColor& colour) {
    painter_.setPen(QPen(colour, 1.0));
    for (double x = std::ceil(sight.left() / step) * step; x <= sight.right(); x += step) {
      const double px = std::round(camera_.to_screen({x, 0.0}).x());
      painter_.drawLine(QPointF(px, 0.0), QPointF(px, camera_.size().height()));
    }
    for (double y = std::ceil(sight.top() / step) * step; y <= sight.bottom(); y += step) {
      const double px = std::round(camera_.to_screen({0.0, y}).y());
      painter_.drawLine(QPointF(0.0, px), QPointF(camera_.size().width(), px));
    }
  };
  rule(fine_step(camera_.scale(), document_.units(), document_.grid_step()), theme().inks.grid);
  rule(strong_step(camera_.scale(), document_.units()), theme().inks.grid_strong);
}

void SheetPainter::paint_isometric_grid() {
  // The floor's strong lines only: two families over the part of the floor that is in sight.
  const QRectF sight = camera_.in_sight();
  const double step = strong_step(camera_.scale(), document_.units());
  double low_x = 1e9, high_x = -1e9, low_y = 1e9, high_y = -1e9;
  for (const QPointF corner : {sight.topLeft(), sight.topRight(), sight.bottomLeft(), sight.bottomRight()}) {
    const Metres m = projection_.in_world(corner, Metres{});
    low_x = std::min(low_x, m.x);
    high_x = std::max(high_x, m.x);
    low_y = std::min(low_y, m.y);
    high_y = std::max(high_y, m.y);
  }
  painter_.setPen(QPen(theme().inks.grid_strong, 0.8));
  const auto line = [&](const Metres& a, const Metres& b) {
    painter_.drawLine(camera_.to_screen(projection_.on_sheet(a)), camera_.to_screen(projection_.on_sheet(b)));
  };
  for (double x = std::ceil(low_x / step) * step; x <= high_x; x += step) line({x, low_y, 0}, {x, high_y, 0});
  for (double y = std::ceil(low_y / step) * step; y <= high_y; y += step) line({low_x, y, 0}, {high_x, y, 0});
}

void SheetPainter::paint_floor() {
  const double y = camera_.to_screen({0.0, 0.0}).y();
  if (y < 0.0 || y > camera_.size().height()) return;
  const Inks& inks = theme().inks;
  QColor hatch = inks.faint_ink;
  hatch.setAlphaF(0.45F);
  painter_.fillRect(QRectF(0.0, y, camera_.size().width(), 9.0), QBrush(hatch, Qt::BDiagPattern));
  painter_.setPen(QPen(inks.ink, 1.8));
  painter_.drawLine(QPointF(0.0, y), QPointF(camera_.size().width(), y));
}

void SheetPainter::paint_levels() {
  const Room& room = document_.design().room;
  paint_level(room.neutral_plane, tr("neutral plane"));
  paint_level(room.house_height, tr("top of the house"));
  // Heights along the left edge at the strong lines.
  const double step = strong_step(camera_.scale(), document_.units());
  const QRectF sight = camera_.in_sight();
  painter_.setFont(type(TypeRole::caption));
  painter_.setPen(theme().inks.faint_ink);
  for (double z = std::ceil(sight.top() / step) * step; z <= sight.bottom(); z += step) {
    const double y = camera_.to_screen({0.0, z}).y();
    if (y < 48.0 || y > camera_.size().height() - ruler_depth - 34.0) continue;
    const QString height = QString::fromStdString(show(z * metre, document_.units(), Meaning::height).text());
    write(QRectF(edge - 6.0, y - 14.0, 90.0, 13.0), Qt::AlignLeft | Qt::AlignBottom, height);
  }
}

void SheetPainter::paint_level(Length height, const QString& said) {
  const double y = camera_.to_screen({0.0, in(height, metre)}).y();
  if (y < 30.0 || y > camera_.size().height() - 8.0) return;
  const Inks& inks = theme().inks;
  QPen pen(inks.calm, 1.0);
  pen.setDashPattern({8.0, 5.0});
  painter_.setPen(pen);
  painter_.drawLine(QPointF(0.0, y), QPointF(camera_.size().width(), y));
  painter_.setFont(type(TypeRole::caption));
  write(QRectF(camera_.size().width() - ruler_depth - 170.0 - edge, y - 15.0, 170.0, 14.0), Qt::AlignRight | Qt::AlignBottom, said);
}

void SheetPainter::paint_furniture() {
  painter_.setRenderHint(QPainter::Antialiasing, true);
  paint_title();
  if (projection_.kind() != ViewKind::isometric) paint_scale_bar();
  paint_axes();
}

QString SheetPainter::title(ViewKind kind) {
  return kind != ViewKind::plan && kind != ViewKind::isometric ? tr("Elevation") : title_of(kind);
}

double SheetPainter::title_end(ViewKind kind) { return edge + QFontMetricsF(title_font()).horizontalAdvance(title(kind)); }

void SheetPainter::paint_title() {
  painter_.setFont(title_font());
  painter_.setPen(theme().inks.faint_ink);
  painter_.drawText(QPointF(edge, edge + 9.0), title(projection_.kind()));
}

std::vector<QRectF> SheetPainter::covered() const {
  const QSizeF size = camera_.size();
  std::vector<QRectF> areas = written_;
  areas.emplace_back(0.0, 0.0, title_end(projection_.kind()) + 4.0, 28.0);
  areas.emplace_back(size.width() - edge - 56.0, 0.0, edge + 56.0, 70.0);
  if (projection_.kind() != ViewKind::isometric) areas.emplace_back(0.0, size.height() - ruler_depth - 28.0, 0.2 * size.width() + 70.0, 28.0);
  return areas;
}

void SheetPainter::write(const QRectF& box, int alignment, const QString& said) {
  QRectF taken;
  painter_.drawText(box, alignment, said, &taken);
  written_.push_back(taken);
}

void SheetPainter::paint_scale_bar() {
  // The longest round length under a fifth of the view, in four alternating parts as on a map.
  const double wanted = 0.2 * camera_.size().width() / camera_.scale();
  double length = steps(document_.units()).front();
  for (const double step : steps(document_.units())) {
    if (step <= wanted) length = step;
  }
  const double pixels = length * camera_.scale();
  const Inks& inks = theme().inks;
  const QPointF corner(edge, camera_.size().height() - ruler_depth - edge - 5.0);
  painter_.setPen(QPen(inks.faint_ink, 1.0));
  for (int i = 0; i < 4; ++i) {
    painter_.setBrush(i % 2 == 0 ? QBrush(inks.faint_ink) : QBrush(inks.paper));
    painter_.drawRect(QRectF(corner + QPointF(0.25 * i * pixels, 0.0), QSizeF(0.25 * pixels, 4.0)));
  }
  painter_.setFont(type(TypeRole::caption));
  const QString said = QString::fromStdString(show(length * metre, document_.units(), Meaning::run_length).text());
  painter_.drawText(corner + QPointF(pixels + 6.0, 6.0), said);
}

void SheetPainter::paint_axes() {
  const double beside = projection_.kind() == ViewKind::isometric ? 0.0 : ruler_depth;
  const QPointF centre(camera_.size().width() - beside - edge - 24.0, edge + 26.0);
  if (projection_.kind() == ViewKind::plan) {
    paint_compass(centre);
    return;
  }
  const Inks& inks = theme().inks;
  painter_.setFont(type(TypeRole::caption));
  struct Axis {
    Metres along;
    const char* letter;
  };
  const bool rolled_out = projection_.kind() == ViewKind::unrolled;
  for (const Axis& axis : {Axis{{1, 0, 0}, rolled_out ? "\xe2\x86\x92" : QT_TR_NOOP("E")}, Axis{{0, 1, 0}, QT_TR_NOOP("N")}, Axis{{0, 0, 1}, QT_TR_NOOP("up")}}) {
    const QPointF step = projection_.on_sheet(axis.along);
    if (std::hypot(step.x(), step.y()) < 1e-6) continue;
    const QPointF tip(step.x() * 17.0, -step.y() * 17.0);
    painter_.setPen(QPen(inks.faint_ink, 1.1));
    painter_.drawLine(centre, centre + tip);
    painter_.drawText(QRectF(centre + tip * 1.55 - QPointF(12.0, 8.0), QSizeF(24.0, 16.0)), Qt::AlignCenter, tr(axis.letter));
  }
}

void SheetPainter::paint_compass(QPointF centre) {
  const Inks& inks = theme().inks;
  painter_.setPen(QPen(inks.faint_ink, 1.1));
  painter_.setBrush(Qt::NoBrush);
  painter_.drawEllipse(centre, 11.0, 11.0);
  painter_.setBrush(inks.faint_ink);
  painter_.drawPolygon(QPolygonF{centre + QPointF(0, -15), centre + QPointF(4.5, 4), centre + QPointF(0, 0.5)});
  painter_.setBrush(inks.paper);
  painter_.drawPolygon(QPolygonF{centre + QPointF(0, -15), centre + QPointF(-4.5, 4), centre + QPointF(0, 0.5)});
  painter_.setFont(type(TypeRole::caption));
  painter_.drawText(QRectF(centre + QPointF(-10.0, 12.0), QSizeF(20.0, 14.0)), Qt::AlignCenter, tr("N"));
}

}  // namespace fluewright
