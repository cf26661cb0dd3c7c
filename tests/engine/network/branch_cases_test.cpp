// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_run.hpp"
#include "tests/engine/network/hand_built_network.hpp"

#include <gtest/gtest.h>

#include <memory>

namespace fluewright::test {
namespace {

/// The forward state of a network on a day.
NetworkPoint running(const FlueNetwork& network, const Design& day) {
  const MarchedNetwork fine{network, day};
  const MarchedNetwork coarse{network, day, 500.0 * millimetre};
  const auto points = NetworkRun{fine.march, coarse.march}.points();
  EXPECT_FALSE(points.empty());
  EXPECT_TRUE(points.front().point.forward);
  EXPECT_TRUE(points.front().point.stable);
  return points.front();
}

TEST(OpenTee, at_the_stack_s_foot_lets_room_air_in_and_cools_the_stack) {
  const Design day = a_day(5.0, 18.0);
  HandBuiltNetwork shut;
  HandBuiltNetwork open;
  const std::size_t tee = open.open_tee_at_foot();
  const NetworkPoint a = running(shut.network, day);
  const NetworkPoint b = running(open.network, day);
  EXPECT_GT(kg_s(b.solution.flows[tee]), 0.0);
  // Air by the tee takes the draft from the fire: less through the heater, more through the stack, and colder.
  EXPECT_LT(kg_s(b.solution.flows[0]), kg_s(a.solution.flows[0]));
  EXPECT_GT(b.point.flue_gas, a.point.flue_gas);
  EXPECT_LT(b.point.exit_temperature, a.point.exit_temperature - 50.0 * kelvin);
  EXPECT_EQ(b.point.smoke_to_room, MassFlow{});
}

TEST(Bypass, a_damper_opens_a_short_way_past_the_bench_and_shuts_it) {
  const Design day = a_day(5.0, 18.0);
  HandBuiltHeater heater;
  heater.bench = 15.0 * metre;
  HandBuiltNetwork none{heater};
  HandBuiltNetwork open{heater};
  HandBuiltNetwork shut{heater};
  const std::size_t way = open.bypass_around_bench(0.2);
  shut.bypass_around_bench(1e9);
  const NetworkPoint without = running(none.network, day);
  const NetworkPoint by_open = running(open.network, day);
  const NetworkPoint by_shut = running(shut.network, day);
  // Open, a good share takes the short way and the gas behind the bench is hotter.
  EXPECT_GT(kg_s(by_open.solution.flows[way]), 0.2 * kg_s(by_open.point.flue_gas));
  EXPECT_GT(by_open.solution.state.nodes[1].temperature, by_shut.solution.state.nodes[1].temperature + 5.0 * kelvin);
  // Shut, hardly anything passes it and the heater runs as without: a few joules are lost in the still pipe.
  EXPECT_LT(kg_s(by_shut.solution.flows[way]), 1e-4 * kg_s(by_shut.point.flue_gas));
  EXPECT_NEAR(in(by_shut.point.flue_gas / without.point.flue_gas, Ratio(1.0)), 1.0, 0.03);
}

TEST(OutsideAirDuct, feeds_the_fire_beside_the_room_and_lets_room_air_flow_out_backwards_under_suction) {
  // Common practice, no source: an outside-air duct does not stop a house from being sucked out; here the feed's mouth.
  HandBuiltNetwork built;
  const std::size_t duct = built.outside_air_duct(3.0 * metre);
  Design day = a_day(5.0, 18.0);
  const NetworkPoint calm = running(built.network, day);
  EXPECT_GT(kg_s(calm.solution.flows[duct]), 0.0);
  EXPECT_GT(kg_s(calm.solution.flows[0]), 0.0);
  day.room.extra_depressurisation = 6.0 * pascal;
  const NetworkPoint sucked = running(built.network, day);
  EXPECT_GT(kg_s(sucked.solution.flows[duct]), kg_s(calm.solution.flows[duct]));
  // The feed's mouth runs backwards: outdoor air blows out of it into the room, and no smoke with it.
  EXPECT_LT(kg_s(sucked.solution.flows[0]), 0.0);
  EXPECT_EQ(sucked.point.smoke_to_room, MassFlow{});
  EXPECT_NEAR(in_celsius(sucked.solution.state.branches[0].totals.exit), 5.0, 3.0);
}

TEST(DraftRegulator, opens_at_its_set_draft_and_holds_the_draft_there) {
  const Opening flap{0, 0.0177 * square_metre, 1e-6 * square_metre, 12.0 * pascal, 3.0 * pascal};
  double strongest_without = 0.0;
  for (const double outdoors : {28.0, 15.0, 0.0, -20.0}) {
    HandBuiltHeater heater;
    heater.stack = 7.0 * metre;
    heater.bench = 3.0 * metre;
    HandBuiltNetwork with{heater};
    HandBuiltNetwork without{heater};
    const std::size_t side = with.opening_at_foot(flap);
    without.opening_at_foot({0, 1e-6 * square_metre, {}, {}, {}});
    const Design day = a_day(outdoors, 20.0);
    // Draft at the flap: how far the flue's static pressure lies under the room's.
    const auto draft = [&](const HandBuiltNetwork& built) {
      const NetworkPoint p = running(built.network, day);
      const MarchedNetwork n{built.network, day};
      const auto& node = built.network.nodes.front();
      const auto& flows = p.solution.state.branches;
      const JunctionHeads heads = junction_heads(node.form, {flows[0].at_to, -flows[1].at_from, flows[side].at_to},
                                                 p.solution.state.nodes[0].density);
      return std::pair{in(n.surround.room_gauge(node.height) - p.solution.node_gauges[0] - heads.branch, pascal),
                       kg_s(p.solution.flows[side])};
    };
    const auto [held, air] = draft(with);
    const auto [free, leak] = draft(without);
    strongest_without = std::max(strongest_without, free);
    EXPECT_LT(leak, 1e-5);
    if (free < 12.0) {
      EXPECT_LT(air, 1e-5) << outdoors << " degC: shut under its set draft";
      EXPECT_NEAR(held, free, 0.05);
    } else {
      EXPECT_GT(air, 1e-4) << outdoors << " degC: open above it";
      EXPECT_GT(held, 12.0);
      EXPECT_LT(held, 15.0);
    }
  }
  EXPECT_GT(strongest_without, 20.0) << "the test needs a day that opens the flap";
}

TEST(LeakyJoint, lets_room_air_in_under_draft_and_smoke_out_where_the_gauge_is_above_the_room_s) {
  const Opening crack{0, 2e-4 * square_metre, {}, {}, {}};
  {
    HandBuiltNetwork built;
    const std::size_t leak = built.opening_at_foot(crack);
    const NetworkPoint p = running(built.network, a_day(5.0, 18.0));
    EXPECT_GT(kg_s(p.solution.flows[leak]), 0.0);
    EXPECT_EQ(p.point.smoke_to_room, MassFlow{});
  }
  {
    // At the riser's top the hot column below presses outwards.
    HandBuiltHeater heater;
    heater.with_riser_in_barrel = false;
    heater.riser = 1.8 * metre;
    heater.stack = 2.0 * metre;
    heater.free_share = 0.9;
    HandBuiltNetwork built{heater};
    JunctionForm form = built.tee();
    form.branch = crack.area;
    form.side_opening = true;
    const std::size_t node = built.cut(0, 3, form);
    Branch side;
    side.from = {EndKind::room_air, 0, built.network.nodes[node].height, JunctionPort::run_in, false};
    side.to = built.at_branch(node);
    side.opening = crack;
    built.network.branches.push_back(side);
    Design day = a_day(15.0, 18.0);
    day.room.extra_depressurisation = 8.0 * pascal;
    const NetworkPoint p = running(built.network, day);
    EXPECT_LT(kg_s(p.solution.flows.back()), 0.0);
    EXPECT_NEAR(kg_s(p.point.smoke_to_room), -kg_s(p.solution.flows.back()), 1e-9);
    EXPECT_GT(p.solution.node_gauges[0], surround_of(day).room_gauge(built.network.nodes[node].height));
  }
}

TEST(Nodes, mix_heat_and_gas_of_what_flows_in) {
  // Identity: enthalpy and oxygen of two streams add up.
  HandBuiltNetwork built;
  const std::size_t tee = built.open_tee_at_foot();
  const NetworkPoint p = running(built.network, a_day(5.0, 18.0));
  const BranchFlow& hot = p.solution.state.branches[0];
  const BranchFlow& air = p.solution.state.branches[tee];
  const NodeState& node = p.solution.state.nodes[0];
  const auto enthalpy = [](const BranchFlow& f) {
    return Power(f.outflow() * mixture_of(f.leaving).specific_enthalpy(f.totals.exit));
  };
  const MassFlow sum = hot.outflow() + air.outflow();
  EXPECT_NEAR(in(node.gas->specific_enthalpy(node.temperature) * sum / (enthalpy(hot) + enthalpy(air)), Ratio(1.0)), 1.0, 1e-12);
  const std::size_t o2 = index_of(Species::oxygen);
  const auto oxygen = hot.outflow() * hot.leaving[o2] + air.outflow() * air.leaving[o2];
  EXPECT_NEAR(in(node.composition[o2] * sum / oxygen, Ratio(1.0)), 1.0, 1e-9);
  EXPECT_NEAR(node.flue_share.value(), in(hot.outflow() / sum, Ratio(1.0)), 1e-9);
  const GasMixture by_blend = blend(mixture_of(hot.leaving), hot.outflow(), mixture_of(air.leaving), air.outflow());
  for (const Species s : all_species) {
    EXPECT_NEAR(by_blend.mole_fraction(s).value(), node.gas->mixture().mole_fraction(s).value(), 1e-9);
  }
}

}  // namespace
}  // namespace fluewright::test
