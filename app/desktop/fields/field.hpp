// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"
#include "engine/library/field.hpp"

#include <QWidget>

#include <optional>

class QGridLayout;
class QLabel;

namespace fluewright {

/// One value on a sheet: its label, its control, its usual range beside it, and a sentence beneath when what was
/// typed is not used. A field shows what it is told and asks for changes; it holds no design.
class Field : public QWidget {
  Q_OBJECT

 public:
  explicit Field(FieldSpec spec, QWidget* parent = nullptr);

  [[nodiscard]] const FieldSpec& spec() const { return spec_; }
  /// Show a value as the design has it. What the user is in the middle of typing survives if the value is the same.
  virtual void show_value(const FieldValue& value, UnitSystem units) = 0;
  /// Ask for whatever has been typed and not asked for yet.
  virtual void commit_typing() {}
  virtual void set_read_only(bool read_only) = 0;

  /// Words beneath the control; empty takes them away.
  void explain(const QString& sentence);
  [[nodiscard]] QString explanation() const;
  /// What is usual here and now, where that depends on the design ("at 150 mm").
  void set_usual(std::optional<FieldValue> low, std::optional<FieldValue> high, const Citation& citation,
                 const QString& where);
  /// Overrides the quiet words beside the control.
  void set_aside(const QString& words);
  [[nodiscard]] QString aside() const;

 signals:
  /// The user asks for this value. Steps of one go carry the same key and become one undo step.
  void asked(const FieldValue& value, const QString& merge_key);
  /// The user looks at this field: it has the focus or the mouse is on it.
  void attended();

 protected:
  /// Put the control in its place; it gets the field's name for assistive tools.
  void adopt_control(QWidget* control);
  /// Words need more room than numbers: the control takes the place of the quiet words.
  void widen_control();
  void enterEvent(QEnterEvent* event) override;
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;
  virtual void focus_arrived() {}
  /// Whether something stands there that has not been asked for.
  [[nodiscard]] virtual bool mid_typing() const { return false; }
  [[nodiscard]] const QString& where() const { return where_; }

 private:
  void describe();
  void fit();

  FieldSpec spec_;
  QString where_;
  QGridLayout* grid_;
  QLabel* label_;
  QLabel* aside_;
  QLabel* explanation_;
  QWidget* control_ = nullptr;
  bool wide_ = false;
};

}  // namespace fluewright
