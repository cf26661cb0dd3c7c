// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/editors/field_sheet.hpp"

#include "app/desktop/fields/field.hpp"
#include "app/desktop/fields/field_words.hpp"
#include "app/desktop/fields/scroll_column.hpp"
#include "app/drawing/tr.hpp"

#include <QFrame>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QVBoxLayout>

namespace fluewright {

FieldSheet::FieldSheet(QWidget* parent)
    : QWidget(parent),
      body_(new QWidget),
      scroll_(scroll_column(body_, tr("Fields"), this)),
      column_(new QVBoxLayout(body_)),
      note_(new QLabel(this)) {
  const int letter = fontMetrics().horizontalAdvance(QLatin1Char('n'));
  column_->setContentsMargins(letter, letter, letter, letter);
  column_->setSpacing(5);
  column_->addStretch(1);
  scroll_->setFocusPolicy(Qt::NoFocus);

  note_->setObjectName(QStringLiteral("sheet_note"));
  note_->setAccessibleName(tr("About this field"));
  note_->setWordWrap(true);
  note_->setTextFormat(Qt::PlainText);
  note_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  note_->setProperty("role", "caption");
  note_->setMargin(letter);
  // A fixed height: the sheet must not jump under the mouse while one moves over its fields.
  note_->setFixedHeight(4 * fontMetrics().lineSpacing() + 2 * letter);

  auto* rule = new QFrame(this);
  rule->setFrameShape(QFrame::HLine);
  rule->setObjectName(QStringLiteral("rule"));
  auto* all = new QVBoxLayout(this);
  all->setContentsMargins(0, 0, 0, 0);
  all->setSpacing(0);
  all->addWidget(scroll_, 1);
  all->addWidget(rule);
  all->addWidget(note_);
}

void FieldSheet::add(QWidget* widget, QWidget* before) {
  // The last item is the stretch that keeps the fields at the top.
  const int place = before ? column_->indexOf(before) : column_->count() - 1;
  column_->insertWidget(place, widget);
}

void FieldSheet::add(Field* field, QWidget* before) {
  add(static_cast<QWidget*>(field), before);
  connect(field, &Field::attended, this,
          [this, field] { note(QString::fromStdString(field->spec().help), source_words(field->spec().citation)); });
}

QLabel* FieldSheet::add_heading(const QString& words) {
  auto* heading = new QLabel(words, body_);
  heading->setObjectName(QStringLiteral("sheet_heading"));
  QFont font = heading->font();
  font.setBold(true);
  heading->setFont(font);
  add(heading);
  return heading;
}

void FieldSheet::note(const QString& what, const QString& source) {
  const QString words = what.isEmpty() ? source : source.isEmpty() ? what : what + QLatin1Char('\n') + source;
  note_->setText(words);
  note_->setToolTip(words);
}

QString FieldSheet::noted() const { return note_->text(); }

}  // namespace fluewright
