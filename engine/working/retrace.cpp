// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/retrace.hpp"

#include "engine/solve/design_flow.hpp"
#include "engine/solve/fans.hpp"
#include "engine/working/retrace_network.hpp"

namespace fluewright {

std::unique_ptr<Retrace> begun_retrace(const Design& design, const Library& library, const Assessment& answer) {
  const WoodSpecies* wood = library.wood(design.fire.wood);
  if (answer.profile.empty() || wood == nullptr) return nullptr;
  auto run = std::make_unique<Retrace>();
  run->design = &design;
  run->library = &library;
  run->answer = &answer;
  run->surround = surround_of(design);
  run->fuel = WoodFuel{wood->analysis, design.fire.moisture, design.fire.unburned_share};
  run->wood_citation = wood->citation;
  return run;
}

namespace {

enum class Fans { running, still };

/// Everything but fire and march.
std::unique_ptr<Retrace> prepared(const Design& design, const Library& library, const Assessment& answer, Length slice,
                                  Fans fans) {
  auto run = begun_retrace(design, library, answer);
  if (run == nullptr) return nullptr;
  if (fans == Fans::still) run->still = with_fans_off(answer.path.network);
  const Branch& branch = (fans == Fans::still ? run->still : answer.path.network).branches.front();
  run->air_from = branch.from.kind;
  run->air_water = branch.from.kind == EndKind::room_air ? run->surround.room_water : run->surround.outdoor_water;
  run->path = slice_branch(branch, slice);
  run->air.emplace(moist_air(run->air_water));
  return run;
}

void walk(Retrace& run, const Burning& burning, WallAge age) {
  run.gas.emplace(burning.gas(run.fire));
  run.totals = March{run.path, run.surround}.run(run.fire, *run.air, *run.gas, age, &run.rows, &run.visits);
}

}  // namespace

std::unique_ptr<const Retrace> retrace_profile(const Design& design, const Library& library, const Assessment& answer,
                                               Length slice) {
  if (!answer.branches.empty()) return retrace_network(design, library, answer, {}, std::nullopt, slice);
  if (!answer.profile_is_operating || answer.running_point() == nullptr) {
    return retrace_design_flow(design, library, answer, BenchAge::charged, slice);
  }
  auto run = prepared(design, library, answer, slice, Fans::running);
  if (run == nullptr) return nullptr;
  const Burning burning{run->fuel, design.fire.burn_rate, run->air_water};
  run->fire = burning.from_flue_flow(answer.running_point()->flue_gas);
  walk(*run, burning, {});
  return run;
}

std::unique_ptr<const Retrace> retrace_design_flow(const Design& design, const Library& library,
                                                   const Assessment& answer, BenchAge age, Length slice) {
  if (!answer.branches.empty()) return retrace_network(design, library, answer, age, std::nullopt, slice);
  auto run = prepared(design, library, answer, slice, Fans::still);
  if (run == nullptr) return nullptr;
  run->age = age;
  const Burning burning{run->fuel, design.fire.burn_rate, run->air_water};
  run->fire = burning.at_excess_air(design.fire.wanted_excess_air);
  walk(*run, burning, wall_age(age));
  return run;
}

std::unique_ptr<const Retrace> retrace_piece(const Design& design, const Library& library, const Assessment& answer,
                                             std::size_t piece, std::optional<BenchAge> age, Length slice) {
  if (!answer.branches.empty()) return retrace_network(design, library, answer, age, piece, slice);
  return age ? retrace_design_flow(design, library, answer, *age, slice)
             : retrace_profile(design, library, answer, slice);
}

}  // namespace fluewright
