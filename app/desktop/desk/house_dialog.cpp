// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/house_dialog.hpp"

#include "app/desktop/document.hpp"
#include "app/desktop/fields/quantity_field.hpp"
#include "app/drawing/tr.hpp"
#include "engine/layout/house.hpp"

#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <array>
#include <vector>

namespace fluewright {

namespace {


struct Line {
  const char* label;
  Length HouseOutline::*member;
  double lowest;   ///< metres
  double highest;
};

constexpr std::array lines{
    Line{QT_TR_NOOP("West wall, inside"), &HouseOutline::west, -50.0, 50.0},
    Line{QT_TR_NOOP("East wall, inside"), &HouseOutline::east, -50.0, 50.0},
    Line{QT_TR_NOOP("South wall, inside"), &HouseOutline::south, -50.0, 50.0},
    Line{QT_TR_NOOP("North wall, inside"), &HouseOutline::north, -50.0, 50.0},
    Line{QT_TR_NOOP("Thickness of walls and roof"), &HouseOutline::wall, 0.02, 2.0},
    Line{QT_TR_NOOP("Ceiling above the floor"), &HouseOutline::ceiling, 1.5, 20.0},
    Line{QT_TR_NOOP("Thickness of the ceiling"), &HouseOutline::ceiling_thickness, 0.02, 2.0},
    Line{QT_TR_NOOP("Eaves above the floor"), &HouseOutline::eaves, 1.5, 30.0},
    Line{QT_TR_NOOP("Ridge above the floor"), &HouseOutline::ridge, 1.5, 30.0},
};

bool stands(const HouseOutline& house) {
  return house.west < house.east && house.south < house.north && house.eaves <= house.ridge;
}

FieldSpec spec_of(const Line& line, Length now) {
  FieldSpec spec;
  spec.key = "house";
  spec.label = tr(line.label).toStdString();
  spec.kind = FieldKind::length;
  spec.fallback = now;
  spec.lowest = line.lowest * metre;
  spec.highest = line.highest * metre;
  return spec;
}

}  // namespace

void ask_for_house(Document& document, QWidget* parent) {
  constexpr Length clearance = 1000.0 * millimetre;
  const Design base = document.design();
  HouseOutline house = base.building.value_or(house_around(document.geometries(), clearance));
  QDialog dialog(parent);
  dialog.setObjectName(QStringLiteral("house"));
  dialog.setWindowTitle(tr("The house around it"));
  auto* column = new QVBoxLayout(&dialog);
  auto* words = new QLabel(tr("It is drawn behind the path, and the path check tells where a pipe goes through it without a passage. The "
               "answer does not depend on it."));
  words->setWordWrap(true);
  column->addWidget(words);
  std::vector<QuantityField*> fields;
  const auto show = [&] {
    for (std::size_t i = 0; i < lines.size(); ++i) {
      fields[i]->show_value(house.*lines[i].member, document.units());
      fields[i]->explain({});
    }
    Design shown = base;
    shown.building = house;
    document.preview(std::move(shown));
  };
  for (const Line& line : lines) {
    auto* field = new QuantityField(spec_of(line, house.*line.member));
    fields.push_back(field);
    column->addWidget(field);
    QObject::connect(field, &Field::asked, &dialog, [&house, &show, field, member = line.member](const FieldValue& value) {
      HouseOutline changed = house;
      changed.*member = std::get<Length>(value);
      if (!stands(changed)) {
        field->explain(tr("Then the house would not stand: opposite walls or eaves and ridge change places."));
        return;
      }
      house = changed;
      show();
    });
  }
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  QPushButton* draw = buttons->addButton(tr("&Draw it"), QDialogButtonBox::AcceptRole);
  QPushButton* none = buttons->addButton(tr("&No house"), QDialogButtonBox::DestructiveRole);
  draw->setObjectName(QStringLiteral("draw"));
  draw->setDefault(true);
  none->setEnabled(base.building.has_value());
  column->addWidget(buttons);
  bool taken_away = false;
  QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, [&] {
    for (QuantityField* field : fields) field->commit_typing();
    dialog.accept();
  });
  QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  QObject::connect(none, &QPushButton::clicked, &dialog, [&] {
    taken_away = true;
    dialog.accept();
  });
  show();
  const bool accepted = dialog.exec() == QDialog::Accepted;
  document.cancel_preview();
  if (!accepted) return;
  Design changed = base;
  changed.building = taken_away ? std::nullopt : std::optional(house);
  document.commit(std::move(changed), taken_away ? tr("Take the house away")
                                                 : tr("Draw the house"));
}

}  // namespace fluewright
