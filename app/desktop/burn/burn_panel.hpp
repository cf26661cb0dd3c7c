// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/burn/burn_book.hpp"
#include "app/desktop/burn/time_sight.hpp"

#include <QWidget>

class QLabel;

namespace fluewright {

class BurnPlot;
class BurnStrip;
class EventEditor;
class LaneBar;
class SlicePicture;

/// The burn over time: its time line, the exact values of the picked event, the charts and the cut through the bench.
/// It computes only while it is in sight.
class BurnPanel : public QWidget {
  Q_OBJECT

 public:
  explicit BurnPanel(Document& document, QWidget* parent = nullptr);
  ~BurnPanel() override;

  [[nodiscard]] BurnBook& book() { return book_; }
  [[nodiscard]] LaneBar& bar() { return *bar_; }
  [[nodiscard]] BurnPlot& plot() { return *plot_; }

  /// Each gives true if it went through; else the reasons stand in the panel.
  bool open_plan(const QString& path);
  bool save_plan(const QString& path);
  bool open_weather(const QString& path);

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void build();
  void show_run();
  void show_warning();
  void refuse(const QString& what, const QStringList& why);
  void choose_plan();
  void choose_place();
  void choose_weather();
  void follow_focus(const QWidget* now);

  BurnBook book_;
  TimeSight sight_;
  BurnStrip* strip_;
  QLabel* warning_;
  QLabel* refusal_;
  LaneBar* bar_;
  BurnPlot* plot_;
  EventEditor* editor_;
  SlicePicture* slice_;
  const BurnRecord* drawn_ = nullptr;  ///< the record the plot shows, in which units, and whether as old
  UnitSystem drawn_units_ = UnitSystem::metric;
  bool drawn_stale_ = false;
};

}  // namespace fluewright
