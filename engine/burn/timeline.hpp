// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_equations.hpp"
#include "engine/burn/burn_plan.hpp"

#include <utility>
#include <vector>

namespace fluewright::kernel {

/// A plan cut at every moment at which something is switched or the outdoor course bends. Needs a plan without faults.
class Timeline {
 public:
  Timeline(const BurnPlan& plan, const Design& design);

  [[nodiscard]] const std::vector<Interval>& intervals() const { return intervals_; }
  /// Coldest and warmest outdoors [K].
  [[nodiscard]] std::pair<double, double> outdoor_range() const;
  /// When the last aid has ended: priming fire or fan [s].
  [[nodiscard]] double aids_end() const { return aids_end_; }

 private:
  void set_cuts(const BurnPlan& plan);
  void fill(Interval& interval, const BurnPlan& plan, const Design& design) const;

  std::vector<double> cuts_;
  std::vector<Interval> intervals_;
  double aids_end_ = 0.0;
};

}  // namespace fluewright::kernel
