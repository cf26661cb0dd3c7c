// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/board.hpp"

#include <QWidget>

namespace fluewright {

/// The scale that colours the drawing, with its numbers.
class Legend : public QWidget {
  Q_OBJECT

 public:
  explicit Legend(const Board& board, QWidget* parent = nullptr);

  [[nodiscard]] QSize sizeHint() const override { return {250, 34}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {150, 34}; }

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void describe();

  const Board& board_;
};

}  // namespace fluewright
