// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/mark.hpp"

#include <QStringList>

#include <vector>

namespace fluewright::paper {

enum class ColumnKind {
  words,  ///< left, wrapped
  number  ///< aligned by the decimal sign
};

struct Column {
  QString heading;
  QString unit;  ///< once, under the heading
  ColumnKind kind = ColumnKind::words;
};

struct Table {
  std::vector<Column> columns;
  std::vector<QStringList> rows;    ///< a cell a column
  std::vector<std::size_t> strong;  ///< rows that stand out: totals
};

/// A table laid out for a width: its rows one by one, for whoever breaks pages.
class LaidTable {
 public:
  LaidTable(const Table& table, double width);

  [[nodiscard]] double head_height() const { return head_height_; }
  [[nodiscard]] std::size_t row_count() const { return heights_.size(); }
  [[nodiscard]] double row_height(std::size_t row) const { return heights_[row]; }
  [[nodiscard]] double width() const { return width_; }
  void put_head(Figure& figure, QPointF at) const;
  void put_row(Figure& figure, QPointF at, std::size_t row) const;

 private:
  struct Laid {
    double left = 0.0;
    double width = 0.0;
    double whole = 0.0;  ///< widest part before the decimal sign
    double rest = 0.0;   ///< widest part from it on
  };

  void measure_numbers();
  void share_out(double width);

  Table table_;
  std::vector<Laid> columns_;
  std::vector<double> heights_;
  double head_height_ = 0.0;
  double width_ = 0.0;
};

}  // namespace fluewright::paper
