// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QWidget>

class QLineEdit;
class QListWidget;
class QPushButton;

namespace fluewright {

/// Everything found, most serious first: what, why it matters, and what that rests on. One can let a finding stand with a
/// reason, or ask what would help.
class FindingsPage : public QWidget {
  Q_OBJECT

 public:
  explicit FindingsPage(Document& document, QWidget* parent = nullptr);

  /// How many findings nobody has let stand, notes not counted.
  [[nodiscard]] int open_count() const { return open_; }

 signals:
  void count_changed();
  void help_wanted();

 private:
  void refresh();
  void show_choice();
  void let_stand(const QString& reason);
  [[nodiscard]] const Finding* chosen() const;

  Document& document_;
  std::vector<Finding> shown_;  ///< in the order of the list
  int open_ = -1;
  QListWidget* list_;
  QLineEdit* reason_;
  QPushButton* stand_;
  QPushButton* reopen_;
  QPushButton* help_;
};

}  // namespace fluewright
