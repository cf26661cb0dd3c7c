// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "app/desktop/theme/theme.hpp"

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
  void build_piece(QMenuBar& bar);
  void build_variants(QMenuBar& bar);
  void build_view(QMenuBar& bar);
  void build_languages(QMenu& menu);
  void build_help(QMenuBar& bar);
  void build_grid_menu();
  void follow_document();
  void follow_selection();
  void set_units(UnitSystem units);
  void take_sheet(Sheet sheet);

  MainWindow& window_;
  Document& document_;
  FileRoom& files_;
  Memory& memory_;
  QMenu* recent_ = nullptr;
  QMenu* grid_ = nullptr;
  QActionGroup* units_group_ = nullptr;
  QActionGroup* tint_group_ = nullptr;
  QAction* save_ = nullptr;
  QAction* earlier_ = nullptr;
  QList<QAction*> with_selection_;  ///< that need a selected piece
  QList<QAction*> with_others_;     ///< that need a second variant
  UnitSystem grid_units_ = UnitSystem::metric;
};

}  // namespace fluewright
