// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/event_editor.hpp"

#include "app/desktop/burn/plan_field.hpp"
#include "app/desktop/fields/pick_field.hpp"
#include "app/desktop/language/language.hpp"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace fluewright {

namespace {

FieldSpec pick_spec(const PickRow& row) {
  FieldSpec spec;
  spec.key = row.key;
  spec.label = row.label;
  spec.help = row.help;
  spec.kind = FieldKind::choice;
  spec.fallback = std::string{};
  return spec;
}

}  // namespace

EventEditor::EventEditor(BurnBook& book, QWidget* parent)
    : QWidget(parent),
      book_(book),
      heading_(new QLabel),
      fault_(new QLabel),
      column_(new QVBoxLayout(this)),
      remove_(new QPushButton(tr("Delete"))),
      weather_(new QPushButton(tr("Weather file…"))) {
  setObjectName(QStringLiteral("event_editor"));
  heading_->setObjectName(QStringLiteral("event_heading"));
  QFont bold = heading_->font();
  bold.setWeight(QFont::Medium);
  heading_->setFont(bold);
  fault_->setObjectName(QStringLiteral("event_fault"));
  fault_->setProperty("tone", "fault");
  fault_->setWordWrap(true);
  remove_->setObjectName(QStringLiteral("event_delete"));
  remove_->setProperty("link", true);
  remove_->setToolTip(tr("Del while the bar has the focus"));
  weather_->setObjectName(QStringLiteral("weather_file"));
  weather_->setToolTip(tr("Comma-separated, with the columns time and temperature_C"));
  column_->setContentsMargins(10, 8, 10, 8);
  column_->setSpacing(5);
  column_->addWidget(heading_);
  column_->addWidget(fault_);
  column_->addWidget(weather_);
  column_->addWidget(remove_);
  column_->addStretch(1);
  connect(weather_, &QPushButton::clicked, this, &EventEditor::weather_wanted);
  connect(remove_, &QPushButton::clicked, this, [this] {
    const auto ref = book_.selected();
    if (!ref) return;
    PlanEdit edit = remove_event(book_.plan(), *ref);
    if (!edit.plan) return;
    book_.select(std::nullopt);
    book_.commit(std::move(*edit.plan), tr("Delete an event"));
  });
  connect(&book_, &BurnBook::plan_changed, this, &EventEditor::refresh);
  connect(&book_, &BurnBook::selection_changed, this, &EventEditor::refresh);
  connect(&book_.document(), &Document::units_changed, this, &EventEditor::refresh);
  refresh();
}

void EventEditor::ask(const std::function<void(BurnPlan&)>& set, const QString& label, const QString& merge_key) {
  BurnPlan changed = book_.plan();
  set(changed);
  const auto ref = book_.selected();
  const QString text = tr("Set %1").arg(inside_sentence(label));
  if (!ref) {
    book_.commit(std::move(changed), text, merge_key);
    return;
  }
  PlanEdit edit = put_in_order(std::move(changed), *ref);
  book_.commit(std::move(*edit.plan), text, merge_key);
  book_.select(edit.touched);
}

void EventEditor::build(const PlanSheet& sheet) {
  std::string shape = sheet.heading;
  for (const PickRow& row : sheet.picks) shape += "|" + row.key;
  for (const NumberRow& row : sheet.numbers) shape += "|" + row.key;
  if (shape == shape_) return;
  shape_ = shape;
  if (rows_ != nullptr) {
    rows_->hide();
    rows_->deleteLater();
  }
  picks_.clear();
  numbers_.clear();
  rows_ = new QWidget;
  auto* column = new QVBoxLayout(rows_);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(4);
  for (std::size_t i = 0; i < sheet.picks.size(); ++i) {
    auto* field = new PickField(pick_spec(sheet.picks[i]), rows_);
    picks_.push_back(field);
    column->addWidget(field);
    connect(field, &Field::asked, this, [this, i](const FieldValue& value, const QString& key) {
      const PickRow row = sheet_.picks[i];
      ask([&](BurnPlan& plan) { row.set(plan, std::get<std::string>(value)); }, QString::fromStdString(row.label), key);
    });
  }
  for (std::size_t i = 0; i < sheet.numbers.size(); ++i) {
    const NumberRow& row = sheet.numbers[i];
    auto* field = new PlanField(row.key, row.label, row.help, row.meaning, rows_);
    field->setToolTip(QString::fromStdString(row.help));
    numbers_.push_back(field);
    column->addWidget(field);
    connect(field, &PlanField::number_asked, this, [this, i](const PlanNumber& number, const QString& key) {
      const NumberRow asked = sheet_.numbers[i];
      ask([&](BurnPlan& plan) { asked.set(plan, number); }, QString::fromStdString(asked.label), key);
    });
  }
  column_->insertWidget(2, rows_);
}

void EventEditor::refresh() {
  const auto ref = book_.selected();
  const UnitSystem units = book_.document().units();
  const Design& design = book_.document().design();
  sheet_ = sheet_of(book_.plan(), ref, design, book_.document().library());
  build(sheet_);
  heading_->setText(QString::fromStdString(sheet_.heading));
  for (std::size_t i = 0; i < picks_.size(); ++i) {
    QList<QuietCombo::Option> options;
    for (const auto& [id, words] : sheet_.picks[i].options) options.append({QString::fromStdString(id), QString::fromStdString(words)});
    picks_[i]->set_options(options);
    picks_[i]->show_value(FieldValue{sheet_.picks[i].picked}, units);
  }
  for (std::size_t i = 0; i < numbers_.size(); ++i) numbers_[i]->show_number(sheet_.numbers[i].number, units);
  QString fault = book_.fault_of(ref.value_or(PlanRef{}));
  if (!ref && fault.isEmpty()) fault = book_.fault_of({PlanList::outdoors, 0});
  fault_->setText(fault.isEmpty() ? QString() : QStringLiteral("▲ ") + fault);
  fault_->setVisible(!fault.isEmpty());
  remove_->setVisible(ref.has_value());
  weather_->setVisible(!ref && book_.plan().outdoors.index() == 3);
}

}  // namespace fluewright
