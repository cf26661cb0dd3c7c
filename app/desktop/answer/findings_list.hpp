// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QListWidget>

namespace fluewright {

/// Everything found about the drawing, most serious first. Choosing a line selects its piece.
class FindingsList : public QListWidget {
  Q_OBJECT

 public:
  explicit FindingsList(Document& document, QWidget* parent = nullptr);

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override;

 protected:
  void resizeEvent(QResizeEvent* event) override;

 private:
  void refresh();
  void choose(const QListWidgetItem* item);

  Document& document_;
};

}  // namespace fluewright
