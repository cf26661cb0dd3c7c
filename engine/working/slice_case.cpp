// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/slice_case.hpp"

#include "engine/solve/design_flow.hpp"

#include <cmath>

namespace fluewright {

namespace {

/// Rounds at a time, times at most, and the change of the wall that counts as none.
constexpr int rounds = 25;
constexpr int repeats = 40;
constexpr TemperatureDifference at_rest = 1e-10 * kelvin;

}  // namespace

TemperatureDifference SliceCase::above_wall() const { return through() / heat.film; }

SliceCase slice_case(const Retrace& run, std::size_t row) {
  SliceCase c;
  c.run = &run;
  c.row = row;
  c.visit = &run.visits[row];
  c.slice = &run.path.slices[c.visit->slice];
  c.stretch = &run.path.stretch_of(*c.slice);
  c.wall = &run.path.walls[c.slice->stretch];
  c.burnt = c.visit->setting.flue_gas;
  c.gas = c.burnt ? &*run.gas : &*run.air;
  if (run.network != nullptr) {
    c.source = &run.network->sources[row];
    // Behind its own fire the gas is what the fire has made; a stream that has burnt elsewhere comes as it is.
    c.gas = c.burnt ? c.source->after : c.source->before;
  }
  c.by_species = c.burnt || c.mixed();
  c.heat = c.visit->heat;
  const WallAge age = run.age ? wall_age(*run.age) : std::nullopt;
  for (int i = 0; i < repeats && !c.settled; ++i) {
    const Temperature wall = c.heat.wall;
    const Temperature surface = c.heat.surface;
    heat_slice(c.heat, c.visit->entering, c.visit->flow, *c.gas, *c.slice, c.setting(), run.surround, age, c.visit->gained,
               rounds);
    c.settled = abs(c.heat.wall - wall) < at_rest && abs(c.heat.surface - surface) < at_rest;
  }
  return c;
}

}  // namespace fluewright
