// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/moment.hpp"
#include "app/shared/design_file.hpp"
#include "app/shared/units.hpp"
#include "engine/advice/findings.hpp"
#include "engine/burn/power_cut.hpp"

#include <QObject>
#include <QString>
#include <QUndoGroup>
#include <QUndoStack>

#include <memory>
#include <optional>
#include <vector>

namespace fluewright {

/// What is found out about a design after its live answer.
struct LateAnswer {
  std::vector<DesignFlow> young;             ///< the young ages followed in time; empty where they would not converge
  std::optional<PowerCutAnswer> power_cut;   ///< of the fans that the design runs; nothing where none does
  bool complete = false;                     ///< nothing more will come
};

/// The hub of the desktop program: the design, its answer, its undo stack, and what is selected and pointed at.
/// Views read it and listen; only its own verbs change it. Views never talk to one another.
class Document : public QObject {
  Q_OBJECT

 public:
  explicit Document(std::shared_ptr<const Library> library, QObject* parent = nullptr);

  [[nodiscard]] const Library& library() const { return *library_; }
  [[nodiscard]] const std::shared_ptr<const Library>& shared_library() const { return library_; }
  /// What is on the desk now: the preview while a gesture lasts, else the design.
  [[nodiscard]] const Design& design() const;
  /// What is saved: the design without a gesture's preview, and what its file brought along.
  [[nodiscard]] const DesignDocument& file() const { return file_; }
  /// The answer to exactly that design.
  [[nodiscard]] const Assessment& assessment() const { return assessment_; }
  /// The same with the young ages followed in time where that has come in, else the very same.
  [[nodiscard]] const Assessment& followed() const { return followed_ ? *followed_ : assessment_; }
  [[nodiscard]] const std::optional<LateAnswer>& late_answer() const { return late_; }
  /// Taken where `of` is still what the answer is for.
  void add_late_answer(const Design& of, LateAnswer late);
  /// design() under the conditions that are tried out: what the answer is for.
  [[nodiscard]] Design answered_design() const { return tried(design()); }
  /// Everything worth saying of it, most serious first.
  [[nodiscard]] const std::vector<Finding>& findings() const { return findings_; }
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
  /// Of several selected pieces the one that was selected last: the one an editor shows.
  [[nodiscard]] const PieceId& selected() const;
  [[nodiscard]] const std::vector<PieceId>& selection() const { return selection_; }
  [[nodiscard]] bool is_selected(const PieceId& piece) const;
  void select(const PieceId& piece);  ///< that one alone; empty: none
  void select_set(std::vector<PieceId> pieces);
  void toggle_selected(const PieceId& piece);
  /// Selects the piece and asks the views to bring it into sight.
  void show_piece(const PieceId& piece);
  struct Pointed {
    PieceId piece;              ///< empty: nothing
    std::optional<Length> s;    ///< along the path, where known
  };
  [[nodiscard]] const Pointed& pointed() const { return pointed_; }
  void point_at(Pointed pointed);

  // Variants: several ideas for one heater in one file. One of them lies on the desk; forking, naming and taking out are
  // undoable steps, changing over is not.
  [[nodiscard]] std::size_t variant_count() const { return file_.others.size() + 1; }
  [[nodiscard]] std::size_t active_variant() const { return file_.place; }
  [[nodiscard]] QString variant_name(std::size_t place) const;
  [[nodiscard]] const Design& variant(std::size_t place) const;
  /// The answer to a variant under the conditions that are being tried out.
  [[nodiscard]] const Assessment& variant_assessment(std::size_t place) const;
  void fork_variant(const QString& name);
  void name_variant(std::size_t place, const QString& name);
  void remove_variant(std::size_t place);  ///< never the last one
  void change_over(std::size_t place);

  /// Conditions tried out without touching the design: the answer is given for them until they are let go.
  struct Trial {
    Temperature outdoor_temperature = celsius(5.0);
    Temperature room_temperature = celsius(18.0);
    MassFlow burn_rate{};
    Ratio moisture = 0.18;
    VolumeFlow exhaust_flow{};
    friend bool operator==(const Trial&, const Trial&) = default;
  };
  [[nodiscard]] const std::optional<Trial>& trial() const { return trial_; }
  [[nodiscard]] Trial own_conditions() const;  ///< the design's, as a trial to begin with
  void try_out(const std::optional<Trial>& trial);
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
  enum class Came { from_its_file, unsaved };
  /// Path empty: a demo, or never saved. What comes unsaved (lost work, a path by questions) counts as changed.
  void adopt(DesignDocument file, const QString& path, Came came = Came::from_its_file);
  /// Nothing on success.
  [[nodiscard]] std::optional<FileFault> save_to(const QString& path);

 signals:
  void changed();            ///< design and assessment are new (also for previews)
  void late_answer_came();   ///< followed(), late_answer() and findings() are new, the design is the same
  void selection_changed();
  void piece_wanted();       ///< the selected piece should come into sight
  void variants_changed();   ///< their number, names, or which lies on the desk
  void pointed_changed();
  void moment_changed();
  void adopted();            ///< another design altogether
  void units_changed();      ///< units, grid step or tint
  void file_changed();       ///< path, read-only or modified state

 private:
  friend class DesignStep;
  friend class VariantStep;
  void become(std::size_t place, const Design& design);
  void become(const DesignDocument& file);
  void put_on_desk(std::size_t place);
  [[nodiscard]] Design tried(Design design) const;
  [[nodiscard]] Assessment answer(const Design& design) const;
  [[nodiscard]] std::size_t other(std::size_t place) const { return place < file_.place ? place : place - 1; }
  void refresh();  ///< geometry and answer of what is shown, then changed()

  std::shared_ptr<const Library> library_;
  DesignDocument file_;
  std::optional<Design> preview_;
  Assessment assessment_;
  std::optional<LateAnswer> late_;
  std::optional<Assessment> followed_;
  std::vector<Finding> findings_;
  std::vector<PieceGeometry> geometries_;
  QUndoGroup undo_group_;
  QUndoStack undo_stack_;
  std::vector<PieceId> selection_;
  std::optional<Trial> trial_;
  mutable std::vector<std::optional<Assessment>> other_answers_;
  Pointed pointed_;
  std::optional<Moment> moment_;
  UnitSystem units_ = UnitSystem::metric;
  Length grid_step_ = 25.0 * millimetre;
  Tint tint_ = Tint::gas_temperature;
  QString path_;
};

}  // namespace fluewright
