// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/burn/burn_book.hpp"

#include <QWidget>

#include <optional>

namespace fluewright {

/// A cut through the bench at the pointed or selected slice, warming: the gas, the flue's wall and the mass around it in
/// the drawing's colours. Where nothing is pointed at, the first slice of the bench.
class SlicePicture : public QWidget {
  Q_OBJECT

 public:
  explicit SlicePicture(BurnBook& book, QWidget* parent = nullptr);

  [[nodiscard]] QSize sizeHint() const override { return {260, 150}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {160, 110}; }
  /// The slice that is shown; nothing without a bench.
  [[nodiscard]] std::optional<std::size_t> slice() const;

 protected:
  void paintEvent(QPaintEvent* event) override;

 private:
  void describe();

  BurnBook& book_;
};

}  // namespace fluewright
