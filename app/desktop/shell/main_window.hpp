// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "engine/working/explain.hpp"

#include <QMainWindow>

class QSplitter;
class QStackedWidget;

namespace fluewright {

class Actions;
class AnswerPanel;
class DeskWidget;
class EditorTabs;
class FileRoom;
class Memory;
class PlotPanel;
class Rack;
class StartPage;
class StartsWindow;
class WorkingPanel;

/// The one window: rack, drawing desk and plot to the left, answer and editors to the right; or the start page.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  MainWindow(Document& document, Memory& memory, QWidget* parent = nullptr);
  ~MainWindow() override;

  [[nodiscard]] FileRoom& files() { return *files_; }

  void show_start();
  void show_work();
  void zoom_to_fit();
  /// Nothing: the working of the selected piece.
  void show_working(std::optional<HeadlineNumber> number);
  /// Will it start? The map, or the starting aids.
  void show_start_map();
  void show_aids();
  enum class Place { rack, desk, answer, editors, plot };
  void go_to(Place place);
  /// What is being typed into a field is asked for, as if one had left the field.
  void settle_typing();

 protected:
  void closeEvent(QCloseEvent* event) override;

 private:
  void build_work();
  void build_start();
  void restore_window();
  void restore_splitters();
  void show_title();
  void show_hint();
  void say(const QString& sentence);

  Document& document_;
  Memory& memory_;
  FileRoom* files_;
  QStackedWidget* pages_;
  StartPage* start_;
  QWidget* work_ = nullptr;
  Rack* rack_ = nullptr;
  DeskWidget* desk_ = nullptr;
  PlotPanel* plot_ = nullptr;
  AnswerPanel* answer_ = nullptr;
  EditorTabs* editors_ = nullptr;
  WorkingPanel* working_ = nullptr;
  StartsWindow* starts_ = nullptr;
  bool laid_out_ = false;
  QSplitter* across_ = nullptr;   ///< left part | right column
  QSplitter* drawing_ = nullptr;  ///< rack | desk
  QSplitter* left_ = nullptr;     ///< drawing over plot
  QSplitter* right_ = nullptr;    ///< answer over editors
};

}  // namespace fluewright
