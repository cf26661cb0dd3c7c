// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/tr.hpp"
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
      return tr("mouth");
    case AccessKind::lid:
      return tr("lid, lifted off");
    case AccessKind::cover:
      return tr("cleanout");
    case AccessKind::top:
      break;
  }
  return tr("from the roof");
}

QString gauge_name(GaugePlace place) {
  switch (place) {
    case GaugePlace::into_the_bench:
      return tr("Into the bench");
    case GaugePlace::out_of_the_bench:
      return tr("Out of the bench");
    case GaugePlace::foot_of_the_stack:
      break;
  }
  return tr("Foot of the stack");
}

void add_cleanouts(Flow& flow, const Dossier& dossier) {
  const Upkeep& upkeep = dossier.upkeep();
  if (upkeep.accesses.size() < 2) return;
  const UnitSystem units = dossier.units();
  flow.heading(tr("Cleanouts (numbers in squares on the plan)"));
  Table table;
  const QString metres = units == UnitSystem::metric ? QStringLiteral("m") : QString();
  table.columns = {{tr("From"), {}, ColumnKind::words},
                   {tr("To"), {}, ColumnKind::words},
                   {tr("Length"), metres, ColumnKind::number},
                   {tr("Reach from either end"), metres, ColumnKind::number},
                   {tr("Turns between"), {}, ColumnKind::number}};
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
        tr("A brush from either end goes round one turn, seldom two: more than two turns between openings want "
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
              said(citation.source) + " (" + said(word(citation.standing)) + ")"}]
          .push_back(piece);
    }
  }
  if (groups.empty()) return;
  flow.heading(tr("Room to everything that burns (dash-dot outlines on the plan)"));
  Table table;
  table.columns = {
      {tr("Keep clear"), text(unit_name(Meaning::small_length, dossier.units())), ColumnKind::number},
      {tr("Pieces"), {}, ColumnKind::words},
      {tr("Source"), {}, ColumnKind::words}};
  for (const auto& [key, pieces] : groups) {
    table.rows.push_back(
        {text(show(on_the_tape(static_cast<double>(-key.first) * grid_count, dossier.units()), dossier.units()).number),
         number_list(dossier, pieces), text(key.second)});
  }
  flow.table(table);
  flow.paragraph(tr("Local code and the makers' sheets go before these. Wood behind masonry heats up too."),
                 Type::note);
}

void add_gauges(Flow& flow, const Dossier& dossier) {
  const Upkeep& upkeep = dossier.upkeep();
  if (upkeep.gauges.empty()) return;
  const UnitSystem units = dossier.units();
  flow.heading(tr("Gauge points (letters on the plan)"));
  Table table;
  table.columns = {{tr("Point"), {}, ColumnKind::words},
                   {tr("Where"), {}, ColumnKind::words},
                   {tr("Gas"), text(unit_name(Meaning::temperature, units)), ColumnKind::number},
                   {tr("Against the room"), text(unit_name(Meaning::pressure, units)), ColumnKind::number}};
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
      tr("A hole of 8 mm (5/16 in) for a probe, shut with a screw. What is calculated there %1, bench charged; below "
          "the room's pressure the sign is minus.")
          .arg(dossier.answer().profile_is_operating ? tr("where it settles")
                                                     : tr("at the wanted fire")),
      Type::note);
}

void add_water(Flow& flow, const Dossier& dossier) {
  const Upkeep& upkeep = dossier.upkeep();
  const UnitSystem units = dossier.units();
  flow.heading(tr("Slope and drain"));
  if (upkeep.slopes.empty()) {
    flow.item(
        QStringLiteral("–"),
        tr("No run is given a slope: lay them level or climbing 1–2 % along the gas, and never sagging."));
  }
  for (const Slope& slope : upkeep.slopes) {
    flow.item(QStringLiteral("–"),
              tr("%1 %2 %3 %4 % along the gas.")
                  .arg(dossier.number(slope.piece))
                  .arg(dossier.name(slope.piece),
                       slope.rise_per_run > 0.0 ? tr("climbs") : tr("falls"))
                  .arg(digits(100.0 * std::abs(slope.rise_per_run.value()), 1)));
  }
  for (const LowPlace& low : upkeep.low_places) {
    const QString where = low.first == low.last
                              ? QStringLiteral("%1 %2").arg(dossier.number(low.first)).arg(dossier.name(low.first))
                              : tr("%1 %2 to %3 %4")
                                    .arg(dossier.number(low.first))
                                    .arg(dossier.name(low.first))
                                    .arg(dossier.number(low.last))
                                    .arg(dossier.name(low.last));
    flow.item(QStringLiteral("–"),
              tr("Water gathers at %1, axis at %2: %3")
                  .arg(where, text(show(low.height, units, Meaning::height).text()),
                       low.opens ? tr("a cleanout opens there; give it a drain.")
                                 : tr("nothing opens there; a cleanout with a drain belongs at its lowest end.")));
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
  flow.heading(tr("Carbon-monoxide alarm (CO on the plan)"));
  flow.paragraph(tr("In the heater's room, 1 to 3 m (3 to 10 ft) from the feed's mouth, at the height its maker's sheet says, and "
      "another near every bedroom. EN 50292, from memory."));
  add_water(flow, dossier);
}

}  // namespace fluewright::paper
