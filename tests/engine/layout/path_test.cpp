// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Paths that are as they should be, whole or in part.

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "tests/engine/layout/chain.hpp"

#include <chrono>

namespace fluewright::test {
namespace {

double mm(Length l) { return in(l, millimetre); }

const Branch& branch_of(const TracedPath& path) { return path.network.branches.at(0); }

void expect_heights_without_jumps(const TracedPath& path) {
  const Branch& branch = branch_of(path);
  Length height = branch.from.height;
  for (const Stretch& s : branch.stretches) {
    EXPECT_NEAR(mm(s.start_height), mm(height), 1e-9);
    height = s.start_height + s.rise;
  }
  EXPECT_NEAR(mm(branch.to.height), mm(height), 1e-9);
}

TEST(AWholePath, LeadsFromTheFeedToTheCapWithoutAWord) {
  const Chain heater = small_heater();
  const TracedPath path = heater.trace();
  EXPECT_TRUE(path.complete);
  EXPECT_TRUE(path.findings.empty());
  EXPECT_EQ(way_of(heater.design, path),
            "p1:mouth>out p2:in>out p3:in>out p4:in>out p5:in>out p6:in>out p7:in>out p8:in>top");
}

TEST(AWholePath, IsOneBranchFromRoomAirToOutdoorAir) {
  const TracedPath path = small_heater().trace();
  ASSERT_TRUE(path.network.is_series());
  const Branch& branch = branch_of(path);
  EXPECT_EQ(branch.from.kind, EndKind::room_air);
  EXPECT_NEAR(mm(branch.from.height), 600.0, 1e-9);
  EXPECT_EQ(branch.to.kind, EndKind::outdoor_air);
  // Feed foot 300, riser 1200, barrel 650 down, elbow 150 up, stack 4000, cap 100.
  EXPECT_NEAR(mm(branch.to.height), 300 + 1200 - 650 + 150 + 4000 + 100, 1e-9);
  EXPECT_EQ(std::count_if(branch.stretches.begin(), branch.stretches.end(), [](const Stretch& s) { return s.fire; }),
            1);
  expect_heights_without_jumps(path);
}

TEST(AWholePath, NamesThePieceOfEveryStretch) {
  const TracedPath path = small_heater().trace();
  std::vector<std::size_t> pieces;
  for (const Stretch& s : branch_of(path).stretches) {
    if (pieces.empty() || pieces.back() != s.piece) pieces.push_back(s.piece);
  }
  EXPECT_EQ(pieces, (std::vector<std::size_t>{0, 1, 2, 3, 4, 5, 6, 7}));
}

TEST(AWholePath, CanBeMadeOfABatchBoxABellAndAMasonryFlue) {
  Chain chain;
  chain.place("batch_door_slot", {}, heading_north);
  chain.add("batch_box");
  chain.add("heat_riser");
  chain.add("bell");
  chain.add("adapter_to_channel");
  chain.add("bench_brick_channel");
  chain.add("channel_turn", Turn::left);
  chain.add("adapter_to_pipe");
  chain.add("floor_pipe");
  chain.add("bench_elbow", Turn::up);
  chain.add("damper");
  chain.add("roof_passage");
  chain.add("cap_low_resistance");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  EXPECT_TRUE(path.findings.empty());
  expect_heights_without_jumps(path);
}

RC_GTEST_PROP(AWholePath, DoesNotDependOnTheOrderOfTheFile, ()) {
  static const Chain heater = small_heater();
  static const std::string way = way_of(heater.design, heater.trace());
  Design shuffled = heater.design;
  for (std::size_t i = shuffled.pieces.size(); i > 1; --i) {
    std::swap(shuffled.pieces[i - 1], shuffled.pieces[*rc::gen::inRange<std::size_t>(0, i)]);
  }
  for (Joint& joint : shuffled.joints) {
    if (*rc::gen::arbitrary<bool>()) std::swap(joint.a, joint.b);
  }
  std::reverse(shuffled.joints.begin(), shuffled.joints.end());
  const TracedPath path = trace_path(shuffled, *shipped_library());
  RC_ASSERT(path.complete);
  RC_ASSERT(way_of(shuffled, path) == way);
}

TEST(APieceDrawnBackwards, IsPassedBackwards) {
  Chain chain = small_heater();
  // The stack stands on its head: its second port below, its first at the cap.
  Piece& stack = *chain.design.piece("p7");
  stack.at = chain.design.piece("p8")->at;
  stack.heading = heading_down();
  for (Joint& joint : chain.design.joints) {
    for (PortRef* ref : {&joint.a, &joint.b}) {
      if (ref->piece == "p7") ref->port = ref->port == "in" ? "out" : "in";
    }
  }
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  EXPECT_NE(way_of(chain.design, path).find("p7:out>in"), std::string::npos);
  EXPECT_NEAR(mm(branch_of(path).to.height), 5100.0, 1e-9);
}

TEST(TheFoot, OfAStackMayBeATeeEnteredByItsBranch) {
  Chain chain;
  chain.place("feed_tube", {0, 0, 6000}, heading_down());
  chain.add("burn_tunnel");
  chain.add("heat_riser").fields["jacketed"] = std::string("no");
  chain.add("elbow_smooth");
  chain.add("bench_pipe");
  // The tee stands: its run goes up, its branch looks back at the bench. 125 mm from the axis to the branch's end.
  const Port end = chain.geometry_of("p5").ports[1];
  Piece& tee = chain.place("tee", grid_point_near(end.at + Position{125.0 * millimetre, {}, -125.0 * millimetre}),
                           heading_up(), Turn::up);
  chain.design.joints.push_back({{"p5", "out"}, {tee.id, "branch"}});
  chain.add_on("p6", "out", "stack_insulated");
  chain.add("open_head");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete) << way_of(chain.design, path);
  EXPECT_NE(way_of(chain.design, path).find("p6:branch>out"), std::string::npos);

  chain.add_on("p6", "in", "cleanout_cap");
  EXPECT_TRUE(chain.trace().complete);
  EXPECT_TRUE(chain.trace().findings.empty());
}

TEST(ADeadLeg, IsNoFaultWhileItsEndIsShut) {
  Chain chain = small_heater();
  chain.design.joints.pop_back();
  chain.design.pieces.pop_back();
  chain.add("tee");                           // p8
  chain.add_on("p8", "branch", "stovepipe");  // p9
  chain.add_on("p8", "out", "open_head");     // p10
  EXPECT_EQ(the_one(chain.trace().findings, FindingCode::open_end).piece, "p9");
  EXPECT_FALSE(chain.trace().complete);
  chain.add_on("p9", "out", "cleanout_cap");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  EXPECT_EQ(way_of(chain.design, path).find("p9"), std::string::npos);
}

TEST(AnOutsideAirDuct, MayFeedALiddedFeed) {
  Chain chain;
  chain.place("outside_air_duct", {-40000, 0, 6000}, heading_east);
  chain.add("elbow_smooth", Turn::down);
  Piece& feed = chain.add("feed_tube_round");
  feed.fields["air_from"] = std::string("duct");
  chain.design.joints.back().b.port = "mouth";
  chain.add_on(feed.id, "out", "burn_tunnel_round");
  chain.add("heat_riser");
  chain.add("open_head");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  EXPECT_EQ(branch_of(path).from.kind, EndKind::outdoor_air);
  EXPECT_EQ(path.passages[0].entry, "intake");
}

TEST(APartialPath, LeadsAsFarAsTheJointsDo) {
  Chain chain = small_heater();
  for (int i = 0; i < 2; ++i) {
    chain.design.pieces.pop_back();
    chain.design.joints.pop_back();
  }
  const TracedPath path = chain.trace();
  EXPECT_FALSE(path.complete);
  EXPECT_EQ(way_of(chain.design, path), "p1:mouth>out p2:in>out p3:in>out p4:in>out p5:in>out p6:in>out");
  EXPECT_EQ(path.network.nodes.size(), 1u);
  EXPECT_EQ(branch_of(path).to.kind, EndKind::node);
  EXPECT_EQ(branch_of(path).stretches.back().piece, 5u);
  EXPECT_EQ(the_one(path.findings, FindingCode::open_end).field, "out");
  EXPECT_EQ(count(path.findings, FindingCode::no_outlet), 1u);
}

TEST(APartialPath, BeginsWithTheFeedAlone) {
  Chain chain;
  chain.place("feed_tube", {}, heading_down());
  const TracedPath path = chain.trace();
  EXPECT_EQ(way_of(chain.design, path), "p1:mouth>out");
  EXPECT_EQ(branch_of(path).stretches.size(), 1u);
}

TEST(APartialPath, ThatStopsAtATeeSaysThatTheGasHasNowhereToGo) {
  Chain chain;
  chain.place("feed_tube_round", {}, heading_down());
  chain.add("burn_tunnel_round");
  chain.add("heat_riser");
  chain.add("tee");
  const TracedPath path = chain.trace();
  EXPECT_EQ(the_one(path.findings, FindingCode::open_end).piece, "p4");
}

TEST(APartialPath, StopsBeforeAPieceThatCannotBeComputed) {
  Chain chain = small_heater();
  chain.design.piece("p5")->fields["wall"] = std::string("unobtainable");
  const TracedPath path = chain.trace();
  EXPECT_FALSE(path.complete);
  EXPECT_EQ(path.passages.size(), 8u);
  EXPECT_EQ(branch_of(path).stretches.back().piece, 3u);
}

TEST(ATinyPlay, AtAJointLeavesNoJumpInHeight) {
  Chain chain = small_heater();
  for (const char* id : {"p5", "p6", "p7", "p8"}) chain.design.piece(id)->at.z += 4;  // 0.4 mm
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  expect_heights_without_jumps(path);
  EXPECT_NEAR(mm(branch_of(path).to.height), 5100.4, 1e-9);
}

TEST(AFanOnTopOfTheStack, EndsThePathWithItsHead) {
  Chain chain = small_heater();
  chain.design.pieces.pop_back();
  chain.design.joints.pop_back();
  chain.add("fan_top");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  EXPECT_EQ(count(path.findings, FindingCode::left_out), 0u);
  EXPECT_TRUE(path.network.branches.front().stretches.back().fan.has_value());
}

TEST(TwoThousandPieces, AreTracedWhileTheHandIsStillMoving) {
  Chain chain;
  chain.place("feed_tube_round", {}, heading_down());
  chain.add("burn_tunnel_round");
  const Port start = chain.geometry_of("p2").ports[1];
  Position at = start.at;
  std::string before = "p2";
  for (int i = 0; i < 2000; ++i) {
    Piece pipe;
    pipe.id = "s" + std::to_string(i);
    pipe.type = "stack_insulated";
    pipe.at = grid_point_near(at);
    pipe.heading = start.outward;
    chain.design.joints.push_back({{before, "out"}, {pipe.id, "in"}});
    before = pipe.id;
    at.z += 1.0 * metre;
    chain.design.pieces.push_back(std::move(pipe));
  }
  const auto begin = std::chrono::steady_clock::now();
  const TracedPath path = chain.trace();
  const std::chrono::duration<double, std::milli> took = std::chrono::steady_clock::now() - begin;
  EXPECT_EQ(path.passages.size(), 2002u);
  RecordProperty("milliseconds", std::to_string(took.count()));
  // A few milliseconds when optimised; the bound is for a busy machine and a quadratic search would break it by far.
  EXPECT_LT(took.count(), 500.0);
}

}  // namespace
}  // namespace fluewright::test
