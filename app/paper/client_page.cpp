// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/documents.hpp"
#include "app/paper/plot_figure.hpp"
#include "app/shared/words.hpp"

#include <algorithm>

namespace fluewright::paper {

namespace {

QString length_sentence(const LengthCurve& curve, UnitSystem units) {
  const QString yours = text(show(curve.yours.bench, units, Meaning::run_length).text());
  if (!curve.longest) {
    return curve.yours.margin >= Pressure{}
               ? QStringLiteral(
                     "The flue in your bench is %1 long. Longer ones were tried up to %2, and they still draw.")
                     .arg(yours, text(show(curve.points.back().bench, units, Meaning::run_length).text()))
               : QStringLiteral("The flue in your bench is %1 long. Making it shorter alone does not make it draw.")
                     .arg(yours);
  }
  const QString longest = text(show(*curve.longest, units, Meaning::run_length).text());
  return *curve.longest >= curve.yours.bench
             ? QStringLiteral("The flue in your bench is %1 long; up to %2 it would still draw.").arg(yours, longest)
             : QStringLiteral("The flue in your bench is %1 long; at %2 it would draw.").arg(yours, longest);
}

/// What changed between two designs, in the client's terms.
void add_comparison(Flow& flow, const Dossier& now, const Design& design_before) {
  const Dossier before(design_before, now.library(), now.units());
  const UnitSystem units = now.units();
  Table table;
  table.columns = {{QString(), {}, ColumnKind::words},
                   {QStringLiteral("Before"), {}, ColumnKind::words},
                   {QStringLiteral("Now"), {}, ColumnKind::words}};
  const auto row = [&](const QString& what, const auto& value) {
    table.rows.push_back({what, value(before), value(now)});
  };
  row(QStringLiteral("Design"), [](const Dossier& d) { return design_title(d); });
  row(QStringLiteral("Does it draw?"), [](const Dossier& d) {
    return d.answer().verdict ? text(word(*d.answer().verdict)) : QStringLiteral("not finished");
  });
  row(QStringLiteral("Pull to spare at the hardest moment"), [units](const Dossier& d) {
    return d.complete() ? text(show(d.answer().worst_margin, units).text()) : QStringLiteral("–");
  });
  row(QStringLiteral("Smoke leaves the roof at"), [units](const Dossier& d) {
    return d.complete() && d.answer().exit_temperature ? text(show(*d.answer().exit_temperature, units).text())
                                                       : QStringLiteral("–");
  });
  row(QStringLiteral("Length of the whole way"), [units](const Dossier& d) {
    return d.complete() ? text(show(d.answer().path_length, units, Meaning::run_length).text()) : QStringLiteral("–");
  });
  flow.table(table);
}

}  // namespace

std::vector<Sheet> client_page(const Dossier& dossier, const PaperOptions& options) {
  Flow flow(options.size, title_block(dossier, options, QStringLiteral("For you")));
  flow.title(design_title(dossier));
  flow.paragraph(verdict_sentence(dossier), Type::strong);
  add_missing(flow, dossier);
  if (dossier.design().pieces.empty()) return flow.finish();
  const auto curve = length_curve(dossier);
  constexpr double plot_height = 66.0;
  // The picture takes what the rest leaves.
  const double below = (curve ? plot_height + 18.0 : 0.0) + (options.before ? 48.0 : 0.0);
  const QSizeF room(flow.width(), std::max(70.0, flow.left() - below));
  flow.figure(picture(dossier, room));
  if (curve) {
    flow.paragraph(length_sentence(*curve, dossier.units()), Type::strong);
    flow.figure(length_plot(*curve, dossier.units(), {flow.width(), plot_height}));
  }
  if (options.before) add_comparison(flow, dossier, *options.before);
  return flow.finish();
}

}  // namespace fluewright::paper
