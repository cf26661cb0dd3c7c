// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/words.hpp"
#include "engine/solve/assessment.hpp"

#include <gtest/gtest.h>

#include "tests/engine/layout/chain.hpp"

#include <cmath>

namespace fluewright::test {
namespace {

/// A small heater with a fan at the foot of its stack.
Chain with_fan(std::string_view type = "fan_side", Length bench = 3.0 * metre) {
  Chain chain;
  chain.place("feed_tube", {0, 0, 6000}, heading_down());
  chain.add("burn_tunnel");
  chain.add("heat_riser");
  chain.add("barrel");
  chain.add("bench_pipe").fields["length"] = bench;
  chain.add("bench_elbow", Turn::up);
  chain.add(type).label = "The fan";
  chain.add("stack_insulated").fields["length"] = 4.0 * metre;
  chain.add("cap_rain");
  return chain;
}

constexpr std::size_t the_fan = 6;

/// The same in a house that a range hood empties: the chimney alone is not enough.
Chain in_a_tight_house() {
  Chain chain = with_fan();
  chain.design.room.extra_depressurisation = 18.0 * pascal;
  return chain;
}

Assessment answer(const Chain& chain) { return assess(chain.design, *shipped_library()); }

TEST(AFanThatIsNotNeeded, leavesTheMarginAloneAndSaysWhatItAdds) {
  const Assessment with = answer(with_fan());
  Chain off = with_fan();
  off.design.pieces[the_fan].fields["speed"] = Ratio{0.0};
  const Assessment without = answer(off);
  EXPECT_EQ(with.worst_margin, without.worst_margin);  // the safe number is the one with the fan off
  ASSERT_TRUE(with.worst_margin_with_fans);
  EXPECT_GT(*with.worst_margin_with_fans, with.worst_margin + 10.0 * pascal);
  EXPECT_FALSE(without.worst_margin_with_fans);
  EXPECT_FALSE(without.fans_off);
  EXPECT_EQ(with.verdict, without.verdict);
  EXPECT_EQ(count(with.findings, FindingCode::fan_dependent), 0u);
  EXPECT_EQ(count(with.findings, FindingCode::left_out), 0u);
}

TEST(AFanThatIsNotNeeded, leavesTheHeaterAfterAPowerCutAsItIsWithoutIt) {
  const Assessment with = answer(with_fan());
  Chain off = with_fan();
  off.design.pieces[the_fan].fields["speed"] = Ratio{0.0};
  const Assessment without = answer(off);
  ASSERT_TRUE(with.fans_off && with.fans_off->running_point() && without.running_point());
  EXPECT_EQ(with.fans_off->running_point()->flue_gas, without.running_point()->flue_gas);
  ASSERT_NE(with.running_point(), nullptr);
  EXPECT_GT(with.running_point()->flue_gas, without.running_point()->flue_gas);
}

TEST(ADraftThatDependsOnAFan, isUnsafeWhateverTheFanAdds) {
  const Chain chain = in_a_tight_house();
  const Assessment a = answer(chain);
  EXPECT_LT(a.worst_margin, Pressure{});
  ASSERT_TRUE(a.worst_margin_with_fans);
  EXPECT_GT(*a.worst_margin_with_fans, Pressure{});
  EXPECT_EQ(a.verdict, Verdict::unsafe);
  EXPECT_EQ(word(*a.verdict), "unsafe: the draft depends on a fan");
  ASSERT_FALSE(a.findings.empty());
  EXPECT_EQ(a.findings.front().code, FindingCode::fan_dependent);  // before everything else
  EXPECT_EQ(a.findings.front().severity, Severity::unsafe);
  const std::string said = sentence(a.findings.front(), chain.design, *shipped_library(), UnitSystem::metric);
  EXPECT_EQ(said.rfind("The draft depends on a fan", 0), 0u) << said;
}

TEST(ADraftThatDependsOnAFan, isUnsafeAlsoWhereOnlyTheDesignFlowIsAsked) {
  EXPECT_EQ(assess(in_a_tight_house().design, *shipped_library(), {50.0 * millimetre, false}).verdict, Verdict::unsafe);
}

TEST(ADraftThatNoFanHolds, isNotCalledUnsafeButNoDraft) {
  Chain chain = in_a_tight_house();
  chain.design.room.extra_depressurisation = 50.0 * pascal;
  chain.design.pieces[the_fan].fields["speed"] = Ratio{0.2};
  EXPECT_EQ(answer(chain).verdict, Verdict::will_not_draw);
}

TEST(AMotorInTheStream, isHeldAgainstTheHottestGas) {
  const Chain chain = with_fan("fan_inline");
  const Assessment a = answer(chain);
  ASSERT_EQ(a.fans.size(), 1u);
  EXPECT_EQ(a.fans[0].motor, a.fans[0].hottest_gas);
  EXPECT_GT(a.fans[0].hottest_gas, celsius(60.0));
  const Finding hot = the_one(a.findings, FindingCode::fan_motor_too_hot);
  EXPECT_EQ(hot.piece, chain.design.pieces[the_fan].id);
  EXPECT_NEAR(in_celsius(std::get<Temperature>(*hot.highest)), 60.0, 1e-9);
  EXPECT_EQ(count(a.findings, FindingCode::fan_gas_too_hot), 0u);  // said once
}

TEST(AMotorOutside, isWarmedByAShareAndTheGasHeldAgainstItsOwnRating) {
  Chain chain = with_fan("fan_side");
  FanSheet sheet = *shipped_library()->fan("side_inducer");
  sheet.id = "mine";
  sheet.rated_gas = celsius(50.0);
  chain.design.fans = {sheet};
  chain.design.pieces[the_fan].fields["fan"] = std::string("mine");
  const Assessment a = answer(chain);
  EXPECT_LT(a.fans.at(0).motor, a.fans[0].hottest_gas);
  EXPECT_EQ(count(a.findings, FindingCode::fan_gas_too_hot), 1u);
  EXPECT_EQ(count(a.findings, FindingCode::fan_motor_too_hot), 0u);
}

TEST(AMotorInColdGas, getsWet) {
  Chain chain = with_fan("fan_inline", 20.0 * metre);
  chain.design.pieces[the_fan].fields["speed"] = Ratio{0.2};
  const Assessment a = answer(chain);
  EXPECT_EQ(count(a.findings, FindingCode::fan_motor_wet), 1u);
  EXPECT_TRUE(a.fans.at(0).wet);
  EXPECT_LE(a.fans[0].wet_at, a.fans[0].dew_point);
}

TEST(ACurveThatRisesBeforeItFalls, isAcceptedWithACaution) {
  Chain chain = with_fan();
  FanSheet sheet = *shipped_library()->fan("side_inducer");
  sheet.id = sheet.name = "mine";
  sheet.points[1].head = 12.0 * pascal;
  chain.design.fans = {sheet};
  chain.design.pieces[the_fan].fields["fan"] = std::string("mine");
  const Assessment a = answer(chain);
  const Finding caution = the_one(a.findings, FindingCode::fan_curve_rises);
  EXPECT_EQ(caution.severity, Severity::caution);
  EXPECT_GE(std::get<Count>(caution.value).value, 1);
  EXPECT_NEAR(in(std::get<VolumeFlow>(*caution.lowest), VolumeFlow(cubic_metre / hour)), 60.0, 1e-9);
}

TEST(AFanDrawnBackwards, blowsAgainstTheGasAndIsNamed) {
  Chain chain = with_fan();
  Piece& fan = chain.design.pieces[the_fan];
  const Length length = 300.0 * millimetre;
  fan.at.z += static_cast<std::int32_t>(std::lround(in(length, grid_count)));
  fan.heading = heading_down();
  for (Joint& joint : chain.design.joints) {
    for (PortRef* port : {&joint.a, &joint.b}) {
      if (port->piece == fan.id) port->port = port->port == "in" ? "out" : "in";
    }
  }
  const Assessment a = answer(chain);
  ASSERT_TRUE(a.path.complete);
  EXPECT_EQ(the_one(a.findings, FindingCode::fan_against_flow).piece, fan.id);
  EXPECT_LT(*a.worst_margin_with_fans, a.worst_margin);
}

TEST(AFanFarBeyondItsSheet, saysThatItIsAnEstimate) {
  Chain chain = with_fan();
  FanSheet sheet = *shipped_library()->fan("side_inducer");
  sheet.id = sheet.name = "mine";
  sheet.points = {{{}, 5.0 * pascal}, {10.0 * (cubic_metre / hour), 1.0 * pascal}};
  chain.design.fans = {sheet};
  chain.design.pieces[the_fan].fields["fan"] = std::string("mine");
  const Assessment a = answer(chain);
  const Finding beyond = the_one(a.findings, FindingCode::fan_beyond_sheet);
  EXPECT_GT(std::get<VolumeFlow>(beyond.value), std::get<VolumeFlow>(*beyond.highest));
  EXPECT_EQ(a.fans.at(0).state.effect.range, FanRange::beyond);
}

}  // namespace
}  // namespace fluewright::test
