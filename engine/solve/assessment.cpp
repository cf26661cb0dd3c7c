// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/assessment.hpp"

#include "engine/solve/design_flow.hpp"
#include "engine/solve/fans.hpp"
#include "engine/solve/followed.hpp"
#include "engine/solve/network_answer.hpp"
#include "engine/solve/operating_points.hpp"
#include "engine/solve/physics_findings.hpp"
#include "engine/solve/rough_path.hpp"

#include <algorithm>

namespace fluewright {
namespace {

std::optional<WoodFuel> fuel_of(const Design& design, const Library& library) {
  const WoodSpecies* wood = library.wood(design.fire.wood);
  if (wood == nullptr) return std::nullopt;
  return WoodFuel{wood->analysis, design.fire.moisture, design.fire.unburned_share};
}

bool has_fire(const FlueNetwork& network) {
  return std::any_of(network.branches.begin(), network.branches.end(), [](const Branch& branch) {
    return std::any_of(branch.stretches.begin(), branch.stretches.end(), [](const Stretch& s) { return s.fire; });
  });
}

bool stops_the_answer(const Finding& finding) { return finding.severity == Severity::fault; }

/// The gas as it leaves the fire: the driest dew point it will have is its first.
Temperature dew_point_of_fire(const std::vector<SliceState>& rows) {
  Temperature highest = kelvins(0.0);
  for (const SliceState& row : rows) highest = std::max(highest, row.dew_point);
  return highest;
}

/// Where the profile is wet, and how much water there is in each piece, those of side branches among them.
Condensation condensation_along(const Assessment& a, std::size_t piece_count) {
  const std::vector<SliceState>& rows = a.profile;
  Condensation c;
  c.dew_point = dew_point_of_fire(rows);
  c.by_piece.resize(piece_count);
  Length entry{};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const SliceState& row = rows[i];
    if (i == 0 || rows[i - 1].piece != row.piece) entry = row.s - row.length;
    if (row.condensing > MassFlow{} && !c.starts_at) {
      c.starts_at = row.s - row.length;
      c.piece = row.piece;
      c.into_piece = row.s - row.length - entry;
    }
    c.rate += row.condensing;
    c.by_piece[row.piece] += row.condensing;
  }
  for (const BranchState& side : a.branches) {
    for (const SliceState& row : side.profile) {
      c.rate += row.condensing;
      c.by_piece[row.piece] += row.condensing;
    }
  }
  return c;
}

void run_free(Assessment& a, const SlicedPath& fine, const Surround& surround, const WoodFuel& fuel, MassFlow burn_rate) {
  const RoughPath coarse{*fine.branch, scan_slice};
  const FreeRun free{fine, coarse.path(), surround, fuel, burn_rate};
  a.operating_points = free.points();
  a.running = running_of(a.operating_points);
  if (!a.running) return;
  const auto running = a.operating_points.begin() + static_cast<std::ptrdiff_t>(*a.running);
  a.profile.clear();
  (void)free.march(running->flue_gas, &a.profile);
  a.profile_is_operating = true;
}

/// The same with every fan standing still.
FansOff run_without_power(const SlicedPath& fine, const Surround& surround, const WoodFuel& fuel, MassFlow burn_rate) {
  const RoughPath coarse{*fine.branch, scan_slice};
  FansOff cut;
  cut.operating_points = FreeRun{fine, coarse.path(), surround, fuel, burn_rate}.points();
  cut.running = running_of(cut.operating_points);
  return cut;
}

/// A path without branches, or as much of one as is drawn.
SlicedPath answer_series(Assessment& a, const Design& design, const Surround& surround, const WoodFuel& fuel,
                         const AssessOptions& options) {
  const Branch& branch = a.path.network.branches.front();
  SlicedPath path = slice_branch(branch, options.slice);
  a.path_length = path.length;
  const bool fans_run = has_running_fan(a.path.network);
  const FlueNetwork still = with_fans_off(a.path.network);
  const SlicedPath still_path = slice_branch(still.branches.front(), options.slice);
  DesignFlowQuestion question;
  question.path = &still_path;
  question.with_fans = fans_run ? &path : nullptr;
  question.surround = &surround;
  question.fuel = &fuel;
  question.burn_rate = design.fire.burn_rate;
  question.excess_air_ratio = design.fire.wanted_excess_air;
  question.flow_safety = design.fire.flow_safety;
  question.wind_allowance = design.site.wind_allowance;
  if (a.path.complete) {
    for (const BenchAge age : bench_ages) {
      a.design_flow.push_back(check_design_flow(question, age, age == BenchAge::charged ? &a.profile : nullptr));
    }
    a.standing_draft = standing_draft(path, surround);
    if (options.operating_points) {
      run_free(a, path, surround, fuel, design.fire.burn_rate);
      if (fans_run) a.fans_off = run_without_power(still_path, surround, fuel, design.fire.burn_rate);
    }
  } else {
    (void)check_design_flow(question, BenchAge::charged, &a.profile);
  }
  return path;
}

/// What follows from margins and profile.
void conclude(Assessment& a, const Design& design, const Surround& surround) {
  judge_margins(a);
  if (a.profile.empty()) return;
  a.exit_temperature = a.profile.back().gas;
  a.condensation = condensation_along(a, design.pieces.size());
  add_fan_answers(a, surround);
  if (depends_on_fan(a)) a.verdict = Verdict::unsafe;
  add_fan_findings(a, design);
  add_physics_findings(a, design);
}

void answer(Assessment& a, const Design& design, const WoodFuel& fuel, const AssessOptions& options) {
  const Surround surround = surround_of(design);
  if (a.path.complete && !a.path.network.is_series()) {
    const SlicedNetwork network = answer_network(a, design, surround, fuel, options);
    conclude(a, design, surround);
    if (!a.branches.empty()) say_about_walls(a, design, network);
    say_about_branches(a, design);
  } else {
    const SlicedPath path = answer_series(a, design, surround, fuel, options);
    conclude(a, design, surround);
    say_about_walls(a, design, path);
  }
}

}  // namespace

Assessment assess(const Design& design, const Library& library, const AssessOptions& options) {
  Assessment a;
  a.path = trace_path(design, library);
  a.findings = check_values(design, library);
  const bool values_hold = std::none_of(a.findings.begin(), a.findings.end(), stops_the_answer);
  a.findings.insert(a.findings.end(), a.path.findings.begin(), a.path.findings.end());
  const std::optional<WoodFuel> fuel = fuel_of(design, library);
  if (values_hold && fuel && has_fire(a.path.network)) {
    answer(a, design, *fuel, options);
  }
  std::stable_sort(a.findings.begin(), a.findings.end(),
                   [](const Finding& x, const Finding& y) { return x.severity > y.severity; });
  return a;
}

}  // namespace fluewright
