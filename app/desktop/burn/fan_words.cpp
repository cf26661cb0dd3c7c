// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/fan_words.hpp"

#include "app/desktop/burn/plan_numbers.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/start_words.hpp"

#include <QCoreApplication>
#include <QStringList>

namespace fluewright {

namespace {


QString minutes(Time t) { return QString::fromStdString(duration_text(t)); }

QString outcome(const PowerCutRun& cut, const QString& house) {
  return tr("In %1 it %2.").arg(house, QString::fromStdString(power_cut_words(cut)));
}

}  // namespace

FanStatement fan_statement(const FanDependence& fan, const std::optional<PowerCutAnswer>& standard, UnitSystem units) {
  FanStatement statement;
  const bool standard_unsafe = standard && !(standard->neutral.holds && standard->depressurised.holds);
  statement.unsafe = fan.only_with_fan || (standard && standard->depends_on_fan());
  if (fan.only_with_fan) {
    statement.headline = tr("On this time line the draft holds only with the fan on. That is unsafe.");
  } else if (!fan.holds()) {
    statement.headline = tr("While the fan runs on this time line, the fire depends on it.");
  } else if (standard_unsafe) {
    statement.headline = tr("A power cut so late on this time line does no harm, one in a standard start does.");
  } else {
    statement.headline = tr("A power cut while the fan runs on this time line does no harm.");
  }
  const QString suction = QString::fromStdString(show(fan.cut.depressurised.suction, units).text());
  QStringList detail{tr("Power cut at %1 over a loaded feed, watched for %2:")
                         .arg(QString::fromStdString(moment_text(fan.cut_at)), minutes(fan.watched)),
                     outcome(fan.cut.neutral, tr("a neutral house")),
                     outcome(fan.cut.depressurised, tr("a house under %1 of suction").arg(suction))};
  if (standard_unsafe) {
    detail << tr("Standard start, from cold walls. %1").arg(QString::fromStdString(power_cut_sentence(*standard)));
  }
  statement.detail = detail.join(QLatin1Char(' '));
  return statement;
}

}  // namespace fluewright
