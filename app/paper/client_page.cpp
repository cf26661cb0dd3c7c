// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/tr.hpp"
#include "app/paper/documents.hpp"
#include "app/paper/plot_figure.hpp"
#include "app/paper/type.hpp"
#include "app/shared/words.hpp"

#include <algorithm>

namespace fluewright::paper {

namespace {

QString length_sentence(const LengthCurve& curve, UnitSystem units) {
  const QString yours = text(show(curve.yours.bench, units, Meaning::run_length).text());
  if (!curve.longest) {
    return curve.yours.margin >= Pressure{}
               ? tr("The flue in your bench is %1 long. Longer ones were tried up to %2, and they still draw.")
                     .arg(yours, text(show(curve.points.back().bench, units, Meaning::run_length).text()))
               : tr("The flue in your bench is %1 long. Making it shorter alone does not make it draw.")
                     .arg(yours);
  }
  const QString longest = text(show(*curve.longest, units, Meaning::run_length).text());
  return *curve.longest >= curve.yours.bench
             ? tr("The flue in your bench is %1 long; up to %2 it would still draw.").arg(yours, longest)
             : tr("The flue in your bench is %1 long; at %2 it would draw.").arg(yours, longest);
}

/// What a variant goes by.
QString name_of(const std::string& variant, const Dossier& dossier) {
  return variant.empty() ? design_title(dossier) : text(variant);
}

/// What changed between two designs, in the client's terms.
void add_comparison(Flow& flow, const Dossier& before, const Dossier& now, const PaperOptions& options) {
  const UnitSystem units = now.units();
  Table table;
  table.columns = {{QString(), {}, ColumnKind::words},
                   {tr("Before: %1").arg(name_of(options.before->name, before)), {}, ColumnKind::words},
                   {tr("Now: %1").arg(name_of(options.variant_name, now)), {}, ColumnKind::words}};
  const auto row = [&](const QString& what, const auto& value) {
    table.rows.push_back({what, value(before), value(now)});
  };
  row(tr("Does it draw?"), [](const Dossier& d) {
    return d.answer().verdict ? spoken(word(*d.answer().verdict)) : tr("not finished");
  });
  row(tr("Pull to spare at the hardest moment"), [units](const Dossier& d) {
    return d.complete() ? text(show(d.answer().worst_margin, units).text()) : QStringLiteral("–");
  });
  row(tr("Smoke leaves the roof at"), [units](const Dossier& d) {
    return d.complete() && d.answer().exit_temperature ? text(show(*d.answer().exit_temperature, units).text())
                                                       : QStringLiteral("–");
  });
  row(tr("Length of the whole way"), [units](const Dossier& d) {
    return d.complete() ? text(show(d.answer().path_length, units, Meaning::run_length).text()) : QStringLiteral("–");
  });
  flow.table(table);
}

/// A picture with what it shows under it.
Figure captioned(const Dossier& dossier, const QString& words, QSizeF room) {
  const double caption = line_height(Type::strong);
  Figure figure = picture(dossier, {room.width(), room.height() - caption});
  const QRectF box = figure.bounds();
  double y = box.bottom() + 2.0 + cap_height(Type::strong);
  for (const QString& line : wrapped(words, Type::strong, room.width())) {
    figure.words({box.center().x(), y}, line, Type::strong, Anchor::middle);
    y += line_height(Type::strong);
  }
  return figure;
}

void add_pictures(Flow& flow, const Dossier* before, const Dossier& now, const PaperOptions& options, QSizeF room) {
  if (before == nullptr || before->design().pieces.empty()) {
    flow.figure(picture(now, room));
    return;
  }
  const QSizeF half(0.5 * room.width() - 6.0, room.height() - 4.0);
  flow.beside(captioned(*before, tr("Before: %1").arg(name_of(options.before->name, *before)), half),
              captioned(now, tr("Now: %1").arg(name_of(options.variant_name, now)), half));
}

}  // namespace

std::vector<Sheet> client_page(const Dossier& dossier, const PaperOptions& options) {
  Flow flow(options.size, title_block(dossier, options, tr("For you")));
  flow.title(design_title(dossier));
  flow.paragraph(verdict_sentence(dossier), Type::strong);
  add_missing(flow, dossier);
  if (dossier.design().pieces.empty()) return flow.finish();
  const auto curve = length_curve(dossier);
  std::optional<Dossier> before;
  if (options.before) before.emplace(options.before->design, dossier.library(), dossier.units());
  constexpr double plot_height = 66.0;
  // The picture takes what the rest leaves.
  const double below = (curve ? plot_height + 18.0 : 0.0) + (before ? 44.0 : 0.0);
  add_pictures(flow, before ? &*before : nullptr, dossier, options, {flow.width(), std::max(70.0, flow.left() - below)});
  if (curve) {
    flow.paragraph(length_sentence(*curve, dossier.units()), Type::strong);
    flow.figure(length_plot(*curve, dossier.units(), {flow.width(), plot_height}));
  }
  if (before) add_comparison(flow, *before, dossier, options);
  return flow.finish();
}

}  // namespace fluewright::paper
