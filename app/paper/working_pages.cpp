// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/drawing/tr.hpp"
#include "app/paper/documents.hpp"
#include "app/shared/words.hpp"
#include "app/shared/working_report.hpp"
#include "app/shared/working_words.hpp"

namespace fluewright::paper {

namespace {

void add_working(Flow& flow, const Dossier& dossier, const Working& working, const QString& title) {
  flow.heading(title);
  Table table;
  table.columns = {{tr("Symbol"), {}, ColumnKind::words},
                   {tr("Meaning"), {}, ColumnKind::words},
                   {tr("Relation"), {}, ColumnKind::words},
                   {tr("Value"), {}, ColumnKind::number},
                   {tr("Unit"), {}, ColumnKind::words},
                   {tr("Source and remarks"), {}, ColumnKind::words}};
  std::string part;
  for (const WorkingStep& step : working.steps) {
    if (step.part != part) {
      part = step.part;
      table.strong.push_back(table.rows.size());
      table.rows.push_back({text(said_step(part)), {}, {}, {}, {}, {}});
    }
    const Shown value = working_value(step);
    std::string notes = working_source(step);
    const std::string remarks = working_notes(step, dossier.design(), dossier.library());
    if (!remarks.empty()) notes += (notes.empty() ? "" : "; ") + remarks;
    table.rows.push_back({text(step.symbol), text(said_step(step.meaning)), text(step.relation), text(value.number),
                          text(value.unit), text(notes)});
  }
  flow.table(table);
}

}  // namespace

std::vector<Sheet> working_pages(const Dossier& dossier, const PaperOptions& options) {
  Flow flow(options.size, title_block(dossier, options, tr("Working")));
  flow.title(tr("Working: %1").arg(design_title(dossier)));
  add_missing(flow, dossier);
  flow.paragraph(tr("Every number of the answer from what was given to the result, for whoever wants to work it by hand. SI base "
      "units; a temperature in a relation is in kelvin. Values stand to more digits than they mean, so that whoever "
      "works with them gets six back."));
  for (const NamedHeadline& headline : headlines()) {
    const auto working = explain_headline(dossier.design(), dossier.library(), dossier.answer(), headline.headline);
    if (working) add_working(flow, dossier, *working, spoken(word(headline.headline)));
  }
  const auto run = retrace_profile(dossier.design(), dossier.library(), dossier.answer());
  if (run != nullptr) {
    for (const std::size_t piece : dossier.order()) {
      if (const auto working = explain_piece(*run, piece)) {
        add_working(flow, dossier, *working,
                    QStringLiteral("%1  %2")
                        .arg(dossier.number(piece))
                        .arg(text(working_title(*working, dossier.design(), dossier.library()))));
      }
    }
  }
  return flow.finish();
}

}  // namespace fluewright::paper
