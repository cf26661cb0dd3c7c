// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/start_margins.hpp"

#include <algorithm>

namespace fluewright {
namespace {

/// Longest step while the flow is held [s].
constexpr double longest_step = 600.0;

DesignFlow design_flow_now(const DesignFlowQuestion& q, const kernel::BurnEquations& equations, BenchAge age) {
  const kernel::BranchNow& b = equations.branches_now().front();
  const kernel::CellNow& last = equations.cells_now().back();
  DesignFlow d;
  d.age = age;
  d.buoyancy = b.buoyancy * pascal;
  d.resistance = (b.resistance + b.acceleration) * pascal;
  d.room_gauge = b.from * pascal;
  d.cap_gauge = b.to * pascal;
  d.wind_allowance = q.wind_allowance;
  d.flue_gas = last.flow * kilogram_per_second;
  d.fire_temperature = kelvins(equations.fire_now().temperature);
  const double safety = q.flow_safety;
  d.margin = (b.from + b.buoyancy + b.fan - safety * b.resistance - (b.acceleration > 0.0 ? safety : 1.0) * b.acceleration - b.to) *
                 pascal -
             q.wind_allowance;
  return d;
}

}  // namespace

std::optional<std::vector<DesignFlow>> young_design_flows(const DesignFlowQuestion& q, Ratio outdoor_humidity,
                                                          const BurnGrid& grid, const BurnAccuracy& accuracy,
                                                          const std::function<bool()>& go_on) {
  const SlicedPath path = slice_branch(*q.path->branch, grid.slice);
  const Surround& s = *q.surround;
  const bool room_air = path.branch->from.kind == EndKind::room_air;
  const kernel::GasPair gas{*q.fuel, room_air ? s.room_water : s.outdoor_water};
  const double outdoors = in_kelvin(s.outdoor);
  const kernel::AirRange air{outdoors, outdoors, in_kelvin(s.room), in(s.absolute, pascal), in(s.wind, metre_per_second)};
  const kernel::BurnCells cells{path, gas, air, grid};
  kernel::BurnEquations equations{cells, gas, s, outdoor_humidity};
  kernel::BurnStepper stepper{equations, accuracy};

  kernel::Interval interval;
  interval.end = in(*wall_age(BenchAge::one_hour), second);
  interval.wanted_burn = in(q.burn_rate, kilogram_per_second);
  interval.outdoor_begin = interval.outdoor_end = outdoors;
  interval.depressurisation = in(s.depressurisation, pascal);
  interval.flow_is_given = true;
  interval.powered = false;  // the margin is what is left with every fan standing still
  std::vector<double> state = equations.at_rest(interval);
  state[cells.branches.front().flow] = interval.wanted_burn * q.excess_air_ratio * gas.air_per_fuel();
  stepper.start(std::move(state), 0.0);
  stepper.enter(interval);

  std::vector<DesignFlow> found;
  for (const BenchAge age : {BenchAge::cold_bench, BenchAge::one_hour}) {
    const double until = in(*wall_age(age), second);
    while (stepper.moment() < until) {
      if (go_on && !go_on()) return std::nullopt;
      if (!stepper.step(until, longest_step)) return std::nullopt;
    }
    DesignFlow d = design_flow_now(q, equations, age);
    d.exit_temperature = kelvins(stepper.state()[cells.cells.back().base]);
    found.push_back(d);
  }
  return found;
}

std::optional<std::vector<DesignFlow>> young_design_flows(const Design& design, const Library& library, const BurnGrid& grid,
                                                          const BurnAccuracy& accuracy, const std::function<bool()>& go_on) {
  const TracedPath traced = trace_path(design, library);
  const WoodSpecies* wood = library.wood(design.fire.wood);
  if (!traced.complete || wood == nullptr || !traced.network.is_series()) return std::nullopt;
  const Branch& branch = traced.network.branches.front();
  const bool burns = std::any_of(branch.stretches.begin(), branch.stretches.end(), [](const Stretch& s) { return s.fire; });
  if (!burns) return std::nullopt;
  const WoodFuel fuel{wood->analysis, design.fire.moisture, design.fire.unburned_share};
  const Surround surround = surround_of(design);
  const SlicedPath path = slice_branch(branch, grid.slice);
  const DesignFlowQuestion question{&path,
                                    &surround,
                                    &fuel,
                                    design.fire.burn_rate,
                                    design.fire.wanted_excess_air,
                                    design.fire.flow_safety,
                                    design.site.wind_allowance};
  return young_design_flows(question, design.site.outdoor_humidity, grid, accuracy, go_on);
}

}  // namespace fluewright
