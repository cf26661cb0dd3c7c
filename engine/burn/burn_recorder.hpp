// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_record.hpp"
#include "engine/burn/burn_run.hpp"
#include "engine/burn/burning_flue.hpp"
#include "engine/burn/timeline.hpp"

#include <optional>
#include <vector>

namespace fluewright::kernel {

/// Turns the stepper's states into rows and sums: the way out of the kernel's plain numbers.
class BurnRecorder {
 public:
  BurnRecorder(BurnRecord& record, const BurningFlue& flue, const Design& design, const BurnOptions& options,
               const Timeline& timeline);

  /// Where the air for the fire comes in from the room: what of it stands open, and how high.
  void set_mouth(Area open, Length height);

  /// A damper was moved: the same unknowns under other equations.
  void use(const BurnEquations& equations);

  /// Something was switched; the stepper's rates are those just after.
  void enter(const Interval& interval, const BurnStepper& stepper);
  /// After every accepted step.
  void add(const BurnStepper& stepper);
  void finish(const BurnStepper& stepper);
  /// Who watches has seen enough.
  [[nodiscard]] bool seen_enough() const { return seen_enough_; }

 private:
  [[nodiscard]] BurnRow row_of(const BurnStepper& stepper);
  [[nodiscard]] double margin_at(const BurnStepper& stepper);
  void keep_nodes(const Cell& cell);
  void set_drafts(BurnRow& row) const;
  [[nodiscard]] bool fan_runs() const;
  void count(const BurnRow& row, double seconds);

  BurnRecord* record_;
  const BurnEquations* equations_;
  std::optional<BurnEquations> probe_;  ///< to ask for the balance at another flow
  const Design* design_;
  const BurnOptions* options_;
  Interval interval_;
  double aids_end_;
  double design_flow_;         ///< reaching the fire [kg/s]
  Area mouth_open_{};          ///< zero: the fire's air does not come from the room
  Length mouth_height_{};
  std::vector<double> begun_;
  std::vector<double> trial_;
  std::vector<double> rate_;
  bool seen_enough_ = false;
  double last_row_ = -1.0;
  double last_step_ = 0.0;
  std::optional<double> holds_from_;
  bool least_margin_seen_ = false;
  std::optional<double> lit_;
};

}  // namespace fluewright::kernel
