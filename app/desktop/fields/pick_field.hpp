// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/fields/field.hpp"
#include "app/desktop/fields/quiet_combo.hpp"

namespace fluewright {

/// A field whose value is one of a list: a word, a wall, a material, a wood.
class PickField : public Field {
  Q_OBJECT

 public:
  explicit PickField(FieldSpec spec, QWidget* parent = nullptr);

  void set_options(const QList<QuietCombo::Option>& options);
  void show_value(const FieldValue& value, UnitSystem units) override;
  void set_read_only(bool read_only) override;
  [[nodiscard]] QuietCombo* list() const { return list_; }

 private:
  QuietCombo* list_;
};

}  // namespace fluewright
