// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/tr.hpp"
#include "app/paper/documents.hpp"
#include "app/shared/bulk_units.hpp"
#include "app/shared/words.hpp"

#include <algorithm>

namespace fluewright::paper {

namespace {

QString unit(Meaning meaning, UnitSystem units) { return text(unit_name(meaning, units)); }
QString length_unit(UnitSystem units) { return units == UnitSystem::metric ? QStringLiteral("mm") : QString(); }
QString drawn(Length length, UnitSystem units) { return text(show(length, units, Meaning::drawn_length).number); }

const Wall* find_wall(const Dossier& dossier, const std::string& id) {
  for (const Wall& wall : dossier.design().walls) {
    if (wall.id == id) return &wall;
  }
  return dossier.library().wall(id);
}

QString wall_name(const Dossier& dossier, const std::string& id) {
  const Wall* wall = find_wall(dossier, id);
  return wall == nullptr || wall->layers.empty() ? QStringLiteral("–") : text(wall->name);
}

/// "steel 0.7 + mineral wool 25": what it is made of, from the gas outwards.
QString wall_layers(const Dossier& dossier, const std::string& id) {
  const Wall* wall = find_wall(dossier, id);
  if (wall == nullptr) return {};
  QStringList layers;
  for (const WallLayer& layer : wall->layers) {
    const Material* material = dossier.library().material(layer.material);
    layers << QStringLiteral("%1 %2").arg(material != nullptr ? text(material->name) : text(layer.material),
                                          text(show(layer.thickness, dossier.units()).number));
  }
  return layers.join(QStringLiteral(" + "));
}

QString material_name(const Dossier& dossier, const std::string& id) {
  const Material* material = dossier.library().material(id);
  return material != nullptr ? text(material->name) : text(id);
}

QString size_text(const PartLine& line, UnitSystem units) {
  QString size = section_text(line.section, units);
  if (line.far_section) size += QStringLiteral(" → ") + section_text(*line.far_section, units);
  if (line.body_width && line.body_height) {
    size += tr("; body %1 wide, %2 high")
                .arg(text(show(*line.body_width, units).number), text(show(*line.body_height, units).number));
  }
  return size;
}

QString piece_names(const Dossier& dossier, const PartLine& line) {
  const PieceType* type = dossier.library().piece_type(line.type);
  QString names = type != nullptr ? text(type->name) : text(line.type);
  QStringList own;
  for (const std::size_t piece : line.pieces) {
    const std::string& label = dossier.design().pieces[piece].label;
    if (!label.empty() && text(label) != names) own << text(label);
  }
  return own.isEmpty() ? names : QStringLiteral("%1 (%2)").arg(names, own.join(QStringLiteral("; ")));
}

QString cut_name(const Dossier& dossier, const Cut& cut) {
  const QString number = QString::number(dossier.number(cut.piece));
  return cut.parts > 1 ? tr("%1 part %2 of %3").arg(number).arg(cut.part).arg(cut.parts) : number;
}

void add_cut_group(Flow& flow, const Dossier& dossier, const CutGroup& group, const StockPipe& stock) {
  const UnitSystem units = dossier.units();
  const std::size_t count = group.lengths.size();
  const QString how = group.proven ? tr("no way of sawing takes fewer")
                                   : tr("the best found; at least %1 are needed").arg(group.at_least);
  flow.paragraph(tr("%1, bore %2: %3 × %4 of stock pipe, %5. Offcuts %6, saw dust %7.")
                     .arg(wall_name(dossier, group.wall), text(show(group.bore, units).text()))
                     .arg(count)
                     .arg(text(show(stock.length, units, Meaning::drawn_length).text()), how,
                          text(show(group.offcuts, units, Meaning::drawn_length).text()),
                          text(show(group.dust, units, Meaning::drawn_length).text())));
  Table table;
  table.columns = {{tr("Stock"), {}, ColumnKind::words},
                   {tr("Piece:\u00A0saw\u00A0to"), length_unit(units), ColumnKind::words},
                   {tr("Left over"), length_unit(units), ColumnKind::number}};
  for (std::size_t i = 0; i < count; ++i) {
    QStringList cuts;
    for (const Cut& cut : group.lengths[i].cuts) {
      cuts << QStringLiteral("%1: %2").arg(cut_name(dossier, cut), drawn(cut.sawn, units));
    }
    table.rows.push_back(
        {QString::number(i + 1), cuts.join(QStringLiteral(";  ")), drawn(group.lengths[i].left, units)});
  }
  flow.table(table);
}

void add_cuts(Flow& flow, const Dossier& dossier, const StockPipe& stock) {
  const auto list = cut_list(dossier.design(), dossier.library(), stock);
  if (!list) {
    flow.heading(tr("Cut list"));
    flow.paragraph(tr("None: stock pipe must be longer than its overlap."));
    return;
  }
  if (list->groups.empty() && list->whole.empty()) return;
  constexpr double with_a_table = 45.0;
  flow.need(with_a_table);
  flow.heading(tr("Cut list"));
  if (!list->groups.empty()) {
    flow.paragraph(
        tr("Each pipe is sawn longer by what is pushed into the next, %1; each cut takes %2.")
            .arg(text(show(stock.overlap, dossier.units()).text()), text(show(stock.kerf, dossier.units()).text())),
        Type::note);
  }
  for (const CutGroup& group : list->groups) add_cut_group(flow, dossier, group, stock);
  if (!list->whole.empty()) {
    flow.paragraph(
        tr("Not to be sawn: %1. Pipe of several layers comes in fixed lengths; make these up from the maker's list "
            "with an adjustable length.")
            .arg(number_list(dossier, list->whole)));
  }
}

void add_mix(Flow& flow, const Dossier& dossier, const MassBill& bill, const CobRecipe& recipe) {
  const auto cob =
      std::find_if(bill.around.begin(), bill.around.end(), [](const MaterialAmount& a) { return a.material == "cob"; });
  if (cob == bill.around.end()) return;
  const UnitSystem units = dossier.units();
  const CobMix mix = cob_mix(cob->mass, recipe);
  if (!(mix.sand + mix.clay > Mass{})) return;
  constexpr double with_its_table = 32.0;
  flow.need(with_its_table);
  flow.paragraph(
      tr("Cob of %1 parts of sand to %2 of clay by volume, loose and dry; straw as it takes. Make test bricks first.")
          .arg(text(show(recipe.sand, units).number), text(show(recipe.clay, units).number)));
  Table table;
  table.columns = {{tr("For the cob"), {}, ColumnKind::words},
                   {tr("Dry weight"), text(show_weight({}, units).unit), ColumnKind::number},
                   {tr("Loose"), text(show_heap({}, units).unit), ColumnKind::number}};
  table.rows.push_back({tr("Sand"), text(show_weight(mix.sand, units).number),
                        text(show_heap(mix.sand_loose, units).number)});
  table.rows.push_back({tr("Clay soil"), text(show_weight(mix.clay, units).number),
                        text(show_heap(mix.clay_loose, units).number)});
  flow.table(table);
}

void add_floor(Flow& flow, const Dossier& dossier) {
  const FloorLoad load = floor_load(dossier.design(), dossier.library());
  if (!(load.footprint > Area{})) return;
  const UnitSystem units = dossier.units();
  constexpr double with_what_it_means = 55.0;
  flow.need(with_what_it_means);
  flow.heading(tr("Floor load"));
  Table table;
  const QString per_area = text(show_load({}, units).unit);
  table.columns = {{tr("On the room's floor"), {}, ColumnKind::words},
                   {tr("Weight"), text(show_weight({}, units).unit), ColumnKind::number},
                   {tr("Footprint"), text(show_area({}, units).unit), ColumnKind::number},
                   {tr("Load", "on a floor"), per_area, ColumnKind::number}};
  table.rows.push_back({tr("Everything over its footprint"), text(show_weight(load.mass, units).number),
                        text(show_area(load.footprint, units).number),
                        text(show_load(load.spread.mass, units).number)});
  if (load.tallest.pressure > Pressure{}) {
    table.rows.push_back(
        {tr("Under the mass alone"), {}, {}, text(show_load(load.tallest.mass, units).number)});
  }
  table.rows.push_back({tr("Usual allowance for dwellings' floors"),
                        {},
                        {},
                        text(show_load(usual_floor_allowance.mass, units).number)});
  flow.table(table);
  const double times = std::max(load.spread.pressure, load.tallest.pressure) / usual_floor_allowance.pressure;
  if (times > 1.0) {
    flow.paragraph(
        tr("%1 times the usual allowance: a timber floor needs its own judge before anything is built on it. "
            "Allowance: %2.")
            .arg(digits(times, 1), text(usual_floor_allowance_source().source)));
  }
}

}  // namespace

void add_parts(Flow& flow, const Dossier& dossier, const PaperOptions& options) {
  const UnitSystem units = dossier.units();
  flow.heading(tr("Parts"));
  Table table;
  table.columns = {
      {tr("No."), {}, ColumnKind::words},
      {tr("Part"), {}, ColumnKind::words},
      {tr("Bore"), unit(Meaning::small_length, units), ColumnKind::words},
      {tr("Length"), length_unit(units), ColumnKind::number},
      {tr("Wall, from the gas outwards"), unit(Meaning::small_length, units), ColumnKind::words},
      {tr("How many"), {}, ColumnKind::number}};
  for (const PartLine& line : parts_list(dossier.design(), dossier.library())) {
    table.rows.push_back({number_list(dossier, line.pieces), piece_names(dossier, line), size_text(line, units),
                          line.length ? drawn(*line.length, units) : QStringLiteral("–"),
                          line.wall.empty() ? QStringLiteral("–") : wall_layers(dossier, line.wall),
                          QString::number(line.pieces.size())});
  }
  flow.table(table);
  add_cuts(flow, dossier, options.stock);
}

void add_masses(Flow& flow, const Dossier& dossier, const PaperOptions& options) {
  const UnitSystem units = dossier.units();
  const MassBill bill = mass_bill(dossier.design(), dossier.library());
  if (bill.around.empty() && bill.walls.empty()) return;
  flow.heading(tr("Masses"));
  Table table;
  table.columns = {{tr("Material"), {}, ColumnKind::words},
                   {tr("Where"), {}, ColumnKind::words},
                   {tr("Volume"), text(show_heap({}, units).unit), ColumnKind::number},
                   {tr("Dry weight"), text(show_weight({}, units).unit), ColumnKind::number}};
  const auto rows = [&](const std::vector<MaterialAmount>& amounts, const QString& where) {
    for (const MaterialAmount& a : amounts) {
      table.rows.push_back({material_name(dossier, a.material), where, text(show_heap(a.volume, units).number),
                            text(show_weight(a.mass, units).number)});
    }
  };
  rows(bill.around, tr("around the flue, its space taken off"));
  rows(bill.walls, tr("walls of the pieces"));
  table.strong.push_back(table.rows.size());
  table.rows.push_back({tr("All"), {}, {}, text(show_weight(bill.total(), units).number)});
  flow.table(table);
  add_mix(flow, dossier, bill, options.recipe);
  add_floor(flow, dossier);
}

}  // namespace fluewright::paper
