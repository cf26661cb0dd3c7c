// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/fields/field.hpp"

#include "app/desktop/fields/field_words.hpp"

#include <QEnterEvent>
#include <QEvent>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>

namespace fluewright {

Field::Field(FieldSpec spec, QWidget* parent)
    : QWidget(parent),
      spec_(std::move(spec)),
      grid_(new QGridLayout(this)),
      label_(new QLabel(this)),
      aside_(new QLabel(this)),
      explanation_(new QLabel(this)) {
  const QString name = QString::fromStdString(spec_.label);
  setObjectName(QStringLiteral("field:%1").arg(QString::fromStdString(spec_.key)));
  label_->setText(name);
  label_->setWordWrap(true);
  aside_->setProperty("role", "caption");
  aside_->setWordWrap(true);
  aside_->setObjectName(QStringLiteral("aside"));
  explanation_->setWordWrap(true);
  explanation_->setObjectName(QStringLiteral("explanation"));
  explanation_->setProperty("tone", "fault");
  explanation_->hide();

  grid_->setContentsMargins(0, 0, 0, 0);
  grid_->setVerticalSpacing(1);
  grid_->addWidget(label_, 0, 0, Qt::AlignVCenter);
  grid_->addWidget(aside_, 0, 2, Qt::AlignVCenter);
  grid_->addWidget(explanation_, 1, 1, 1, 2);
  grid_->setColumnStretch(2, 1);
  fit();
}

void Field::adopt_control(QWidget* control) {
  control_ = control;
  grid_->addWidget(control, 0, 1);
  label_->setBuddy(control);
  control->setAccessibleName(QString::fromStdString(spec_.label));
  setFocusProxy(control);
  control->installEventFilter(this);
  describe();
  fit();
}

void Field::widen_control() {
  wide_ = true;
  aside_->hide();
  grid_->removeWidget(control_);
  grid_->addWidget(control_, 0, 1, 1, 2);
  control_->setMinimumWidth(0);
  control_->setMaximumWidth(QWIDGETSIZE_MAX);
  control_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

void Field::explain(const QString& sentence) {
  explanation_->setText(sentence.isEmpty() ? QString() : QStringLiteral("▲ %1").arg(full_stop(sentence)));
  explanation_->setVisible(!sentence.isEmpty());
  describe();
}

QString Field::explanation() const { return explanation_->isHidden() ? QString() : explanation_->text(); }

void Field::set_usual(std::optional<FieldValue> low, std::optional<FieldValue> high, const Citation& citation,
                      const QString& where) {
  spec_.usual_low = std::move(low);
  spec_.usual_high = std::move(high);
  spec_.citation = citation;
  where_ = where;
}

void Field::set_aside(const QString& words) {
  if (aside_->text() == words) return;
  aside_->setText(words);
  describe();
}

QString Field::aside() const { return aside_->text(); }

void Field::enterEvent(QEnterEvent* event) {
  emit attended();
  QWidget::enterEvent(event);
}

bool Field::eventFilter(QObject* watched, QEvent* event) {
  if (watched == control_ && event->type() == QEvent::FocusIn) {
    focus_arrived();
    emit attended();
  }
  // A box with nothing half-typed in it leaves undo and redo to the window.
  if (watched == control_ && event->type() == QEvent::ShortcutOverride && !mid_typing()) {
    auto* key = static_cast<QKeyEvent*>(event);
    if (key->matches(QKeySequence::Undo) || key->matches(QKeySequence::Redo)) {
      event->ignore();
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

void Field::changeEvent(QEvent* event) {
  if (event->type() == QEvent::FontChange) fit();
  QWidget::changeEvent(event);
}

// Assistive tools read what eyes see: the help, the usual range, and what is wrong.
void Field::describe() {
  if (!control_) return;
  QStringList parts;
  if (!spec_.help.empty()) parts << QString::fromStdString(spec_.help);
  if (!aside_->text().isEmpty()) parts << aside_->text();
  if (!explanation_->isHidden()) parts << explanation_->text();
  control_->setAccessibleDescription(parts.join(QStringLiteral(" ")));
}

void Field::fit() {
  const int letter = fontMetrics().horizontalAdvance(QLatin1Char('n'));
  label_->setFixedWidth(17 * letter);
  if (control_ && !wide_) control_->setFixedWidth(15 * letter);
  grid_->setHorizontalSpacing(letter);
}

}  // namespace fluewright
