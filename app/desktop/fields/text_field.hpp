// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/fields/field.hpp"

class QLineEdit;

namespace fluewright {

/// A line of the user's own words: a piece's name. Enter or leaving it asks for it.
class TextField : public Field {
  Q_OBJECT

 public:
  explicit TextField(FieldSpec spec, QWidget* parent = nullptr);
  ~TextField() override;

  void show_value(const FieldValue& value, UnitSystem units) override;
  void commit_typing() override;
  void set_read_only(bool read_only) override;
  void set_hint(const QString& hint);

 protected:
  [[nodiscard]] bool mid_typing() const override;

 private:
  QLineEdit* edit_;
  QString shown_;
};

}  // namespace fluewright
