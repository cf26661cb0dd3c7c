// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/fields/quantity_field.hpp"

#include "app/desktop/fields/field_words.hpp"
#include "app/drawing/tr.hpp"

#include <QEvent>
#include <QKeyEvent>
#include <QLabel>
#include <QLineEdit>
#include <QWheelEvent>

#include <algorithm>

namespace fluewright {

QuantityField::QuantityField(FieldSpec field_spec, QWidget* parent)
    : Field(std::move(field_spec), parent), edit_(new QLineEdit(this)), unit_(new QLabel(edit_)) {
  edit_->setAlignment(Qt::AlignRight);
  edit_->setFocusPolicy(Qt::StrongFocus);
  unit_->setForegroundRole(QPalette::PlaceholderText);
  unit_->setAttribute(Qt::WA_TransparentForMouseEvents);
  adopt_control(edit_);
  connect(edit_, &QLineEdit::editingFinished, this, &QuantityField::commit_typing);
  connect(edit_, &QLineEdit::textEdited, this, [this] { place_unit(); });
}

// The box outlives this part of the field by a moment and says that its editing has finished when it loses the keyboard.
QuantityField::~QuantityField() { disconnect(edit_, nullptr, this, nullptr); }

QString QuantityField::text() const { return edit_->text(); }
QString QuantityField::unit() const { return unit_->isHidden() ? QString() : unit_->text(); }

bool QuantityField::mid_typing() const { return edit_->text() != written_; }

void QuantityField::show_value(const FieldValue& value, UnitSystem units) {
  const bool keep = mid_typing() && value_ && units == units_ && same_value(*value_, value);
  value_ = value;
  units_ = units;
  const QString usual = usual_words(spec(), units);
  set_aside(usual.isEmpty() || where().isEmpty() ? usual : QStringLiteral("%1 %2").arg(usual, where()));
  if (!keep) write();
}

void QuantityField::write() {
  if (!value_) return;
  const Shown shown = fluewright::show(*value_, units_, spec().kind, spec().key);
  written_ = QString::fromStdString(shown.number);
  if (edit_->text() != written_) edit_->setText(written_);
  unit_->setText(QString::fromStdString(shown.unit));
  place_unit();
  const QString allowed = allowed_words(spec(), units_);
  explain(is_allowed(spec(), *value_) ? QString() : tr("Outside the allowed range of %1").arg(allowed));
}

// The unit stands inside the box, at its right edge, and steps aside while somebody types a unit of their own.
void QuantityField::place_unit() {
  const QString typed = edit_->text();
  const bool own_unit = mid_typing() && std::any_of(typed.begin(), typed.end(), [](QChar c) {
                          return c.isLetter() || c == QLatin1Char('"') || c == QLatin1Char('\'') ||
                                 c == QLatin1Char('%') || c == QChar(0x00B0);
                        });
  unit_->setVisible(!own_unit && !unit_->text().isEmpty());
  unit_->adjustSize();
  const int pad = fontMetrics().horizontalAdvance(QLatin1Char('n')) / 2 + 1;
  unit_->move(edit_->width() - unit_->width() - pad, (edit_->height() - unit_->height()) / 2);
  edit_->setTextMargins(0, 0, unit_->isHidden() ? 0 : unit_->width() + pad / 2, 0);
}

void QuantityField::commit_typing() {
  if (!value_ || edit_->isReadOnly()) return;
  if (!mid_typing()) {
    if (is_allowed(spec(), *value_)) explain({});
    return;
  }
  const auto parsed = parse_field(edit_->text().trimmed().toStdString(), units_, spec().kind, spec().key);
  if (!parsed.value) {
    explain(QString::fromStdString(parsed.failure.message));
    return;
  }
  if (!is_allowed(spec(), *parsed.value)) {
    explain(tr("%1 is outside the allowed range of %2, so it is not used: the design still has %3")
                .arg(value_text(spec(), *parsed.value, units_), allowed_words(spec(), units_),
                     value_text(spec(), *value_, units_)));
    return;
  }
  if (same_value(*parsed.value, *value_)) {
    write();
    return;
  }
  explain({});
  emit asked(*parsed.value, {});
}

void QuantityField::step(int steps) {
  if (!value_ || edit_->isReadOnly()) return;
  if (mid_typing()) commit_typing();
  if (mid_typing()) return;  // what stands there is not usable: leave it to be read
  if (const auto next = stepped(spec(), *value_, units_, steps)) {
    explain({});
    emit asked(*next, QStringLiteral("step %1 %2").arg(objectName()).arg(go_));
    edit_->selectAll();
  } else {
    explain(tr("That is as far as it goes: %1").arg(allowed_words(spec(), units_)));
  }
}

bool QuantityField::eventFilter(QObject* watched, QEvent* event) {
  if (watched != edit_) return Field::eventFilter(watched, event);
  switch (event->type()) {
    case QEvent::Wheel: {
      if (!edit_->hasFocus()) {
        event->ignore();  // let the sheet scroll
        return true;
      }
      const int turns = static_cast<QWheelEvent*>(event)->angleDelta().y();
      if (turns != 0) step(turns > 0 ? 1 : -1);
      return true;
    }
    case QEvent::KeyPress: {
      const int key = static_cast<QKeyEvent*>(event)->key();
      if (key == Qt::Key_Up || key == Qt::Key_Down || key == Qt::Key_PageUp || key == Qt::Key_PageDown) {
        const int size = key == Qt::Key_PageUp || key == Qt::Key_PageDown ? 10 : 1;
        step(key == Qt::Key_Up || key == Qt::Key_PageUp ? size : -size);
        return true;
      }
      if (key == Qt::Key_Escape && mid_typing()) {
        write();
        edit_->selectAll();
        return true;
      }
      break;
    }
    case QEvent::Resize:
      place_unit();
      break;
    default:
      break;
  }
  return Field::eventFilter(watched, event);
}

void QuantityField::set_read_only(bool read_only) { edit_->setReadOnly(read_only); }

}  // namespace fluewright
