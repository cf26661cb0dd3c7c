// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/burn/burn_book.hpp"
#include "app/desktop/burn/plan_rows.hpp"

#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace fluewright {

class Field;
class PickField;
class PlanField;

/// Exact values of the selected entry of the time line, or of the run itself where none is selected.
class EventEditor : public QWidget {
  Q_OBJECT

 public:
  explicit EventEditor(BurnBook& book, QWidget* parent = nullptr);

 signals:
  void weather_wanted();

 private:
  void refresh();
  void build(const PlanSheet& sheet);
  void ask(const std::function<void(BurnPlan&)>& set, const QString& label, const QString& merge_key);

  BurnBook& book_;
  QLabel* heading_;
  QLabel* fault_;
  QVBoxLayout* column_;
  QWidget* rows_ = nullptr;
  QPushButton* remove_;
  QPushButton* weather_;
  std::string shape_;            ///< which rows stand there: they are made anew only when others are wanted
  std::vector<PickField*> picks_;
  std::vector<PlanField*> numbers_;
  PlanSheet sheet_;
};

}  // namespace fluewright
