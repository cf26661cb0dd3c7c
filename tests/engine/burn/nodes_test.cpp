// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Flues that branch: the hand-built heater cut behind its bench by a tee that can stand open.

#include "engine/burn/burning_flue.hpp"
#include "tests/engine/burn/burning_heater.hpp"
#include "tests/engine/burn/cvode_run.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace fluewright::test {
namespace {

struct TeedHeater {
  HandBuiltHeater heater;
  Surround surround;
  std::unique_ptr<kernel::GasPair> gas;
  std::unique_ptr<kernel::BurningFlue> flue;
  kernel::Interval interval;

  explicit TeedHeater(const Design& day, const BurnGrid& grid = {}) : surround{surround_of(day)} {
    Branch branch = heater.branch();
    std::size_t bench = 0;
    for (std::size_t i = 0; i < branch.stretches.size(); ++i) {
      branch.stretches[i].piece = i;
      if (branch.stretches[i].place == Place::mass) bench = i;
    }
    FlueNetwork network;
    network.branches = {branch};
    const auto hole = kernel::open_tee(network, {bench, 0.0177 * square_metre});
    EXPECT_TRUE(hole);
    const double outdoors = in_kelvin(surround.outdoor);
    gas = std::make_unique<kernel::GasPair>(usual_wood(), surround.room_water);
    const kernel::AirRange air{outdoors, outdoors, in_kelvin(surround.room), in(surround.absolute, pascal),
                               in(surround.wind, metre_per_second)};
    flue = std::make_unique<kernel::BurningFlue>(std::move(network), hole, *gas, air, grid, surround, day.site.outdoor_humidity);
    interval.outdoor_begin = interval.outdoor_end = outdoors;
  }
  [[nodiscard]] double flow(const std::vector<double>& state, std::size_t branch) const {
    return state[flue->cells->branches[branch].flow];
  }
};

TEST(BurningNetwork, a_tee_that_is_shut_changes_nothing) {
  // Identity: the same heater in one branch. The node's own litre of gas and the cut in the entry length, both coarse here, leave 0.6 %.
  const Design day = a_day(5.0, 18.0);
  TeedHeater teed{day};
  teed.interval.end = 600.0;
  teed.interval.wanted_burn = 3.0 / 3600.0;
  kernel::BurnStepper stepper{*teed.flue->equations, {}};
  stepper.start(teed.flue->equations->at_rest(teed.interval), 0.0);
  stepper.enter(teed.interval);
  ASSERT_TRUE(BurningHeater::run(stepper, 600.0));
  BurningHeater plain{day};
  kernel::BurnStepper series{*plain.equations, {}};
  series.start(plain.equations->at_rest(plain.interval), 0.0);
  series.enter(plain.interval);
  ASSERT_TRUE(BurningHeater::run(series, 600.0));
  EXPECT_NEAR(teed.flow(stepper.state(), 0) / series.state()[plain.flow()], 1.0, 1e-2);
  EXPECT_NEAR(teed.flow(stepper.state(), 2), 0.0, 1e-9) << "nothing passes the shut hole";
}

TEST(BurningNetwork, nothing_piles_up_where_branches_meet_and_energy_closes_while_it_is_primed) {
  TeedHeater teed{a_day(15.0, 11.0)};
  kernel::BurnEquations& equations = *teed.flue->equations;
  kernel::BurnStepper stepper{equations, {}};
  teed.interval.end = 300.0;
  teed.interval.priming = 20e3;
  const std::vector<double> begun = equations.at_rest(teed.interval);
  stepper.start(begun, 0.0);
  stepper.enter(teed.interval);
  ASSERT_TRUE(BurningHeater::run(stepper, 300.0));
  using namespace kernel;
  const std::vector<double>& state = stepper.state();
  EXPECT_GT(teed.flow(state, 1), 0.0) << "the stack draws";
  EXPECT_GT(teed.flow(state, 2), 0.0) << "air comes through the open tee";
  // What the starter itself adds to the gas is all that the flows in lack: a few grams a second of some tens.
  const double surplus = teed.flow(state, 0) + teed.flow(state, 2) - teed.flow(state, 1);
  EXPECT_LT(surplus, 0.0);
  EXPECT_GT(surplus, -2.0e-3);
  const Lines& l = stepper.lines();
  const double stored = equations.wall_heat(state.data(), 290.0) - equations.wall_heat(begun.data(), 290.0) +
                        equations.gas_heat(state.data(), 290.0) - equations.gas_heat(begun.data(), 290.0);
  const double taken = l[unburned] + l[to_room] + l[to_outdoors] + l[out_of_cap] + l[out_of_mouth] + stored;
  EXPECT_NEAR(taken / (l[released] + l[latent]), 1.0, 2e-3);
}

TEST(BurningNetwork, closes_again_when_the_cap_goes_back_on_and_draws_on_by_itself) {
  // Five minutes of priming in a house colder than outdoors, then the cap goes on and the fire is lit.
  TeedHeater teed{a_day(15.0, 11.0)};
  kernel::BurnEquations& equations = *teed.flue->equations;
  kernel::BurnStepper stepper{equations, {}};
  teed.interval.end = 300.0;
  teed.interval.priming = 25e3;
  const std::vector<double> begun = equations.at_rest(teed.interval);
  stepper.start(begun, 0.0);
  stepper.enter(teed.interval);
  ASSERT_TRUE(BurningHeater::run(stepper, 300.0));
  EXPECT_GT(teed.flow(stepper.state(), 2), 0.01);
  kernel::Interval lit = teed.interval;
  lit.begin = 300.0;
  lit.end = 3600.0;
  lit.priming = 0.0;
  lit.wanted_burn = 3.0 / 3600.0;
  stepper.enter(lit);
  ASSERT_TRUE(BurningHeater::run(stepper, 300.5));
  ASSERT_TRUE(BurningHeater::run(stepper, 360.0));
  EXPECT_NEAR(teed.flow(stepper.state(), 2), 0.0, 1e-9) << "shut";
  EXPECT_GT(teed.flow(stepper.state(), 0), 0.0);
  ASSERT_TRUE(BurningHeater::run(stepper, 3600.0));
  const std::vector<double>& state = stepper.state();
  // Mass: what leaves the first branch is what enters the stack, but for the gas that the node's own litres shed as it warms.
  EXPECT_NEAR(teed.flue->equations->cells_now()[teed.flue->cells->branches[0].last - 1].flow / teed.flow(state, 1), 1.0, 1e-3);
  using namespace kernel;
  const Lines& l = stepper.lines();
  const double stored = equations.wall_heat(state.data(), 290.0) - equations.wall_heat(begun.data(), 290.0) +
                        equations.gas_heat(state.data(), 290.0) - equations.gas_heat(begun.data(), 290.0);
  const double taken = l[unburned] + l[to_room] + l[to_outdoors] + l[out_of_cap] + l[out_of_mouth] + stored;
  EXPECT_NEAR(taken / (l[released] + l[latent]), 1.0, 1e-3);
}

TEST(BurningNetwork, agrees_with_cvode) {
  TeedHeater teed{a_day(8.0, 14.0), few_slices()};
  kernel::BurnEquations& equations = *teed.flue->equations;
  teed.interval.end = 300.0;
  teed.interval.priming = 15e3;
  teed.interval.wanted_burn = 2.0 / 3600.0;
  const std::vector<double> begun = equations.at_rest(teed.interval);
  std::vector<std::vector<double>> reference;
  const std::vector<double> times{60.0, 300.0};
  ASSERT_TRUE(run_cvode(equations, teed.interval, begun, 1e-7, false, times, &reference).done);
  kernel::BurnStepper stepper{equations, {}};
  stepper.start(begun, 0.0);
  stepper.enter(teed.interval);
  for (std::size_t k = 0; k < times.size(); ++k) {
    ASSERT_TRUE(BurningHeater::run(stepper, times[k]));
    double worst = 0.0;
    for (const kernel::Cell& cell : teed.flue->cells->cells) {
      worst = std::max(worst, std::abs(stepper.state()[cell.base] - reference[k][cell.base]));
    }
    EXPECT_LT(worst, 0.5) << "kelvin, after " << times[k] << " s";
    EXPECT_NEAR(teed.flow(stepper.state(), 1) / teed.flow(reference[k], 1), 1.0, 0.01);
  }
}

}  // namespace
}  // namespace fluewright::test
