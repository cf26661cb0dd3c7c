// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_design_flow.hpp"

#include "engine/solve/network_profile.hpp"
#include "engine/solve/network_run.hpp"

namespace fluewright {

namespace {

/// The gas that reaches the fire may carry flue gas that comes back to it: its oxygen is found by repetition.
constexpr int oxygen_rounds = 20;
constexpr double oxygen_settled = 1e-10;
/// A state is led to the wanted fire in steps of its flow that are halved where they are too long, so often at most.
constexpr int flow_halvings = 7;
/// While looking for where to start.
constexpr NodeTolerance while_holding{1e-3 * pascal, 60};

/// The stream that the fire needs, by the gas that reaches it in a state.
HeldFlow fire_flow(const NetworkMarch& march, Ratio excess_air_ratio, const NetworkState& state) {
  const std::size_t fire = *march.sliced().fire_branch;
  const Composition& gas = march.composition_at(march.network().branches[fire].from, state);
  return {fire, march.burning().stream_at(excess_air_ratio, gas)};
}

std::optional<NetworkSolution> settle_oxygen(const NetworkMarch& march, Ratio excess_air_ratio, NetworkSolution state,
                                             const NodeTolerance& tolerance) {
  HeldFlow held = fire_flow(march, excess_air_ratio, state.state);
  for (int round = 0; round < oxygen_rounds; ++round) {
    NetworkSolution next = NodeSolver{march}.solve(state, held, tolerance);
    if (!next.converged) return std::nullopt;
    const HeldFlow wanted = fire_flow(march, excess_air_ratio, next.state);
    const bool settled = abs(wanted.flow - held.flow) <= oxygen_settled * held.flow;
    state = std::move(next);
    held = wanted;
    if (settled) return state;
  }
  return std::nullopt;
}

/// From a state in which the fire has one flow to that in which it has another.
std::optional<NetworkSolution> led_to(const NetworkMarch& march, const HeldFlow& wanted, const NetworkSolution& from,
                                      int halvings_left) {
  NetworkSolution there = NodeSolver{march}.solve(from, wanted, while_holding);
  if (there.converged) return there;
  if (halvings_left == 0) return std::nullopt;
  const MassFlow now = from.flows[wanted.branch];
  const auto half = led_to(march, {wanted.branch, 0.5 * (now + wanted.flow)}, from, halvings_left - 1);
  return half ? led_to(march, wanted, *half, halvings_left - 1) : std::nullopt;
}

/// By way of the states in which the network settles by itself, those with the fire running forward first.
std::optional<NetworkSolution> from_free_states(const NetworkMarch& march, Ratio excess_air_ratio) {
  for (const NetworkPoint& point : NetworkRun{march, march}.points()) {
    const HeldFlow wanted = fire_flow(march, excess_air_ratio, point.solution.state);
    std::optional<NetworkSolution> found = led_to(march, wanted, point.solution, flow_halvings);
    if (found) return settle_oxygen(march, excess_air_ratio, std::move(*found), while_holding);
  }
  return std::nullopt;
}

std::optional<NetworkSolution> at_wanted_fire(const NetworkMarch& coarse, const NetworkMarch& fine, Ratio excess_air_ratio,
                                              const NetworkSolution* near) {
  const NodeSolver solver{coarse};
  std::optional<NetworkSolution> rough;
  if (near != nullptr) rough = settle_oxygen(coarse, excess_air_ratio, *near, while_holding);
  if (!rough) {
    const HeldFlow held = fire_flow(coarse, excess_air_ratio, coarse.at_rest());
    NetworkSolution start = solver.solve_afresh(held.flow, held, while_holding);
    if (start.converged) rough = settle_oxygen(coarse, excess_air_ratio, std::move(start), while_holding);
  }
  if (!rough) rough = from_free_states(coarse, excess_air_ratio);
  if (!rough) return std::nullopt;
  rough->walked = nullptr;
  rough->slopes.resize(0, 0);
  return settle_oxygen(fine, excess_air_ratio, std::move(*rough), {});
}

/// Sums along the main path, losses positive towards the cap.
struct AlongMainPath {
  Pressure buoyancy{};
  Pressure resistance{};    ///< friction, fittings and junctions
  Pressure acceleration{};
};

AlongMainPath along_main_path(const NetworkMarch& march, const NetworkSolution& solution) {
  AlongMainPath sum;
  const std::vector<std::size_t>& path = march.network().main_path;
  for (std::size_t n = 0; n < path.size(); ++n) {
    const BranchFlow& f = solution.state.branches[path[n]];
    const double way = f.forward ? 1.0 : -1.0;
    sum.buoyancy += f.totals.buoyancy;
    sum.resistance += way * (f.totals.friction + f.totals.local);
    sum.acceleration += way * f.totals.acceleration;
    if (n > 0) sum.resistance += junction_loss(march, solution, n);
  }
  return sum;
}

}  // namespace

std::optional<NetworkDesignFlow> check_network_design_flow(const NetworkMarch& coarse, const NetworkMarch& fine,
                                                           const Design& design, BenchAge age,
                                                           const NetworkSolution* near) {
  std::optional<NetworkSolution> solution = at_wanted_fire(coarse, fine, design.fire.wanted_excess_air, near);
  if (!solution) return std::nullopt;
  const AlongMainPath sum = along_main_path(fine, *solution);
  const NetworkState& state = solution->state;
  const BranchFlow& stack = state.branches[fine.sliced().stack];
  DesignFlow d;
  d.age = age;
  d.quick_estimate = wall_age(age).has_value();
  d.buoyancy = sum.buoyancy;
  d.resistance = sum.resistance + sum.acceleration;
  d.room_gauge = fine.free_air(fine.network().branches[fine.network().main_path.front()].from);
  d.cap_gauge = fine.surround().cap_gauge;
  d.wind_allowance = design.site.wind_allowance;
  d.flue_gas = stack.at_to;
  d.exit_temperature = stack.totals.exit;
  d.fire_temperature = state.branches[*fine.sliced().fire_branch].totals.fire;
  for (const BranchFlow& f : state.branches) d.fans.insert(d.fans.end(), f.totals.fans.begin(), f.totals.fans.end());
  for (const BranchFlow& f : state.branches) d.branch_flows.push_back(f.forward ? f.at_from : f.at_to);
  const Ratio more = design.fire.flow_safety - 1.0;
  const Ratio on_acceleration = sum.acceleration > Pressure{} ? more : Ratio(0.0);
  d.margin = solution->left_over - more * sum.resistance - on_acceleration * sum.acceleration - d.wind_allowance;
  return NetworkDesignFlow{d, std::move(*solution)};
}

Pressure standing_draft(const SlicedNetwork& network, const Surround& surround) {
  const std::vector<std::size_t>& path = network.network->main_path;
  Pressure draft = surround.gauge_at(network.network->branches[path.front()].from) - surround.cap_gauge;
  for (const std::size_t b : path) draft += standing_buoyancy(network.paths[b], surround);
  return draft;
}

}  // namespace fluewright
