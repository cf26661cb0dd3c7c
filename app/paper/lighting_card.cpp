// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/documents.hpp"
#include "app/shared/words.hpp"

#include <algorithm>

namespace fluewright::paper {

namespace {

/// The pieces whoever lights it puts a hand to.
struct Hands {
  QString feed = QStringLiteral("the feed");
  std::optional<QString> foot;  ///< the cleanout nearest before the stack
  std::optional<QString> damper;
  std::optional<QString> fan;
  std::optional<QString> bypass;
};

constexpr Mass ounce = 0.45359237 / 16.0 * kilogram;  // avoirdupois, exact

QString quoted(const QString& name) { return QStringLiteral("“%1”").arg(name); }

Hands hands_of(const Dossier& dossier) {
  Hands hands;
  if (!dossier.corners().empty()) hands.feed = quoted(dossier.name(dossier.corners().front().piece));
  for (const Access& access : dossier.upkeep().accesses) {
    if (access.kind == AccessKind::cover) hands.foot = quoted(dossier.name(access.piece));
  }
  for (std::size_t i = 0; i < dossier.design().pieces.size(); ++i) {
    if (!dossier.can_be_drawn(i)) continue;
    const PieceType& type = dossier.view(i).type();
    if (type.id == "bypass_link") {
      hands.bypass = quoted(dossier.name(i));
    } else if (type.shape == "damper") {
      hands.damper = quoted(dossier.name(i));
    }
    if (type.shape == "fan" || type.shape == "fan_head") hands.fan = quoted(dossier.name(i));
  }
  return hands;
}

QString cell_text(const CardCell& cell, UnitSystem units) {
  switch (cell.step) {
    case CardStep::light:
      return QStringLiteral("light");
    case CardStep::kindle_at_the_foot:
      return QStringLiteral("kindle at the foot");
    case CardStep::prime: {
      const double grams = in(cell.priming, gram);
      return units == UnitSystem::metric
                 ? QStringLiteral("prime with %1 g").arg(QString::number(grams, 'f', 0))
                 : QStringLiteral("prime with %1 oz").arg(QString::number(in(cell.priming, ounce), 'f', 0));
    }
    case CardStep::wait:
      break;
  }
  return QStringLiteral("wait");
}

void add_start_table(Flow& flow, const Dossier& dossier, const CardTable& starts) {
  const UnitSystem units = dossier.units();
  Table table;
  table.columns.push_back(
      {QStringLiteral("Outdoors"), text(unit_name(Meaning::temperature, units)), ColumnKind::number});
  for (const Temperature& room : starts.room) {
    table.columns.push_back({QStringLiteral("Room %1").arg(text(show(room, units).text())), {}, ColumnKind::words});
  }
  for (std::size_t i = 0; i < starts.outdoor.size() && i < starts.rows.size(); ++i) {
    QStringList row{text(show(starts.outdoor[i], units).number)};
    for (const CardCell& cell : starts.rows[i]) row << cell_text(cell, units);
    table.rows.push_back(row);
  }
  flow.table(table);
}

void add_steps(Flow& flow, const Hands& hands) {
  flow.heading(QStringLiteral("Lighting it"));
  int number = 0;
  const auto step = [&](const QString& words) { flow.item(QString::number(++number), words); };
  step(
      QStringLiteral("Look at the carbon-monoxide alarm: its lamp must show that it works. Switch off range hood, bath "
                     "fan and dryer."));
  if (hands.bypass) step(QStringLiteral("Open %1.").arg(*hands.bypass));
  if (hands.damper) step(QStringLiteral("Open %1 fully.").arg(*hands.damper));
  if (hands.fan) step(QStringLiteral("Switch on %1.").arg(*hands.fan));
  step(QStringLiteral("Hold a burning match to %1: the flame must lean in. If it leans out, or hangs still, %2 first.")
           .arg(hands.feed,
                hands.foot
                    ? QStringLiteral("burn two sheets of newspaper, one after the other, behind %1 and shut it again")
                          .arg(*hands.foot)
                    : QStringLiteral("open a window on the windward side and wait until it leans in")));
  step(QStringLiteral("Lay thin, dry kindling into %1 and light it. Keep it small and bright until it roars.")
           .arg(hands.feed));
  step(QStringLiteral("Then add sticks a few at a time, tips level, never more than leave the air its way past them."));
  if (hands.bypass)
    step(QStringLiteral("When the stack is warm to the hand, close %1 slowly. If smoke shows, open it again.")
             .arg(*hands.bypass));
  step(QStringLiteral(
      "Stay with it until it burns clean. Never shut the air or a damper while there are flames or embers."));
}

void add_trouble(Flow& flow, const Hands& hands) {
  flow.heading(QStringLiteral("When smoke comes back"));
  flow.item(QStringLiteral("–"),
            QStringLiteral("Open a window. Feed nothing more; pull the sticks back or let them burn down bright."));
  if (hands.bypass) flow.item(QStringLiteral("–"), QStringLiteral("Open %1.").arg(*hands.bypass));
  flow.item(QStringLiteral("–"), QStringLiteral("Switch off every fan that blows out of the house."));
  flow.item(QStringLiteral("–"),
            QStringLiteral(
                "If it does not stop within a minute or two: everybody out, door shut behind you, call for help."));
  flow.item(QStringLiteral("–"),
            QStringLiteral("If it comes back another day, have the way swept before you light again."));
  flow.heading(QStringLiteral("When the power fails"));
  flow.item(
      QStringLiteral("–"),
      hands.fan
          ? QStringLiteral("%1 stops and stands in the gas's way. Feed nothing more, open a window, stay in the room "
                           "until the embers are out. Do not light it again without power.")
                .arg(*hands.fan)
          : QStringLiteral("This heater has no fan: it burns on. The alarm must have a battery of its own."));
  flow.heading(QStringLiteral("When the alarm sounds"));
  flow.item(
      QStringLiteral("–"),
      QStringLiteral(
          "Everybody out at once; leave the door open only if it costs no time. Call the fire brigade from outside."));
  flow.item(QStringLiteral("–"),
            QStringLiteral("Headache, dizziness or sickness count as an alarm even when nothing sounds."));
  flow.item(
      QStringLiteral("–"),
      QStringLiteral("Go back in only when they say so, and light again only after somebody has found the reason."));
  flow.heading(QStringLiteral("Never burn"));
  flow.paragraph(
      QStringLiteral("Wet or green wood · painted, glued or treated wood · driftwood · chipboard · household waste, "
                     "plastic, coated paper · "
                     "coal or briquettes · never any petrol, spirit or lighter fluid."));
}

}  // namespace

std::vector<Sheet> lighting_card(const Dossier& dossier, const PaperOptions& options) {
  Flow flow(options.size, title_block(dossier, options, QStringLiteral("Lighting card")));
  const Hands hands = hands_of(dossier);
  flow.title(QStringLiteral("Lighting: %1").arg(design_title(dossier)));
  add_missing(flow, dossier);
  flow.heading(QStringLiteral("Can I light it today?"));
  if (options.starts && !options.starts->rows.empty()) {
    add_start_table(flow, dossier, *options.starts);
  } else {
    flow.paragraph(QStringLiteral("The table of outdoor against room temperature is not computed for this design. Do "
                                  "the match test of step %1 every time.")
                       .arg(2 + (hands.bypass ? 1 : 0) + (hands.damper ? 1 : 0) + (hands.fan ? 1 : 0)));
  }
  add_steps(flow, hands);
  add_trouble(flow, hands);
  flow.paragraph(
      QStringLiteral("How to light and what to do is common practice, no source. Numbers are estimates for planning."),
      Type::note);
  return flow.finish();
}

}  // namespace fluewright::paper
