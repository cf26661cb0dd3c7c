// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/legend.hpp"

#include "app/desktop/theme/theme.hpp"

#include <QLinearGradient>
#include <QPainter>

namespace fluewright {

namespace {

constexpr double side = 16.0;
constexpr double bar_top = 4.0;
constexpr double bar_height = 9.0;
constexpr int gradient_steps = 32;

}  // namespace

Legend::Legend(const Board& board, QWidget* parent) : QWidget(parent), board_{board} {
  setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
  setFont(type(TypeRole::caption));
  connect(&board, &Board::redraw, this, [this] {
    describe();
    update();
  });
  describe();
}

void Legend::describe() {
  const bool temperature = board_.tint().what() == Document::Tint::gas_temperature;
  const UnitSystem units = board_.document().units();
  const QString unit = QString::fromStdString(unit_name(temperature ? Meaning::temperature : Meaning::pressure, units));
  const QString what = temperature ? tr("Colour: gas temperature, %1").arg(unit) : tr("Colour: gauge pressure, %1").arg(unit);
  setAccessibleName(what);
  setToolTip(temperature ? tr("%1. The scale is stretched at its cold end, where benches live.").arg(what)
                         : tr("%1, against outdoor air at the same height: violet below it, orange above it.").arg(what));
}

void Legend::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const Inks& inks = theme().inks;
  const Tint& tint = board_.tint();
  const bool temperature = tint.what() == Document::Tint::gas_temperature;
  const UnitSystem units = board_.document().units();
  const QString unit = QString::fromStdString(unit_name(temperature ? Meaning::temperature : Meaning::pressure, units));
  const double unit_room = painter.fontMetrics().horizontalAdvance(unit) + 6.0;
  const QRectF bar(side, bar_top, width() - 2.0 * side - unit_room, bar_height);
  if (!tint.known()) {
    painter.setPen(QPen(inks.hairline, 1.0));
    painter.setBrush(inks.bare);
    painter.drawRect(bar);
    painter.setPen(inks.faint_ink);
    painter.drawText(rect().adjusted(static_cast<int>(side), 14, 0, 0), Qt::AlignLeft | Qt::AlignVCenter,
                     tr("coloured once the path is whole"));
    return;
  }
  QLinearGradient gradient(bar.topLeft(), bar.topRight());
  for (int i = 0; i <= gradient_steps; ++i) {
    const double share = static_cast<double>(i) / gradient_steps;
    gradient.setColorAt(share, tint.scale().at(share));
  }
  painter.setPen(QPen(inks.ink, 0.8));
  painter.setBrush(gradient);
  painter.drawRect(bar);
  painter.setPen(inks.ink);
  painter.drawText(QPointF(bar.right() + 6.0, bar.bottom()), unit);
  double free_from = -1e9;
  for (const Tint::Mark& mark : tint.marks(units)) {
    const double x = bar.left() + mark.share * bar.width();
    const double half = 0.5 * painter.fontMetrics().horizontalAdvance(mark.text);
    painter.drawLine(QPointF(x, bar.bottom()), QPointF(x, bar.bottom() + 3.0));
    if (x - half < free_from) continue;
    painter.drawText(QPointF(x - half, bar.bottom() + 4.0 + painter.fontMetrics().ascent()), mark.text);
    free_from = x + half + 5.0;
  }
}

}  // namespace fluewright
