// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/plan_field.hpp"

#include <QEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QWheelEvent>

namespace fluewright {

namespace {

FieldSpec spec_of(const std::string& key, const std::string& label, const std::string& help) {
  FieldSpec spec;
  spec.key = key;
  spec.label = label;
  spec.help = help;
  return spec;
}

}  // namespace

PlanField::PlanField(const std::string& key, const std::string& label, const std::string& help, PlanMeaning meaning,
                     QWidget* parent)
    : Field(spec_of(key, label, help), parent), meaning_{meaning}, edit_{new QLineEdit(this)} {
  edit_->setAlignment(Qt::AlignRight);
  edit_->setFocusPolicy(Qt::StrongFocus);
  adopt_control(edit_);
  connect(edit_, &QLineEdit::editingFinished, this, &PlanField::commit_typing);
}

QString PlanField::text() const { return edit_->text(); }

bool PlanField::mid_typing() const { return edit_->text() != written_; }

void PlanField::show_number(const PlanNumber& number, UnitSystem units) {
  const bool keep = mid_typing() && number_ && units == units_ && same(*number_, number);
  number_ = number;
  units_ = units;
  if (!keep) write();
}

void PlanField::write() {
  if (!number_) return;
  written_ = QString::fromStdString(fluewright::show(*number_, meaning_, units_).text());
  if (edit_->text() != written_) edit_->setText(written_);
}

void PlanField::commit_typing() {
  if (!number_ || edit_->isReadOnly() || !mid_typing()) return;
  const auto parsed = parse_plan_number(edit_->text().trimmed().toStdString(), meaning_, units_);
  if (!parsed.value) {
    explain(QString::fromStdString(parsed.failure.message));
    return;
  }
  explain({});
  if (same(*parsed.value, *number_)) {
    write();
    return;
  }
  emit number_asked(*parsed.value, {});
}

void PlanField::step(int steps) {
  if (!number_ || edit_->isReadOnly()) return;
  if (mid_typing()) commit_typing();
  if (mid_typing()) return;  // what stands there is not usable: leave it to be read
  explain({});
  emit number_asked(stepped(*number_, meaning_, units_, steps), QStringLiteral("step %1 %2").arg(objectName()).arg(go_));
  edit_->selectAll();
}

void PlanField::set_read_only(bool read_only) { edit_->setReadOnly(read_only); }

bool PlanField::eventFilter(QObject* watched, QEvent* event) {
  if (watched != edit_) return Field::eventFilter(watched, event);
  if (event->type() == QEvent::Wheel) {
    if (!edit_->hasFocus()) {
      event->ignore();  // let the sheet scroll
      return true;
    }
    const int turns = static_cast<QWheelEvent*>(event)->angleDelta().y();
    if (turns != 0) step(turns > 0 ? 1 : -1);
    return true;
  }
  if (event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp || key == Qt::Key_PageDown) {
      const int size = key == Qt::Key_PageUp || key == Qt::Key_PageDown ? 10 : 1;
      step(key == Qt::Key_Up || key == Qt::Key_PageUp ? size : -size);
      return true;
    }
    if (key == Qt::Key_Escape && mid_typing()) {
      explain({});
      write();
      edit_->selectAll();
      return true;
    }
  }
  return Field::eventFilter(watched, event);
}

}  // namespace fluewright
