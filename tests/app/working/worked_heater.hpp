// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// An answer for a heater that is written down stretch by stretch, so that the working's tests need no drawing.

#include "engine/solve/fans.hpp"
#include "engine/working/explain.hpp"
#include "tests/engine/solve/hand_built_heater.hpp"

#include <memory>

namespace fluewright::test {

struct WorkedHeater {
  HandBuiltHeater heater;
  Design design;
  Library library;
  Assessment answer;

  [[nodiscard]] const Branch& branch() const { return answer.path.network.branches.front(); }
  /// The row of a stretch's slice, counted from its first.
  [[nodiscard]] std::size_t row(const Retrace& run, std::size_t stretch, std::size_t nth) const {
    for (std::size_t i = 0; i < run.visits.size(); ++i) {
      if (run.path.slices[run.visits[i].slice].stretch == stretch) return i + nth;
    }
    ADD_FAILURE() << "no slice of stretch " << stretch;
    return 0;
  }
};

/// Everything the assessment would find for a drawing that makes this heater's branch.
inline std::unique_ptr<WorkedHeater> worked(const HandBuiltHeater& heater, const Design& day) {
  auto w = std::make_unique<WorkedHeater>();
  w->heater = heater;
  w->design = day;
  w->library.woods.push_back({"mixed_hardwood", "mixed hardwood", usual_wood().analysis, {"invented", Standing::chosen}});
  w->design.pieces.resize(8);
  w->answer.path.network.branches.push_back(w->heater.branch());
  Branch& branch = w->answer.path.network.branches.front();
  for (std::size_t i = 0; i < branch.stretches.size(); ++i) {
    branch.stretches[i].piece = i;
    w->design.pieces[i].id = "p" + std::to_string(i + 1);
  }
  const Surround surround = surround_of(w->design);
  const WoodFuel fuel{usual_wood().analysis, day.fire.moisture, day.fire.unburned_share};
  const SlicedPath fine = slice_branch(branch, AssessOptions{}.slice);
  const FlueNetwork still = with_fans_off(w->answer.path.network);
  const SlicedPath still_path = slice_branch(still.branches.front(), AssessOptions{}.slice);
  const SlicedPath coarse = slice_branch(branch, 500.0 * millimetre);
  DesignFlowQuestion question;
  question.path = &still_path;
  if (has_running_fan(w->answer.path.network)) question.with_fans = &fine;
  question.surround = &surround;
  question.fuel = &fuel;
  question.burn_rate = day.fire.burn_rate;
  question.excess_air_ratio = day.fire.wanted_excess_air;
  question.flow_safety = day.fire.flow_safety;
  question.wind_allowance = day.site.wind_allowance;
  w->answer.path.complete = true;
  for (const BenchAge age : bench_ages) {
    w->answer.design_flow.push_back(
        check_design_flow(question, age, age == BenchAge::charged ? &w->answer.profile : nullptr));
  }
  w->answer.standing_draft = standing_draft(fine, surround);
  const FreeRun free{fine, coarse, surround, fuel, day.fire.burn_rate};
  w->answer.operating_points = free.points();
  if (!w->answer.operating_points.empty() && w->answer.operating_points.front().forward) {
    w->answer.running = 0;
    w->answer.profile.clear();
    (void)free.march(w->answer.operating_points.front().flue_gas, &w->answer.profile);
    w->answer.profile_is_operating = true;
  }
  return w;
}

}  // namespace fluewright::test
