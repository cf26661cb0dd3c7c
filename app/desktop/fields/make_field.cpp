// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/fields/make_field.hpp"

#include "app/desktop/fields/pick_field.hpp"
#include "app/desktop/fields/quantity_field.hpp"
#include "app/drawing/tr.hpp"
#include "app/shared/said.hpp"

namespace fluewright {

Field* make_field(const FieldSpec& spec, QWidget* parent) {
  switch (spec.kind) {
    case FieldKind::choice:
    case FieldKind::wall:
    case FieldKind::material:
    case FieldKind::wood:
    case FieldKind::fan:
      return new PickField(spec, parent);
    default:
      return new QuantityField(spec, parent);
  }
}

QString choice_words(const std::string& choice) {
  QString words = tr(QString::fromStdString(choice).replace(QLatin1Char('_'), QLatin1Char(' ')).toUtf8().constData());
  if (!words.isEmpty()) words[0] = words[0].toUpper();
  return words;
}

void offer_options(Field& field, const Library& library, const Design& design) {
  auto* pick = qobject_cast<PickField*>(&field);
  if (!pick) return;
  QList<QuietCombo::Option> options;
  const auto offer = [&options](const std::string& id, const std::string& name) {
    for (const auto& option : options) {
      if (option.id.toStdString() == id) return;  // the design's own build-up hides the library's of the same id
    }
    options.append({QString::fromStdString(id), QString::fromStdString(name)});
  };
  switch (field.spec().kind) {
    case FieldKind::choice:
      for (const auto& choice : field.spec().choices) offer(choice, choice_words(choice).toStdString());
      break;
    case FieldKind::wall:
      for (const auto& wall : design.walls) offer(wall.id, said("{} (this design's own)", wall.name));
      for (const auto& wall : library.walls) offer(wall.id, wall.name);
      break;
    case FieldKind::material:
      for (const auto& material : library.materials) offer(material.id, material.name);
      break;
    case FieldKind::fan:
      for (const auto& fan : design.fans) offer(fan.id, said("{} (own)", fan.name));
      for (const auto& fan : library.fans) offer(fan.id, fan.name);
      break;
    case FieldKind::wood:
      for (const auto& wood : library.woods) offer(wood.id, wood.name);
      break;
    default:
      break;
  }
  pick->set_options(options);
}

}  // namespace fluewright
