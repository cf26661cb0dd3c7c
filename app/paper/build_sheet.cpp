// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/tr.hpp"
#include "app/paper/documents.hpp"
#include "app/paper/plot_figure.hpp"
#include "app/shared/words.hpp"
#include "engine/advice/findings.hpp"
#include "engine/layout/conditions.hpp"

#include <algorithm>

namespace fluewright::paper {

namespace {

QString number_of(Pressure value, UnitSystem units) { return text(show(value, units).number); }

/// Rows of two cells set in two halves side by side: half as high.
Table folded(const Table& table) {
  Table twice;
  twice.columns = {table.columns[0], table.columns[1], table.columns[0], table.columns[1]};
  const std::size_t half = (table.rows.size() + 1) / 2;
  for (std::size_t i = 0; i < half; ++i) {
    QStringList row = table.rows[i];
    if (half + i < table.rows.size()) row << table.rows[half + i];
    twice.rows.push_back(row);
  }
  return twice;
}

Table two_columns(const QString& left, const QString& right) {
  Table table;
  table.columns = {{left, {}, ColumnKind::words}, {right, {}, ColumnKind::words}};
  return table;
}

void add_margins(Flow& flow, const Dossier& dossier) {
  const UnitSystem units = dossier.units();
  const QString pascals = text(unit_name(Meaning::pressure, units));
  Table table;
  table.columns = {{tr("Bench"), {}, ColumnKind::words},
                   {tr("Draft to spare"), pascals, ColumnKind::number},
                   {tr("Buoyancy"), pascals, ColumnKind::number},
                   {tr("Resistance"), pascals, ColumnKind::number},
                   {tr("Room"), pascals, ColumnKind::number},
                   {tr("Gas at the cap"), text(unit_name(Meaning::temperature, units)), ColumnKind::number},
                   {QString(), {}, ColumnKind::words}};
  const bool fans = dossier.answer().worst_margin_with_fans.has_value();
  if (fans) {
    table.columns[1].heading = tr("Draft to spare, fans off");
    table.columns.insert(table.columns.begin() + 2, {tr("with fans"), pascals, ColumnKind::number});
  }
  for (const DesignFlow& flow_check : dossier.answer().design_flow) {
    QStringList row{spoken(word(flow_check.age)),
                    number_of(flow_check.margin, units),
                    number_of(flow_check.buoyancy, units),
                    number_of(flow_check.resistance, units),
                    number_of(flow_check.room_gauge, units),
                    text(show(flow_check.exit_temperature, units).number),
                    flow_check.quick_estimate ? tr("quick estimate") : QString()};
    if (fans)
      row.insert(2, flow_check.margin_with_fans ? number_of(*flow_check.margin_with_fans, units) : QStringLiteral("–"));
    table.rows.push_back(row);
  }
  flow.table(table);
  flow.paragraph(
      tr("At the wanted burn rate and excess air. Draft to spare = buoyancy + room − %1 × resistance − "
                     "wind allowance − wind at the cap.")
          .arg(text(show(dossier.design().fire.flow_safety, units).number)),
      Type::note);
}

void add_running(Flow& flow, const Dossier& dossier) {
  const OperatingPoint* point = dossier.answer().running_point();
  if (point == nullptr) {
    if (dossier.complete())
      flow.paragraph(
          tr("Left to itself it settles nowhere: no flow from the inlet to the cap holds itself."));
    return;
  }
  const UnitSystem units = dossier.units();
  Table table = two_columns(tr("Where it settles"), tr("bench charged"));
  const auto row = [&table](const char* what, const Shown& value) {
    table.rows.push_back({tr(what), text(value.text())});
  };
  row(QT_TR_NOOP("Excess air"), show(point->excess_air_ratio, units));
  row(QT_TR_NOOP("Flue gas"), show(point->flue_gas, units, Meaning::mass_flow_gas));
  row(QT_TR_NOOP("Burn rate"), show(point->burn_rate, units));
  row(QT_TR_NOOP("Gas behind the fire"), show(point->fire_temperature, units));
  row(QT_TR_NOOP("Gas at the cap"), show(point->exit_temperature, units));
  row(QT_TR_NOOP("Heat released"), show(point->heat.released, units));
  row(QT_TR_NOOP("Heat to the room"), show(point->heat.to_room, units));
  row(QT_TR_NOOP("Heat into the mass"), show(point->heat.into_mass, units));
  row(QT_TR_NOOP("Heat up the stack"), show(point->heat.stack_loss, units));
  table.rows.push_back({tr("Wet walls"),
                        text(condensation_sentence(dossier.answer(), dossier.design(), dossier.library(), units))});
  flow.table(folded(table));
}

/// Most serious first; what someone lets stand comes with the reason, after what is open.
void add_findings(Flow& flow, const Dossier& dossier) {
  flow.heading(tr("Findings"));
  if (dossier.findings().empty()) {
    flow.paragraph(tr("None."));
    return;
  }
  Table table;
  table.columns = {{tr("Weight"), {}, ColumnKind::words},
                   {tr("Finding"), {}, ColumnKind::words},
                   {tr("Rests on"), {}, ColumnKind::words},
                   {tr("Let stand because"), {}, ColumnKind::words}};
  std::vector<QStringList> settled;
  for (const Finding& finding : dossier.findings()) {
    const Acknowledgement* reason = acknowledgement_of(finding, dossier.design());
    QStringList row{spoken(word(finding.severity)),
                    text(sentence(finding, dossier.design(), dossier.library(), dossier.units())),
                    text(finding_source_words(finding)), reason != nullptr ? text(reason->reason) : QStringLiteral("open")};
    (reason != nullptr ? settled : table.rows).push_back(std::move(row));
  }
  table.rows.insert(table.rows.end(), settled.begin(), settled.end());
  if (settled.empty()) {
    table.columns.pop_back();
    for (QStringList& row : table.rows) row.removeLast();
  }
  flow.table(table);
}

void add_cautions(Flow& flow) {
  flow.heading(tr("Before anyone builds"));
  for (const std::string& caution : cautions()) flow.item(QStringLiteral("–"), text(caution));
}

}  // namespace

void add_view(Flow& flow, const Dossier& dossier, ViewKind view, const ViewWish& wish, double most) {
  // Upright paper first; lying paper where it gives a larger scale and the view starts a page anyway.
  const QSizeF page(flow.width(), flow.full_height());
  const QSizeF upright(page.width(), std::min(most, page.height()));
  DrawnView drawn = fitted_view(dossier, view, upright, wish);
  const QSizeF lying(page.height() + 18.0, page.width() - 18.0);
  const DrawnView turned = fitted_view(dossier, view, lying, wish);
  if (turned.scale.denominator < 0.7 * drawn.scale.denominator) {
    flow.new_page(true);
    flow.figure(turned.figure);
    flow.new_page();
    return;
  }
  flow.figure(drawn.figure);
}

void add_results(Flow& flow, const Dossier& dossier) {
  if (!dossier.answer().profile.empty()) {
    constexpr double verdict_and_table = 52.0;
    flow.need(verdict_and_table);
    flow.heading(tr("Does it draw?"));
    flow.paragraph(verdict_sentence(dossier), Type::strong);
    add_margins(flow, dossier);
    add_running(flow, dossier);
    flow.heading(dossier.answer().profile_is_operating ? tr("Pressure along the way, where it settles")
                                                       : tr("Pressure along the way, at the wanted fire"));
    flow.figure(pressure_plot(dossier, {flow.width(), 74.0}));
  }
  add_findings(flow, dossier);
}

void add_assumptions(Flow& flow, const Dossier& dossier) {
  flow.heading(tr("Reckoned with"));
  Table table = two_columns(tr("Condition"), tr("Value"));
  for (const Condition& condition : conditions()) {
    const FieldSpec* spec = dossier.library().condition(condition.key);
    if (spec == nullptr) continue;
    FieldValue value = condition.get(dossier.design());
    if (const auto* id = std::get_if<std::string>(&value); id != nullptr && spec->kind == FieldKind::wood) {
      if (const WoodSpecies* wood = dossier.library().wood(*id)) value = wood->name;
    }
    table.rows.push_back({text(spec->label), text(show(value, dossier.units(), spec->kind, condition.key).text())});
  }
  flow.table(folded(table));
  flow.paragraph(tr("Steady calculation of gas, heat and pressure along the way; a cold bench and one hour "
                                "after lighting are quick "
                                "estimates. Joints are taken as tight and walls as dry. The page “Working” has every "
                                "relation with its source."),
                 Type::note);
}

std::vector<Sheet> build_sheet(const Dossier& dossier, const PaperOptions& options) {
  Flow flow(options.size, title_block(dossier, options, tr("Build sheet")));
  flow.title(design_title(dossier));
  flow.paragraph(text(dossier.design().scene));
  flow.paragraph(verdict_sentence(dossier), Type::strong);
  add_missing(flow, dossier);
  if (!dossier.design().pieces.empty()) {
    const double least = 90.0;
    const QSizeF room(flow.width(), std::max(least, flow.left()));
    flow.figure(fitted_view(dossier, ViewKind::isometric, room).figure);
    add_view(flow, dossier, ViewKind::plan);
    const QSizeF front = view_size(dossier, ViewKind::front);
    const QSizeF side = view_size(dossier, ViewKind::side);
    add_view(flow, dossier, front.width() >= side.width() ? ViewKind::front : ViewKind::side);
    if (std::min(front.width(), side.width()) > 1.2) {
      add_view(flow, dossier, front.width() >= side.width() ? ViewKind::side : ViewKind::front);
    }
    add_parts(flow, dossier, options);
    add_masses(flow, dossier, options);
    add_upkeep(flow, dossier);
    add_results(flow, dossier);
  }
  add_assumptions(flow, dossier);
  if (!dossier.design().notes.empty()) {
    flow.heading(tr("Notes"));
    flow.paragraph(text(dossier.design().notes));
  }
  add_cautions(flow);
  return flow.finish();
}

}  // namespace fluewright::paper
