// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_run.hpp"
#include "tests/engine/network/hand_built_network.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace fluewright::test {
namespace {

/// Air as warm indoors as out, still and equally damp: nothing drives but what the wind sucks at the cap.
Design still_day(double suction) {
  Design day;
  day.site.outdoor_temperature = day.room.temperature = celsius(15.0);
  day.site.outdoor_humidity = day.room.humidity = 0.5;
  day.site.wind_coefficient = -1.0;
  const Surround s = surround_of(day);
  day.site.wind_speed = std::sqrt(2.0 * suction / in(s.outdoor_air, kilogram_per_cubic_metre)) * metre_per_second;
  return day;
}

/// A hair of pipe that carries nothing but a loss coefficient.
Stretch resistance(double coefficient, Length bore = 150.0 * millimetre) {
  Stretch s;
  s.length = 0.01 * millimetre;
  s.section = Section::circle(bore);
  s.at_start = {{coefficient, coefficient, LocalLoss::Reynolds::none, "by hand", {}}};
  return s;
}

BranchEnd at_node(std::size_t node, JunctionPort port) { return {EndKind::node, node, {}, port, false}; }
const BranchEnd room_end{EndKind::room_air, 0, {}, JunctionPort::run_in, false};
const BranchEnd cap_end{EndKind::outdoor_air, 0, {}, JunctionPort::run_in, true};

/// Room, one branch, two in parallel, one to the cap.
FlueNetwork parallel(double first, double second, JunctionForm part, JunctionForm join) {
  FlueNetwork n;
  n.nodes = {{0, {}, part}, {0, {}, join}};
  n.branches = {{room_end, at_node(0, JunctionPort::branch), {resistance(1.0)}, {}},
                {at_node(0, JunctionPort::run_in), at_node(1, JunctionPort::run_in), {resistance(first)}, {}},
                {at_node(0, JunctionPort::run_out), at_node(1, JunctionPort::run_out), {resistance(second)}, {}},
                {at_node(1, JunctionPort::branch), cap_end, {resistance(0.0)}, {}}};
  n.main_path = {0, 1, 3};
  return n;
}

TEST(NodeSolver, two_branches_in_parallel_flow_as_worked_by_hand) {
  // By hand, 10 Pa over 150 mm pipe: coefficients 4 and 16 side by side pass 1/2 + 1/4 = 3/4 of what one of 1 would, so
  // they are 1/(3/4)^2 = 16/9 on the whole flow. With 1 before and the jet's 1 behind, 34/9:
  //   m = A sqrt(2 rho 10 / (34/9)), two thirds of it through the 4, one third through the 16.
  // Junctions so wide that they lose nothing; friction over the hairs of pipe is some 1e-6.
  const JunctionForm wide{1e4 * square_metre, 1e4 * square_metre, 90.0 * degree, false};
  const FlueNetwork network = parallel(4.0, 16.0, wide, wide);
  const MarchedNetwork n{network, still_day(10.0)};
  const NodeSolver solver{n.march};
  const NetworkSolution s = solver.solve(solver.first_guess(0.05 * kilogram_per_second), std::nullopt);
  ASSERT_TRUE(s.converged);
  const double area = in(Section::circle(150.0 * millimetre).area(), square_metre);
  const double rho = in(n.surround.outdoor_air, kilogram_per_cubic_metre);
  const double whole = area * std::sqrt(2.0 * rho * 10.0 / (34.0 / 9.0));
  EXPECT_NEAR(kg_s(s.flows[0]) / whole, 1.0, 1e-5);
  EXPECT_NEAR(kg_s(s.flows[1]) / whole, 2.0 / 3.0, 1e-5);
  EXPECT_NEAR(kg_s(s.flows[2]) / whole, 1.0 / 3.0, 1e-5);
  // The first node lies under the room by the first resistance: 10 x 9/34 Pa.
  EXPECT_NEAR(in(s.node_gauges[0], pascal), -10.0 * 9.0 / 34.0, 1e-4);
  EXPECT_TRUE(solver.is_stable(s));
}

TEST(NodeSolver, a_symmetric_split_is_symmetric) {
  const Area area = Section::circle(150.0 * millimetre).area();
  const JunctionForm tee{area, area, 90.0 * degree, false};
  const FlueNetwork network = parallel(3.0, 3.0, tee, tee);
  const MarchedNetwork n{network, still_day(10.0)};
  const NodeSolver solver{n.march};
  const NetworkSolution s = solver.solve(solver.first_guess(0.05 * kilogram_per_second), std::nullopt);
  ASSERT_TRUE(s.converged);
  EXPECT_NEAR(kg_s(s.flows[1] / s.flows[2] * kilogram_per_second), 1.0, 1e-9);
}

TEST(NodeSolver, keeps_mass_at_every_node_and_pressure_in_every_branch) {
  for (int which = 0; which < 5; ++which) {
    HandBuiltNetwork built;
    if (which == 0) built.open_tee_at_foot();
    if (which == 1) built.bypass_around_bench(0.5);
    if (which == 2) built.outside_air_duct(3.0 * metre);
    if (which == 3) built.opening_at_foot({0, 2e-4 * square_metre, {}, {}, {}});
    if (which == 4) built.opening_at_foot({0, 0.0177 * square_metre, 1e-5 * square_metre, 8.0 * pascal, 4.0 * pascal});
    const MarchedNetwork n{built.network, a_day(5.0, 18.0)};
    const NodeSolver solver{n.march};
    const NetworkSolution s = solver.solve(solver.first_guess(0.02 * kilogram_per_second), std::nullopt);
    ASSERT_TRUE(s.converged) << which;
    const MassFlow through = s.state.branches[n.sliced.stack].at_to;
    EXPECT_LT(in(s.worst_mass / through, Ratio(1.0)), 1e-10) << which;
    EXPECT_LT(in(s.worst_pressure, pascal), 1e-9) << which;
    // By the flows themselves, not by the solver's word.
    std::vector<double> sum(built.network.nodes.size());
    for (std::size_t b = 0; b < built.network.branches.size(); ++b) {
      const Branch& branch = built.network.branches[b];
      if (branch.from.kind == EndKind::node) sum[branch.from.node] -= kg_s(s.state.branches[b].at_from);
      if (branch.to.kind == EndKind::node) sum[branch.to.node] += kg_s(s.state.branches[b].at_to);
    }
    for (const double left : sum) EXPECT_LT(std::abs(left), 1e-10 * kg_s(through)) << which;
  }
}

TEST(NodeSolver, on_a_series_path_gives_the_scalar_residual_at_every_flow) {
  HandBuiltNetwork built;
  const MarchedNetwork n{built.network, a_day(5.0, 18.0)};
  const SlicedPath fine = slice_branch(built.network.branches[0], 50.0 * millimetre);
  const SlicedPath coarse = slice_branch(built.network.branches[0], 500.0 * millimetre);
  const FreeRun scalar{fine, coarse, n.surround, usual_wood(), 3.0 * kilogram_per_hour};
  const NetworkRun network{n.march, n.march};
  const NetworkSolution guess = NodeSolver{n.march}.first_guess(0.01 * kilogram_per_second);
  for (const double flow : {-0.02, -0.004, -1e-4, 1e-4, 3e-3, 0.02, 0.06}) {
    const MassFlow m = flow * kilogram_per_second;
    EXPECT_NEAR(in(network.at_cap_flow(m, guess).left_over, pascal), in(scalar.residual(m), pascal), 1e-9) << flow;
  }
}

TEST(NodeSolver, on_a_series_path_gives_the_scalar_solution) {
  for (const auto& [outdoors, room] : {std::pair{5.0, 18.0}, {18.0, 13.0}, {-15.0, 21.0}, {28.0, 22.0}}) {
    HandBuiltNetwork built;
    const Design day = a_day(outdoors, room);
    const MarchedNetwork fine{built.network, day};
    const MarchedNetwork coarse{built.network, day, 500.0 * millimetre};
    const SlicedPath fine_path = slice_branch(built.network.branches[0], 50.0 * millimetre);
    const SlicedPath coarse_path = slice_branch(built.network.branches[0], 500.0 * millimetre);
    const auto scalar = FreeRun{fine_path, coarse_path, fine.surround, usual_wood(), 3.0 * kilogram_per_hour}.points();
    const auto network = NetworkRun{fine.march, coarse.march}.points();
    ASSERT_EQ(scalar.size(), network.size()) << outdoors;
    for (std::size_t i = 0; i < scalar.size(); ++i) {
      const OperatingPoint& p = network[i].point;
      EXPECT_EQ(p.forward, scalar[i].forward);
      EXPECT_TRUE(p.stable);
      EXPECT_NEAR(in(p.flue_gas / scalar[i].flue_gas, Ratio(1.0)), 1.0, 1e-9);
      EXPECT_NEAR(in_kelvin(p.exit_temperature) / in_kelvin(scalar[i].exit_temperature), 1.0, 1e-9);
      EXPECT_NEAR(in(p.heat.stack_loss / scalar[i].heat.stack_loss, Ratio(1.0)), 1.0, 1e-9);
    }
  }
}

TEST(NodeSolver, an_unstable_balance_is_called_unstable) {
  // Between the forward and the backward state of a series path lies a balance that does not come back: where the scalar
  // residual rises through zero. A start fire in a cold house has one.
  HandBuiltNetwork built;
  const MarchedNetwork n{built.network, a_day(18.0, 13.0)};
  const NetworkRun run{n.march, n.march};
  const NodeSolver solver{n.march};
  NetworkSolution guess = solver.first_guess(-5e-3 * kilogram_per_second);
  double low = -5e-3;
  double high = 5e-3;
  const auto residual = [&](double flow) {
    return in(run.at_cap_flow(flow * kilogram_per_second, guess).left_over, pascal);
  };
  // From the backward state up to where the residual is positive again.
  low = -4e-3;
  ASSERT_LT(residual(low), 0.0);
  ASSERT_GT(residual(high), 0.0);
  for (int i = 0; i < 60; ++i) (residual(0.5 * (low + high)) < 0.0 ? low : high) = 0.5 * (low + high);
  const NetworkSolution s = run.at_cap_flow(low * kilogram_per_second, guess);
  EXPECT_FALSE(solver.is_stable(s));
}

TEST(NodeSolver, cuts_a_circle_and_still_closes_mass_heat_and_temperature) {
  // A side way that rises beside the bench: with little going down the stack the gas runs round in it. Every node's
  // temperature is that of what mixes there although one of them had to be guessed on the way.
  HandBuiltHeater heater;
  heater.bench = 3.0 * metre;
  HandBuiltNetwork built{heater};
  const std::size_t side = built.bypass_around_bench(0.5);
  built.network.branches[side].stretches.front() = built.pipe(1.0 * metre, 0.5 * metre, built.network.nodes[0].height);
  built.network.branches[1].stretches.front().rise = 0.5 * metre;
  built.network.nodes[1].height += 0.5 * metre;
  const MarchedNetwork n{built.network, a_day(5.0, 18.0)};
  const NetworkRun run{n.march, n.march};
  const HeldFlow wide_open{n.sliced.stack, 0.02 * kilogram_per_second};
  NetworkSolution s = NodeSolver{n.march}.solve_afresh(wide_open.flow, wide_open);
  bool circled = false;
  for (const double flow : {0.02, 0.01, 0.005, 0.002, 5e-4, -5e-4, -2e-3, -5e-3}) {
    s = run.at_cap_flow(flow * kilogram_per_second, s);
    ASSERT_TRUE(s.converged) << flow;
    const bool cut = std::any_of(s.state.nodes.begin(), s.state.nodes.end(), [](const NodeState& node) { return node.cut; });
    circled = circled || cut;
    for (const NodeState& node : s.state.nodes) {
      EXPECT_NEAR(in_kelvin(node.temperature), in_kelvin(node.mixed), 1e-7) << flow;
    }
    EXPECT_LT(operating_point_of(n.march, s, true).heat.closure.value(), 1e-9) << flow;
  }
  EXPECT_TRUE(circled) << "no flow of this case runs in a circle any more: find another";
}

}  // namespace
}  // namespace fluewright::test
