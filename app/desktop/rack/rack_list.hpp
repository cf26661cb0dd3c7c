// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/library.hpp"

#include <QListWidget>

namespace fluewright {

/// The rack's list: a heading a family, a row a piece type with its symbol. A click picks a piece up, a drag carries
/// it, Enter puts it where the keyboard is.
class RackList : public QListWidget {
  Q_OBJECT

 public:
  explicit RackList(const Library& library, QWidget* parent = nullptr);

  /// Shows only pieces whose name, family or summary holds the words.
  void filter(const QString& words);
  /// Of the rows shown the one that the words name best, selected: its name begins with them, has them, or it is
  /// merely about them.
  void select_best(const QString& words);
  [[nodiscard]] QString selected_type() const;

 signals:
  void picked(const QString& type);
  void carried(const QString& type, QPoint global);
  void dropped(QPoint global);
  void let_go();
  void chosen(const QString& type);
  void typed(const QString& text);  ///< somebody types a name

 protected:
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  void fill();
  void draw_symbols();

  const Library& library_;
  QString pressed_;   ///< type under the mouse when it was pressed
  QPoint pressed_at_;
  bool carrying_ = false;
};

/// A family of the catalogue in words.
[[nodiscard]] QString family_words(const std::string& family);

}  // namespace fluewright
