// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The whole window in a language, and a walk through all that it opens.

#include "app/desktop/advice/advice_pages.hpp"
#include "app/desktop/desk/desk_widget.hpp"
#include "app/desktop/desk/house_dialog.hpp"
#include "app/desktop/desk/winding_dialog.hpp"
#include "app/desktop/help/help_card.hpp"
#include "app/desktop/language/language.hpp"
#include "app/desktop/print/paper_dialog.hpp"
#include "app/desktop/shell/help_pages.hpp"
#include "app/desktop/start/starter_dialog.hpp"
#include "app/desktop/variants/variants_dialog.hpp"
#include "panels_window.hpp"
#include "speaks.hpp"

#include <QAbstractButton>
#include <QAbstractItemView>
#include <QAction>
#include <QDialog>
#include <QHeaderView>
#include <QMenu>
#include <QStatusBar>

#include <set>

namespace fluewright::test {

/// Texts as people meet them: shown, in tips, in tables and lists, told to a screen reader.
inline void gather_texts(const QWidget& top, std::set<QString>& texts) {
  const auto take = [&texts](const QString& text) {
    if (!text.isEmpty()) texts.insert(text);
  };
  QList<const QWidget*> widgets{&top};
  for (const auto* widget : top.findChildren<QWidget*>()) widgets << widget;
  for (const QWidget* widget : widgets) {
    take(widget->toolTip());
    take(widget->accessibleName());
    take(widget->accessibleDescription());
    take(widget->windowTitle());
    if (const auto* label = qobject_cast<const QLabel*>(widget)) take(label->text());
    if (const auto* button = qobject_cast<const QAbstractButton*>(widget)) take(button->text());
    if (const auto* bar = qobject_cast<const QTabBar*>(widget)) {
      for (int i = 0; i < bar->count(); ++i) take(bar->tabText(i));
      for (int i = 0; i < bar->count(); ++i) take(bar->tabToolTip(i));
    }
    if (const auto* box = qobject_cast<const QComboBox*>(widget)) {
      for (int i = 0; i < box->count(); ++i) take(box->itemText(i));
    }
    if (const auto* line = qobject_cast<const QLineEdit*>(widget)) take(line->placeholderText());
    if (const auto* status = qobject_cast<const QStatusBar*>(widget)) take(status->currentMessage());
    if (const auto* view = qobject_cast<const QAbstractItemView*>(widget); view != nullptr && view->model() != nullptr && qobject_cast<const QHeaderView*>(widget) == nullptr) {
      const auto& model = *view->model();
      const bool working = view->objectName() == QLatin1String("working_table");
      for (int column = 0; column < model.columnCount(); ++column) {
        if (working && column != 1) continue;  // symbols, relations and printed sources are the same everywhere
        take(model.headerData(column, Qt::Horizontal).toString());
        for (int row = 0; row < model.rowCount(); ++row) take(model.index(row, column).data().toString());
      }
      for (int row = 0; row < model.rowCount(); ++row) take(model.headerData(row, Qt::Vertical).toString());
    }
  }
  for (const auto* action : top.findChildren<QAction*>()) take(action->text());
}

struct ForeignDesk : Speaks, Desk {
  explicit ForeignDesk(const QString& code) : Speaks(code), Desk(spoken_library()) {}

  using Look = std::function<void(const QWidget&)>;

  /// A window that waits for an answer is looked at and sent away.
  void ask(const std::function<void()>& open, const Look& look) {
    bool seen = false;
    when_asked<QDialog>([&](QDialog& dialog) {
      QTest::qWait(20);
      look(dialog);
      seen = true;
      dialog.reject();
    });
    open();
    EXPECT_TRUE(seen);
  }
  void look_at_windows_beside(const Look& look) {
    QTest::qWait(30);
    for (QWidget* beside : QApplication::topLevelWidgets()) {
      if (beside == &window || !beside->isVisible() || qobject_cast<QMenu*>(beside) != nullptr) continue;
      look(*beside);
      beside->close();
    }
    QTest::qWait(5);
  }

  /// Everything the program shows, one after the other.
  void walk(const Look& look) {
    look(window);  // the start page
    for (const char* demo : {"bench_bypass_150", "kept_by_a_fan"}) {
      open(QString::fromLatin1(demo));
      QTest::qWait(30);
      std::set<std::string> types;
      tab(EditorTabs::piece);
      for (const Piece& piece : document.design().pieces) {
        if (!types.insert(piece.type).second) continue;
        document.select(piece.id);
        QTest::qWait(5);
        look(window);
      }
      for (const auto page : {EditorTabs::site, EditorTabs::house, EditorTabs::fire}) {
        tab(page);
        QTest::qWait(5);
        look(window);
      }
    }
    for (const auto page : {MainWindow::Advice::findings, MainWindow::Advice::limits, MainWindow::Advice::remedies}) {
      window.show_advice(page);
      QTest::qWait(60);
      look(window);
    }
    window.go_to(MainWindow::Place::burn);
    QTest::qWait(60);
    look(window);
    window.go_to(MainWindow::Place::plot);
    window.show_working(HeadlineNumber::excess_air);
    look_at_windows_beside(look);
    show_help_card(document, &window);
    look_at_windows_beside(look);
    show_variants(document, &window);
    look_at_windows_beside(look);
    ask([&] { show_about(&window); }, look);
    ask([&] { show_shortcuts(&window, *window.menuBar()); }, look);
    ask([&] { ask_for_house(document, &window); }, look);
    {
      StarterDialog starter(document.shared_library(), document.units(), &window);
      ask([&] { starter.exec(); }, look);
    }
    PaperDialog paper(document, QStringLiteral("x"), &window);
    paper.show();
    look_at_windows_beside(look);
    document.undo_stack().clear();
  }

  std::set<QString> all_texts() {
    std::set<QString> texts;
    walk([&texts](const QWidget& top) { gather_texts(top, texts); });
    return texts;
  }
};

}  // namespace fluewright::test
