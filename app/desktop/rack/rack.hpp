// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QWidget>

class QLineEdit;

namespace fluewright {

class DeskWidget;
class RackList;

/// The rack of pieces beside the desk: a box to search in, and every piece type of the library by family.
class Rack : public QWidget {
  Q_OBJECT

 public:
  explicit Rack(Document& document, QWidget* parent = nullptr);

  /// What is picked here goes onto that desk; the desk can send the keyboard here.
  void serve(DeskWidget& desk);

  [[nodiscard]] RackList& list() { return *list_; }
  [[nodiscard]] QLineEdit& search() { return *search_; }
  [[nodiscard]] QSize sizeHint() const override { return {190, 420}; }

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  QLineEdit* search_;
  RackList* list_;
};

}  // namespace fluewright
