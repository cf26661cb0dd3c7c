// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_equations.hpp"
#include "engine/burn/implicit_step.hpp"

#include <array>
#include <cstddef>
#include <vector>

namespace fluewright {

/// How exactly a burn is followed in time: the error of one step, estimated by an embedded formula, stays below these.
struct BurnAccuracy {
  TemperatureDifference gas = 0.2 * kelvin;
  TemperatureDifference wall = 0.05 * kelvin;
  MassFlow flow = 4e-6 * kilogram_per_second;
  Ratio relative = 8e-4;  ///< of a temperature's excess over the room and of the flow, on top of the above

  [[nodiscard]] BurnAccuracy scaled(Ratio by) const { return {by * gas, by * wall, by * flow, by * relative}; }
};

namespace kernel {

/// Counts of what a run cost.
struct StepCounts {
  std::size_t accepted = 0;
  std::size_t rejected = 0;
  std::size_t rates = 0;
};

/// Steps the burn's equations through time: ROS34PW2, a linearly implicit method of four stages and third order, L-stable
/// and stiffly accurate, that keeps its order with an approximate Jacobian (films as they are); embedded second order.
/// Source: Rang & Angermann, BIT 45 (2005) 761.
class BurnStepper {
 public:
  BurnStepper(BurnEquations& equations, const BurnAccuracy& accuracy);

  void start(std::vector<double> state, double time);
  /// The same unknowns under other equations: a damper was moved.
  void use(BurnEquations& equations);
  /// What is switched changes: steps begin small again.
  void enter(const Interval& interval);
  /// One accepted step, not beyond `limit` and never longer than `longest`. False where even the shortest step fails.
  [[nodiscard]] bool step(double limit, double longest);

  [[nodiscard]] double moment() const { return time_; }
  [[nodiscard]] const std::vector<double>& state() const { return state_; }
  [[nodiscard]] const Lines& lines() const { return lines_; }
  [[nodiscard]] const Lines& line_rates() const { return line_rates_; }
  [[nodiscard]] const StepCounts& counts() const { return counts_; }
  /// The rates at the present state; cells_now() of the equations are then those of this state.
  void refresh();

 private:
  static constexpr std::size_t stages = 4;
  [[nodiscard]] double attempt(double h);
  [[nodiscard]] double error_of(const std::vector<double>& error) const;

  BurnEquations* equations_;
  ImplicitStep implicit_;
  BurnAccuracy accuracy_;
  Interval interval_;
  double time_ = 0.0;
  double next_ = 0.0;
  bool fresh_ = false;
  std::vector<double> state_;
  std::vector<double> rate_;
  Lines lines_{};
  Lines line_rates_{};
  Slopes slopes_;
  StepCounts counts_;
  std::array<std::vector<double>, stages> u_;
  std::vector<double> trial_;
  std::vector<double> error_;
  Lines trial_lines_{};
};

}  // namespace kernel
}  // namespace fluewright
