// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/least_margin.hpp"

#include "engine/layout/trace_ways.hpp"
#include "engine/solve/design_flow.hpp"
#include "engine/solve/fans.hpp"
#include "engine/solve/sliced_path.hpp"
#include "engine/solve/surround.hpp"

#include <algorithm>

namespace fluewright {

namespace {

std::optional<Pressure> by_whole_answer(const Design& design, const Library& library, Length slice) {
  AssessOptions options;
  options.slice = slice;
  options.operating_points = false;
  const Assessment a = assess(design, library, options);
  if (!a.verdict) return std::nullopt;
  return a.worst_margin;
}

}  // namespace

std::optional<Pressure> least_margin(const Design& design, const Library& library, Length slice) {
  const TracedPath path = trace_ways(design, library);
  if (!path.complete) return std::nullopt;
  if (!path.network.is_series()) return by_whole_answer(design, library, slice);
  const auto found = check_values(design, library);
  const bool faulty = std::any_of(found.begin(), found.end(), [](const Finding& f) { return f.severity == Severity::fault; });
  const WoodSpecies* wood = library.wood(design.fire.wood);
  if (faulty || wood == nullptr) return std::nullopt;
  const WoodFuel fuel{wood->analysis, design.fire.moisture, design.fire.unburned_share};
  const Surround surround = surround_of(design);
  const FlueNetwork still = with_fans_off(path.network);
  const SlicedPath sliced = slice_branch(still.branches.front(), slice);
  const DesignFlowQuestion question{&sliced,
                                    &surround,
                                    &fuel,
                                    design.fire.burn_rate,
                                    design.fire.wanted_excess_air,
                                    design.fire.flow_safety,
                                    design.site.wind_allowance};
  std::optional<Pressure> least;
  for (const BenchAge age : bench_ages) {
    const Pressure margin = check_design_flow(question, age).margin;
    if (!least || margin < *least) least = margin;
  }
  return least;
}

}  // namespace fluewright
