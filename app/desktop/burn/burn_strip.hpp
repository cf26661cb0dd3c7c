// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/burn/burn_book.hpp"

#include <QWidget>

class QLabel;
class QMenu;
class QProgressBar;
class QPushButton;
class QToolButton;

namespace fluewright {

class QuietCombo;

/// The line above the bar: playing, the time, presets and files, and how the run stands.
class BurnStrip : public QWidget {
  Q_OBJECT

 public:
  explicit BurnStrip(BurnBook& book, QWidget* parent = nullptr);

  /// What the hand is doing or could do; empty: how the run stands.
  void say(const QString& sentence);

 signals:
  void open_wanted();
  void save_wanted();
  void refused(const QString& sentence);

 private:
  void fill_presets();
  void show_time();
  void show_run();

  BurnBook& book_;
  QToolButton* play_;
  QuietCombo* speed_;
  QLabel* time_;
  QToolButton* plans_;
  QMenu* presets_;
  QLabel* state_;
  QProgressBar* progress_;
  QPushButton* call_off_;
  QPushButton* compute_;
  QString said_;
  QTimer beat_;
};

}  // namespace fluewright
