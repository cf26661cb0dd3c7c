// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/documents.hpp"

#include "app/drawing/tr.hpp"
#include "app/paper/output.hpp"
#include "app/paper/type.hpp"
#include "app/shared/words.hpp"

#include <algorithm>

namespace fluewright::paper {

QString design_title(const Dossier& dossier) {
  return dossier.design().title.empty() ? tr("Untitled") : text(dossier.design().title);
}

TitleBlock title_block(const Dossier& dossier, const PaperOptions& options, const QString& document) {
  TitleBlock block;
  block.document = document;
  block.title = design_title(dossier);
  block.file = text(options.stamp.file);
  block.date = text(options.stamp.date);
  block.version =
      options.stamp.version.empty() ? QString() : tr("version %1").arg(text(options.stamp.version));
  block.caution = tr("A planning aid. Local code and permit come first; a licensed chimney professional inspects before the first "
      "fire.");
  block.draft = !dossier.complete();
  return block;
}

QString verdict_sentence(const Dossier& dossier) {
  const Assessment& answer = dossier.answer();
  if (!answer.verdict || !answer.worst_age) return tr("Not finished: what is missing stands below.");
  const QString age = spoken(word(*answer.worst_age));
  const Pressure margin = answer.worst_margin;
  const QString amount = text(show(margin < Pressure{} ? -margin : margin, dossier.units()).text());
  switch (*answer.verdict) {
    case Verdict::draws:
      return tr("It draws. At its hardest moment (%1) the chimney pulls %2 more than the way takes.")
          .arg(age, amount);
    case Verdict::marginal:
      return tr("It draws, but only just: at its hardest moment (%1) the chimney pulls %2 more than the way takes.")
          .arg(age, amount);
    case Verdict::unsafe:
      return tr("Unsafe: it draws only while the fan runs. With the fan standing still, at its hardest moment (%1), "
                 "the way takes %2 "
                 "more than the chimney pulls.")
          .arg(age, amount);
    case Verdict::will_not_draw:
      break;
  }
  return tr("It will not draw as it is: at its hardest moment (%1) the way takes %2 more than the chimney pulls.")
      .arg(age, amount);
}

void add_missing(Flow& flow, const Dossier& dossier) {
  if (dossier.complete()) return;
  flow.heading(tr("Draft: what is missing"));
  std::size_t number = 0;
  // What keeps it from being calculated; what practice says of it comes with the findings.
  for (const Finding& finding : dossier.answer().findings) {
    if (finding.severity != Severity::fault) continue;
    flow.item(QString::number(++number), text(sentence(finding, dossier.design(), dossier.library(), dossier.units())));
  }
}

DrawnView fitted_view(const Dossier& dossier, ViewKind view, QSizeF room, const ViewWish& wish) {
  QSizeF trial = room;
  const QSizeF size = view_size(dossier, view);
  DrawnView drawn;
  double last = 0.0;
  for (int i = 0; i < 24; ++i) {
    const Scale scale = fitting_scale(size, trial, dossier.units());
    trial *= 0.9;
    if (scale.denominator == last) continue;
    last = scale.denominator;
    drawn = draw_view(dossier, view, scale, wish);
    const QRectF box = drawn.figure.bounds();
    if (box.width() <= room.width() && box.height() <= room.height()) break;
  }
  return drawn;
}

Figure picture(const Dossier& dossier, QSizeF room) {
  const QSizeF size = view_size(dossier, ViewKind::isometric);
  constexpr double air = 3.0;  // strokes and arrows past the outlines
  const double factor = std::min((room.width() - air) / std::max(0.1, size.width()),
                                 (room.height() - air) / std::max(0.1, size.height()));
  ViewWish wish;
  wish.dimensions = false;
  wish.numbers = false;
  wish.title = false;
  return draw_view(dossier, ViewKind::isometric, {1000.0 / factor, {}}, wish).figure;
}

QString number_list(const Dossier& dossier, std::vector<std::size_t> pieces) {
  std::vector<std::size_t> numbers;
  for (const std::size_t piece : pieces) numbers.push_back(dossier.number(piece));
  std::sort(numbers.begin(), numbers.end());
  QStringList words;
  for (std::size_t i = 0; i < numbers.size();) {
    std::size_t last = i;
    while (last + 1 < numbers.size() && numbers[last + 1] == numbers[last] + 1) ++last;
    if (last > i + 1) {
      words << QStringLiteral("%1–%2").arg(numbers[i]).arg(numbers[last]);
      i = last + 1;
    } else {
      words << QString::number(numbers[i++]);
    }
  }
  return words.join(QStringLiteral(", "));
}

QString section_text(const Section& section, UnitSystem units) {
  const auto size = [units](Length length) { return text(show(length, units).number); };
  switch (section.form()) {
    case Section::Form::rectangle:
      return QStringLiteral("%1 × %2").arg(size(section.first_size()), size(section.second_size()));
    case Section::Form::half_round:
      return tr("half %1").arg(size(section.first_size()));
    case Section::Form::annulus:
      return tr("%1 around %2").arg(size(section.first_size()), size(section.second_size()));
    case Section::Form::circle:
      break;
  }
  return size(section.first_size());
}

std::vector<Sheet> pages(const Design& design, const Library& library, const PaperOptions& options) {
  need_fonts();
  const Dossier dossier(design, library, options.units);
  switch (options.page) {
    case PaperPage::client:
      return client_page(dossier, options);
    case PaperPage::card:
      return lighting_card(dossier, options);
    case PaperPage::working:
      return working_pages(dossier, options);
    case PaperPage::build:
      break;
  }
  return build_sheet(dossier, options);
}

}  // namespace fluewright::paper
