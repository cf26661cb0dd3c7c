// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/plan_step.hpp"

#include "app/desktop/burn/burn_book.hpp"

#include <utility>

namespace fluewright {

namespace {
// QUndoStack tries to merge only steps of the same id other than -1; the key itself is compared in mergeWith().
constexpr int mergeable_id = 2;
}  // namespace

PlanStep::PlanStep(BurnBook& book, BurnPlan before, BurnPlan after, const QString& text, const QString& merge_key)
    : QUndoCommand(text), book_{book}, before_{std::move(before)}, after_{std::move(after)}, merge_key_{merge_key} {}

void PlanStep::undo() { book_.become(before_); }

void PlanStep::redo() { book_.become(after_); }

int PlanStep::id() const { return merge_key_.isEmpty() ? -1 : mergeable_id; }

bool PlanStep::mergeWith(const QUndoCommand* younger) {
  const auto* step = dynamic_cast<const PlanStep*>(younger);
  if (step == nullptr || step->merge_key_ != merge_key_) return false;
  after_ = step->after_;
  setObsolete(after_ == before_);
  return true;
}

}  // namespace fluewright
