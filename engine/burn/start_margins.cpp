// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/start_margins.hpp"

#include "engine/burn/burning_flue.hpp"
#include "engine/burn/path_balance.hpp"
#include "engine/solve/fans.hpp"

#include <algorithm>

namespace fluewright {
namespace {

/// Longest step while the flow is held [s].
constexpr double longest_step = 600.0;

/// What is asked of a flue, whichever way it was made.
struct Asked {
  const Surround* surround = nullptr;
  double burn = 0.0;          ///< [kg/s]
  double excess_air = 0.0;
  double safety = 1.0;
  Pressure wind_allowance{};
};

kernel::Interval held_fire(const Asked& asked, bool powered) {
  kernel::Interval interval;
  interval.end = in(*wall_age(BenchAge::one_hour), second);
  interval.wanted_burn = asked.burn;
  interval.outdoor_begin = interval.outdoor_end = in_kelvin(asked.surround->outdoor);
  interval.depressurisation = in(asked.surround->depressurisation, pascal);
  interval.flow_is_given = true;
  interval.powered = powered;
  return interval;
}

DesignFlow design_flow_now(const Asked& asked, const kernel::BurnEquations& equations, const std::vector<double>& state,
                           BenchAge age) {
  const kernel::PathBalance sum = kernel::path_balance(equations);
  const kernel::BurnCells& cells = equations.cells();
  const kernel::BranchCells& stack = cells.branches[cells.main_path.back()];
  DesignFlow d;
  d.age = age;
  d.buoyancy = sum.buoyancy * pascal;
  d.resistance = (sum.resistance + sum.acceleration) * pascal;
  d.room_gauge = sum.from * pascal;
  d.cap_gauge = sum.to * pascal;
  d.wind_allowance = asked.wind_allowance;
  d.flue_gas = equations.cells_now()[stack.last - 1].flow * kilogram_per_second;
  d.exit_temperature = kelvins(state[cells.cells[stack.last - 1].base]);
  d.fire_temperature = kelvins(equations.fire_now().temperature);
  d.margin = sum.margin(asked.safety) * pascal - asked.wind_allowance;
  if (cells.branches.size() > 1) {
    for (const kernel::BranchCells& b : cells.branches) d.branch_flows.push_back(state[b.flow] * kilogram_per_second);
  }
  return d;
}

/// Fans at their speeds or standing still.
std::optional<std::vector<DesignFlow>> followed(const Asked& asked, kernel::BurnEquations& equations, bool powered,
                                                const BurnAccuracy& accuracy, const std::function<bool()>& go_on) {
  const kernel::BurnCells& cells = equations.cells();
  kernel::BurnStepper stepper{equations, accuracy};
  const kernel::Interval interval = held_fire(asked, powered);
  std::vector<double> state = equations.at_rest(interval);
  state[cells.branches[cells.fire_branch].flow] = asked.burn * asked.excess_air * equations.gas().air_per_fuel();
  stepper.start(std::move(state), 0.0);
  stepper.enter(interval);
  std::vector<DesignFlow> found;
  for (const BenchAge age : {BenchAge::cold_bench, BenchAge::one_hour}) {
    const double until = in(*wall_age(age), second);
    while (stepper.moment() < until) {
      if ((go_on && !go_on()) || !stepper.step(until, longest_step)) return std::nullopt;
    }
    stepper.refresh();
    found.push_back(design_flow_now(asked, equations, stepper.state(), age));
  }
  return found;
}

/// With every fan standing still, and what the margin is with them running.
std::optional<std::vector<DesignFlow>> both_ways(const Asked& asked, const FlueNetwork& network, const kernel::GasPair& gas,
                                                 Ratio outdoor_humidity, const BurnGrid& grid, const BurnAccuracy& accuracy,
                                                 const std::function<bool()>& go_on) {
  const Surround& s = *asked.surround;
  const double outdoors = in_kelvin(s.outdoor);
  const kernel::AirRange air{outdoors, outdoors, in_kelvin(s.room), in(s.absolute, pascal), in(s.wind, metre_per_second)};
  kernel::BurningFlue flue{network, std::nullopt, gas, air, grid, s, outdoor_humidity};
  auto still = followed(asked, *flue.equations, false, accuracy, go_on);
  if (!still || !has_running_fan(network)) return still;
  const auto blown = followed(asked, *flue.equations, true, accuracy, go_on);
  if (!blown) return std::nullopt;
  for (std::size_t i = 0; i < still->size(); ++i) (*still)[i].margin_with_fans = (*blown)[i].margin;
  return still;
}

}  // namespace

std::optional<std::vector<DesignFlow>> young_design_flows(const DesignFlowQuestion& q, Ratio outdoor_humidity,
                                                          const BurnGrid& grid, const BurnAccuracy& accuracy,
                                                          const std::function<bool()>& go_on) {
  FlueNetwork network;
  network.branches = {q.with_fans != nullptr ? *q.with_fans->branch : *q.path->branch};
  const bool room_air = network.branches.front().from.kind == EndKind::room_air;
  const kernel::GasPair gas{*q.fuel, room_air ? q.surround->room_water : q.surround->outdoor_water};
  const Asked asked{q.surround, in(q.burn_rate, kilogram_per_second), q.excess_air_ratio, q.flow_safety, q.wind_allowance};
  return both_ways(asked, network, gas, outdoor_humidity, grid, accuracy, go_on);
}

std::optional<std::vector<DesignFlow>> young_design_flows(const Design& design, const Library& library, const BurnGrid& grid,
                                                          const BurnAccuracy& accuracy, const std::function<bool()>& go_on) {
  const TracedPath traced = trace_path(design, library);
  const WoodSpecies* wood = library.wood(design.fire.wood);
  if (!traced.complete || wood == nullptr) return std::nullopt;
  const bool burns = std::any_of(traced.network.branches.begin(), traced.network.branches.end(), [](const Branch& branch) {
    return std::any_of(branch.stretches.begin(), branch.stretches.end(), [](const Stretch& s) { return s.fire; });
  });
  if (!burns) return std::nullopt;
  const WoodFuel fuel{wood->analysis, design.fire.moisture, design.fire.unburned_share};
  const Surround surround = surround_of(design);
  const BranchEnd& inlet = traced.network.branches[traced.network.main_path.front()].from;
  const kernel::GasPair gas{fuel, inlet.kind == EndKind::outdoor_air ? surround.outdoor_water : surround.room_water};
  const Asked asked{&surround, in(design.fire.burn_rate, kilogram_per_second), design.fire.wanted_excess_air,
                    design.fire.flow_safety, design.site.wind_allowance};
  return both_ways(asked, traced.network, gas, design.site.outdoor_humidity, grid, accuracy, go_on);
}

}  // namespace fluewright
