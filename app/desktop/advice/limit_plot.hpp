// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/limit_report.hpp"

#include <QWidget>

#include <memory>

namespace fluewright {

/// Margin against one value of the design: the curve, the wanted margin across it, the value drawn today, and the limit.
class LimitPlot : public QWidget {
  Q_OBJECT

 public:
  explicit LimitPlot(QWidget* parent = nullptr);
  ~LimitPlot() override;

  void show_answer(LimitAnswer answer, UnitSystem units);
  void show_nothing(const QString& words);
  [[nodiscard]] const std::optional<LimitAnswer>& answer() const;

 protected:
  void changeEvent(QEvent* event) override;

 private:
  struct Drawing;
  std::unique_ptr<Drawing> drawing_;
};

}  // namespace fluewright
