// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_run.hpp"
#include "tests/engine/network/hand_built_network.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace fluewright::test {
namespace {

std::vector<NetworkPoint> states(const FlueNetwork& network, const Design& day) {
  const MarchedNetwork fine{network, day};
  const MarchedNetwork coarse{network, day, 500.0 * millimetre};
  return NetworkRun{fine.march, coarse.march}.points();
}

TEST(SeveralStates, of_a_cold_house_are_found_forward_hot_and_reversed_cold_with_their_stability) {
  // Common practice, no source: with the house colder than outdoors an unaided fire can burn backwards. Here with a
  // bypass beside the bench.
  HandBuiltNetwork built;
  built.bypass_around_bench(1.0);
  const auto points = states(built.network, a_day(18.0, 13.0));
  ASSERT_EQ(points.size(), 2u);
  EXPECT_TRUE(points[0].point.forward);
  EXPECT_TRUE(points[0].point.stable);
  EXPECT_EQ(points[0].point.smoke_to_room, MassFlow{});
  EXPECT_FALSE(points[1].point.forward);
  EXPECT_TRUE(points[1].point.stable);
  EXPECT_LT(points[1].point.flue_gas, MassFlow{});
  EXPECT_GT(points[1].point.smoke_to_room, MassFlow{});
  // The stack of the reversed state is cold.
  EXPECT_NEAR(in_celsius(points[1].solution.state.nodes[1].temperature), 18.0, 5.0);
}

TEST(SeveralStates, of_an_open_tee_include_a_fire_that_burns_backwards_while_the_stack_draws) {
  HandBuiltNetwork built;
  const std::size_t tee = built.open_tee_at_foot();
  const auto points = states(built.network, a_day(5.0, 18.0));
  const auto odd = std::find_if(points.begin(), points.end(), [](const NetworkPoint& p) {
    return p.point.flue_gas > MassFlow{} && !p.point.forward;
  });
  ASSERT_NE(odd, points.end());
  // The tee feeds the stack and the heater both; smoke comes out of the feed.
  EXPECT_LT(odd->solution.flows[0], MassFlow{});
  EXPECT_GT(odd->solution.flows[tee], MassFlow{});
  EXPECT_GT(odd->point.smoke_to_room, MassFlow{});
  EXPECT_TRUE(odd->point.stable);
}

TEST(SeveralStates, come_back_when_the_node_solver_starts_beside_them) {
  HandBuiltNetwork built;
  built.open_tee_at_foot();
  const Design day = a_day(5.0, 18.0);
  const MarchedNetwork n{built.network, day};
  const NodeSolver solver{n.march};
  for (const NetworkPoint& p : states(built.network, day)) {
    NetworkSolution beside = p.solution;
    beside.x *= 1.02;
    beside.walked = nullptr;
    beside.slopes.resize(0, 0);
    const NetworkSolution again = solver.solve(beside, std::nullopt);
    ASSERT_TRUE(again.converged);
    for (std::size_t b = 0; b < again.flows.size(); ++b) {
      EXPECT_NEAR(in(again.flows[b], kilogram_per_second), in(p.solution.flows[b], kilogram_per_second), 1e-9);
    }
  }
}

TEST(SeveralStates, close_their_energy_balance) {
  for (int which = 0; which < 3; ++which) {
    HandBuiltNetwork built;
    if (which == 0) built.open_tee_at_foot();
    if (which == 1) built.outside_air_duct(3.0 * metre);
    if (which == 2) built.bypass_around_bench(2.0);
    for (const NetworkPoint& p : states(built.network, a_day(18.0, 13.0))) {
      EXPECT_LT(p.point.heat.closure.value(), 1e-9) << which;
      EXPECT_LT(in(p.point.residual, pascal), 1e-9) << which;
    }
  }
}

}  // namespace
}  // namespace fluewright::test
