// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;
class QScrollArea;
class QVBoxLayout;

namespace fluewright {

class Field;

/// A sheet of fields under one another that scrolls, with a note at its foot: what the field one looks at is, and
/// where its value comes from.
class FieldSheet : public QWidget {
  Q_OBJECT

 public:
  explicit FieldSheet(QWidget* parent = nullptr);

  /// Put a field at the end, or before another widget of the sheet.
  void add(Field* field, QWidget* before = nullptr);
  void add(QWidget* widget, QWidget* before = nullptr);
  /// A small heading between fields.
  QLabel* add_heading(const QString& words);
  /// The note's words: what it is, and where it comes from.
  void note(const QString& what, const QString& source);
  [[nodiscard]] QString noted() const;
  [[nodiscard]] QWidget* body() const { return body_; }

 private:
  QWidget* body_;
  QScrollArea* scroll_;
  QVBoxLayout* column_;
  QLabel* note_;
};

}  // namespace fluewright
