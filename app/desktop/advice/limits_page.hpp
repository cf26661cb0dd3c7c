// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/advice/background_task.hpp"
#include "app/desktop/document.hpp"
#include "app/shared/limit_search.hpp"

#include <QTimer>
#include <QWidget>

class QComboBox;
class QLabel;

namespace fluewright {

class Field;
class LimitPlot;

/// How far the design can go: one limit at a time, as a sentence and as the curve that led there. The curve comes at once
/// on coarse slices and is drawn anew when the whole calculation is through.
class LimitsPage : public QWidget {
  Q_OBJECT

 public:
  explicit LimitsPage(Document& document, QWidget* parent = nullptr);

  void choose(LimitKind kind);
  [[nodiscard]] bool done() const { return !task_->runs() && !soon_.isActive(); }

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void follow();
  void search();
  void tell(const std::optional<LimitAnswer>& answer, bool final);
  [[nodiscard]] LimitKind kind() const;

  Document& document_;
  Pressure wanted_ = marginal_below;
  std::optional<LimitAnswer> answer_;
  bool final_ = false;
  QTimer soon_;
  QComboBox* kind_;
  Field* margin_;
  QLabel* words_;
  QLabel* state_;
  LimitPlot* plot_;
  BackgroundTask* task_;
};

}  // namespace fluewright
