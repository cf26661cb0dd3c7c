// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/burn/burn_runner.hpp"
#include "app/desktop/burn/plan_events.hpp"
#include "app/desktop/document.hpp"

#include <QTimer>
#include <QUndoStack>

#include <memory>
#include <optional>
#include <vector>

namespace fluewright {

/// The hub of the burn: the time line and its undo stack, the kept run and whether it still holds, the moment that is
/// played. Its views read it and listen; only its verbs change it.
class BurnBook : public QObject {
  Q_OBJECT

 public:
  explicit BurnBook(Document& document, QObject* parent = nullptr);
  ~BurnBook() override;

  [[nodiscard]] Document& document() const { return document_; }

  // The time line.
  /// The preview while a gesture lasts, else the plan.
  [[nodiscard]] const BurnPlan& plan() const { return preview_ ? *preview_ : plan_; }
  [[nodiscard]] const std::vector<PlanFault>& faults() const { return faults_; }
  /// The sentence about the first fault of an entry; empty without one.
  [[nodiscard]] QString fault_of(const PlanRef& ref) const;
  [[nodiscard]] QUndoStack& undo_stack() { return undo_stack_; }
  void commit(BurnPlan plan, const QString& text, const QString& merge_key = {});
  void preview(BurnPlan plan);
  void commit_preview(const QString& text);
  void cancel_preview();
  [[nodiscard]] bool in_preview() const { return preview_.has_value(); }
  [[nodiscard]] const std::optional<PlanRef>& selected() const { return selected_; }
  void select(std::optional<PlanRef> ref);
  /// False where the design lacks the fan that the preset needs.
  bool take_preset(std::string_view id);
  /// Another plan, read from a file.
  void adopt(BurnPlan plan, const QString& text);

  // The run.
  /// Nothing is computed while nobody looks.
  void set_open(bool open);
  [[nodiscard]] bool is_open() const { return open_; }
  [[nodiscard]] const KeptBurn* kept() const { return kept_.get(); }
  /// The kept run belongs to a design or plan that is no longer there.
  [[nodiscard]] bool stale() const { return stale_; }
  [[nodiscard]] bool running() const { return runner_.running(); }
  [[nodiscard]] double progress() const { return runner_.progress(); }
  [[nodiscard]] bool called_off() const { return called_off_; }
  void compute();   ///< at once
  void call_off();
  /// How many runs have been begun: scrubbing begins none.
  [[nodiscard]] int runs_begun() const { return runs_begun_; }

  // The moment.
  [[nodiscard]] Time now() const { return now_; }
  void go_to(Time at);
  /// As many kept rows on or back.
  void step_rows(int rows);
  [[nodiscard]] bool playing() const { return player_.isActive(); }
  void play(bool on);
  /// Time of the run that passes in a second.
  [[nodiscard]] Time speed() const { return speed_; }
  void set_speed(Time per_second);
  /// Nothing while there is no run that holds.
  [[nodiscard]] std::optional<Moment> moment() const;

 signals:
  void plan_changed();       ///< or its faults
  void selection_changed();
  void run_changed();        ///< kept run, stale, running, called off
  void time_changed();
  void playing_changed();

 private:
  friend class PlanStep;
  void become(const BurnPlan& plan);
  void follow_document();
  void start_over();
  void check();
  void ask_for_run();
  void take(const std::shared_ptr<KeptBurn>& burn);
  void show_moment();
  void tick();
  [[nodiscard]] bool is_stale() const;

  Document& document_;
  BurnRunner runner_;
  BurnPlan plan_;
  std::optional<BurnPlan> preview_;
  std::string preset_;       ///< the plan is this preset, untouched: it follows the design
  std::vector<PlanFault> faults_;
  QUndoStack undo_stack_;
  std::optional<PlanRef> selected_;
  std::shared_ptr<KeptBurn> kept_;
  bool stale_ = false;
  bool open_ = false;
  bool called_off_ = false;
  int runs_begun_ = 0;
  QTimer pause_;             ///< edits that follow one another begin one run
  Time now_{};
  QTimer player_;
  Time speed_ = 5.0 * minute;
};

}  // namespace fluewright
