// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The window at work, for a test to kill: makes an edit every few hundredths of a second, says its number, and never
// leaves by itself.

#include "app/desktop/shell/file_room.hpp"
#include "app/desktop/shell/main_window.hpp"
#include "app/desktop/shell/memory.hpp"
#include "app/shared/library_reader.hpp"

#include <QApplication>
#include <QTimer>

#include <iostream>

int main(int argc, char** argv) {
  using namespace fluewright;
  if (argc != 2) return 2;
  QApplication application(argc, argv);
  Memory memory(QString::fromLocal8Bit(argv[1]));
  Document document(shipped_library());
  MainWindow window(document, memory);
  window.show();
  window.files().open_demo(QString::fromStdString(shipped_demos().front().id));
  int number = 0;
  QTimer timer;
  QObject::connect(&timer, &QTimer::timeout, &window, [&] {
    Design design = document.design();
    design.title = "edit " + std::to_string(++number);
    document.commit(design, QStringLiteral("edit"));
    std::cout << number << std::endl;
  });
  constexpr int pause_milliseconds = 40;
  timer.start(pause_milliseconds);
  return QApplication::exec();
}
