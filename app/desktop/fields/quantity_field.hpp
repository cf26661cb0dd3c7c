// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/fields/field.hpp"

class QLabel;
class QLineEdit;

namespace fluewright {

/// A number with its unit. Understands both systems and comma or dot. What lies outside the allowed range stays where
/// it was typed and is explained; it is never bent into the range. Enter or leaving the field asks for the value,
/// Escape goes back to the design's, up and down step; the wheel steps only while the field has the focus.
class QuantityField : public Field {
  Q_OBJECT

 public:
  explicit QuantityField(FieldSpec spec, QWidget* parent = nullptr);
  ~QuantityField() override;

  void show_value(const FieldValue& value, UnitSystem units) override;
  void commit_typing() override;
  void set_read_only(bool read_only) override;

  [[nodiscard]] QString text() const;
  [[nodiscard]] QString unit() const;

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void focus_arrived() override { ++go_; }
  [[nodiscard]] bool mid_typing() const override;

 private:
  void write();
  void step(int steps);
  void place_unit();

  QLineEdit* edit_;
  QLabel* unit_;
  std::optional<FieldValue> value_;
  UnitSystem units_ = UnitSystem::metric;
  QString written_;  ///< what write() put there: anything else was typed
  int go_ = 0;       ///< counts visits to the field, so that each visit's steps are an undo step of their own
};

}  // namespace fluewright
