// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/start_report.hpp"

#include <QAbstractTableModel>

#include <vector>

namespace fluewright {

/// Starting aids, ranked, one a row: name, the columns of the comparison, the reason.
class AidsModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  using QAbstractTableModel::QAbstractTableModel;

  void show_rows(std::vector<AidRow> rows, UnitSystem units);
  [[nodiscard]] const std::vector<AidRow>& rows() const { return rows_; }

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  [[nodiscard]] QString text(int row, int column) const;

  std::vector<AidRow> rows_;
  UnitSystem units_ = UnitSystem::metric;
};

}  // namespace fluewright
