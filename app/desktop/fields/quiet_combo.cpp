// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/fields/quiet_combo.hpp"

#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"

#include <QPainter>
#include <QPolygonF>
#include <QSignalBlocker>
#include <QWheelEvent>

namespace fluewright {

QuietCombo::QuietCombo(QWidget* parent) : QComboBox(parent) {
  setFocusPolicy(Qt::StrongFocus);
  setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
  setMinimumContentsLength(8);
}

void QuietCombo::set_options(const QList<Option>& options) {
  if (options == options_) return;
  const QSignalBlocker quiet(this);
  const QString before = id();
  options_ = options;
  clear();
  for (const Option& option : options_) {
    addItem(option.words, option.id);
    setItemData(count() - 1, option.words, Qt::ToolTipRole);
  }
  if (!before.isNull()) show_id(before);
}

void QuietCombo::show_id(const QString& id) {
  const QSignalBlocker quiet(this);
  int place = findData(id);
  if (place < 0) {
    addItem(id.isEmpty() ? QStringLiteral("–") : tr("%1 (not known)").arg(id), id);
    place = count() - 1;
  }
  setCurrentIndex(place);
}

void QuietCombo::paintEvent(QPaintEvent* event) {
  QComboBox::paintEvent(event);
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.setPen(QPen(theme().inks.faint_ink, 1.4, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  const QPointF tip(width() - 11.0, 0.5 * height() + 2.0);
  painter.drawPolyline(QPolygonF{tip + QPointF(-4.0, -4.0), tip, tip + QPointF(4.0, -4.0)});
}

void QuietCombo::wheelEvent(QWheelEvent* event) {
  if (hasFocus()) {
    QComboBox::wheelEvent(event);
  } else {
    event->ignore();
  }
}

}  // namespace fluewright
