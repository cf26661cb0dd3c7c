// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/burn_run.hpp"

#include "engine/burn/burn_recorder.hpp"
#include "engine/burn/timeline.hpp"
#include "engine/layout/path.hpp"

#include <algorithm>
#include <memory>

namespace fluewright {
namespace {

bool burns(const FlueNetwork& network) {
  for (const Branch& branch : network.branches) {
    for (const Stretch& stretch : branch.stretches) {
      if (stretch.fire) return true;
    }
  }
  return false;
}

}  // namespace

BurnRecord run_burn(const Design& design, const Library& library, const BurnPlan& plan, const BurnOptions& options) {
  BurnRecord record;
  const TracedPath traced = trace_path(design, library);
  const WoodSpecies* wood = library.wood(design.fire.wood);
  if (!traced.complete || wood == nullptr || !burns(traced.network)) return record;
  if (!check_plan(plan, design, library).empty()) {
    record.end = BurnEnd::faulty_plan;
    return record;
  }
  const kernel::Timeline timeline{plan, design};
  const Surround surround = surround_of(design);
  const WoodFuel fuel{wood->analysis, design.fire.moisture, design.fire.unburned_share};
  const bool room_air = traced.network.branches.front().from.kind == EndKind::room_air;
  const kernel::GasPair gas{fuel, room_air ? surround.room_water : surround.outdoor_water};
  std::vector<SlicedPath> paths;
  std::vector<const SlicedPath*> views;
  for (const Branch& branch : traced.network.branches) paths.push_back(slice_branch(branch, options.grid.slice));
  for (const SlicedPath& path : paths) views.push_back(&path);
  const auto [coldest, warmest] = timeline.outdoor_range();
  const kernel::AirRange air{coldest, warmest, in_kelvin(surround.room), in(surround.absolute, pascal),
                             in(surround.wind, metre_per_second)};
  const kernel::BurnCells cells{views, gas, air, options.grid};
  kernel::BurnEquations equations{cells, gas, surround, design.site.outdoor_humidity};
  kernel::BurnStepper stepper{equations, options.accuracy};
  kernel::BurnRecorder recorder{record, equations, design, paths, options, timeline};

  stepper.start(equations.at_rest(timeline.intervals().front()), 0.0);
  const double length = in(plan.length, second);
  const double longest = in(options.longest_step, second);
  record.end = BurnEnd::done;
  for (const kernel::Interval& interval : timeline.intervals()) {
    stepper.enter(interval);
    stepper.refresh();
    recorder.enter(interval, stepper);
    while (record.end == BurnEnd::done && stepper.time() < interval.end) {
      if (!stepper.step(interval.end, longest)) {
        record.end = BurnEnd::diverged;
      } else {
        recorder.add(stepper);
        if (options.go_on && !options.go_on(stepper.time() / length)) record.end = BurnEnd::cancelled;
      }
    }
    if (record.end != BurnEnd::done) break;
  }
  recorder.finish(stepper);
  return record;
}

std::pair<std::size_t, Ratio> BurnRecord::row_at(Time at) const {
  if (rows.empty()) return {0, 0.0};
  const auto after = std::upper_bound(rows.begin(), rows.end(), at, [](Time t, const BurnRow& row) { return t < row.at; });
  if (after == rows.begin()) return {0, 0.0};
  if (after == rows.end()) return {rows.size() - 1, 0.0};
  const auto before = after - 1;
  return {static_cast<std::size_t>(before - rows.begin()), (at - before->at) / (after->at - before->at)};
}

}  // namespace fluewright
