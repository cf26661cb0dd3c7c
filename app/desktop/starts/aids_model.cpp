// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/starts/aids_model.hpp"

#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/start_words.hpp"

namespace fluewright {

void AidsModel::show_rows(std::vector<AidRow> rows, UnitSystem units) {
  beginResetModel();
  rows_ = std::move(rows);
  units_ = units;
  endResetModel();
}

int AidsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rows_.size()); }

int AidsModel::columnCount(const QModelIndex& parent) const {
  return parent.isValid() ? 0 : static_cast<int>(aid_columns().size()) + 2;
}

QString AidsModel::text(int row, int column) const {
  const AidRow& aid = rows_[static_cast<std::size_t>(row)];
  if (column == 0) return QString::fromStdString(aid_name(aid.task));
  if (column + 1 == columnCount()) return QString::fromStdString(reason_sentence(aid, units_));
  return QString::fromStdString(aid_columns()[static_cast<std::size_t>(column) - 1].cell(aid, units_));
}

QVariant AidsModel::data(const QModelIndex& index, int role) const {
  if (!index.isValid()) return {};
  const AidRow& aid = rows_[static_cast<std::size_t>(index.row())];
  const bool unsafe = aid.reason == AidReason::only_while_it_runs;
  switch (role) {
    case Qt::DisplayRole: return text(index.row(), index.column());
    case Qt::ToolTipRole: return text(index.row(), columnCount() - 1);
    case Qt::ForegroundRole: return unsafe ? QVariant(theme().inks.accent) : QVariant();
    default: return {};
  }
}

QVariant AidsModel::headerData(int section, Qt::Orientation orientation, int role) const {
  if (role != Qt::DisplayRole) return {};
  if (orientation == Qt::Vertical) return section + 1;
  if (section == 0) return tr("aid");
  if (section + 1 == columnCount()) return tr("why it stands here");
  return spoken(aid_columns()[static_cast<std::size_t>(section) - 1].heading);
}

}  // namespace fluewright
