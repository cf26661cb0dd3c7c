// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What the joints make of drawings with branches, and of drawings that look as if they had some.

#include <gtest/gtest.h>

#include "tests/engine/layout/branched_drawings.hpp"

#include <algorithm>

namespace fluewright::test {
namespace {

const Branch& side(const TracedPath& path, std::size_t n = 0) {
  return path.network.branches.at(path.network.main_path.size() + n);
}

TEST(ALid, ThatIsOffMakesABranchAndOneThatIsOnMakesNone) {
  const TracedPath shut = tee_at_foot("on").trace();
  EXPECT_TRUE(shut.complete);
  EXPECT_TRUE(shut.network.is_series());
  const TracedPath open = tee_at_foot("off").trace();
  EXPECT_TRUE(open.complete);
  ASSERT_EQ(open.network.nodes.size(), 1u);
  ASSERT_EQ(open.network.branches.size(), 3u);
  EXPECT_EQ(open.network.main_path, (std::vector<std::size_t>{0, 1}));
  EXPECT_EQ(side(open).from.kind, EndKind::room_air);
  EXPECT_EQ(side(open).to.kind, EndKind::node);
  EXPECT_EQ(side(open).to.port, JunctionPort::run_out);
  EXPECT_TRUE(open.network.branches[1].to.cap);
  EXPECT_EQ(open.findings.size(), 0u);
}

TEST(ALid, OffACleanoutTeesOwnBranchOpensItToo) {
  Chain chain = small_heater_without_cap();
  chain.add("cleanout_tee", Turn::left).fields["cover"] = std::string("off");
  chain.add("cap_rain");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  ASSERT_EQ(path.network.branches.size(), 3u);
  EXPECT_EQ(side(path).to.port, JunctionPort::branch);
  EXPECT_EQ(side(path).stretches.size(), 1u);
}

TEST(ALid, ThatIsOffOutdoorsOpensToOutdoorAirAndIsNoCap) {
  Chain chain = tee_at_foot("off");
  chain.design.pieces.back().fields["place"] = std::string("outdoors");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  EXPECT_EQ(side(path).from.kind, EndKind::outdoor_air);
  EXPECT_FALSE(side(path).from.cap);
}

TEST(APipe, ThatEndsInTheRoomIsStillAFault) {
  Chain chain = tee_at_foot("on");
  chain.design.pieces.back().type = "stovepipe";
  chain.design.pieces.back().fields.clear();
  const TracedPath path = chain.trace();
  EXPECT_FALSE(path.complete);
  EXPECT_EQ(the_one(path.findings, FindingCode::open_end).piece, chain.design.pieces.back().id);
}

TEST(ABypass, LeadsFromOneTeeToAnotherAndTheLongerWayIsTheMainPath) {
  const Chain chain = bypassed_stack();
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  ASSERT_EQ(path.network.nodes.size(), 2u);
  ASSERT_EQ(path.network.branches.size(), 4u);
  EXPECT_EQ(path.network.main_path, (std::vector<std::size_t>{0, 1, 2}));
  const auto length = [](const Branch& branch) {
    Length sum{};
    for (const Stretch& s : branch.stretches) sum += s.length;
    return sum;
  };
  EXPECT_GT(length(path.network.branches[1]), length(side(path)));
  EXPECT_EQ(side(path).from.kind, EndKind::node);
  EXPECT_EQ(side(path).from.node, 0u);
  EXPECT_EQ(side(path).to.node, 1u);
  // The tee's two legs are one passage of the main path.
  EXPECT_EQ(std::count_if(path.passages.begin(), path.passages.end(),
                          [&](const Passage& p) { return chain.design.pieces[p.piece].type == "tee"; }),
            2);
}

TEST(AnOutsideAirDuct, JoinedBesideTheFeedIsABranchAndTheFeedStaysTheInlet) {
  const TracedPath path = duct_beside_feed().trace();
  EXPECT_TRUE(path.complete);
  ASSERT_EQ(path.network.branches.size(), 3u);
  EXPECT_EQ(path.network.branches[0].from.kind, EndKind::room_air);
  EXPECT_EQ(side(path).from.kind, EndKind::outdoor_air);
  EXPECT_FALSE(side(path).from.cap);
}

TEST(ADraftRegulator, IsABranchThroughItsFlap) {
  const TracedPath path = with_in_stack("draft_regulator").trace();
  EXPECT_TRUE(path.complete);
  ASSERT_EQ(path.network.branches.size(), 3u);
  ASSERT_TRUE(side(path).opening.has_value());
  EXPECT_NEAR(in(*side(path).opening->set_draft, pascal), 12.0, 1e-12);
  EXPECT_TRUE(path.network.nodes[0].form.side_opening);
  EXPECT_EQ(count(path.findings, FindingCode::left_out), 0u);
}

TEST(ALeakyJoint, IsABranchThroughItsCrack) {
  Chain chain = with_in_stack("leaky_joint");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  ASSERT_TRUE(side(path).opening.has_value());
  EXPECT_NEAR(in(side(path).opening->area, square_metre), 1e-3 * 0.2, 1e-12);
  EXPECT_FALSE(side(path).opening->set_draft.has_value());
}

TEST(ARing, ThatLeadsNowhereIsAFault) {
  // A tee on the stack's tee whose two other ends are joined to one another.
  Chain chain = small_heater_without_cap();
  const PieceId on_path = chain.add("tee", Turn::left).id;
  chain.add("cap_rain");
  const PieceId ring = chain.add_on(on_path, "branch", "tee", Turn::left).id;
  chain.design.joints.push_back({{ring, "out"}, {ring, "branch"}});
  const TracedPath path = chain.trace();
  EXPECT_EQ(the_one(path.findings, FindingCode::loop).piece, ring);
  EXPECT_FALSE(path.complete);
}

TEST(ALegThatIsShut, IsNoBranchHoweverLongItIs) {
  Chain chain = small_heater_without_cap();
  const PieceId tee = chain.add("tee", Turn::left).id;
  chain.add("cap_rain");
  chain.add_on(tee, "branch", "stovepipe");
  chain.add("tee", Turn::up);
  chain.add("cleanout_cap");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  EXPECT_TRUE(path.network.is_series());
}

TEST(ALegThatIsShut, IsABranchWhereACrackIsInIt) {
  Chain chain = small_heater_without_cap();
  const PieceId tee = chain.add("tee", Turn::left).id;
  chain.add("cap_rain");
  chain.add_on(tee, "branch", "leaky_joint");
  chain.add("cleanout_cap");
  const TracedPath path = chain.trace();
  EXPECT_TRUE(path.complete);
  EXPECT_EQ(path.network.nodes.size(), 2u);
  EXPECT_EQ(path.network.branches.size(), 4u);  // two of the main path, the leg, the crack
}

TEST(EveryBranch, HasHeightsWithoutJumpsAndKnowsItsPieces) {
  for (const Chain& chain : {tee_at_foot("off"), bypassed_stack(), duct_beside_feed(), with_in_stack("leaky_joint")}) {
    const TracedPath path = chain.trace();
    ASSERT_EQ(path.ways.size(), path.network.branches.size());
    for (const Branch& branch : path.network.branches) {
      for (std::size_t i = 1; i < branch.stretches.size(); ++i) {
        const Stretch& before = branch.stretches[i - 1];
        EXPECT_NEAR(in(before.start_height + before.rise, metre), in(branch.stretches[i].start_height, metre), 1e-9);
      }
      for (const BranchEnd* end : {&branch.from, &branch.to}) {
        if (end->kind != EndKind::node) continue;
        EXPECT_NEAR(in(end->height, metre), in(path.network.nodes.at(end->node).height, metre), 2e-3);
      }
    }
  }
}

TEST(ABranchedDrawing, IsTheSameHoweverTheFileIsOrdered) {
  for (Chain chain : {tee_at_foot("off"), bypassed_stack(), duct_beside_feed()}) {
    const TracedPath first = chain.trace();
    std::reverse(chain.design.pieces.begin(), chain.design.pieces.end());
    std::reverse(chain.design.joints.begin(), chain.design.joints.end());
    for (Joint& joint : chain.design.joints) std::swap(joint.a, joint.b);
    const TracedPath second = chain.trace();
    ASSERT_EQ(first.network.branches.size(), second.network.branches.size());
    const std::size_t last = chain.design.pieces.size() - 1;
    for (std::size_t b = 0; b < first.network.branches.size(); ++b) {
      const auto& a = first.network.branches[b].stretches;
      const auto& c = second.network.branches[b].stretches;
      ASSERT_EQ(a.size(), c.size()) << b;
      for (std::size_t i = 0; i < a.size(); ++i) EXPECT_EQ(a[i].piece, last - c[i].piece);
    }
  }
}

}  // namespace
}  // namespace fluewright::test
