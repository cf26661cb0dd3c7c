// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/answer/answer_words.hpp"

#include <QWidget>

class QGridLayout;
class QLabel;

namespace fluewright {

/// A small table of words and numbers: names to the left, numbers to the right, no lines.
class ValueTable : public QWidget {
  Q_OBJECT

 public:
  /// `group` columns make a pair or a row: in each group the first column holds names.
  ValueTable(int columns, int group, QWidget* parent = nullptr);

  void set_header(const TableRow& header);
  /// The rows' cells, one after another; more rows than before make new labels, fewer hide the rest.
  void set_rows(const std::vector<TableRow>& rows);
  [[nodiscard]] QString cell(std::size_t row, std::size_t column) const;

 private:
  QLabel* label_at(std::size_t row, std::size_t column);

  int columns_;
  int group_;
  bool header_ = false;
  QGridLayout* grid_;
  std::vector<std::vector<QLabel*>> labels_;
};

}  // namespace fluewright
