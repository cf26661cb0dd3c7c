// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_run.hpp"
#include "tests/engine/network/hand_built_network.hpp"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <memory>

namespace fluewright::test {
namespace {

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

std::unique_ptr<HandBuiltNetwork> any_network() {
  HandBuiltHeater h;
  h.bore = between(100.0, 250.0) * millimetre;
  h.bench = between(0.5, 20.0) * metre;
  h.stack = between(2.0, 12.0) * metre;
  h.riser = between(0.6, 1.8) * metre;
  h.barrel = h.bore + between(250.0, 500.0) * millimetre;
  h.free_share = between(0.1, 0.9);
  auto built = std::make_unique<HandBuiltNetwork>(std::move(h));
  // From the stack down, so that the indices of what is cut later still hold.
  const int foot = *rc::gen::inRange(0, 4);
  if (foot == 1) built->open_tee_at_foot(between(0.1, 2.0) * metre);
  if (foot == 2) built->opening_at_foot({0, between(1e-5, 2e-3) * square_metre, {}, {}, {}});
  if (foot == 3) {
    built->opening_at_foot({0, between(5e-3, 2e-2) * square_metre, 1e-5 * square_metre, between(2.0, 15.0) * pascal,
                            between(1.0, 8.0) * pascal});
  }
  if (foot == 0 && *rc::gen::arbitrary<bool>()) built->bypass_around_bench(between(0.2, 50.0));
  if (*rc::gen::arbitrary<bool>()) built->outside_air_duct(between(0.5, 6.0) * metre);
  return built;
}

Design any_day() {
  Design day = a_day(between(-25.0, 30.0), between(0.0, 26.0));
  day.site.altitude = between(0.0, 3000.0) * metre;
  day.room.extra_depressurisation = between(0.0, 12.0) * pascal;
  day.site.wind_speed = between(0.0, 8.0) * metre_per_second;
  return day;
}

RC_GTEST_PROP(AnyNetwork, keeps_mass_and_energy_in_every_state_it_settles_in, ()) {
  const auto built = any_network();
  const Design day = any_day();
  const MassFlow burn = between(1.0, 8.0) * kilogram_per_hour;
  const MarchedNetwork fine{built->network, day, 100.0 * millimetre, burn};
  const MarchedNetwork coarse{built->network, day, 500.0 * millimetre, burn};
  const auto points = NetworkRun{fine.march, coarse.march}.points();
  const Power wanted_heat = burn * net_heating_value(usual_wood());
  RC_ASSERT(!points.empty());  // air always settles somewhere
  for (const NetworkPoint& p : points) {
    // Of the wanted fire's heat: a fire that hardly gets air releases next to nothing to measure against.
    const Power missed = p.point.heat.closure * p.point.heat.released;
    RC_ASSERT(in(missed / wanted_heat, Ratio(1.0)) < 1e-9);
    RC_ASSERT(in(p.point.residual, pascal) < 1e-9);
    MassFlow through{};
    for (const MassFlow& f : p.solution.flows) through = std::max(through, MassFlow(abs(f)));
    RC_ASSERT(in(p.solution.worst_mass / through, Ratio(1.0)) < 1e-10);
    for (const BranchFlow& f : p.solution.state.branches) {
      RC_ASSERT(std::isfinite(in_kelvin(f.totals.exit)));
      RC_ASSERT(in_kelvin(f.totals.exit) > 200.0);
    }
    for (const NodeState& node : p.solution.state.nodes) {
      RC_ASSERT(node.flue_share.value() >= 0.0);
      RC_ASSERT(node.flue_share.value() <= 1.0);
    }
  }
}

RC_GTEST_PROP(AnyNetwork, stays_finite_at_any_flows_even_such_as_no_balance_would_allow, ()) {
  const auto built = any_network();
  const MarchedNetwork n{built->network, any_day(), 500.0 * millimetre};
  std::vector<MassFlow> flows(built->network.branches.size());
  for (MassFlow& f : flows) {
    f = std::pow(10.0, between(-12.0, -1.0)) * (*rc::gen::arbitrary<bool>() ? 1.0 : -1.0) * kilogram_per_second;
  }
  NetworkState state = n.march.at_rest();
  n.march.pass(flows, state, true);
  for (const BranchFlow& f : state.branches) {
    RC_ASSERT(std::isfinite(in(f.drive, pascal)));
    RC_ASSERT(std::isfinite(f.slopes.drive_by_flow));
    RC_ASSERT(std::isfinite(in_kelvin(f.totals.exit)));
  }
}

}  // namespace
}  // namespace fluewright::test
