// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/fan_words.hpp"

#include "app/desktop/burn/plan_numbers.hpp"

#include <QCoreApplication>
#include <QStringList>

namespace fluewright {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("FanWords", text); }

QString minutes(Time t) { return QString::fromStdString(duration_text(t)); }

QString outcome(const PowerCutOutcome& cut, const QString& house, UnitSystem units) {
  QStringList what;
  if (cut.reverses_after) what << tr("the gas runs backwards after %1").arg(minutes(*cut.reverses_after));
  if (cut.starves_after) what << tr("the fire is starved after %1").arg(minutes(*cut.starves_after));
  if (what.isEmpty()) what << tr("the draft holds");
  what << tr("%1 of smoke comes into the room").arg(QString::fromStdString(grams_text(cut.smoke, units)));
  return tr("In %1 %2.").arg(house, what.join(QStringLiteral(", ")));
}

}  // namespace

FanStatement fan_statement(const FanDependence& fan, UnitSystem units) {
  FanStatement statement;
  const bool holds = fan.neutral.holds() && fan.depressurised.holds();
  statement.unsafe = fan.only_with_fan;
  if (fan.only_with_fan) {
    statement.headline = tr("The draft holds only with the fan on. That is unsafe.");
  } else if (!holds) {
    statement.headline = tr("While the fan runs, the fire depends on it.");
  } else {
    statement.headline = tr("A power cut while the fan runs does no harm.");
  }
  const QString suction = QString::fromStdString(show(fan.depressurised.suction, units).text());
  statement.detail = QStringList{tr("Power cut at %1 over a loaded feed, watched for %2:")
                                     .arg(QString::fromStdString(moment_text(fan.cut_at)), minutes(fan.watched)),
                                 outcome(fan.neutral, tr("a neutral house"), units),
                                 outcome(fan.depressurised, tr("a house under %1 of suction").arg(suction), units)}
                         .join(QLatin1Char(' '));
  return statement;
}

}  // namespace fluewright
