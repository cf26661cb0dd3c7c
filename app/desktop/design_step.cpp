// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/design_step.hpp"

#include "app/desktop/document.hpp"

#include <utility>

namespace fluewright {

namespace {
// QUndoStack tries to merge only steps of the same id other than -1; the key itself is compared in mergeWith().
constexpr int mergeable_id = 1;
}  // namespace

DesignStep::DesignStep(Document& document, std::size_t place, Design before, Design after, const QString& text,
                       const QString& merge_key)
    : QUndoCommand(text),
      document_{document},
      place_{place},
      before_{std::move(before)},
      after_{std::move(after)},
      merge_key_{merge_key} {}

void DesignStep::undo() { document_.become(place_, before_); }

void DesignStep::redo() { document_.become(place_, after_); }

int DesignStep::id() const { return merge_key_.isEmpty() ? -1 : mergeable_id; }

bool DesignStep::mergeWith(const QUndoCommand* younger) {
  const auto* step = dynamic_cast<const DesignStep*>(younger);
  if (step == nullptr || step->merge_key_ != merge_key_ || step->place_ != place_) return false;
  after_ = step->after_;
  setObsolete(after_ == before_);
  return true;
}

VariantStep::VariantStep(Document& document, DesignDocument before, DesignDocument after, const QString& text)
    : QUndoCommand(text), document_{document}, before_{std::move(before)}, after_{std::move(after)} {}

void VariantStep::undo() { document_.become(before_); }

void VariantStep::redo() { document_.become(after_); }

}  // namespace fluewright
