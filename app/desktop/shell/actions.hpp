// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"

#include <QList>
#include <QObject>

class QAction;
class QActionGroup;
class QMenu;
class QMenuBar;

namespace fluewright {

class FileRoom;
class MainWindow;
class Memory;

/// The menus: every verb of the program by name and by key.
class Actions : public QObject {
  Q_OBJECT

 public:
  Actions(MainWindow& window, Document& document, FileRoom& files, Memory& memory);

  void show_recent();

 private:
  QAction* add(QMenu* menu, const QString& words, const QList<QKeySequence>& keys, std::function<void()> verb);
  void build_file(QMenuBar& bar);
  void build_paper(QMenu& menu);
  void build_edit(QMenuBar& bar);
  void build_view(QMenuBar& bar);
  void build_help(QMenuBar& bar);
  void build_grid_menu();
  void follow_document();
  void set_units(UnitSystem units);

  MainWindow& window_;
  Document& document_;
  FileRoom& files_;
  Memory& memory_;
  QMenu* recent_ = nullptr;
  QMenu* grid_ = nullptr;
  QActionGroup* units_group_ = nullptr;
  QActionGroup* tint_group_ = nullptr;
  QAction* save_ = nullptr;
  UnitSystem grid_units_ = UnitSystem::metric;
};

}  // namespace fluewright
