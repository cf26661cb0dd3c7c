// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"

#include <QString>
#include <QUndoCommand>

namespace fluewright {

class Document;

/// One step of the undo stack: the design before and after an edit. Designs are plain values, so every kind of edit
/// is the same step, and undoing is exact by construction.
class DesignStep : public QUndoCommand {
 public:
  DesignStep(Document& document, Design before, Design after, const QString& text, const QString& merge_key);

  void undo() override;
  void redo() override;
  [[nodiscard]] int id() const override;
  /// Takes the younger step in if both carry the same key. Vanishes if the two cancel out.
  bool mergeWith(const QUndoCommand* younger) override;

 private:
  Document& document_;
  Design before_;
  Design after_;
  QString merge_key_;
};

}  // namespace fluewright
