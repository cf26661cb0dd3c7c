// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Each fault of a drawing, raised by a design that has it and not by its near twin.

#include <gtest/gtest.h>

#include "tests/engine/layout/chain.hpp"

#include <limits>

namespace fluewright::test {
namespace {

std::vector<Finding> path_findings(const Chain& chain) { return chain.trace().findings; }

TEST(AnEmptySheet, SaysOnlyThatItIsEmpty) {
  const TracedPath path = Chain().trace();
  ASSERT_EQ(path.findings.size(), 1u);
  EXPECT_EQ(path.findings[0].code, FindingCode::no_pieces);
  EXPECT_TRUE(path.network.branches.empty());
}

TEST(APath, NeedsAnInlet) {
  Chain chain;
  chain.place("burn_tunnel_round", {}, heading_down(), Turn::up);
  chain.add("open_head");
  EXPECT_EQ(count(path_findings(chain), FindingCode::no_inlet), 1u);
  EXPECT_EQ(the_one(path_findings(chain), FindingCode::open_end).field, "in");
  EXPECT_FALSE(chain.trace().complete);
  EXPECT_EQ(count(path_findings(small_heater()), FindingCode::no_inlet), 0u);
}

TEST(APath, DoesNotWantASecondInletThatNothingJoinsToIt) {
  Chain chain = small_heater();
  chain.place("feed_tube", {50000, 0, 6000}, heading_down());
  const std::vector<Finding> findings = path_findings(chain);
  EXPECT_EQ(the_one(findings, FindingCode::several_inlets).piece, "p9");
  EXPECT_FALSE(chain.trace().complete);
}

TEST(APath, NeedsAnOutletAndTakesOneOnly) {
  Chain chain = small_heater();
  chain.place("cap_rain", {50000, 0, 6000}, heading_up());
  EXPECT_EQ(the_one(path_findings(chain), FindingCode::several_outlets).piece, "p9");
  chain.design.pieces.resize(7);
  chain.design.joints.pop_back();
  EXPECT_EQ(count(path_findings(chain), FindingCode::no_outlet), 1u);
}

TEST(APath, NeedsAFireAndTakesOneOnly) {
  Chain chain;
  chain.place("feed_tube_round", {}, heading_down());
  chain.add("elbow_smooth", Turn::up);
  chain.add("elbow_smooth", Turn::up);
  chain.add("open_head");
  EXPECT_EQ(count(path_findings(chain), FindingCode::no_fire), 1u);
  Chain two = small_heater();
  two.place("burn_tunnel", {50000, 0, 0}, heading_down());
  EXPECT_EQ(the_one(path_findings(two), FindingCode::several_fires).piece, "p9");
  EXPECT_EQ(count(path_findings(two), FindingCode::no_fire), 0u);
}

TEST(AGap, OfMoreThanAMillimetreIsAFault) {
  Chain chain = small_heater();
  for (const char* id : {"p7", "p8"}) chain.design.piece(id)->at.z += 9;  // 0.9 mm
  EXPECT_EQ(count(path_findings(chain), FindingCode::gap), 0u);
  EXPECT_TRUE(chain.trace().complete);
  for (const char* id : {"p7", "p8"}) chain.design.piece(id)->at.z += 11;  // 2.0 mm
  const Finding gap = the_one(path_findings(chain), FindingCode::gap);
  EXPECT_EQ(gap.piece, "p6");
  EXPECT_EQ(gap.field, "out");
  EXPECT_EQ(gap.text, "p7");
  EXPECT_NEAR(in(std::get<Length>(gap.value), millimetre), 2.0, 1e-6);
  EXPECT_FALSE(chain.trace().complete);
}

TEST(AGap, IsAlsoWherePortsTouchButDoNotFace) {
  Chain chain = small_heater();
  chain.design.piece("p8")->heading = heading_east;
  const Finding gap = the_one(path_findings(chain), FindingCode::gap);
  EXPECT_EQ(gap.piece, "p7");
  EXPECT_NEAR(in(std::get<Angle>(gap.value), degree), 90.0, 1e-6);
}

TEST(ALoosePiece, IsACautionAndDoesNotStopTheAnswer) {
  Chain chain = small_heater();
  chain.place("bench_pipe", {0, 90000, 0}, heading_east);
  const TracedPath path = chain.trace();
  const Finding loose = the_one(path.findings, FindingCode::unreached);
  EXPECT_EQ(loose.piece, "p9");
  EXPECT_EQ(loose.severity, Severity::caution);
  EXPECT_EQ(path.findings.size(), 1u);
  EXPECT_TRUE(path.complete);
}

TEST(APort, GoesIntoOneJointOnly) {
  Chain chain = small_heater();
  chain.design.joints.push_back({{"p5", "out"}, {"p8", "in"}});
  EXPECT_EQ(count(path_findings(chain), FindingCode::port_taken), 2u);  // both its ends are taken already
  EXPECT_FALSE(chain.trace().complete);
}

TEST(AJoint, NeedsPortsThatExist) {
  Chain chain = small_heater();
  chain.design.joints.push_back({{"p5", "chimney"}, {"p99", "in"}});
  EXPECT_EQ(count(path_findings(chain), FindingCode::unknown_port), 2u);
}

TEST(AJoint, CannotBeMadeWithTheOpenAir) {
  Chain chain = small_heater();
  chain.place("stovepipe", {}, heading_down());
  chain.design.joints.push_back({{"p9", "out"}, {"p1", "mouth"}});
  EXPECT_EQ(the_one(path_findings(chain), FindingCode::joined_to_air).field, "mouth");
}

TEST(AStepInBore, IsACaution) {
  Chain chain = small_heater();
  chain.design.piece("p8")->fields["bore"] = 151.0 * millimetre;  // 1.3 % of area: a lap
  EXPECT_EQ(count(path_findings(chain), FindingCode::bore_mismatch), 0u);
  chain.design.piece("p8")->fields["bore"] = 155.0 * millimetre;
  const TracedPath path = chain.trace();
  const Finding step = the_one(path.findings, FindingCode::bore_mismatch);
  EXPECT_EQ(step.severity, Severity::caution);
  EXPECT_NEAR(in(std::get<Length>(step.value), millimetre), 150.0, 1e-9);
  EXPECT_NEAR(in(std::get<Length>(*step.highest), millimetre), 155.0, 1e-9);
  EXPECT_TRUE(path.complete);
}

TEST(AnUnknownType, IsNamedAndLeavesAHole) {
  Chain chain = small_heater();
  chain.design.piece("p5")->type = "teapot";
  const Finding unknown = the_one(check_values(chain.design, *shipped_library()), FindingCode::unknown_type);
  EXPECT_EQ(unknown.piece, "p5");
  EXPECT_EQ(unknown.text, "teapot");
  const TracedPath path = chain.trace();
  EXPECT_EQ(way_of(chain.design, path), "p1:mouth>out p2:in>out p3:in>out p4:in>out");
  EXPECT_EQ(the_one(path.findings, FindingCode::open_end).piece, "p4");
  EXPECT_EQ(count(path.findings, FindingCode::unreached), 3u);
}

}  // namespace
}  // namespace fluewright::test
