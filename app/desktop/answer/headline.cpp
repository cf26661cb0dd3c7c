// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/answer/headline.hpp"

#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"

#include <QEvent>
#include <QFontMetrics>
#include <QGridLayout>
#include <QLabel>
#include <QMouseEvent>
#include <QStyle>

#include <algorithm>

namespace fluewright {

void set_tone(QLabel* label, Tone tone) {
  static const QHash<Tone, QString> names{{Tone::calm, QStringLiteral("calm")},
                                          {Tone::caution, QStringLiteral("caution")},
                                          {Tone::fault, QStringLiteral("fault")},
                                          {Tone::silent, QString()}};
  if (label->property("tone").toString() == names[tone]) return;
  label->setProperty("tone", names[tone]);
  label->style()->unpolish(label);
  label->style()->polish(label);
}

Headline::Headline(Size size, QWidget* parent)
    : QWidget(parent),
      caption_(new QLabel(this)),
      figure_(new QLabel(this)),
      state_(new QLabel(this)),
      note_(new QLabel(this)) {
  caption_->setProperty("role", "caption");
  note_->setProperty("role", "caption");
  note_->setWordWrap(true);
  note_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
  figure_->setMinimumWidth(1);
  figure_->setFixedHeight(QFontMetrics(type(TypeRole::figure)).height());
  figure_->setAlignment(Qt::AlignLeft | Qt::AlignBottom);
  figure_->setCursor(Qt::PointingHandCursor);
  figure_->setToolTip(tr("Show the working"));

  auto* grid = new QGridLayout(this);
  grid->setContentsMargins(0, 0, 0, 0);
  grid->setVerticalSpacing(0);
  grid->setHorizontalSpacing(10);
  grid->addWidget(caption_, 0, 0);
  if (size == Size::large) {
    state_->setProperty("role", "heading");
    grid->addWidget(figure_, 1, 0);
    grid->addWidget(state_, 1, 1, Qt::AlignRight | Qt::AlignVCenter);
  } else {
    grid->addWidget(figure_, 1, 0, 1, 2);
    grid->addWidget(state_, 0, 1, Qt::AlignRight);
  }
  grid->addWidget(note_, 2, 0, 1, 2);
  grid->setColumnStretch(0, 1);
  grid->setRowStretch(3, 1);
}

void Headline::say(const HeadlineWords& words) {
  caption_->setText(words.caption);
  figure_->setText(words.figure);
  state_->setText(words.state);
  note_->setText(words.note);
  set_tone(state_, words.tone);
  setAccessibleName(QStringLiteral("%1: %2 %3. %4").arg(words.caption, words.figure, words.state, words.note));
  fit_figure();
}

QString Headline::figure() const { return figure_->text(); }
QString Headline::state() const { return state_->text(); }
QString Headline::note() const { return note_->text(); }

void Headline::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() == Qt::LeftButton && figure_->geometry().contains(event->pos())) emit figure_clicked();
  QWidget::mouseReleaseEvent(event);
}

void Headline::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  fit_figure();
}

void Headline::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) fit_figure();
  QWidget::changeEvent(event);
}

// Feet and inches are longer than metres: the figure gets smaller before it gets cut.
void Headline::fit_figure() {
  QFont font = type(TypeRole::figure);
  const double wanted = QFontMetricsF(font).horizontalAdvance(figure_->text());
  const double room = std::max(1, figure_->width() - 2);
  if (wanted > room) font.setPointSizeF(std::max(13.0, font.pointSizeF() * room / wanted));
  if (figure_->font() != font) figure_->setFont(font);
}

}  // namespace fluewright
