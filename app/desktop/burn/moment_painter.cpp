// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/moment_painter.hpp"

#include "app/desktop/burn/plan_numbers.hpp"
#include "app/desktop/desk/piece_painter.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace {

constexpr double banner_top = 8.0;
const MassFlow breath = 2e-6 * kilogram_per_second;  // what any feed breathes


/// Puffs that grow and drift away from the mouth; more smoke, more and larger ones.
void paint_smoke(QPainter& painter, const Camera& camera, const DrawnPort& mouth, const Moment& moment) {
  const double grams = in(moment.smoke(), gram / second);
  const double size = std::clamp(6.0 + 5.0 * std::log2(1.0 + 20.0 * grams), 6.0, 30.0);
  const QPointF at = camera.to_screen(mouth.at);
  QPointF away = camera.to_screen(mouth.at + mouth.outward) - at;
  const double length = std::hypot(away.x(), away.y());
  away = length > 1.0 ? away / length : QPointF(0.0, -1.0);
  const QPointF rise(0.0, -0.6);
  // They drift with the run's own time, so that a moment always looks the same.
  const double drift = std::fmod(in(moment.at(), second) / 8.0, 1.0);
  QColor smoke = theme().inks.ink;
  painter.setPen(Qt::NoPen);
  for (int i = 0; i < 5; ++i) {
    const double age = (static_cast<double>(i) + drift) / 5.0;
    const double sway = std::sin(7.0 * age + 2.0 * i) * 0.35 * size;
    const QPointF aside(-away.y(), away.x());
    smoke.setAlphaF(static_cast<float>(0.42 * (1.0 - 0.8 * age)));
    painter.setBrush(smoke);
    const double radius = size * (0.45 + 0.75 * age);
    painter.drawEllipse(at + (away + rise) * (size * (0.6 + 2.6 * age)) + aside * sway, radius, radius);
  }
}

void write_on_paper(QPainter& painter, const QRectF& box, const QString& words, const QColor& ink, Qt::Alignment side) {
  QRectF taken = painter.boundingRect(box, static_cast<int>(side), words).adjusted(-6.0, -2.0, 6.0, 2.0);
  QColor paper = theme().inks.paper;
  paper.setAlphaF(0.88F);
  painter.setPen(Qt::NoPen);
  painter.setBrush(paper);
  painter.drawRoundedRect(taken, 3.0, 3.0);
  painter.setPen(ink);
  painter.drawText(box, static_cast<int>(side), words);
}

/// A sample arrow with its speed, so that the others can be read.
void paint_arrow_measure(QPainter& painter, const Camera& camera, UnitSystem units) {
  const Velocity sample = units == UnitSystem::metric ? 1.0 * metre_per_second : 3.0 * foot / second;
  const double shaft = arrow_pixels(sample);
  // Above the rulers, and above the colours' legend where there is one.
  const QPointF tip(camera.size().width() - 44.0, camera.size().height() - 66.0);
  const QString words = QString::fromStdString(show(sample, units).text());
  const double room = painter.fontMetrics().horizontalAdvance(words) + 8.0;
  const Inks& inks = theme().inks;
  QColor paper = inks.paper;
  paper.setAlphaF(0.88F);
  painter.setPen(Qt::NoPen);
  painter.setBrush(paper);
  painter.drawRect(QRectF(tip + QPointF(-shaft - 14.0 - room, -9.0), QSizeF(shaft + 20.0 + room, 18.0)));
  painter.setPen(QPen(inks.ink, 2.5, Qt::SolidLine, Qt::FlatCap));
  painter.drawLine(tip - QPointF(shaft + 8.0, 0.0), tip - QPointF(8.0, 0.0));
  painter.setPen(Qt::NoPen);
  painter.setBrush(inks.ink);
  painter.drawPolygon(QPolygonF{tip, tip + QPointF(-10.0, -3.2), tip + QPointF(-10.0, 3.2)});
  painter.setPen(inks.faint_ink);
  painter.drawText(tip + QPointF(-shaft - 8.0 - room, 4.0), words);
}

}  // namespace

QString trouble_at(const Moment& moment, UnitSystem units) {
  QStringList words;
  const BurnRow& row = moment.row();
  if (!row.forward && row.wanted > MassFlow{}) words << tr("The gas runs backwards.");
  if (moment.smoke() > breath) {
    words << tr("Smoke comes into the room, %1 so far.").arg(QString::fromStdString(grams_text(moment.value(&BurnRow::smoke), units)));
  }
  if (row.short_of_air) words << tr("The fire is short of air.");
  return words.join(QLatin1Char(' '));
}

void paint_moment(QPainter& painter, const Camera& camera, const Drawing& drawing, const Document& document) {
  const Moment& moment = *document.moment();
  const Inks& inks = theme().inks;
  painter.setFont(type(TypeRole::caption));
  if (moment.smoke() > breath) {
    for (const DrawnPiece& piece : drawing.pieces()) {
      for (const DrawnPort& port : piece.ports) {
        if (port.kind == PortKind::room_air) paint_smoke(painter, camera, port, moment);
      }
    }
  }
  paint_arrow_measure(painter, camera, document.units());
  const double wide = camera.size().width() - 200.0;
  const QRectF line(100.0, banner_top, wide, 16.0);
  write_on_paper(painter, line, tr("Burn, at %1").arg(QString::fromStdString(moment_text(moment.at()))), inks.ink, Qt::AlignHCenter | Qt::AlignTop);
  const QString trouble = trouble_at(moment, document.units());
  if (!trouble.isEmpty()) {
    write_on_paper(painter, line.translated(0.0, 21.0), QStringLiteral("▲ ") + trouble, inks.accent, Qt::AlignHCenter | Qt::AlignTop);
  }
}

}  // namespace fluewright
