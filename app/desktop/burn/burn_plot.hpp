// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/burn/burn_charts.hpp"
#include "app/desktop/burn/time_sight.hpp"

#include <QWidget>

#include <memory>

namespace fluewright {

/// Charts over time under one another, with one cursor through all of them. Their values at the cursor stand beside
/// them. The plotting library stays behind this wall.
class BurnPlot : public QWidget {
  Q_OBJECT

 public:
  explicit BurnPlot(TimeSight& sight, QWidget* parent = nullptr);
  ~BurnPlot() override;

  /// `stale`: of what was there before the last edit; drawn grey.
  void show_picture(BurnPicture picture, bool stale);
  void set_cursor(Time at);
  /// What stands in the middle while there is nothing to draw.
  void set_empty_words(const QString& words);

  [[nodiscard]] const BurnPicture& picture() const;
  [[nodiscard]] bool stale() const;
  /// What stands beside a chart now: "3.4 Pa to spare".
  [[nodiscard]] QStringList readout(std::size_t chart) const;
  [[nodiscard]] QPoint place_of(Time at) const;

 signals:
  void time_chosen(Time at);

 protected:
  bool eventFilter(QObject* watched, QEvent* event) override;
  void changeEvent(QEvent* event) override;

 private:
  struct Drawing;
  std::unique_ptr<Drawing> drawing_;
};

}  // namespace fluewright
