// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/moment.hpp"
#include "app/shared/design_file.hpp"
#include "app/shared/units.hpp"
#include "engine/solve/assessment.hpp"

#include <QObject>
#include <QString>
#include <QUndoGroup>
#include <QUndoStack>

#include <memory>
#include <optional>

namespace fluewright {

/// The hub of the desktop program: the design, its answer, its undo stack, and what is selected and pointed at.
/// Views read it and listen; only its own verbs change it. Views never talk to one another.
class Document : public QObject {
  Q_OBJECT

 public:
  explicit Document(std::shared_ptr<const Library> library, QObject* parent = nullptr);

  [[nodiscard]] const Library& library() const { return *library_; }
  /// What is on the desk now: the preview while a gesture lasts, else the design.
  [[nodiscard]] const Design& design() const;
  /// The answer to exactly that design.
  [[nodiscard]] const Assessment& assessment() const { return assessment_; }
  [[nodiscard]] const std::vector<PieceGeometry>& geometries() const { return geometries_; }

  [[nodiscard]] QUndoStack& undo_stack() { return undo_stack_; }
  /// The design's undo stack and those of views with something of their own to undo; the one worked with is active.
  [[nodiscard]] QUndoGroup& undo_group() { return undo_group_; }
  [[nodiscard]] bool read_only() const { return file_.read_only; }

  /// One undoable step to `changed`. Nothing happens if nothing changed. Steps with the same non-empty merge key that
  /// follow one another become one.
  void commit(Design changed, const QString& text, const QString& merge_key = {});
  /// Show a changed design with its numbers without an undo step: what a drag does at every mouse move.
  void preview(Design changed);
  /// Make the preview a step, or forget it.
  void commit_preview(const QString& text);
  void cancel_preview();
  [[nodiscard]] bool in_preview() const { return preview_.has_value(); }

  // Selection and pointing. Pointing is where the mouse is, on the desk or on the plot.
  [[nodiscard]] const PieceId& selected() const { return selected_; }
  void select(const PieceId& piece);
  struct Pointed {
    PieceId piece;              ///< empty: nothing
    std::optional<Length> s;    ///< along the path, where known
  };
  [[nodiscard]] const Pointed& pointed() const { return pointed_; }
  void point_at(Pointed pointed);

  // A moment of a burn that belongs to this very design; the drawing shows it instead of where the fire settles.
  [[nodiscard]] const std::optional<Moment>& moment() const { return moment_; }
  void show_moment(std::optional<Moment> moment);

  // Units and drawing aids that every view shares.
  [[nodiscard]] UnitSystem units() const { return units_; }
  void set_units(UnitSystem units);
  [[nodiscard]] Length grid_step() const { return grid_step_; }
  void set_grid_step(Length step);
  enum class Tint { gas_temperature, gauge_pressure };
  [[nodiscard]] Tint tint() const { return tint_; }
  void set_tint(Tint tint);

  // The file.
  [[nodiscard]] const QString& path() const { return path_; }
  [[nodiscard]] bool modified() const { return !undo_stack_.isClean(); }
  void start_new();
  void adopt(DesignDocument file, const QString& path);  ///< path empty: a demo or unsaved
  /// Nothing on success.
  [[nodiscard]] std::optional<FileFault> save_to(const QString& path);

 signals:
  void changed();            ///< design and assessment are new (also for previews)
  void selection_changed();
  void pointed_changed();
  void moment_changed();
  void adopted();            ///< another design altogether
  void units_changed();      ///< units, grid step or tint
  void file_changed();       ///< path, read-only or modified state

 private:
  friend class DesignStep;
  void become(const Design& design);
  void refresh();  ///< geometry and answer of what is shown, then changed()

  std::shared_ptr<const Library> library_;
  DesignDocument file_;
  std::optional<Design> preview_;
  Assessment assessment_;
  std::vector<PieceGeometry> geometries_;
  QUndoGroup undo_group_;
  QUndoStack undo_stack_;
  PieceId selected_;
  Pointed pointed_;
  std::optional<Moment> moment_;
  UnitSystem units_ = UnitSystem::metric;
  Length grid_step_ = 25.0 * millimetre;
  Tint tint_ = Tint::gas_temperature;
  QString path_;
};

}  // namespace fluewright
