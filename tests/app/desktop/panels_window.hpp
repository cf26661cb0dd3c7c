// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The whole window for tests, with its own settings, and answers to its questions.

#include "app/desktop/answer/findings_list.hpp"
#include "app/desktop/answer/headline.hpp"
#include "app/desktop/editors/editor_tabs.hpp"
#include "app/desktop/plot/line_plot.hpp"
#include "app/desktop/plot/plot_panel.hpp"
#include "app/desktop/shell/file_room.hpp"
#include "app/desktop/shell/main_window.hpp"
#include "app/desktop/shell/memory.hpp"
#include "app/desktop/start/start_page.hpp"
#include "app/shared/words.hpp"
#include "panels_support.hpp"

#include <QComboBox>
#include <QFile>
#include <QFileDialog>
#include <QLabel>
#include <QListWidget>
#include <QMenuBar>
#include <QMessageBox>
#include <QPushButton>
#include <QTabBar>
#include <QTemporaryDir>
#include <QTimer>

#include <functional>
#include <memory>
#include <utility>

namespace fluewright::test {

struct Desk {
  explicit Desk(std::shared_ptr<const Library> library = shipped_library())
      : memory(folder.filePath("settings.ini")), document(std::move(library)), window(document, memory) {
    apply_theme(*qApp, fluewright::Sheet::day);
    window.show();
    window.activateWindow();
    EXPECT_TRUE(QTest::qWaitForWindowActive(&window));
  }

  template <class Widget>
  Widget* find(const QString& name) {
    auto* found = window.findChild<Widget*>(name);
    EXPECT_NE(found, nullptr) << name.toStdString();
    return found;
  }
  void open(const QString& demo) { ASSERT_TRUE(window.files().open_demo(demo)); }
  QString first_demo() const { return QString::fromStdString(shipped_demos().front().id); }
  QString figure(const QString& name) { return find<Headline>("headline_" + name)->figure(); }
  QString margin() { return figure("margin"); }
  void tab(EditorTabs::Page page) { find<EditorTabs>("editors")->setCurrentIndex(page); }
  QString saved_path(const QString& name) const { return folder.filePath(name); }

  QTemporaryDir folder;
  Memory memory;
  Document document;
  MainWindow window;
};

/// Answers the next modal dialog as soon as it is up.
template <class Dialog>
void when_asked(std::function<void(Dialog&)> answer) {
  auto* timer = new QTimer(qApp);
  timer->setInterval(10);
  QObject::connect(timer, &QTimer::timeout, timer, [timer, answer = std::move(answer)] {
    auto* dialog = qobject_cast<Dialog*>(QApplication::activeModalWidget());
    if (!dialog) return;
    timer->stop();
    timer->deleteLater();
    answer(*dialog);
  });
  timer->start();
}

inline void when_asked_press(QMessageBox::StandardButton button, QString* text = nullptr) {
  when_asked<QMessageBox>([button, text](QMessageBox& box) {
    if (text) *text = box.text() + QLatin1Char('\n') + box.informativeText();
    ASSERT_NE(box.button(button), nullptr);
    QTest::mouseClick(box.button(button), Qt::LeftButton);
  });
}

}  // namespace fluewright::test
