// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/start_margins.hpp"
#include "tests/engine/burn/burning_heater.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace fluewright::test {
namespace {

using kernel::BurnStepper;

TEST(Burn, settles_to_the_steady_march_within_a_thousandth) {
  // Identity: with the rates at zero the equations are the steady march's. Both directions of the fine path.
  BurnGrid grid;
  grid.slice = grid.level_slice = 50.0 * millimetre;
  BurningHeater b{a_day(5.0, 18.0), {}, grid, 1000.0};
  BurnStepper stepper{*b.equations, {}};
  stepper.start(b.equations->at_rest(b.interval), 0.0);
  stepper.enter(b.interval);
  ASSERT_TRUE(BurningHeater::run(stepper, b.interval.end, 1e5));
  const SlicedPath coarse = slice_branch(b.branch, 500.0 * millimetre);
  const FreeRun free{b.path, coarse, b.surround, usual_wood(), 3.0 * kilogram_per_hour};
  const std::vector<OperatingPoint> points = free.points();
  ASSERT_FALSE(points.empty());
  const OperatingPoint& steady = points.front();
  ASSERT_TRUE(steady.forward);
  const double flow = b.equations->cells_now().back().flow;
  EXPECT_NEAR(flow / in(steady.flue_gas, kilogram_per_second), 1.0, 1e-3);
  EXPECT_NEAR(b.equations->fire_now().excess / steady.excess_air_ratio.value(), 1.0, 1e-3);
  const double excess = stepper.state()[b.cells->cells.back().base] - in_kelvin(b.surround.outdoor);
  EXPECT_NEAR(excess / in(steady.exit_temperature - b.surround.outdoor, kelvin), 1.0, 1e-3);
  const kernel::Lines& l = stepper.line_rates();
  EXPECT_NEAR(l[kernel::to_room] / in(steady.heat.to_room + steady.heat.into_mass, watt), 1.0, 1e-3);
  EXPECT_NEAR(l[kernel::out_of_cap] / in(steady.heat.stack_loss, watt), 1.0, 1e-3);
}

TEST(Burn, settles_backwards_too_where_it_started_backwards) {
  // The air that comes down the stack is taken as moist as the room's; the march knows the outdoor humidity: 3 %.
  BurningHeater b{a_day(5.0, 18.0), {}, {}, 400.0};
  BurnStepper stepper{*b.equations, {}};
  std::vector<double> state = b.equations->at_rest(b.interval);
  for (const kernel::Cell& cell : b.cells->cells) state[cell.base] = in_kelvin(b.surround.outdoor);
  state[b.flow()] = -0.01;
  stepper.start(state, 0.0);
  stepper.enter(b.interval);
  ASSERT_TRUE(BurningHeater::run(stepper, b.interval.end, 1e5));
  const SlicedPath coarse = slice_branch(b.branch, 500.0 * millimetre);
  const FreeRun free{b.path, coarse, b.surround, usual_wood(), 3.0 * kilogram_per_hour};
  const std::vector<OperatingPoint> points = free.points();
  const auto backward = std::find_if(points.begin(), points.end(), [](const OperatingPoint& p) { return !p.forward; });
  ASSERT_NE(backward, points.end());
  EXPECT_NEAR(stepper.state()[b.flow()] / in(backward->flue_gas, kilogram_per_second), 1.0, 0.03);
  EXPECT_GT(stepper.lines()[kernel::smoke], 0.1) << "all of it came into the room";
}

TEST(Burn, energy_closes_to_a_thousandth_over_the_first_ten_minutes_and_over_two_days) {
  // First law: fuel + latent = room + outdoors + cap + mouth + unburned + stored.
  for (const double hours : {10.0 / 60.0, 48.0}) {
    BurningHeater b{a_day(5.0, 18.0), {}, {}, hours};
    BurnStepper stepper{*b.equations, {}};
    const std::vector<double> begun = b.equations->at_rest(b.interval);
    stepper.start(begun, 0.0);
    stepper.enter(b.interval);
    ASSERT_TRUE(BurningHeater::run(stepper, b.interval.end));
    EXPECT_LT(std::abs(b.closure(stepper, begun)), 1e-3) << hours << " h";
  }
}

TEST(Burn, ten_minute_margin_hardly_moves_when_slice_and_step_are_halved) {
  const HandBuiltHeater heater;
  const Branch branch = heater.branch();
  const Design day = a_day(10.0, 16.0);
  const Surround surround = surround_of(day);
  const SlicedPath path = slice_branch(branch, 100.0 * millimetre);
  const WoodFuel fuel = usual_wood();
  const DesignFlowQuestion question{&path, &surround, &fuel, 3.0 * kilogram_per_hour, 2.5, 1.5, {}};
  const BurnGrid grid;
  BurnGrid half = grid;
  half.slice = 0.5 * grid.slice;
  half.level_slice = 0.5 * grid.level_slice;
  // The error of a step of third order falls by eight when the step is halved.
  const auto usual = young_design_flows(question, day.site.outdoor_humidity, grid, {});
  const auto finer = young_design_flows(question, day.site.outdoor_humidity, half, BurnAccuracy{}.scaled(0.125));
  const auto finest = young_design_flows(question, day.site.outdoor_humidity, grid.finer(), BurnAccuracy{}.scaled(0.125));
  ASSERT_TRUE(usual && finer && finest);
  for (std::size_t i = 0; i < 2; ++i) {
    EXPECT_NEAR(in((*usual)[i].margin, pascal), in((*finer)[i].margin, pascal), 0.1);
    EXPECT_NEAR(in((*usual)[i].margin, pascal), in((*finest)[i].margin, pascal), 0.1) << "wall nodes too";
    EXPECT_FALSE((*usual)[i].quick_estimate);
  }
}

TEST(Burn, the_quick_estimates_of_the_young_ages_are_near_the_transient) {
  // They take the walls as heated all the time as they are at the end, so they flatter the first ten minutes; 2.5 Pa of
  // some 15 Pa of buoyancy bounds what was seen (1.7).
  const HandBuiltHeater heater;
  const Branch branch = heater.branch();
  const Design day = a_day(10.0, 16.0);
  const Surround surround = surround_of(day);
  const SlicedPath path = slice_branch(branch, 50.0 * millimetre);
  const WoodFuel fuel = usual_wood();
  const DesignFlowQuestion question{&path, &surround, &fuel, 3.0 * kilogram_per_hour, 2.5, 1.5, {}};
  const auto young = young_design_flows(question, day.site.outdoor_humidity);
  ASSERT_TRUE(young);
  EXPECT_NEAR(in((*young)[0].margin, pascal), in(check_design_flow(question, BenchAge::cold_bench).margin, pascal), 2.5);
  EXPECT_NEAR(in((*young)[1].margin, pascal), in(check_design_flow(question, BenchAge::one_hour).margin, pascal), 2.5);
  EXPECT_LT((*young)[0].margin, (*young)[1].margin) << "a cold bench robs more heat";
}

TEST(Burn, the_implicit_step_solves_the_slopes_it_was_given) {
  // Identity: (s I - J) u = r, with J u by differences of the rates. J leaves out how films answer to temperature and flow, so
  // on a path of still, dry, equally warm gas, where those answers vanish, the two must agree.
  BurningHeater b{a_day(5.0, 18.0)};
  kernel::Slopes slopes;
  std::vector<double> state = b.equations->at_rest(b.interval);
  state[b.flow()] = 0.02;
  std::vector<double> rate(state.size());
  b.interval.wanted_burn = 0.0;
  b.interval.flow_is_given = true;
  b.equations->rates(0.0, b.interval, state.data(), rate.data(), nullptr, &slopes);
  kernel::ImplicitStep step{*b.cells};
  const double shift = 0.2;
  step.prepare(slopes, state.data(), shift);
  std::vector<double> r(state.size(), 0.0);
  for (const kernel::Cell& cell : b.cells->cells) {
    if (cell.place == Place::mass) r[cell.base] = 0.01;
  }
  std::vector<double> u = r;
  step.solve(u);
  std::vector<double> moved = state;
  for (std::size_t n = 0; n < u.size(); ++n) moved[n] += u[n];
  std::vector<double> rate_moved(state.size());
  b.equations->rates(0.0, b.interval, moved.data(), rate_moved.data());
  double worst = 0.0;
  for (const kernel::Cell& cell : b.cells->cells) {
    if (cell.place != Place::mass) continue;
    for (std::size_t k = 0; k < 2 + cell.node_count; ++k) {
      const std::size_t n = cell.base + k;
      worst = std::max(worst, std::abs(shift * u[n] - (rate_moved[n] - rate[n]) - r[n]));
    }
  }
  EXPECT_LT(worst, 0.02 * 0.01);
}

}  // namespace
}  // namespace fluewright::test
