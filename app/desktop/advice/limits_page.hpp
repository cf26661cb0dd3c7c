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
class QPushButton;

namespace fluewright {

class Field;
class LimitPlot;

/// How far the design can go: one limit at a time, as a sentence and as the curve that led there. The curve comes at once
/// on coarse slices and is drawn anew when the whole calculation is through; then its points are worked out in time, one
/// after another, until the limit itself is.
class LimitsPage : public QWidget {
  Q_OBJECT

 public:
  explicit LimitsPage(Document& document, QWidget* parent = nullptr);

  void choose(LimitKind kind);
  [[nodiscard]] bool done() const { return !task_->runs() && !soon_.isActive(); }
  /// The limit by the quick estimate is there; points in time may still come.
  [[nodiscard]] bool has_estimate() const { return answer_.has_value() && stage_ != Stage::quick && !soon_.isActive(); }

 protected:
  void showEvent(QShowEvent* event) override;
  void hideEvent(QHideEvent* event) override;

 private:
  void follow();
  void search();
  /// How far the work is.
  enum class Stage { quick, estimated, refining, stopped, refined };
  void tell(const LimitAnswer& answer, Stage stage);
  void take(const LimitPoint& point);
  void finish(const LimitAnswer& refined);
  void stop();
  void say_state();
  [[nodiscard]] LimitKind kind() const;

  /// What the page is about: another answer is wanted only where this changes.
  struct Question {
    LimitKind kind{};
    Pressure wanted{};
    Design design;
    friend bool operator==(const Question&, const Question&) = default;
  };
  [[nodiscard]] Question question() const { return {kind(), wanted_, document_.design()}; }

  Document& document_;
  std::optional<Question> answered_;  ///< fully, by steps in time
  Pressure wanted_ = marginal_below;
  std::optional<LimitAnswer> answer_;
  std::optional<LimitAnswer> refined_answer_;
  std::vector<LimitPoint> refined_;  ///< worked out in time so far, by rising x
  Stage stage_ = Stage::quick;
  bool in_series_ = true;
  QTimer soon_;
  QComboBox* kind_;
  Field* margin_;
  QLabel* words_;
  QLabel* state_;
  QPushButton* stop_;
  LimitPlot* plot_;
  BackgroundTask* task_;
};

}  // namespace fluewright
