// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_plan.hpp"

#include <QString>
#include <QUndoCommand>

namespace fluewright {

class BurnBook;

/// One step of the time line's undo stack: the plan before and after. Steps of one go become one.
class PlanStep : public QUndoCommand {
 public:
  PlanStep(BurnBook& book, BurnPlan before, BurnPlan after, const QString& text, const QString& merge_key);

  void undo() override;
  void redo() override;
  [[nodiscard]] int id() const override;
  bool mergeWith(const QUndoCommand* younger) override;

 private:
  BurnBook& book_;
  BurnPlan before_;
  BurnPlan after_;
  QString merge_key_;
};

}  // namespace fluewright
