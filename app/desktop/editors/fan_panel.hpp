// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "engine/library/fan_sheet.hpp"

#include <QWidget>

#include <vector>

class QLabel;
class QPushButton;
class QSlider;
class QTableWidget;
class QTableWidgetItem;

namespace fluewright {

class FanPlot;
class Field;
class FieldSheet;
class TextField;

/// What the piece editor has beyond its fields for a piece with a fan: the speed to pull at, the curve with where the fan
/// runs today, and the data sheet itself, to be written where it is the design's own.
class FanPanel : public QWidget {
  Q_OBJECT

 public:
  FanPanel(Document& document, FieldSheet& sheet);

  /// For this piece; hidden where the piece has no fan.
  void show_piece(const PieceId& piece);

 private:
  void show_speed(const PieceView& view);
  void show_curve(const PieceView& view);
  void show_sheet(const FanSheet& sheet, bool own);
  void show_points();
  void set_speed(int percent);
  void make_own();
  void cell_changed(QTableWidgetItem* item);
  void add_point();
  void remove_point();
  void use_points();
  void change_sheet(const FanSheet& changed, const QString& text, const QString& merge_key);
  void complain(const QString& sentence);
  [[nodiscard]] const FanSheet* sheet_of_piece() const;
  [[nodiscard]] const FanSheet* own_sheet() const;

  Document& document_;
  PieceId piece_;
  QSlider* speed_;
  QLabel* speed_words_;
  FanPlot* plot_;
  QLabel* today_;
  QLabel* source_;
  QPushButton* own_;
  QWidget* writing_;       ///< everything that writes an own sheet
  TextField* name_;
  QTableWidget* points_;
  QLabel* complaint_;
  QPushButton* add_;
  QPushButton* remove_;
  std::vector<Field*> fields_;
  std::vector<FanPoint> draft_;
};

}  // namespace fluewright
