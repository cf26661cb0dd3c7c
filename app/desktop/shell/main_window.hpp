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
class AdvicePages;
class AnswerPanel;
class BurnPanel;
class DeskWidget;
class EditorTabs;
class FileRoom;
class Memory;
class PlotPanel;
class Rack;
class StartPage;
class StartsWindow;
class Tour;
class WorkingPanel;

/// The one window: rack, drawing desk and plot to the left, answer and editors to the right; or the start page.
class MainWindow : public QMainWindow {
  Q_OBJECT

 public:
  MainWindow(Document& document, Memory& memory, QWidget* parent = nullptr);
  ~MainWindow() override;

  [[nodiscard]] FileRoom& files() { return *files_; }
  [[nodiscard]] DeskWidget& desk() { return *desk_; }

  void show_start();
  void show_work();
  void zoom_to_fit();
  /// Three gestures on a living example; nothing if what is on the desk may not be left.
  void show_tour();
  /// The same at the very first start.
  void welcome();
  /// Nothing: the working of the selected piece.
  void show_working(std::optional<HeadlineNumber> number);
  enum class Advice { findings, remedies, limits };
  void show_advice(Advice page);
  /// Will it start? The map, or the starting aids.
  void show_start_map();
  void show_aids();
  enum class Place { rack, desk, answer, editors, plot, burn };
  void go_to(Place place);
  /// What is being typed into a field is asked for, as if one had left the field.
  void settle_typing();

  /// Into the status line.
  void say(const QString& sentence);

 protected:
  void closeEvent(QCloseEvent* event) override;

 private:
  void build_work();
  void build_start();
  void restore_window();
  void restore_splitters();
  void share_height();
  void show_title();
  void show_hint();
  void end_tour();
  void restore_choices();
  void keep_choices();

  Document& document_;
  Memory& memory_;
  FileRoom* files_;
  QStackedWidget* pages_;
  StartPage* start_;
  QWidget* work_ = nullptr;
  Rack* rack_ = nullptr;
  DeskWidget* desk_ = nullptr;
  PlotPanel* plot_ = nullptr;
  AdvicePages* advice_ = nullptr;
  BurnPanel* burn_ = nullptr;
  int plot_height_ = 0;  ///< of the plot, while the burn in its place is taller
  AnswerPanel* answer_ = nullptr;
  EditorTabs* editors_ = nullptr;
  WorkingPanel* working_ = nullptr;
  Tour* tour_ = nullptr;
  StartsWindow* starts_ = nullptr;
  bool laid_out_ = false;
  QSplitter* across_ = nullptr;   ///< left part | right column
  QSplitter* drawing_ = nullptr;  ///< rack | desk
  QSplitter* left_ = nullptr;     ///< drawing over plot
  QSplitter* right_ = nullptr;    ///< answer over editors
};

}  // namespace fluewright
