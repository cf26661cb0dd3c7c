// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The hand-built heater made ready to burn, for tests of the equations themselves.

#include "engine/burn/burn_stepper.hpp"
#include "engine/solve/stretch_slices.hpp"
#include "tests/engine/solve/hand_built_heater.hpp"

#include <memory>

namespace fluewright::test {

/// Few slices and nodes, for a reference that handles every unknown densely.
inline BurnGrid few_slices() { return {500.0 * millimetre, 500.0 * millimetre, 5, 3, 8.0 * millimetre}; }

struct BurningHeater {
  HandBuiltHeater heater;
  Design day;
  BurnGrid grid;
  Branch branch;
  Surround surround;
  SlicedPath path;
  std::unique_ptr<kernel::GasPair> gas;
  std::unique_ptr<kernel::BurnCells> cells;
  std::unique_ptr<kernel::BurnEquations> equations;
  kernel::Interval interval;

  explicit BurningHeater(const Design& on_day, HandBuiltHeater built = {}, BurnGrid with = {}, double hours = 1.0,
                         double kilograms_per_hour = 3.0)
      : heater{std::move(built)}, day{on_day}, grid{with}, branch{heater.branch()}, surround{surround_of(day)},
        path{slice_stretches(branch, [this](const Stretch& stretch) { return grid.longest_slice(stretch); })} {
    const double outdoors = in_kelvin(surround.outdoor);
    gas = std::make_unique<kernel::GasPair>(usual_wood(), surround.room_water);
    const kernel::AirRange air{outdoors, outdoors, in_kelvin(surround.room), in(surround.absolute, pascal),
                               in(surround.wind, metre_per_second)};
    cells = std::make_unique<kernel::BurnCells>(path, *gas, air, grid);
    equations = std::make_unique<kernel::BurnEquations>(*cells, *gas, surround, day.site.outdoor_humidity);
    interval.end = hours * 3600.0;
    interval.wanted_burn = kilograms_per_hour / 3600.0;
    interval.outdoor_begin = interval.outdoor_end = outdoors;
    interval.depressurisation = in(surround.depressurisation, pascal);
  }
  BurningHeater(const BurningHeater&) = delete;
  BurningHeater& operator=(const BurningHeater&) = delete;

  [[nodiscard]] std::size_t flow() const { return cells->branches.front().flow; }

  /// Steps to a time; false where a step fails.
  [[nodiscard]] static bool run(kernel::BurnStepper& stepper, double until, double longest = 600.0) {
    while (stepper.moment() < until) {
      if (!stepper.step(until, longest)) return false;
    }
    return true;
  }

  /// What the energy balance leaves over, as a share of the heat released.
  [[nodiscard]] double closure(const kernel::BurnStepper& stepper, const std::vector<double>& begun) const {
    using namespace kernel;
    const Lines& l = stepper.lines();
    const double level = in_kelvin(surround.room);
    const double stored = equations->wall_heat(stepper.state().data(), level) - equations->wall_heat(begun.data(), level) +
                          equations->gas_heat(stepper.state().data(), level) - equations->gas_heat(begun.data(), level);
    const double given = l[released] + l[latent];
    const double taken = l[unburned] + l[to_room] + l[to_outdoors] + l[out_of_cap] + l[out_of_mouth] + stored;
    return (taken - given) / l[released];
  }
};

}  // namespace fluewright::test
