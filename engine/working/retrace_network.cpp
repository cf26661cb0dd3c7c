// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/retrace_network.hpp"

#include "engine/solve/fans.hpp"
#include "engine/solve/network_answer.hpp"
#include "engine/solve/network_design_flow.hpp"
#include "engine/solve/network_profile.hpp"

#include <algorithm>
#include <iterator>

namespace fluewright {

namespace {

/// The branches to walk: those of the main path, or the one side branch that has the piece.
std::vector<std::size_t> branches_for(const FlueNetwork& network, std::optional<std::size_t> piece) {
  const auto has = [&](std::size_t b) {
    const auto& stretches = network.branches[b].stretches;
    return std::any_of(stretches.begin(), stretches.end(), [&](const Stretch& s) { return s.piece == piece; });
  };
  if (!piece || std::any_of(network.main_path.begin(), network.main_path.end(), has)) return network.main_path;
  for (std::size_t b = 0; b < network.branches.size(); ++b) {
    if (has(b)) return {b};
  }
  return {};
}

/// The state that the answer shows, from the numbers it kept.
NetworkSolution shown_state(const NetworkMarch& march, const Assessment& answer) {
  NetworkSolution guess = NodeSolver{march}.first_guess({});
  const std::size_t branches = answer.branches.size();
  const std::size_t nodes = answer.meetings.size();
  for (std::size_t b = 0; b < branches; ++b) {
    guess.flows[b] = answer.branches[b].flow;
    guess.x(static_cast<Eigen::Index>(b)) = in(guess.flows[b], kilogram_per_second);
  }
  for (std::size_t n = 0; n < nodes; ++n) {
    guess.node_gauges[n] = answer.meetings[n].total;
    guess.x(static_cast<Eigen::Index>(branches + n)) = in(guess.node_gauges[n], pascal);
    guess.x(static_cast<Eigen::Index>(branches + nodes + n)) = in_kelvin(answer.meetings[n].temperature);
  }
  return guess;
}

/// A running state balances by itself, one at the wanted fire has its flow through the fire held.
std::optional<NetworkSolution> solved_again(const NetworkMarch& march, const Assessment& answer) {
  const NetworkSolution shown = shown_state(march, answer);
  std::optional<HeldFlow> held;
  if (!answer.profile_is_operating) {
    const std::size_t fire = *march.sliced().fire_branch;
    held = HeldFlow{fire, answer.branches[fire].flow};
  }
  NetworkSolution again = NodeSolver{march}.solve(shown, held);
  if (!again.converged) return std::nullopt;
  return again;
}

std::optional<NetworkSolution> at_age(const NetworkMarch& fine, const FlueNetwork& network, const Retrace& run,
                                      BenchAge age) {
  const SlicedNetwork sliced = slice_network(network, scan_slice);
  const NetworkMarch coarse{sliced, run.surround, run.fuel, run.design->fire.burn_rate, wall_age(age)};
  std::optional<NetworkDesignFlow> found = check_network_design_flow(coarse, fine, *run.design, age);
  if (!found) return std::nullopt;
  found->solution.walked = &fine;
  return std::move(found->solution);
}

/// What feeds the fire, and the fire.
void take_fire(Retrace& run) {
  RetracedNetwork& n = *run.network;
  const std::size_t fire = *n.sliced.fire_branch;
  const BranchFlow& f = n.solution.state.branches[fire];
  const BranchEnd& from = n.sliced.network->branches[fire].from;
  run.fire = f.fire;
  run.air_from = from.kind;
  run.air.emplace(mixture_of(n.march->composition_at(from, n.solution.state)));
  run.air_water = run.air->mixture().mole_fraction(Species::water);
  run.gas.emplace(mixture_of(f.leaving));
  run.totals = f.totals;
}

/// Rows, visits and what each row is worked from, branch after branch.
void take_rows(Retrace& run, const std::vector<std::size_t>& branches, std::vector<BranchProfile>& profiles) {
  RetracedNetwork& n = *run.network;
  const bool main_path = branches == n.sliced.network->main_path;
  if (main_path) run.rows = main_path_rows(*n.march, n.solution, profiles);
  std::size_t slices = 0;
  for (const std::size_t b : branches) {
    const Branch& branch = n.sliced.network->branches[b];
    const bool burns = b == n.sliced.fire_branch;
    RowSource source;
    source.branch = b;
    source.before = &n.gases.emplace_back(mixture_of(n.march->composition_at(branch.from, n.solution.state)));
    source.after = burns ? &n.gases.emplace_back(mixture_of(n.solution.state.branches[b].leaving)) : source.before;
    source.mixed = !burns;
    const bool at_node = branch.from.kind == EndKind::node;
    source.entering = at_node                                ? n.solution.state.nodes[branch.from.node].temperature
                      : branch.from.kind == EndKind::room_air ? run.surround.room
                                                              : run.surround.outdoor;
    BranchProfile& profile = profiles[b];
    for (std::size_t i = 0; i < profile.rows.size(); ++i) {
      source.first = i == 0;
      source.last = i + 1 == profile.rows.size() && branch.to.kind != EndKind::node;
      n.sources.push_back(source);
      profile.visits[i].slice += slices;
      run.visits.push_back(profile.visits[i]);
    }
    if (!main_path) run.rows.insert(run.rows.end(), profile.rows.begin(), profile.rows.end());
    slices += n.sliced.paths[b].slices.size();
    const std::size_t joined = run.joined.stretches.size();
    run.joined.stretches.insert(run.joined.stretches.end(), branch.stretches.begin(), branch.stretches.end());
    // What a change of section costs where branches meet is among what the junction costs.
    if (joined > 0) run.joined.stretches[joined].eased_step_at_start = true;
  }
  run.joined.from = n.sliced.network->branches[branches.front()].from;
  run.joined.to = n.sliced.network->branches[branches.back()].to;
}

}  // namespace

std::unique_ptr<const Retrace> retrace_network(const Design& design, const Library& library, const Assessment& answer,
                                               std::optional<BenchAge> age, std::optional<std::size_t> piece,
                                               Length slice) {
  auto run = begun_retrace(design, library, answer);
  if (run == nullptr) return nullptr;
  if (!age && !answer.profile_is_operating) age = BenchAge::charged;
  if (age) run->still = with_fans_off(answer.path.network);
  const FlueNetwork& network = age ? run->still : answer.path.network;
  const std::vector<std::size_t> branches = branches_for(network, piece);
  if (branches.empty()) return nullptr;
  run->age = age;
  run->network = std::make_unique<RetracedNetwork>();
  RetracedNetwork& n = *run->network;
  n.sliced = slice_network(network, slice);
  n.march = std::make_unique<NetworkMarch>(n.sliced, run->surround, run->fuel, design.fire.burn_rate,
                                           age ? wall_age(*age) : WallAge{});
  const bool shown = !age || (*age == BenchAge::charged && !answer.profile_is_operating);
  std::optional<NetworkSolution> solution = shown ? solved_again(*n.march, answer) : at_age(*n.march, network, *run, *age);
  if (!solution) return nullptr;
  n.solution = std::move(*solution);
  // Relations are written the way the gas runs; the fire's for air that has not burnt before.
  const auto& states = n.solution.state.branches;
  const bool backwards = std::any_of(branches.begin(), branches.end(), [&](std::size_t b) { return !states[b].forward; });
  const BranchEnd& feeds = network.branches[*n.sliced.fire_branch].from;
  const bool burnt_before =
      feeds.kind == EndKind::node && n.solution.state.nodes[feeds.node].flue_share > Ratio(0.0);
  if (backwards || burnt_before || !states[*n.sliced.fire_branch].forward) return nullptr;
  take_fire(*run);
  std::vector<BranchProfile> profiles = branch_profiles(*n.march, n.solution, true);
  take_rows(*run, branches, profiles);
  run->path = slice_branch(run->joined, slice);
  run->totals.acceleration = {};
  for (const SliceState& row : run->rows) run->totals.acceleration += row.acceleration;
  run->totals.exit = run->rows.back().gas;
  return run;
}

}  // namespace fluewright
