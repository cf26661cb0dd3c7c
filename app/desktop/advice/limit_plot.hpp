// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/limit_report.hpp"

#include <QWidget>

#include <memory>

namespace fluewright {

/// Margin against one value of the design: the curve, the wanted margin across it, the value drawn today, and the limit.
/// Where points come that are worked out in time, the quick curve stays behind them, faint.
class LimitPlot : public QWidget {
  Q_OBJECT

 public:
  explicit LimitPlot(QWidget* parent = nullptr);
  ~LimitPlot() override;

  void show_answer(LimitAnswer answer, UnitSystem units);
  /// Points worked out in time so far, by rising x; the answer stays.
  void show_refined(std::vector<LimitPoint> points);
  void show_nothing(const QString& words);
  [[nodiscard]] const std::optional<LimitAnswer>& answer() const;
  [[nodiscard]] const std::vector<LimitPoint>& refined() const;

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Drawing;
  std::unique_ptr<Drawing> drawing_;
};

}  // namespace fluewright
