// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "app/shared/start_jobs.hpp"

#include <QTimer>
#include <QWidget>

#include <memory>
#include <optional>

class QLabel;
class QProgressBar;
class QPushButton;
class QTableView;
class QTabWidget;

namespace fluewright {

class AidsModel;
class MapModel;
class MapView;

/// Will it start? A window beside the drawing: the map, the same as a table, and the starting aids side by side. Above
/// them, where a fan runs, what a power cut does; nothing hides that. Runs go on in the background on all cores; an edit
/// begins them anew, once the hand has been off the drawing for a moment.
class StartsWindow : public QWidget {
  Q_OBJECT

 public:
  explicit StartsWindow(Document& document, QWidget* parent = nullptr);
  ~StartsWindow() override;

  enum class Page { map, table, aids };
  void show_page(Page page);

  /// Cells a side of the map; tests take few.
  void set_cells(std::size_t cells) { cells_ = cells; }
  [[nodiscard]] bool busy() const;

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;
  void changeEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  QWidget* build_map_page();
  QWidget* build_aids_page();
  QWidget* build_foot();
  void design_changed();
  void begin();
  void call_off();
  void look();
  void show_power_cut();
  void show_map();
  void show_aids();
  void show_progress();

  Document& document_;
  std::size_t cells_ = 41;
  Design design_;                       ///< what the jobs run on
  std::unique_ptr<PowerCutJob> cut_job_;
  std::unique_ptr<StartMapJob> map_job_;
  std::unique_ptr<AidsJob> aids_job_;
  std::size_t cells_shown_ = 0;
  std::size_t aids_shown_ = 0;
  bool cut_shown_ = false;
  QTimer glance_;   ///< while something runs
  QTimer settle_;   ///< after an edit
  QLabel* warning_ = nullptr;
  QTabWidget* pages_ = nullptr;
  MapView* view_ = nullptr;
  MapModel* table_model_ = nullptr;
  AidsModel* aids_model_ = nullptr;
  QTableView* table_ = nullptr;
  QTableView* aids_table_ = nullptr;
  QLabel* limit_ = nullptr;
  QLabel* pointed_ = nullptr;
  QLabel* assumptions_ = nullptr;
  QLabel* legend_ = nullptr;
  QLabel* reasons_ = nullptr;
  QProgressBar* progress_ = nullptr;
  QPushButton* button_ = nullptr;
};

}  // namespace fluewright
