// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/fields/pick_field.hpp"

namespace fluewright {

PickField::PickField(FieldSpec field_spec, QWidget* parent)
    : Field(std::move(field_spec), parent), list_(new QuietCombo(this)) {
  adopt_control(list_);
  widen_control();
  connect(list_, &QComboBox::activated, this, [this] { emit asked(FieldValue{list_->id().toStdString()}, {}); });
}

void PickField::set_options(const QList<QuietCombo::Option>& options) { list_->set_options(options); }

void PickField::show_value(const FieldValue& value, UnitSystem) {
  explain({});
  if (const auto* id = std::get_if<std::string>(&value)) list_->show_id(QString::fromStdString(*id));
}

void PickField::set_read_only(bool read_only) { list_->setEnabled(!read_only); }

}  // namespace fluewright
