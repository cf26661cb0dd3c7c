// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "engine/working/explain.hpp"

#include <QWidget>

#include <optional>

class QComboBox;
class QLabel;
class QTableView;
class QToolButton;

namespace fluewright {

class WorkingModel;

/// How a number came about, step by step: of the selected piece, slice by slice, or of a number of the answer. A window
/// of its own beside the drawing; while it is open it follows the document.
class WorkingPanel : public QWidget {
  Q_OBJECT

 public:
  explicit WorkingPanel(Document& document, QWidget* parent = nullptr);

  /// Opens it on the selected piece, or on the first along the path if none is selected.
  void show_piece();
  void show_headline(HeadlineNumber number);

 protected:
  void showEvent(QShowEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* build_head();
  void build_table();
  void choose(int entry);
  void step_slice(int by);
  void follow_selection();
  void refresh();
  void say(const std::optional<Working>& working);
  [[nodiscard]] std::optional<Working> explained();
  [[nodiscard]] std::optional<std::size_t> piece_shown() const;
  void open_piece_of(int row);
  void fit_rows();
  void copy_rows() const;
  void copy_all() const;
  void come_forward();

  Document& document_;
  std::optional<HeadlineNumber> number_;  ///< nothing: the selected piece
  std::optional<std::size_t> slice_;      ///< within the piece; nothing: the one in its middle, with the piece's sums
  std::size_t slices_ = 0;
  std::optional<Working> working_;
  QComboBox* subject_ = nullptr;
  QLabel* title_ = nullptr;
  QLabel* slice_words_ = nullptr;
  QToolButton* earlier_ = nullptr;
  QToolButton* later_ = nullptr;
  QTableView* table_ = nullptr;
  WorkingModel* model_ = nullptr;
};

}  // namespace fluewright
