// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/starts/map_view.hpp"

#include "app/desktop/starts/start_colours.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/start_words.hpp"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

constexpr double left_margin = 64.0;
constexpr double bottom_margin = 44.0;
constexpr double other_margin = 12.0;
/// Smaller cells than this carry no letter; the table beside the map does.
constexpr double least_lettered = 8.5;

QString shown(Temperature t, UnitSystem units) { return QString::fromStdString(show(t, units).text()); }

}  // namespace

MapView::MapView(QWidget* parent) : QWidget(parent) {
  setObjectName(QStringLiteral("start_map"));
  setAccessibleName(tr("Start map: outdoors across, room upwards"));
  setMouseTracking(true);
  setFocusPolicy(Qt::StrongFocus);
}

void MapView::show_map(const StartMap& map, Temperature outdoors_today, Temperature room_today, UnitSystem units) {
  map_ = map;
  outdoors_today_ = outdoors_today;
  room_today_ = room_today;
  units_ = units;
  if (pointed_ && *pointed_ >= map.size()) pointed_.reset();
  update();
}

void MapView::clear() {
  map_.reset();
  pointed_.reset();
  update();
}

QRectF MapView::field() const {
  return QRectF(left_margin, other_margin, width() - left_margin - other_margin, height() - bottom_margin - other_margin);
}

QRectF MapView::rect_of(std::size_t cell) const {
  const StartMapGrid& grid = map_->grid();
  const QRectF all = field();
  const double w = all.width() / static_cast<double>(grid.outdoors.count);
  const double h = all.height() / static_cast<double>(grid.room.count);
  const double o = static_cast<double>(cell % grid.outdoors.count);
  const double r = static_cast<double>(cell / grid.outdoors.count);
  return {all.left() + o * w, all.bottom() - (r + 1.0) * h, w, h};
}

std::optional<std::size_t> MapView::cell_at(QPoint at) const {
  const QRectF all = field();
  if (!map_ || !all.contains(at)) return std::nullopt;
  const StartMapGrid& grid = map_->grid();
  const auto along = [](double share, std::size_t count) {
    return std::min(static_cast<std::size_t>(share * static_cast<double>(count)), count - 1);
  };
  return map_->index(along((at.x() - all.left()) / all.width(), grid.outdoors.count),
                     along((all.bottom() - at.y()) / all.height(), grid.room.count));
}

QString MapView::words_of(std::size_t cell) const {
  const StartCell& c = map_->cell(cell);
  const QString where = tr("Outdoors %1, room %2: ").arg(shown(map_->outdoors(cell), units_), shown(map_->room(cell), units_));
  if (c.state == CellState::unknown) return where + tr("not known yet");
  const std::string text = said(word(c.start, c.state != CellState::computed || c.draws_with_fan));
  QString words = where + QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
  if (c.state == CellState::between) words += tr(" (not computed yet; the cells around it agree)");
  if (!c.certain) words += tr(" (a run did not converge)");
  return words;
}

void MapView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing, false);
  painter.fillRect(rect(), theme().inks.paper);
  if (!map_) return;
  paint_cells(painter);
  paint_axes(painter);
  painter.setRenderHint(QPainter::Antialiasing, true);
  paint_today(painter);
  if (pointed_) {
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(theme().inks.ink, 2.0));
    painter.drawRect(rect_of(*pointed_));
  }
}

void MapView::paint_cells(QPainter& painter) const {
  const Inks& inks = theme().inks;
  const QRectF one = rect_of(0);
  const double side = std::min(one.width(), one.height());
  QFont font = type(TypeRole::caption);
  font.setPixelSize(std::clamp(static_cast<int>(0.72 * side), 7, 16));
  painter.setFont(font);
  for (std::size_t i = 0; i < map_->size(); ++i) {
    const StartCell& cell = map_->cell(i);
    const QRectF at = rect_of(i);
    if (cell.state == CellState::unknown) {
      painter.fillRect(at, inks.bare);
      continue;
    }
    QColor ground = start_colour(cell.start, theme().sheet);
    // What only lies between agreeing cells is paler and carries a small letter.
    const bool computed = cell.state == CellState::computed;
    if (!computed) ground.setAlphaF(0.45F);
    painter.fillRect(at, ground);
    if (side < least_lettered) continue;
    const QChar mark = QLatin1Char(letter(cell.start));
    painter.setPen(computed ? letter_colour(ground) : inks.ink);
    painter.drawText(at, Qt::AlignCenter, computed ? QString(mark) : QString(mark.toLower()));
  }
  painter.setPen(inks.hairline);
  painter.setBrush(Qt::NoBrush);
  painter.drawRect(field());
}

void MapView::paint_axes(QPainter& painter) const {
  const StartMapGrid& grid = map_->grid();
  const QRectF all = field();
  painter.setFont(type(TypeRole::caption));
  painter.setPen(theme().inks.faint_ink);
  constexpr std::size_t marks = 5;
  const auto index = [](std::size_t mark, std::size_t count) { return mark * (count - 1) / (marks - 1); };
  for (std::size_t m = 0; m < marks; ++m) {
    const std::size_t o = index(m, grid.outdoors.count);
    const double x = rect_of(map_->index(o, 0)).center().x();
    painter.drawText(QRectF(x - 40.0, all.bottom() + 3.0, 80.0, 16.0), Qt::AlignCenter, shown(grid.outdoors.at(o), units_));
    const std::size_t r = index(m, grid.room.count);
    const double y = rect_of(map_->index(0, r)).center().y();
    painter.drawText(QRectF(0.0, y - 8.0, left_margin - 6.0, 16.0), Qt::AlignRight | Qt::AlignVCenter, shown(grid.room.at(r), units_));
  }
  painter.drawText(QRectF(all.left(), all.bottom() + 20.0, all.width(), 18.0), Qt::AlignCenter, tr("Outdoors"));
  painter.save();
  painter.translate(10.0, all.center().y());
  painter.rotate(-90.0);
  painter.drawText(QRectF(-60.0, -8.0, 120.0, 16.0), Qt::AlignCenter, tr("Room"));
  painter.restore();
}

void MapView::paint_today(QPainter& painter) const {
  const StartMapGrid& grid = map_->grid();
  if (!grid.outdoors.holds(outdoors_today_) || !grid.room.holds(room_today_)) return;
  const QPointF from = rect_of(0).center();
  const QPointF to = rect_of(map_->size() - 1).center();
  const auto share = [](Temperature t, const TemperatureRow& row) {
    return row.count > 1 ? ((t - row.first) / (row.at(row.count - 1) - row.first)).value() : 0.5;
  };
  const QPointF at(from.x() + share(outdoors_today_, grid.outdoors) * (to.x() - from.x()),
                   from.y() + share(room_today_, grid.room) * (to.y() - from.y()));
  painter.setBrush(Qt::NoBrush);
  painter.setPen(QPen(theme().inks.paper, 5.0));
  painter.drawEllipse(at, 9.0, 9.0);
  painter.setPen(QPen(theme().inks.ink, 2.0));
  painter.drawEllipse(at, 9.0, 9.0);
  painter.setFont(type(TypeRole::caption));
  const QRectF label(at.x() + 13.0, at.y() - 9.0, 44.0, 18.0);
  painter.fillRect(label, theme().inks.paper);
  painter.drawText(label, Qt::AlignCenter, tr("today"));
}

void MapView::point_at(std::optional<std::size_t> cell) {
  pointed_ = cell;
  const QString words = cell ? words_of(*cell) : QString();
  setAccessibleDescription(words);
  emit pointed(words);
  update();
}

void MapView::mouseMoveEvent(QMouseEvent* event) { point_at(cell_at(event->pos())); }
void MapView::leaveEvent(QEvent*) { point_at(std::nullopt); }

void MapView::keyPressEvent(QKeyEvent* event) {
  const int key = event->key();
  const bool arrow = key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Up || key == Qt::Key_Down;
  if (!map_ || !arrow) {
    QWidget::keyPressEvent(event);
    return;
  }
  const StartMapGrid& grid = map_->grid();
  const std::size_t from = pointed_.value_or(map_->index(grid.outdoors.nearest(outdoors_today_), grid.room.nearest(room_today_)));
  std::size_t o = from % grid.outdoors.count;
  std::size_t r = from / grid.outdoors.count;
  if (pointed_) {
    if (key == Qt::Key_Left && o > 0) --o;
    if (key == Qt::Key_Right && o + 1 < grid.outdoors.count) ++o;
    if (key == Qt::Key_Down && r > 0) --r;
    if (key == Qt::Key_Up && r + 1 < grid.room.count) ++r;
  }
  point_at(map_->index(o, r));
}

}  // namespace fluewright
