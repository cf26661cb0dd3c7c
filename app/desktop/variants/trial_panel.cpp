// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/variants/trial_panel.hpp"

#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSlider>
#include <QVBoxLayout>

#include <cmath>

namespace fluewright {

TrialPanel::TrialPanel(Document& document, QWidget* parent) : QWidget(parent), document_(document) {
  setObjectName(QStringLiteral("trial"));
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(12, 10, 12, 10);
  state_ = new QLabel;
  state_->setWordWrap(true);
  column->addWidget(state_);
  auto* grid = new QGridLayout;
  grid->setColumnStretch(1, 1);
  grid->setHorizontalSpacing(10);
  column->addLayout(grid);
  back_ = new QPushButton(tr("&Back to the design's own"));
  back_->setObjectName(QStringLiteral("trial_back"));
  column->addWidget(back_, 0, Qt::AlignLeft);
  column->addStretch(1);
  connect(back_, &QPushButton::clicked, this, [this] { document_.try_out(std::nullopt); });

  using Trial = Document::Trial;
  const Library& library = document_.library();
  add({library.condition("site.outdoor_temperature"), -30.0, 35.0, 0.5,
       [](const Trial& t) { return in_celsius(t.outdoor_temperature); },
       [](Trial& t, double x) { t.outdoor_temperature = celsius(x); }, [](double x) -> FieldValue { return celsius(x); }},
      tr("Outdoors"));
  add({library.condition("room.temperature"), 0.0, 30.0, 0.5, [](const Trial& t) { return in_celsius(t.room_temperature); },
       [](Trial& t, double x) { t.room_temperature = celsius(x); }, [](double x) -> FieldValue { return celsius(x); }},
      tr("Room"));
  add({library.condition("fire.burn_rate"), 0.5, 8.0, 0.1, [](const Trial& t) { return in(t.burn_rate, kilogram_per_hour); },
       [](Trial& t, double x) { t.burn_rate = x * kilogram_per_hour; },
       [](double x) -> FieldValue { return x * kilogram_per_hour; }},
      tr("Burn rate"));
  add({library.condition("fire.moisture"), 8.0, 45.0, 1.0, [](const Trial& t) { return 100.0 * static_cast<double>(t.moisture); },
       [](Trial& t, double x) { t.moisture = 0.01 * x; }, [](double x) -> FieldValue { return Ratio(0.01 * x); }},
      tr("Moisture"));
  add({library.condition("room.exhaust_flow"), 0.0, 800.0, 10.0,
       [](const Trial& t) { return in(t.exhaust_flow, (cubic_metre / hour)); },
       [](Trial& t, double x) { t.exhaust_flow = x * (cubic_metre / hour); },
       [](double x) -> FieldValue { return x * (cubic_metre / hour); }},
      tr("Range hood and fans"));
  for (std::size_t i = 0; i < handles_.size(); ++i) {
    const Handle& handle = handles_[i];
    const int row = 2 * static_cast<int>(i);
    auto* name = new QLabel(handle.slider->accessibleName());
    name->setBuddy(handle.slider);
    grid->addWidget(name, row, 0);
    grid->addWidget(handle.slider, row, 1);
    grid->addWidget(handle.figure, row, 2, Qt::AlignRight);
    grid->addWidget(handle.own, row + 1, 1, 1, 2, Qt::AlignRight);
  }
  connect(&document_, &Document::changed, this, &TrialPanel::refresh);
  connect(&document_, &Document::units_changed, this, &TrialPanel::refresh);
  refresh();
}

void TrialPanel::add(Handle handle, const QString& name) {
  handle.slider = new QSlider(Qt::Horizontal);
  handle.slider->setObjectName(QStringLiteral("trial:") + QString::fromStdString(handle.spec->key));
  handle.slider->setAccessibleName(name);
  handle.slider->setRange(0, static_cast<int>(std::lround((handle.high - handle.low) / handle.step)));
  handle.slider->setPageStep(5);
  handle.figure = new QLabel;
  handle.own = new QLabel;
  handle.own->setProperty("role", "caption");
  const std::size_t place = handles_.size();
  connect(handle.slider, &QSlider::valueChanged, this, [this, place](int steps) {
    if (filling_) return;
    const Handle& moved = handles_[place];
    Document::Trial trial = document_.trial().value_or(document_.own_conditions());
    moved.set(trial, moved.low + steps * moved.step);
    document_.try_out(trial);
  });
  handles_.push_back(std::move(handle));
}

QString TrialPanel::words(const Handle& handle, double number) const {
  return QString::fromStdString(fluewright::show(handle.value(number), document_.units(), handle.spec->kind, handle.spec->key).text());
}

void TrialPanel::refresh() {
  filling_ = true;
  const Document::Trial own = document_.own_conditions();
  const Document::Trial shown = document_.trial().value_or(own);
  for (const Handle& handle : handles_) {
    const double number = handle.get(shown);
    handle.slider->setValue(static_cast<int>(std::lround((number - handle.low) / handle.step)));
    handle.figure->setText(words(handle, number));
    handle.slider->setAccessibleDescription(handle.figure->text());
    const bool differs = std::abs(number - handle.get(own)) > 0.01 * handle.step;
    handle.own->setText(differs ? tr("in the design: %1").arg(words(handle, handle.get(own))) : QString());
  }
  const bool trying = document_.trial().has_value();
  state_->setText(trying ? tr("▲ The answer is for these conditions, not for the design's own.")
                         : tr("Drag a handle: the answer follows, the design stays as it is."));
  back_->setEnabled(trying);
  filling_ = false;
}

}  // namespace fluewright
