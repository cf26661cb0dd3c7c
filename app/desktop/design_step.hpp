// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/design_file.hpp"

#include <QString>
#include <QUndoCommand>

namespace fluewright {

class Document;

/// One step of the undo stack: a variant's design before and after an edit. Designs are plain values, so every kind of edit
/// is the same step, and undoing is exact by construction.
class DesignStep : public QUndoCommand {
 public:
  DesignStep(Document& document, std::size_t place, Design before, Design after, const QString& text, const QString& merge_key);

  void undo() override;
  void redo() override;
  [[nodiscard]] int id() const override;
  /// Takes the younger step in if both carry the same key. Vanishes if the two cancel out.
  bool mergeWith(const QUndoCommand* younger) override;

 private:
  Document& document_;
  std::size_t place_;
  Design before_;
  Design after_;
  QString merge_key_;
};

/// A step that changes the variants themselves: the whole file before and after.
class VariantStep : public QUndoCommand {
 public:
  VariantStep(Document& document, DesignDocument before, DesignDocument after, const QString& text);

  void undo() override;
  void redo() override;

 private:
  Document& document_;
  DesignDocument before_;
  DesignDocument after_;
};

}  // namespace fluewright
