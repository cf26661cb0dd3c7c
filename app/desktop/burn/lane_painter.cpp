// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/lane_painter.hpp"

#include "app/desktop/burn/plan_numbers.hpp"
#include "app/desktop/burn/plan_rows.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/shared/said.hpp"

#include <QPainter>
#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

double top_of(Lane lane) { return LaneMeasure::ruler + LaneMeasure::lane * static_cast<double>(lane); }

QColor ink_of(Lane lane) {
  const Inks& inks = theme().inks;
  switch (lane) {
    case Lane::wood: return inks.mass_line;
    case Lane::dampers: return inks.faint_ink;
    case Lane::priming: return inks.caution;
    case Lane::fans: return inks.calm;
    case Lane::hood: return inks.water;
    case Lane::power: return inks.ink;
    case Lane::outdoors: return inks.calm;
  }
  return inks.ink;
}

}  // namespace

QRectF event_box(const PlanEvent& event, const TimeSight& sight, int width) {
  const double from = sight.x_of(event.begin, width);
  const double to = std::max(sight.x_of(event.end, width), from + LaneMeasure::least_event);
  return {from, top_of(event.lane) + 2.0, to - from, LaneMeasure::lane - 4.0};
}

LanePainter::LanePainter(QPainter& painter, const BurnBook& book, const TimeSight& sight, int width)
    : painter_{painter}, book_{book}, sight_{sight}, width_{width} {}

void LanePainter::paint_ruler() {
  const Inks& inks = theme().inks;
  painter_.setFont(type(TypeRole::caption));
  const double bottom = LaneMeasure::ruler + LaneMeasure::lane * static_cast<double>(lanes.size());
  for (const TimeSight::Mark& mark : sight_.marks(width_)) {
    const double x = std::round(sight_.x_of(mark.at, width_)) + 0.5;
    painter_.setPen(inks.grid_strong);
    painter_.drawLine(QPointF(x, LaneMeasure::ruler - 4.0), QPointF(x, bottom));
    painter_.setPen(inks.faint_ink);
    const double half = 0.5 * painter_.fontMetrics().horizontalAdvance(mark.words) + 2.0;
    const double middle = std::min(x, width_ - half);
    painter_.drawText(QRectF(middle - half, 0.0, 2.0 * half, LaneMeasure::ruler - 5.0), Qt::AlignHCenter | Qt::AlignBottom, mark.words);
  }
}

void LanePainter::paint_lanes(Lane active, bool focus) {
  const Inks& inks = theme().inks;
  for (const Lane lane : lanes) {
    const double top = top_of(lane);
    painter_.setPen(inks.hairline);
    painter_.drawLine(QPointF(0.0, top + 0.5), QPointF(width_, top + 0.5));
    const bool lit = focus && lane == active;
    painter_.setPen(lit ? inks.accent : inks.faint_ink);
    painter_.setFont(type(TypeRole::caption));
    const std::string_view name = lane_name(lane);
    painter_.drawText(QRectF(10.0, top, TimeSight::gutter - 16.0, LaneMeasure::lane), Qt::AlignLeft | Qt::AlignVCenter,
                      QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size())));
  }
}

// The course as it was run; before there is a run, its points or its words.
void LanePainter::paint_outdoors() {
  const BurnPlan& plan = book_.plan();
  const Inks& inks = theme().inks;
  const UnitSystem units = book_.document().units();
  std::vector<OutdoorPoint> course;
  if (const auto* points = std::get_if<std::vector<OutdoorPoint>>(&plan.outdoors)) {
    course = *points;
  } else if (book_.kept() != nullptr && !book_.stale() && book_.kept()->record) {
    for (const BurnRow& row : book_.kept()->record->rows) course.push_back({row.at, row.outdoors});
  }
  const double top = top_of(Lane::outdoors);
  if (course.size() > 1) {
    const auto [low, high] = std::minmax_element(course.begin(), course.end(), [](const OutdoorPoint& a, const OutdoorPoint& b) { return a.temperature < b.temperature; });
    const TemperatureDifference span = std::max(TemperatureDifference(high->temperature - low->temperature), 2.0 * kelvin);
    const Temperature middle = midway(low->temperature, high->temperature);
    QPolygonF line;
    for (const OutdoorPoint& point : course) {
      const double part = 0.5 + in(point.temperature - middle, kelvin) / in(span, kelvin);
      line << QPointF(sight_.x_of(point.at, width_), top + LaneMeasure::lane - 4.0 - part * (LaneMeasure::lane - 8.0));
    }
    painter_.setPen(QPen(inks.calm, 1.2));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolyline(line);
  }
  const auto text = [units](const PlanNumber& number, PlanMeaning meaning) { return show(number, meaning, units).text(); };
  std::string words;
  if (std::holds_alternative<std::monostate>(plan.outdoors)) {
    words = said("{} as in the design", text(book_.document().design().site.outdoor_temperature, PlanMeaning::temperature));
  } else if (const auto* constant = std::get_if<Temperature>(&plan.outdoors)) {
    words = text(*constant, PlanMeaning::temperature);
  } else if (const auto* day = std::get_if<OutdoorDay>(&plan.outdoors)) {
    words = said("{}, ± {} over the day", text(day->mean, PlanMeaning::temperature), text(day->swing, PlanMeaning::step));
  }
  // On paper of their own: the course runs along behind them.
  const QRectF room(TimeSight::gutter + 6.0, top, width_ - TimeSight::gutter - 8.0, LaneMeasure::lane);
  const int side = Qt::AlignLeft | Qt::AlignVCenter;
  const QString said = QString::fromStdString(words);
  if (!said.isEmpty()) painter_.fillRect(painter_.boundingRect(room, side, said).adjusted(-3.0, 0.0, 3.0, 0.0), inks.paper);
  painter_.setPen(inks.faint_ink);
  painter_.drawText(room, side, said);
}

void LanePainter::paint_event(const PlanEvent& event, bool hovered) {
  const Inks& inks = theme().inks;
  const QRectF box = event_box(event, sight_, width_);
  const bool selected = book_.selected() == event.ref;
  const bool faulty = !book_.fault_of(event.ref).isEmpty();
  const QColor line = ink_of(event.lane);
  QColor wash = line;
  wash.setAlphaF(hovered || selected ? 0.40F : 0.24F);
  painter_.setBrush(event.lane == Lane::power ? QBrush(wash, Qt::BDiagPattern) : QBrush(wash));
  QPen pen(selected || faulty ? inks.accent : line, selected ? 2.0 : 1.0);
  if (faulty) pen.setStyle(Qt::DashLine);
  painter_.setPen(pen);
  painter_.drawRoundedRect(box, 2.5, 2.5);
  std::string words = event_words(book_.plan(), event.ref, book_.document().design(), book_.document().library(), book_.document().units());
  if (faulty) words = "▲ " + words;
  const QString text = QString::fromStdString(words);
  painter_.setFont(type(TypeRole::caption));
  const double room = box.width() - 8.0;
  painter_.setPen(faulty ? inks.accent : inks.ink);
  if (painter_.fontMetrics().horizontalAdvance(text) <= room) {
    painter_.drawText(box.adjusted(5.0, 0.0, -3.0, 0.0), Qt::AlignLeft | Qt::AlignVCenter, text);
  } else if (faulty || room > 26.0) {
    const QString cut = faulty && room < 14.0 ? QStringLiteral("▲") : painter_.fontMetrics().elidedText(text, Qt::ElideRight, static_cast<int>(room));
    painter_.drawText(box.adjusted(faulty && room < 14.0 ? box.width() + 2.0 : 5.0, 0.0, faulty ? 30.0 : -3.0, 0.0), Qt::AlignLeft | Qt::AlignVCenter, cut);
  }
}

void LanePainter::paint_cursor() {
  const double x = sight_.x_of(book_.now(), width_);
  if (x < TimeSight::gutter - 1.0 || x > width_ - TimeSight::margin + 1.0) return;
  const Inks& inks = theme().inks;
  const double bottom = LaneMeasure::ruler + LaneMeasure::lane * static_cast<double>(lanes.size());
  painter_.setPen(QPen(inks.accent, 1.4));
  painter_.drawLine(QPointF(x, LaneMeasure::ruler - 6.0), QPointF(x, bottom));
  painter_.setPen(Qt::NoPen);
  painter_.setBrush(inks.accent);
  painter_.drawPolygon(QPolygonF{QPointF(x - 5.0, LaneMeasure::ruler - 11.0), QPointF(x + 5.0, LaneMeasure::ruler - 11.0), QPointF(x, LaneMeasure::ruler - 3.0)});
}

}  // namespace fluewright
