// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"
#include "engine/working/working.hpp"

#include <QAbstractTableModel>

#include <vector>

namespace fluewright {

struct Design;
struct Library;

/// A working as a table: headings of its parts, and under each its steps.
class WorkingModel : public QAbstractTableModel {
  Q_OBJECT

 public:
  enum Column { symbol, meaning, relation, value, source, column_count };

  using QAbstractTableModel::QAbstractTableModel;

  void show(const Working& working, const Design& design, const Library& library, UnitSystem units);
  void clear();
  [[nodiscard]] bool is_heading(int row) const { return !lines_[static_cast<std::size_t>(row)].heading.isEmpty(); }
  /// The piece whose own working a row's value comes from; nothing for most.
  [[nodiscard]] std::optional<std::size_t> piece_of(int row) const { return lines_[static_cast<std::size_t>(row)].piece; }
  /// A row's cells in one line, for the clipboard.
  [[nodiscard]] QString line(int row) const;

  [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
  [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
  [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

 private:
  struct Line {
    QString heading;  ///< of a part; then the cells are empty
    QString cells[column_count];
    bool left_range = false;
    std::optional<std::size_t> piece;
  };
  std::vector<Line> lines_;
};

}  // namespace fluewright
