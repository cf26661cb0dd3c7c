// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/start/starter_dialog.hpp"

#include "app/desktop/editors/edit_words.hpp"
#include "app/desktop/fields/length_spec.hpp"
#include "app/desktop/fields/quantity_field.hpp"
#include "app/desktop/start/design_thumbnail.hpp"
#include "app/shared/words.hpp"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <array>
#include <utility>

namespace fluewright {

namespace {

constexpr std::array metric_bores{100, 125, 150, 175, 200, 250};  // mm
constexpr std::array imperial_bores{4, 5, 6, 7, 8, 10};           // in
constexpr QSize picture_size(360, 300);

}  // namespace

StarterDialog::StarterDialog(std::shared_ptr<const Library> library, UnitSystem units, QWidget* parent)
    : QDialog(parent),
      sample_(std::move(library)),
      units_(units),
      bore_(new QComboBox),
      shape_(new QComboBox),
      stack_(new QComboBox),
      picture_(new QLabel),
      word_(new QLabel) {
  setObjectName(QStringLiteral("starter"));
  setWindowTitle(tr("A path by five questions"));
  const bool metric = units_ == UnitSystem::metric;
  for (std::size_t i = 0; i < metric_bores.size(); ++i) {
    const Length bore = metric ? metric_bores[i] * 1.0 * millimetre : imperial_bores[i] * 1.0 * inch;
    bore_->addItem(QString::fromStdString(fluewright::show(bore, units_, Meaning::small_length).text()), in(bore, metre));
  }
  constexpr int usual_bore = 2;
  bore_->setCurrentIndex(usual_bore);
  shape_->addItem(tr("straight"), static_cast<int>(BenchShape::straight));
  shape_->addItem(tr("L, round a corner"), static_cast<int>(BenchShape::l_shape));
  shape_->addItem(tr("U, out and back"), static_cast<int>(BenchShape::u_shape));
  shape_->addItem(tr("in loops, three passes"), static_cast<int>(BenchShape::serpentine));
  shape_->setCurrentIndex(2);
  stack_->addItem(tr("in the room, up through the roof"), static_cast<int>(StackPlace::inside));
  stack_->addItem(tr("outside, through the wall"), static_cast<int>(StackPlace::outside));
  length_ = new QuantityField(length_spec("bench", tr("3  How much flue in the bench?"), answers_.bench, 1.0 * metre, 15.0 * metre));
  top_ = new QuantityField(length_spec("top", tr("5  How high does the stack end above the floor?"), answers_.top, 3.5 * metre, 12.0 * metre));
  bore_->setAccessibleName(tr("How wide is the flue?"));
  shape_->setAccessibleName(tr("What shape has the bench?"));
  stack_->setAccessibleName(tr("Where does the stack stand?"));

  auto* questions = new QVBoxLayout;
  const auto ask = [questions](const QString& question, QComboBox* answer) {
    auto* label = new QLabel(question);
    label->setBuddy(answer);
    questions->addWidget(label);
    questions->addWidget(answer);
    questions->addSpacing(6);
  };
  ask(tr("&1  How wide is the flue?"), bore_);
  ask(tr("&2  What shape has the bench?"), shape_);
  questions->addWidget(length_);
  questions->addSpacing(6);
  ask(tr("&4  Where does the stack stand?"), stack_);
  questions->addWidget(top_);
  questions->addStretch(1);
  picture_->setFixedSize(picture_size);
  picture_->setAccessibleName(tr("What the answers build"));
  word_->setWordWrap(true);
  word_->setMinimumHeight(2 * fontMetrics().lineSpacing());
  auto* right = new QVBoxLayout;
  right->addWidget(picture_);
  right->addWidget(word_);
  right->addStretch(1);
  auto* both = new QHBoxLayout;
  both->addLayout(questions, 1);
  both->addSpacing(16);
  both->addLayout(right);
  auto* buttons = new QDialogButtonBox(QDialogButtonBox::Cancel);
  build_ = buttons->addButton(tr("&Build it"), QDialogButtonBox::AcceptRole);
  build_->setObjectName(QStringLiteral("build"));
  build_->setDefault(true);
  auto* column = new QVBoxLayout(this);
  column->addLayout(both);
  column->addWidget(buttons);

  for (QComboBox* answer : {bore_, shape_, stack_}) connect(answer, &QComboBox::activated, this, &StarterDialog::refresh);
  connect(length_, &Field::asked, this, [this](const FieldValue& value) {
    answers_.bench = std::get<Length>(value);
    refresh();
  });
  connect(top_, &Field::asked, this, [this](const FieldValue& value) {
    answers_.top = std::get<Length>(value);
    refresh();
  });
  connect(buttons, &QDialogButtonBox::accepted, this, [this] {
    length_->commit_typing();
    top_->commit_typing();
    if (design_) accept();
  });
  connect(buttons, &QDialogButtonBox::rejected, this, &QDialog::reject);
  refresh();
}

void StarterDialog::refresh() {
  answers_.bore = bore_->currentData().toDouble() * metre;
  answers_.shape = static_cast<BenchShape>(shape_->currentData().toInt());
  answers_.stack = static_cast<StackPlace>(stack_->currentData().toInt());
  length_->show_value(answers_.bench, units_);
  top_->show_value(answers_.top, units_);
  EditResult built = starter_path(sample_.library(), answers_);
  design_ = std::move(built.design);
  build_->setEnabled(design_.has_value());
  if (!design_) {
    word_->setText(refusal_sentence(built.refusal));
    picture_->clear();
    return;
  }
  DesignDocument file;
  file.design = *design_;
  sample_.adopt(std::move(file), {});
  picture_->setPixmap(QPixmap::fromImage(design_picture(sample_, picture_size, devicePixelRatioF())));
  const Assessment& answer = sample_.assessment();
  word_->setText(answer.verdict ? tr("On a day at 5 °C this has a draft margin of %1 with a cold bench. Everything can be changed "
                                     "on the desk.")
                                      .arg(QString::fromStdString(fluewright::show(answer.worst_margin, units_).text()))
                                : QString());
}

}  // namespace fluewright
