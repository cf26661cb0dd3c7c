// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/tr.hpp"
#include "app/paper/documents.hpp"
#include "app/paper/type.hpp"
#include "app/shared/words.hpp"

#include <algorithm>

namespace fluewright::paper {

namespace {

/// The pieces whoever lights it puts a hand to.
struct Hands {
  QString feed = tr("the feed");
  std::optional<QString> foot;    ///< the cleanout nearest before the stack
  std::optional<QString> primed;  ///< where the table has it primed
  std::optional<QString> damper;
  std::optional<QString> fan;
  std::optional<QString> bypass;
};

constexpr Mass ounce = 0.45359237 / 16.0 * kilogram;  // avoirdupois, exact

QString quoted(const QString& name) { return QStringLiteral("“%1”").arg(name); }

Hands hands_of(const Dossier& dossier, const std::optional<CardTable>& starts) {
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
    if (starts && dossier.design().pieces[i].id == starts->primed_at) hands.primed = quoted(dossier.name(i));
  }
  return hands;
}

QString grams(Mass mass, UnitSystem units) {
  return units == UnitSystem::metric ? QStringLiteral("%1 g").arg(in(mass, gram), 0, 'f', 0)
                                     : tr("%1 oz").arg(digits(in(mass, ounce), 1));
}
QString minutes(Time time) { return tr("%1 min").arg(in(time, minute), 0, 'f', 0); }

QString cell_text(const CardCell& cell, UnitSystem units) {
  switch (cell.step) {
    case CardStep::light:
      return tr("light");
    case CardStep::kindle_at_the_foot:
      return tr("kindle at the foot");
    case CardStep::prime:
      return tr("prime with %1, %2").arg(grams(cell.priming, units), minutes(cell.lasts));
    case CardStep::fan:
      return tr("fan, %1").arg(minutes(cell.lasts));
    case CardStep::wait:
      break;
  }
  return tr("wait");
}

/// What the table's words ask for, of those that stand in it.
void add_start_words(Flow& flow, const Dossier& dossier, const CardTable& starts, const Hands& hands) {
  const auto said = [&starts](CardStep step) {
    return std::any_of(starts.rows.begin(), starts.rows.end(), [step](const std::vector<CardCell>& row) {
      return std::any_of(row.begin(), row.end(), [step](const CardCell& cell) { return cell.step == step; });
    });
  };
  const double indent = width_of(tr("kindle at the foot"), Type::table_head) + 4.0;
  const auto line = [&](CardStep step, const char* word, const QString& act) {
    if (said(step)) flow.item(QString::fromUtf8(word), act, Type::table, indent);
  };
  line(CardStep::light, "light", tr("It draws before anything burns: light the whole fire."));
  line(CardStep::kindle_at_the_foot, "kindle at the foot",
       tr("Keep it shut until the match. A small fire at the foot of %1 first: %2 of thin kindling for %3. "
                      "Then the rest.")
           .arg(hands.feed, text(show(starts.kindling, dossier.units()).text()), minutes(starts.kindling_lasts)));
  line(CardStep::prime, "prime",
       tr("Burn that much crumpled newspaper, over that time, behind the open cap of %1. Shut it; then kindle "
                      "at the foot.")
           .arg(hands.primed.value_or(tr("the stack's foot"))));
  line(CardStep::fan, "fan",
       tr("Switch on %1 a minute before the match, kindle at the foot, switch it off after that time.")
           .arg(hands.fan.value_or(tr("the fan"))));
  line(CardStep::wait, "wait",
       tr("Nothing of this gets it going. Warm the room, or wait until it is cooler outdoors."));
}

void add_start_table(Flow& flow, const Dossier& dossier, const CardTable& starts) {
  const UnitSystem units = dossier.units();
  Table table;
  table.columns.push_back(
      {tr("Outdoors, %1").arg(text(unit_name(Meaning::temperature, units))), {}, ColumnKind::number});
  for (const Temperature& room : starts.room) {
    table.columns.push_back({tr("Room %1").arg(text(show(room, units).text())), {}, ColumnKind::words});
  }
  for (std::size_t i = 0; i < starts.outdoor.size() && i < starts.rows.size(); ++i) {
    QStringList row{text(show(starts.outdoor[i], units).number)};
    for (const CardCell& cell : starts.rows[i]) row << cell_text(cell, units);
    table.rows.push_back(row);
  }
  flow.table(table);
}

/// The table, or why there is none.
void add_starts(Flow& flow, const Dossier& dossier, const PaperOptions& options, const Hands& hands) {
  flow.heading(tr("Can I light it today?"));
  const auto verdict = dossier.answer().verdict;
  if (verdict && *verdict != Verdict::draws) flow.paragraph(verdict_sentence(dossier), Type::strong);
  if (verdict == Verdict::will_not_draw) {
    flow.paragraph(tr("No. Do not light it until that is changed."), Type::strong);
    return;
  }
  if (!options.starts || options.starts->rows.empty()) {
    flow.paragraph(tr("The table of outdoor against room temperature is not computed for this design. Do "
                                  "the match test of step %1 every time.")
                       .arg(2 + (hands.bypass ? 1 : 0) + (hands.damper ? 1 : 0) + (hands.fan ? 1 : 0)));
    return;
  }
  add_start_table(flow, dossier, *options.starts);
  add_start_words(flow, dossier, *options.starts, hands);
  flow.paragraph(tr("Calculated for a heater that is cold through and stands as warm as the room, in calm "
                                "air. Wind, exhaust fans or soot change it: the match has the last word."),
                 Type::note);
}

/// What to do when the match does not lean in.
QString remedy_of(const Hands& hands) {
  if (hands.primed) {
    return tr("prime at %1 and hold it there again; if it still leans out, light nothing today").arg(*hands.primed);
  }
  if (hands.foot) {
    return tr("burn two sheets of newspaper, one after the other, behind %1, shut it and hold it there again")
        .arg(*hands.foot);
  }
  return tr("open a window on the windward side and wait until it leans in");
}

void add_steps(Flow& flow, const Hands& hands, Type type) {
  flow.heading(tr("Lighting it"));
  int number = 0;
  const auto step = [&](const QString& words) { flow.item(QString::number(++number), words, type); };
  step(
      tr("Look at the carbon-monoxide alarm: its lamp must show that it works. Switch off range hood, bath "
                     "fan and dryer."));
  if (hands.bypass) step(tr("Open %1.").arg(*hands.bypass));
  if (hands.damper) step(tr("Open %1 fully.").arg(*hands.damper));
  if (hands.fan) step(tr("Switch on %1.").arg(*hands.fan));
  step(tr("Hold a burning match to %1: the flame must lean in. If it leans out, or hangs still, %2.")
           .arg(hands.feed, remedy_of(hands)));
  step(tr("Lay thin, dry kindling into %1 and light it. Keep it small and bright until it roars.")
           .arg(hands.feed));
  step(tr("Then add sticks a few at a time, tips level, never more than leave the air its way past them."));
  if (hands.bypass)
    step(tr("When the stack is warm to the hand, close %1 slowly. If smoke shows, open it again.")
             .arg(*hands.bypass));
  step(tr("Stay with it until it burns clean. Never shut the air or a damper while there are flames or embers."));
}

void add_trouble(Flow& flow, const Hands& hands, Type type) {
  const auto point = [&](const QString& words) { flow.item(QStringLiteral("–"), words, type); };
  flow.heading(tr("When smoke comes back"));
  point(tr("Open a window. Feed nothing more; pull the sticks back or let them burn down bright."));
  if (hands.bypass) point(tr("Open %1.").arg(*hands.bypass));
  point(tr("Switch off every fan that blows out of the house."));
  point(tr("If it does not stop within a minute or two: everybody out, door shut behind you, call for help."));
  point(tr("If it comes back another day, have the way swept before you light again."));
  flow.heading(tr("When the power fails"));
  point(hands.fan
          ? tr("%1 stops and stands in the gas's way. Feed nothing more, open a window, stay in the room "
                           "until the embers are out. Do not light it again without power.")
                .arg(*hands.fan)
          : tr("This heater has no fan: it burns on. The alarm must have a battery of its own."));
  flow.heading(tr("When the alarm sounds"));
  point(tr("Everybody out at once; leave the door open only if it costs no time. Call the fire brigade from outside."));
  point(tr("Headache, dizziness or sickness count as an alarm even when nothing sounds."));
  point(tr("Go back in only when they say so, and light again only after somebody has found the reason."));
  flow.heading(tr("Never burn"));
  flow.paragraph(
      tr("Wet or green wood · painted, glued or treated wood · driftwood · chipboard · household waste, "
                     "plastic, coated paper · "
                     "coal or briquettes · never any petrol, spirit or lighter fluid."),
                 type);
}

std::vector<Sheet> card_in(const Dossier& dossier, const PaperOptions& options, Type type) {
  Flow flow(options.size, title_block(dossier, options, tr("Lighting card")));
  const Hands hands = hands_of(dossier, options.starts);
  flow.title(tr("Lighting: %1").arg(design_title(dossier)));
  add_missing(flow, dossier);
  add_starts(flow, dossier, options, hands);
  add_steps(flow, hands, type);
  add_trouble(flow, hands, type);
  flow.paragraph(
      tr("How to light and what to do is common practice, no source. Numbers are estimates for planning."),
      Type::note);
  return flow.finish();
}

}  // namespace

std::vector<Sheet> lighting_card(const Dossier& dossier, const PaperOptions& options) {
  // One page to hang up: where much has to be said, a step smaller.
  std::vector<Sheet> card = card_in(dossier, options, Type::body);
  return card.size() == 1 ? card : card_in(dossier, options, Type::table);
}

}  // namespace fluewright::paper
