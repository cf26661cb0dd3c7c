// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "app/desktop/editors/field_sheet.hpp"
#include "engine/layout/edit.hpp"

#include <QWidget>

#include <vector>

class QLabel;
class QPlainTextEdit;
class QPushButton;
class QStackedWidget;

namespace fluewright {

class FanPanel;
class Field;
class PickField;
class TextField;

/// The selected piece: what it is, its fields as the catalogue lists them, which way it turns, its name and notes.
/// Written once for every piece type there is or will be.
class PieceEditor : public QWidget {
  Q_OBJECT

 public:
  explicit PieceEditor(Document& document, QWidget* parent = nullptr);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;

 private:
  void refresh();
  void rebuild(const Piece& piece, const PieceType& type);
  void show_values(const Piece& piece, const PieceType& type);
  void offer_turns(const Piece& piece, const PieceType& type);
  void apply(const EditResult& result, const QString& text, const QString& merge_key, Field* field);
  void commit_notes();

  Document& document_;
  QStackedWidget* pages_;
  QLabel* nothing_;
  FieldSheet* sheet_;
  QLabel* title_;
  QLabel* summary_;
  PickField* type_;
  PickField* turn_;
  FanPanel* fan_;
  TextField* name_;
  QLabel* notes_label_;
  QPlainTextEdit* notes_;
  QPushButton* remove_;
  std::vector<Field*> fields_;
  PieceId shown_piece_;
  std::string shown_type_;
  QString shown_notes_;
};

}  // namespace fluewright
