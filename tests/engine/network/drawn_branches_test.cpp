// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The whole answer of drawings with branches.

#include "engine/solve/assessment.hpp"
#include "engine/solve/surround.hpp"
#include "tests/engine/layout/branched_drawings.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace fluewright::test {
namespace {

double kg_s(MassFlow flow) { return in(flow, kilogram_per_second); }

Assessment answer(const Chain& chain) { return assess(chain.design, *shipped_library()); }

const BranchState* side_of(const Assessment& a) {
  const auto found = std::find_if(a.branches.begin(), a.branches.end(), [](const BranchState& s) { return !s.on_main_path; });
  return found == a.branches.end() ? nullptr : &*found;
}

/// A day that draws well.
Chain on_a_cold_day(Chain chain) {
  chain.design.site.outdoor_temperature = celsius(-5.0);
  chain.design.room.temperature = celsius(18.0);
  return chain;
}

std::vector<Chain> all_cases() {
  return {on_a_cold_day(tee_at_foot("off")), on_a_cold_day(bypassed_stack()), on_a_cold_day(bypassed_bench(20.0 * degree)),
          on_a_cold_day(duct_beside_feed()),
          on_a_cold_day(with_in_stack("draft_regulator")), on_a_cold_day(with_in_stack("leaky_joint"))};
}

TEST(AnAnswerWithBranches, HasEveryNumberOfOneWithout) {
  for (const Chain& chain : all_cases()) {
    const Assessment a = answer(chain);
    ASSERT_TRUE(a.verdict.has_value());
    EXPECT_EQ(a.design_flow.size(), 3u);
    ASSERT_NE(a.running_point(), nullptr);
    EXPECT_TRUE(a.running_point()->stable);
    EXPECT_LT(a.running_point()->heat.closure.value(), 1e-9);
    EXPECT_EQ(a.branches.size(), a.path.network.branches.size());
    EXPECT_EQ(a.running_point()->branch_flows.size(), a.branches.size());
    EXPECT_EQ(a.design_flow.front().branch_flows.size(), a.branches.size());
    EXPECT_TRUE(a.exit_temperature.has_value());
    EXPECT_TRUE(a.condensation.has_value());
  }
}

TEST(AnAnswerWithBranches, AddsUpAlongItsMainPath) {
  // Identity: room gauge at the inlet + sum of buoyancy - sum of loss = gauge at the cap.
  for (const Chain& chain : all_cases()) {
    const Assessment a = answer(chain);
    const Surround s = surround_of(chain.design);
    Pressure sum = s.gauge_at(a.path.network.branches.front().from) - s.cap_gauge;
    Length along{};
    for (const SliceState& row : a.profile) {
      sum += row.buoyancy + row.fan - row.loss;
      along += row.length;
      EXPECT_NEAR(in(row.s, metre), in(along, metre), 1e-9);
    }
    EXPECT_NEAR(in(sum, pascal), 0.0, 1e-6);
    EXPECT_NEAR(in(a.path_length, metre), in(along, metre), 1e-9);
  }
}

TEST(AnAnswerWithBranches, MakesTheMarginOfItsOwnParts) {
  for (const Chain& chain : all_cases()) {
    const Assessment a = answer(chain);
    for (const DesignFlow& d : a.design_flow) {
      // Acceleration has a safety of its own, so the parts bound the margin rather than give it.
      const Pressure drive = d.room_gauge + d.buoyancy - d.cap_gauge - d.wind_allowance;
      const Ratio safety = chain.design.fire.flow_safety;
      EXPECT_LE(in(d.margin, pascal), in(drive - d.resistance, pascal) + 1e-6);
      EXPECT_GE(in(d.margin, pascal), in(drive - safety * d.resistance, pascal) - 0.5);
    }
  }
}

TEST(AnAnswerWithBranches, IsBitEqualHoweverTheFileIsOrdered) {
  for (Chain chain : all_cases()) {
    const Assessment first = answer(chain);
    std::reverse(chain.design.pieces.begin(), chain.design.pieces.end());
    std::reverse(chain.design.joints.begin(), chain.design.joints.end());
    const Assessment second = answer(chain);
    EXPECT_EQ(in(first.worst_margin, pascal), in(second.worst_margin, pascal));
    ASSERT_EQ(first.operating_points.size(), second.operating_points.size());
    for (std::size_t i = 0; i < first.operating_points.size(); ++i) {
      EXPECT_EQ(kg_s(first.operating_points[i].flue_gas), kg_s(second.operating_points[i].flue_gas));
    }
  }
}

TEST(AnOpenTee, TakesTheDraftFromTheFireAndSaysSo) {
  const Assessment shut = answer(on_a_cold_day(tee_at_foot("on")));
  const Assessment open = answer(on_a_cold_day(tee_at_foot("off")));
  EXPECT_TRUE(shut.branches.empty());
  EXPECT_LT(open.worst_margin, shut.worst_margin);
  EXPECT_LT(*open.exit_temperature, *shut.exit_temperature);
  ASSERT_NE(side_of(open), nullptr);
  EXPECT_GT(kg_s(side_of(open)->flow), 0.0);
  EXPECT_EQ(side_of(open)->flue_share, Ratio(0.0));
  EXPECT_EQ(count(open.findings, FindingCode::branch_draws_air), 1u);
}

TEST(ABypass, TakesPartOfTheGasPastTheLongerWay) {
  const Assessment open = answer(on_a_cold_day(bypassed_bench(20.0 * degree)));
  const Assessment shut = answer(on_a_cold_day(bypassed_bench(90.0 * degree)));
  ASSERT_NE(side_of(open), nullptr);
  ASSERT_NE(side_of(shut), nullptr);
  EXPECT_GT(side_of(open)->share, Ratio(0.3));
  EXPECT_LT(side_of(open)->share, Ratio(0.9));
  EXPECT_LT(side_of(shut)->share, Ratio(0.1));
  EXPECT_GT(*open.exit_temperature, *shut.exit_temperature + 20.0 * kelvin);
  EXPECT_GT(open.worst_margin, shut.worst_margin);
  EXPECT_FALSE(side_of(open)->profile.empty());
  EXPECT_EQ(count(open.findings, FindingCode::branch_draws_air), 0u);
}

TEST(ABarePipeBesideTheStack, RunsBackwardsBecauseItIsColder) {
  const Assessment a = answer(on_a_cold_day(bypassed_stack()));
  ASSERT_NE(side_of(a), nullptr);
  // More goes up the insulated stack than leaves the cap; the rest comes down the bare pipe again.
  EXPECT_GT(side_of(a)->share, Ratio(1.0));
  EXPECT_LT(kg_s(a.branches[1].flow), 0.0);
  EXPECT_NEAR(kg_s(side_of(a)->flow + a.branches[1].flow), kg_s(a.running_point()->flue_gas), 1e-9);
}

TEST(AnOutsideAirDuct, FeedsTheFireBesideTheRoom) {
  const Assessment a = answer(on_a_cold_day(duct_beside_feed()));
  ASSERT_NE(side_of(a), nullptr);
  EXPECT_GT(kg_s(side_of(a)->flow), 0.0);
  EXPECT_GT(kg_s(a.branches.front().flow), 0.0);
  EXPECT_EQ(count(a.findings, FindingCode::branch_draws_air), 0u) << "that is what it is for";
}

TEST(ADraftRegulator, OpensOnAStrongDayAndStaysShutOnAMildOne) {
  // In a stack of seven metres, set to 6 Pa.
  Chain chain = small_heater_without_cap();
  chain.design.pieces[6].fields["length"] = 0.5 * metre;
  chain.add("draft_regulator").fields["set_draft"] = 6.0 * pascal;
  chain.add("stack_insulated").fields["length"] = 7.0 * metre;
  chain.add("cap_rain");
  const Assessment strong = answer(on_a_cold_day(chain));
  ASSERT_NE(side_of(strong), nullptr);
  ASSERT_TRUE(side_of(strong)->flap.has_value());
  EXPECT_GT(*side_of(strong)->flap, Ratio(0.0));
  EXPECT_EQ(count(strong.findings, FindingCode::flap_opens), 1u);
  for (Piece& piece : chain.design.pieces) {
    if (piece.type == "draft_regulator") piece.fields["set_draft"] = 60.0 * pascal;
  }
  const Assessment held = answer(on_a_cold_day(chain));
  EXPECT_EQ(*side_of(held)->flap, Ratio(0.0));
  EXPECT_EQ(count(held.findings, FindingCode::flap_opens), 0u);
  // The open flap leaves the fire less draft.
  EXPECT_LT(strong.running_point()->excess_air_ratio, held.running_point()->excess_air_ratio);
}

TEST(ALeakyJoint, LetsSmokeIntoARoomThatSucks) {
  Chain chain = on_a_cold_day(with_in_stack("leaky_joint"));
  const Assessment calm = answer(chain);
  ASSERT_NE(side_of(calm), nullptr);
  // The stack's upper part lies above the neutral plane: its gauge is above nothing, the room's above that or not. A
  // strong suction puts it above the room for certain.
  chain.design.room.extra_depressurisation = 8.0 * pascal;
  const Assessment sucked = answer(chain);
  EXPECT_LT(kg_s(side_of(sucked)->flow), 0.0);
  const Finding smoke = the_one(sucked.findings, FindingCode::branch_smokes);
  EXPECT_EQ(smoke.severity, Severity::caution);
  EXPECT_NEAR(kg_s(std::get<MassFlow>(smoke.value)), -kg_s(side_of(sucked)->flow), 1e-12);
  EXPECT_GT(kg_s(sucked.running_point()->smoke_to_room), 0.0);
}

TEST(SeveralStates, AreReportedWithTheirStability) {
  // Common practice, no source: a house colder than outdoors can run backwards.
  Chain chain = bypassed_stack();
  chain.design.site.outdoor_temperature = celsius(18.0);
  chain.design.room.temperature = celsius(13.0);
  const Assessment a = answer(chain);
  ASSERT_EQ(a.operating_points.size(), 2u);
  EXPECT_TRUE(a.operating_points[0].forward);
  EXPECT_TRUE(a.operating_points[0].stable);
  EXPECT_FALSE(a.operating_points[1].forward);
  EXPECT_TRUE(a.operating_points[1].stable);
  EXPECT_GT(kg_s(a.operating_points[1].smoke_to_room), 0.0);
  EXPECT_LT(kg_s(a.operating_points[1].flue_gas), 0.0);
  EXPECT_EQ(count(a.findings, FindingCode::can_run_backwards), 1u);
}

}  // namespace
}  // namespace fluewright::test
