// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/fields/scroll_column.hpp"

#include <QScrollArea>

namespace fluewright {

QScrollArea* scroll_column(QWidget* content, const QString& name, QWidget* parent) {
  auto* scroll = new QScrollArea(parent);
  scroll->setWidget(content);
  scroll->setAccessibleName(name);
  scroll->setWidgetResizable(true);
  scroll->setFrameShape(QFrame::NoFrame);
  scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
  return scroll;
}

}  // namespace fluewright
