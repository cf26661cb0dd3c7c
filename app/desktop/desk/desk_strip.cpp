// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What lies around and on the views: what the path grows with and the grid's step above them, which elevation, the
// colours and their legend on them.

#include "app/desktop/desk/desk_widget.hpp"
#include "app/desktop/desk/legend.hpp"
#include "app/desktop/desk/sheet_painter.hpp"
#include "app/desktop/fields/quiet_combo.hpp"
#include "app/desktop/grid_steps.hpp"

#include <QHBoxLayout>
#include <QLabel>

#include <cmath>

namespace fluewright {

namespace {

QuietCombo* choice(const QString& name) {
  auto* made = new QuietCombo;
  made->setAccessibleName(name);
  made->setToolTip(name);
  made->setSizeAdjustPolicy(QComboBox::AdjustToContents);
  made->setMinimumContentsLength(5);  // in a narrow window the strip shrinks before the drawing's neighbours do
  return made;
}

QLabel* caption(const QString& words, QWidget* buddy) {
  auto* label = new QLabel(words);
  label->setProperty("role", "caption");
  label->setBuddy(buddy);
  return label;
}

}  // namespace

QWidget* DeskWidget::make_strip() {
  auto* strip = new QWidget(this);
  auto* row = new QHBoxLayout(strip);
  row->setContentsMargins(10, 5, 6, 5);
  row->setSpacing(6);
  run_ = choice(tr("What the path grows with on the level"));
  upright_run_ = choice(tr("What it grows with upright"));
  bend_ = choice(tr("What it turns with"));
  step_ = choice(tr("Grid step"));
  fill_growth();
  fill_steps();
  run_caption_ = caption({}, run_);
  upright_caption_ = caption({}, upright_run_);
  bend_caption_ = caption({}, bend_);
  row->addWidget(run_caption_);
  row->addWidget(run_);
  row->addSpacing(2);
  row->addWidget(upright_caption_);
  row->addWidget(upright_run_);
  row->addSpacing(2);
  row->addWidget(bend_caption_);
  row->addWidget(bend_);
  row->addStretch(1);
  row->addWidget(caption(tr("Grid"), step_));
  row->addWidget(step_);
  word_captions();
  connect(run_, &QComboBox::activated, this, [this] { board_->set_run_type(run_->currentData().toString().toStdString()); });
  connect(upright_run_, &QComboBox::activated, this,
          [this] { board_->set_upright_type(upright_run_->currentData().toString().toStdString()); });
  connect(bend_, &QComboBox::activated, this, [this] { board_->set_bend_type(bend_->currentData().toString().toStdString()); });
  connect(step_, &QComboBox::activated, this, [this] { document_.set_grid_step(step_->currentData().toDouble() * metre); });
  return strip;
}

void DeskWidget::word_captions() {
  constexpr int room_for_words = 760;
  const bool wide = width() >= room_for_words;
  run_caption_->setText(wide ? tr("Grows with") : tr("Run"));
  upright_caption_->setText(wide ? tr("upright") : tr("Up"));
  bend_caption_->setText(wide ? tr("turns with") : tr("Turn"));
}

void DeskWidget::furnish_views() {
  from_ = choice(tr("From where the elevation is seen"));
  from_->addItem(tr("from the south"), static_cast<int>(ViewKind::front));
  from_->addItem(tr("from the east"), static_cast<int>(ViewKind::side));
  from_->addItem(tr("along the path"), static_cast<int>(ViewKind::unrolled));
  auto* top = new QHBoxLayout(elevation_);
  top->setContentsMargins(static_cast<int>(SheetPainter::title_end(ViewKind::front)) + 10, 4, 70, 4);
  top->addWidget(from_, 0, Qt::AlignTop | Qt::AlignLeft);

  tint_ = choice(tr("What the colours show"));
  tint_->addItem(tr("gas temperature"), static_cast<int>(Document::Tint::gas_temperature));
  tint_->addItem(tr("gauge pressure"), static_cast<int>(Document::Tint::gauge_pressure));
  auto* bottom = new QHBoxLayout(isometric_);
  bottom->setContentsMargins(8, 8, 8, 8);
  bottom->addWidget(tint_, 0, Qt::AlignBottom);
  bottom->addWidget(new Legend(*board_), 1, Qt::AlignBottom);

  connect(from_, &QComboBox::activated, this, [this] { look_from(static_cast<ViewKind>(from_->currentData().toInt())); });
  connect(tint_, &QComboBox::activated, this,
          [this] { document_.set_tint(static_cast<Document::Tint>(tint_->currentData().toInt())); });
  connect(board_, &Board::growth_changed, this, &DeskWidget::show_choices);
  connect(&document_, &Document::units_changed, this, [this] {
    fill_steps();
    show_choices();
  });
  show_choices();
}

void DeskWidget::fill_growth() {
  const auto fill = [](QComboBox& choice, const std::vector<const PieceType*>& types) {
    for (const PieceType* type : types) {
      choice.addItem(QString::fromStdString(type->name), QString::fromStdString(type->id));
      choice.setItemData(choice.count() - 1, QString::fromStdString(type->summary), Qt::ToolTipRole);
    }
  };
  fill(*run_, board_->run_types());
  fill(*upright_run_, board_->run_types());
  fill(*bend_, board_->bend_types());
}

void DeskWidget::fill_steps() {
  step_->clear();
  for (const Length& step : grid_steps(document_.units())) {
    step_->addItem(QString::fromStdString(fluewright::show(step, document_.units(), Meaning::small_length).text()), in(step, metre));
  }
}

void DeskWidget::show_choices() {
  run_->setCurrentIndex(run_->findData(QString::fromStdString(board_->run_type())));
  upright_run_->setCurrentIndex(upright_run_->findData(QString::fromStdString(board_->upright_type())));
  bend_->setCurrentIndex(bend_->findData(QString::fromStdString(board_->bend_type())));
  from_->setCurrentIndex(from_->findData(static_cast<int>(elevation_->projection().kind())));
  tint_->setCurrentIndex(tint_->findData(static_cast<int>(document_.tint())));
  // A step set from elsewhere (or kept over a change of units) is shown as it is.
  const double step = in(document_.grid_step(), metre);
  int found = -1;
  for (int i = 0; i < step_->count(); ++i) {
    if (std::abs(step_->itemData(i).toDouble() - step) < 1e-9) found = i;
  }
  if (found < 0) {
    step_->addItem(QString::fromStdString(fluewright::show(document_.grid_step(), document_.units(), Meaning::small_length).text()), step);
    found = step_->count() - 1;
  }
  step_->setCurrentIndex(found);
}

}  // namespace fluewright
