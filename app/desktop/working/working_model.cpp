// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/working/working_model.hpp"

#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/working_report.hpp"
#include "app/shared/working_words.hpp"

#include <QFontDatabase>
#include <QStringList>

namespace fluewright {

namespace {

QString words(const std::string& text) { return QString::fromStdString(text); }

}  // namespace

void WorkingModel::show(const Working& working, const Design& design, const Library& library, UnitSystem units) {
  beginResetModel();
  lines_.clear();
  std::string part;
  for (const WorkingStep& step : working.steps) {
    if (step.part != part) {
      part = step.part;
      Line head;
      head.heading = words(said_step(part));
      lines_.push_back(head);
    }
    Line line;
    line.cells[symbol] = words(step.symbol);
    line.cells[meaning] = words(said_step(step.meaning));
    const std::string notes = working_notes(step, design, library);
    if (!notes.empty()) line.cells[meaning] += QStringLiteral(" – ") + words(notes);
    line.cells[relation] = words(step.relation);
    line.cells[value] = words(working_cell(step, units));
    line.cells[source] = words(working_source(step));
    line.left_range = step.range && step.range->left;
    if (line.left_range) line.cells[meaning].prepend(QStringLiteral("▲ "));
    line.piece = step.piece;
    lines_.push_back(std::move(line));
  }
  endResetModel();
}

void WorkingModel::clear() {
  beginResetModel();
  lines_.clear();
  endResetModel();
}

QString WorkingModel::line(int row) const {
  const Line& l = lines_[static_cast<std::size_t>(row)];
  if (!l.heading.isEmpty()) return l.heading;
  QStringList cells;
  for (const QString& cell : l.cells) cells << cell;
  return cells.join(QLatin1Char('\t'));
}

int WorkingModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(lines_.size()); }

int WorkingModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : column_count; }

QVariant WorkingModel::data(const QModelIndex& index, int role) const {
  const Line& line = lines_[static_cast<std::size_t>(index.row())];
  const bool heading = !line.heading.isEmpty();
  switch (role) {
    case Qt::DisplayRole: return heading ? (index.column() == 0 ? line.heading : QString()) : line.cells[index.column()];
    case Qt::ToolTipRole: return heading ? QString() : line.cells[index.column()];
    case Qt::FontRole: {
      if (heading) return type(TypeRole::heading);
      const bool typed = index.column() == symbol || index.column() == relation;
      if (!typed) return type(TypeRole::body);
      QFont font = QFontDatabase::systemFont(QFontDatabase::FixedFont);
      font.setPointSizeF(type(TypeRole::body).pointSizeF() * 0.95);
      return font;
    }
    case Qt::ForegroundRole:
      if (heading) return theme().inks.ink;
      if (line.left_range && index.column() == meaning) return theme().inks.caution;
      return index.column() == source || index.column() == meaning ? theme().inks.faint_ink : theme().inks.ink;
    case Qt::TextAlignmentRole: return QVariant::fromValue(Qt::Alignment(Qt::AlignLeft | (heading ? Qt::AlignBottom : Qt::AlignTop)));
    default: return {};
  }
}

QVariant WorkingModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (orientation != Qt::Horizontal) return {};
  if (role == Qt::TextAlignmentRole) return QVariant::fromValue(Qt::Alignment(Qt::AlignLeft | Qt::AlignVCenter));
  if (role != Qt::DisplayRole) return {};
  const QStringList names{tr("Symbol"), tr("Meaning"), tr("Relation"),
                                 tr("Value"), tr("Source")};
  return names[section];
}

}  // namespace fluewright
