// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/answer/value_table.hpp"

#include <QGridLayout>
#include <QLabel>

namespace fluewright {

ValueTable::ValueTable(int columns, int group, QWidget* parent)
    : QWidget(parent), columns_(columns), group_(group), grid_(new QGridLayout(this)) {
  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setVerticalSpacing(2);
  grid_->setHorizontalSpacing(10);
  for (int column = 0; column < columns_; ++column) grid_->setColumnStretch(column, 1);
}

QLabel* ValueTable::label_at(std::size_t row, std::size_t column) {
  while (labels_.size() <= row) {
    std::vector<QLabel*> line;
    for (int c = 0; c < columns_; ++c) {
      auto* label = new QLabel(this);
      const bool name = c % group_ == 0;
      label->setAlignment((name ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
      if (labels_.empty() && header_) label->setProperty("role", "caption");
      grid_->addWidget(label, static_cast<int>(labels_.size()), c);
      line.push_back(label);
    }
    labels_.push_back(std::move(line));
  }
  return labels_[row][column];
}

void ValueTable::set_header(const TableRow& header) {
  header_ = true;
  for (std::size_t c = 0; c < header.size(); ++c) label_at(0, c)->setText(header[c]);
}

void ValueTable::set_rows(const std::vector<TableRow>& rows) {
  const std::size_t first = header_ ? 1 : 0;
  QStringList spoken;
  for (std::size_t r = 0; r < rows.size(); ++r) {
    for (std::size_t c = 0; c < rows[r].size(); ++c) {
      QLabel* label = label_at(first + r, c);
      label->setText(rows[r][c]);
      label->show();
      spoken << rows[r][c];
    }
  }
  for (std::size_t r = first + rows.size(); r < labels_.size(); ++r) {
    for (QLabel* label : labels_[r]) label->hide();
  }
  setAccessibleDescription(spoken.join(QStringLiteral(", ")));
}

QString ValueTable::cell(std::size_t row, std::size_t column) const {
  const std::size_t r = row + (header_ ? 1 : 0);
  return r < labels_.size() && !labels_[r][column]->isHidden() ? labels_[r][column]->text() : QString();
}

}  // namespace fluewright
