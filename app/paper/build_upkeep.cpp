// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/documents.hpp"
#include "app/shared/words.hpp"
#include "engine/advice/clearance.hpp"

#include <algorithm>
#include <cmath>
#include <map>

namespace fluewright::paper {

namespace {

QString kind_name(AccessKind kind) {
  switch (kind) {
    case AccessKind::mouth:
      return QStringLiteral("mouth");
    case AccessKind::lid:
      return QStringLiteral("lid, lifted off");
    case AccessKind::cover:
      return QStringLiteral("cleanout");
    case AccessKind::top:
      break;
  }
  return QStringLiteral("from the roof");
}

QString gauge_name(GaugePlace place) {
  switch (place) {
    case GaugePlace::into_the_bench:
      return QStringLiteral("Into the bench");
    case GaugePlace::out_of_the_bench:
      return QStringLiteral("Out of the bench");
    case GaugePlace::foot_of_the_stack:
      break;
  }
  return QStringLiteral("Foot of the stack");
}

void add_cleanouts(Flow& flow, const Dossier& dossier) {
  const Upkeep& upkeep = dossier.upkeep();
  if (upkeep.accesses.size() < 2) return;
  const UnitSystem units = dossier.units();
  flow.heading(QStringLiteral("Cleanouts (numbers in squares on the plan)"));
  Table table;
  const QString metres = units == UnitSystem::metric ? QStringLiteral("m") : QString();
  table.columns = {{QStringLiteral("From"), {}, ColumnKind::words},
                   {QStringLiteral("To"), {}, ColumnKind::words},
                   {QStringLiteral("Length"), metres, ColumnKind::number},
                   {QStringLiteral("Reach from either end"), metres, ColumnKind::number},
                   {QStringLiteral("Turns between"), {}, ColumnKind::number}};
  std::size_t number = 1;
  for (const SweptLength& swept : upkeep.lengths) {
    const auto name = [&](const Access& access, std::size_t n) {
      return QStringLiteral("%1  %2 (%3)").arg(n).arg(dossier.name(access.piece), kind_name(access.kind));
    };
    table.rows.push_back({name(swept.from, number), name(swept.to, number + 1),
                          text(show(swept.length, units, Meaning::run_length).number),
                          text(show(0.5 * swept.length, units, Meaning::run_length).number),
                          QString::number(swept.turns)});
    ++number;
  }
  flow.table(table);
  const auto hard =
      std::count_if(upkeep.lengths.begin(), upkeep.lengths.end(), [](const SweptLength& l) { return l.turns > 2; });
  if (hard > 0) {
    flow.paragraph(
        QStringLiteral(
            "A brush from either end goes round one turn, seldom two: more than two turns between openings want "
            "another cleanout. Common practice, no source."),
        Type::note);
  }
}

void add_clearances(Flow& flow, const Dossier& dossier) {
  std::map<std::pair<long, std::string>, std::vector<std::size_t>> groups;
  for (const std::size_t piece : dossier.order()) {
    if (!dossier.sound(piece)) continue;
    if (const auto c = clearance_of(dossier.view(piece))) {
      const Citation& citation = c->least.citation;
      groups[{-std::lround(in(c->least.value, grid_count)),
              citation.source + " (" + std::string(word(citation.standing)) + ")"}]
          .push_back(piece);
    }
  }
  if (groups.empty()) return;
  flow.heading(QStringLiteral("Room to everything that burns (dash-dot outlines on the plan)"));
  Table table;
  table.columns = {
      {QStringLiteral("Keep clear"), text(unit_name(Meaning::small_length, dossier.units())), ColumnKind::number},
      {QStringLiteral("Pieces"), {}, ColumnKind::words},
      {QStringLiteral("Source"), {}, ColumnKind::words}};
  for (const auto& [key, pieces] : groups) {
    table.rows.push_back(
        {text(show(on_the_tape(static_cast<double>(-key.first) * grid_count, dossier.units()), dossier.units()).number),
         number_list(dossier, pieces), text(key.second)});
  }
  flow.table(table);
  flow.paragraph(QStringLiteral("Local code and the makers' sheets go before these. Wood behind masonry heats up too."),
                 Type::note);
}

void add_gauges(Flow& flow, const Dossier& dossier) {
  const Upkeep& upkeep = dossier.upkeep();
  if (upkeep.gauges.empty()) return;
  const UnitSystem units = dossier.units();
  flow.heading(QStringLiteral("Gauge points (letters on the plan)"));
  Table table;
  table.columns = {{QStringLiteral("Point"), {}, ColumnKind::words},
                   {QStringLiteral("Where"), {}, ColumnKind::words},
                   {QStringLiteral("Gas"), text(unit_name(Meaning::temperature, units)), ColumnKind::number},
                   {QStringLiteral("Against the room"), text(unit_name(Meaning::pressure, units)), ColumnKind::number}};
  char letter = 'A';
  for (const GaugePoint& gauge : upkeep.gauges) {
    const SliceState* row = dossier.middle_row(gauge.piece);
    table.rows.push_back(
        {QString(QLatin1Char(letter++)),
         QStringLiteral("%1: %2 %3")
             .arg(gauge_name(gauge.place))
             .arg(dossier.number(gauge.piece))
             .arg(dossier.name(gauge.piece)),
         row != nullptr ? text(show(row->gas, units).number) : QStringLiteral("–"),
         row != nullptr ? text(show(row->gauge - row->room_gauge, units).number) : QStringLiteral("–")});
  }
  flow.table(table);
  flow.paragraph(
      QStringLiteral(
          "A hole of 8 mm (5/16 in) for a probe, shut with a screw. What is calculated there %1, bench charged; below "
          "the room's pressure the sign is minus.")
          .arg(dossier.answer().profile_is_operating ? QStringLiteral("where it settles")
                                                     : QStringLiteral("at the wanted fire")),
      Type::note);
}

void add_water(Flow& flow, const Dossier& dossier) {
  const Upkeep& upkeep = dossier.upkeep();
  const UnitSystem units = dossier.units();
  flow.heading(QStringLiteral("Slope and drain"));
  if (upkeep.slopes.empty()) {
    flow.item(
        QStringLiteral("–"),
        QStringLiteral("No run is given a slope: lay them level or climbing 1–2 % along the gas, and never sagging."));
  }
  for (const Slope& slope : upkeep.slopes) {
    flow.item(QStringLiteral("–"),
              QStringLiteral("%1 %2 %3 %4 % along the gas.")
                  .arg(dossier.number(slope.piece))
                  .arg(dossier.name(slope.piece),
                       slope.rise_per_run > 0.0 ? QStringLiteral("climbs") : QStringLiteral("falls"))
                  .arg(QString::number(100.0 * std::abs(slope.rise_per_run.value()), 'f', 1)));
  }
  for (const LowPlace& low : upkeep.low_places) {
    const QString where = low.first == low.last
                              ? QStringLiteral("%1 %2").arg(dossier.number(low.first)).arg(dossier.name(low.first))
                              : QStringLiteral("%1 %2 to %3 %4")
                                    .arg(dossier.number(low.first))
                                    .arg(dossier.name(low.first))
                                    .arg(dossier.number(low.last))
                                    .arg(dossier.name(low.last));
    flow.item(QStringLiteral("–"),
              QStringLiteral("Water gathers at %1, axis at %2: %3")
                  .arg(where, text(show(low.height, units, Meaning::height).text()),
                       low.opens ? QStringLiteral("a cleanout opens there; give it a drain.")
                                 : QStringLiteral(
                                       "nothing opens there; a cleanout with a drain belongs at its lowest end.")));
  }
}

}  // namespace

void add_upkeep(Flow& flow, const Dossier& dossier) {
  ViewWish wish;
  wish.clearances = true;
  wish.dimensions = false;
  constexpr double most = 130.0;
  add_view(flow, dossier, ViewKind::plan, wish, most);
  add_clearances(flow, dossier);
  add_cleanouts(flow, dossier);
  add_gauges(flow, dossier);
  flow.heading(QStringLiteral("Carbon-monoxide alarm (CO on the plan)"));
  flow.paragraph(QStringLiteral(
      "In the heater's room, 1 to 3 m (3 to 10 ft) from the feed's mouth, at the height its maker's sheet says, and "
      "another near every bedroom. EN 50292, from memory."));
  add_water(flow, dossier);
}

}  // namespace fluewright::paper
