// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/conditions_editor.hpp"

#include "app/desktop/fields/make_field.hpp"
#include "app/desktop/language/language.hpp"
#include "app/drawing/tr.hpp"
#include "engine/layout/conditions.hpp"

namespace fluewright {

namespace {

/// The building's own figures stand on the room's sheet.
bool belongs_too(std::string_view key, std::string_view group) { return group == "room." && key.starts_with("house."); }

}  // namespace

ConditionsEditor::ConditionsEditor(Document& document, std::string_view group, QWidget* parent)
    : FieldSheet(parent), document_(document) {
  setObjectName(QStringLiteral("conditions_editor"));
  for (const Condition& condition : conditions()) {
    const FieldSpec* spec = document_.library().condition(condition.key);
    if (!spec || (condition.key.substr(0, group.size()) != group && !belongs_too(condition.key, group))) continue;
    Field* field = make_field(*spec, body());
    add(field);
    fields_.emplace(condition.key, field);
    connect(field, &Field::asked, this, [this, field, &condition](const FieldValue& value, const QString& key) {
      Design design = document_.design();
      condition.set(design, value);
      document_.commit(std::move(design),
                       tr("Set %1").arg(inside_sentence(QString::fromStdString(field->spec().label))), key);
    });
  }
  connect(&document_, &Document::changed, this, &ConditionsEditor::refresh);
  connect(&document_, &Document::units_changed, this, &ConditionsEditor::refresh);
  connect(&document_, &Document::file_changed, this, &ConditionsEditor::refresh);
  refresh();
}

Field* ConditionsEditor::field(std::string_view key) const {
  const auto found = fields_.find(key);
  return found == fields_.end() ? nullptr : found->second;
}

void ConditionsEditor::refresh() {
  for (const auto& [key, field] : fields_) {
    offer_options(*field, document_.library(), document_.design());
    if (const Condition* condition = find_condition(key)) {
      field->show_value(condition->get(document_.design()), document_.units());
    }
    field->set_read_only(document_.read_only());
  }
}

}  // namespace fluewright
