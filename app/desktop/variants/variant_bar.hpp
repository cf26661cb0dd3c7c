// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QTabBar>

namespace fluewright {

/// The variants as tabs above the drawing. Hidden while there is only one. A double click names one.
class VariantBar : public QTabBar {
  Q_OBJECT

 public:
  explicit VariantBar(Document& document, QWidget* parent = nullptr);

 private:
  void refresh();
  void ask_for_name(int tab);

  Document& document_;
  bool filling_ = false;
};

}  // namespace fluewright
