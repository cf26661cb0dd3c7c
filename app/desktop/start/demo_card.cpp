// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/start/demo_card.hpp"

#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"

#include <QEvent>
#include <QKeyEvent>
#include <QPainter>

namespace fluewright {

namespace {
constexpr int picture_height = 150;
constexpr int pad = 12;
}  // namespace

DemoCard::DemoCard(const QString& title, const QString& scene, Thumbnail thumbnail, QWidget* parent)
    : QAbstractButton(parent), scene_(scene), thumbnail_(std::move(thumbnail)) {
  setText(title);
  setAccessibleName(tr("Open the demo %1").arg(title));
  setAccessibleDescription(scene);
  setFocusPolicy(Qt::StrongFocus);
  setCursor(Qt::PointingHandCursor);
  QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Minimum);
  policy.setHeightForWidth(true);
  setSizePolicy(policy);
}

QSize DemoCard::sizeHint() const { return {300, heightForWidth(300)}; }

QRect DemoCard::words_box(int width) const { return {pad, picture_height + pad, width - 2 * pad, 10'000}; }

int DemoCard::heightForWidth(int width) const {
  const QRect box = words_box(width);
  const QFontMetrics title(type(TypeRole::heading));
  const QFontMetrics body(type(TypeRole::caption));
  const int title_height = title.boundingRect(box, Qt::TextWordWrap, text()).height();
  const int scene_height = body.boundingRect(box, Qt::TextWordWrap, scene_).height();
  return box.top() + title_height + 4 + scene_height + pad;
}

void DemoCard::paintEvent(QPaintEvent*) {
  const Inks& inks = theme().inks;
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  const bool lit = underMouse() || hasFocus() || isDown();
  const QRectF frame = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
  painter.setPen(QPen(lit ? inks.accent : inks.hairline, hasFocus() ? 2.0 : 1.0));
  painter.setBrush(inks.field);
  painter.drawRoundedRect(frame, 3, 3);
  if (isDown()) painter.fillRect(rect(), inks.accent_wash);

  const QRect picture_box(1, 1, width() - 2, picture_height - 1);
  painter.fillRect(picture_box, inks.paper);
  if (thumbnail_) {
    const double ratio = devicePixelRatioF();
    if (picture_.isNull() || picture_.size() != picture_box.size() * ratio)
      picture_ = thumbnail_(picture_box.size(), ratio);
    painter.drawImage(picture_box.topLeft(), picture_);
  }
  painter.setPen(inks.hairline);
  painter.drawLine(1, picture_height, width() - 2, picture_height);

  const QRect box = words_box(width());
  painter.setPen(inks.ink);
  painter.setFont(type(TypeRole::heading));
  QRect used;
  painter.drawText(box, Qt::TextWordWrap, text(), &used);
  painter.setPen(inks.faint_ink);
  painter.setFont(type(TypeRole::caption));
  painter.drawText(box.translated(0, used.height() + 4), Qt::TextWordWrap, scene_);
}

void DemoCard::changeEvent(QEvent* event) {
  if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange) {
    picture_ = {};
    update();
  }
  QAbstractButton::changeEvent(event);
}

void DemoCard::enterEvent(QEnterEvent* event) {
  update();
  QAbstractButton::enterEvent(event);
}

void DemoCard::leaveEvent(QEvent* event) {
  update();
  QAbstractButton::leaveEvent(event);
}

void DemoCard::keyPressEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
    click();
    return;
  }
  QAbstractButton::keyPressEvent(event);
}

}  // namespace fluewright
