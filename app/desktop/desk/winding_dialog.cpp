// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/winding_dialog.hpp"

#include "app/desktop/editors/edit_words.hpp"
#include "app/desktop/fields/length_spec.hpp"
#include "app/desktop/fields/quantity_field.hpp"

#include <QComboBox>
#include <QDialog>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>
#include <QVBoxLayout>

namespace fluewright {

void ask_for_winding(DeskVerbs verbs, QWidget* parent) {
  Board& board = verbs.board();
  Document& document = board.document();
  const UnitSystem units = document.units();
  Serpentine wanted;
  wanted.spacing = units == UnitSystem::metric ? 400.0 * millimetre : 16.0 * inch;
  wanted.length = units == UnitSystem::metric ? 1500.0 * millimetre : 60.0 * inch;

  // As near as the bends allow: two of them lie between two passes.
  for (int more = 0; more < 20 && verbs.try_winding(wanted).refusal == Refusal::too_short && !verbs.try_winding(wanted).design; ++more) {
    wanted.spacing += 2.0 * document.grid_step();
  }

  QDialog dialog(parent);
  dialog.setObjectName(QStringLiteral("winding"));
  dialog.setWindowTitle(Board::tr("Passes side by side"));
  auto* column = new QVBoxLayout(&dialog);
  auto* passes = new QSpinBox;
  passes->setRange(1, most_passes);
  passes->setValue(wanted.passes);
  passes->setAccessibleName(Board::tr("Passes"));
  auto* side = new QComboBox;
  side->addItem(Board::tr("to the left"), static_cast<int>(Turn::left));
  side->addItem(Board::tr("to the right"), static_cast<int>(Turn::right));
  side->setAccessibleName(Board::tr("Side"));
  auto* length = new QuantityField(length_spec("pass_length", Board::tr("Each pass"), wanted.length, 100.0 * millimetre, 20.0 * metre));
  auto* spacing = new QuantityField(length_spec("spacing", Board::tr("Between their axes"), wanted.spacing, 100.0 * millimetre, 3.0 * metre));
  auto* form = new QFormLayout;
  form->addRow(Board::tr("&Passes"), passes);
  form->addRow(Board::tr("&Side"), side);
  column->addLayout(form);
  column->addWidget(length);
  column->addWidget(spacing);
  auto* word = new QLabel;
  word->setWordWrap(true);
  column->addWidget(word);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  QPushButton* draw = buttons->addButton(Board::tr("&Draw them"), QDialogButtonBox::AcceptRole);
  draw->setObjectName(QStringLiteral("draw"));
  draw->setDefault(true);
  column->addWidget(buttons);

  const auto show = [&] {
    wanted.passes = passes->value();
    wanted.side = static_cast<Turn>(side->currentData().toInt());
    length->show_value(wanted.length, units);
    spacing->show_value(wanted.spacing, units);
    document.cancel_preview();
    const EditResult tried = verbs.try_winding(wanted);
    draw->setEnabled(tried.design.has_value());
    word->setText(tried.design ? Board::tr("From the open end in focus; the drawing shows it.") : refusal_sentence(tried.refusal));
    if (tried.design) document.preview(*tried.design);
  };
  QObject::connect(passes, &QSpinBox::valueChanged, &dialog, show);
  QObject::connect(side, &QComboBox::activated, &dialog, show);
  QObject::connect(length, &Field::asked, &dialog, [&](const FieldValue& value) {
    wanted.length = std::get<Length>(value);
    show();
  });
  QObject::connect(spacing, &Field::asked, &dialog, [&](const FieldValue& value) {
    wanted.spacing = std::get<Length>(value);
    show();
  });
  QObject::connect(buttons, &QDialogButtonBox::accepted, &dialog, &QDialog::accept);
  QObject::connect(buttons, &QDialogButtonBox::rejected, &dialog, &QDialog::reject);
  show();
  const bool accepted = dialog.exec() == QDialog::Accepted;
  length->commit_typing();
  spacing->commit_typing();
  document.cancel_preview();
  if (accepted) verbs.wind(wanted);
}

}  // namespace fluewright
