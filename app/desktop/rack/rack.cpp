// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/rack/rack.hpp"

#include "app/desktop/desk/desk_widget.hpp"
#include "app/desktop/rack/rack_list.hpp"

#include <QKeyEvent>
#include <QLineEdit>
#include <QVBoxLayout>

namespace fluewright {

Rack::Rack(Document& document, QWidget* parent)
    : QWidget(parent), search_{new QLineEdit}, list_{new RackList(document.library())} {
  setAccessibleName(tr("Rack"));
  setMinimumWidth(176);
  setFocusProxy(list_);
  search_->setPlaceholderText(tr("Find a piece"));
  search_->setAccessibleName(tr("Find a piece"));
  search_->setClearButtonEnabled(true);
  search_->installEventFilter(this);
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 8, 0, 0);
  column->setSpacing(4);
  auto* top = new QVBoxLayout;
  top->setContentsMargins(8, 0, 8, 0);
  top->addWidget(search_);
  column->addLayout(top);
  column->addWidget(list_, 1);
  connect(search_, &QLineEdit::textChanged, this, [this](const QString& words) {
    list_->filter(words);
    if (!words.isEmpty()) list_->select_best(words);
  });
  connect(search_, &QLineEdit::returnPressed, this, [this] {
    const QString type = list_->selected_type();
    if (type.isEmpty()) return;
    search_->clear();
    emit list_->chosen(type);
  });
  connect(list_, &RackList::typed, this, [this](const QString& text) {
    search_->setFocus(Qt::OtherFocusReason);
    search_->setText(text);
  });
}

void Rack::serve(DeskWidget& desk) {
  connect(list_, &RackList::picked, &desk, [&desk](const QString& type) { desk.pick_up(type.toStdString()); });
  connect(list_, &RackList::carried, &desk,
          [&desk](const QString& type, QPoint global) { desk.carry(type.toStdString(), global); });
  connect(list_, &RackList::dropped, &desk, &DeskWidget::drop_carried);
  connect(list_, &RackList::let_go, &desk, [&desk] {
    desk.forget_carried();
    desk.setFocus(Qt::OtherFocusReason);
  });
  connect(list_, &RackList::chosen, &desk, [&desk](const QString& type) { desk.put_by_key(type.toStdString()); });
  connect(&desk, &DeskWidget::rack_wanted, this, [this] {
    if (list_->selected_type().isEmpty()) list_->select_best({});
    list_->setFocus(Qt::OtherFocusReason);
  });
}

bool Rack::eventFilter(QObject* watched, QEvent* event) {
  if (watched == search_ && event->type() == QEvent::KeyPress) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Down) {
      if (list_->selected_type().isEmpty()) list_->select_best(search_->text());
      list_->setFocus(Qt::TabFocusReason);
      return true;
    }
    if (key == Qt::Key_Escape) {
      if (search_->text().isEmpty()) emit list_->let_go();
      search_->clear();
      return true;
    }
  }
  return QWidget::eventFilter(watched, event);
}

}  // namespace fluewright
