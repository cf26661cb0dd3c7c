// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/fields/text_field.hpp"

#include <QLineEdit>

namespace fluewright {

TextField::TextField(FieldSpec field_spec, QWidget* parent)
    : Field(std::move(field_spec), parent), edit_(new QLineEdit(this)) {
  edit_->setMaxLength(120);
  adopt_control(edit_);
  widen_control();
  connect(edit_, &QLineEdit::editingFinished, this, &TextField::commit_typing);
}

// The box outlives this part of the field by a moment and says that its editing has finished when it loses the keyboard.
TextField::~TextField() { disconnect(edit_, nullptr, this, nullptr); }

void TextField::show_value(const FieldValue& value, UnitSystem) {
  const auto* words = std::get_if<std::string>(&value);
  if (!words) return;
  const QString text = QString::fromStdString(*words);
  const bool keep = edit_->text() != shown_ && text == shown_;
  shown_ = text;
  if (!keep && edit_->text() != text) edit_->setText(text);
}

bool TextField::mid_typing() const { return edit_->text() != shown_; }

void TextField::commit_typing() {
  if (edit_->isReadOnly() || !mid_typing()) return;
  emit asked(FieldValue{edit_->text().toStdString()}, {});
}

void TextField::set_read_only(bool read_only) { edit_->setReadOnly(read_only); }
void TextField::set_hint(const QString& hint) { edit_->setPlaceholderText(hint); }

}  // namespace fluewright
