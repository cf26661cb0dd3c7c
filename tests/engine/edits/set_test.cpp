// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Verbs on several pieces: identities (twice mirrored, four times turned, there and back) and what comes apart.

#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "edit_help.hpp"
#include "engine/layout/edit_set.hpp"

#include <cmath>

namespace fluewright::tests {
namespace {

std::vector<PieceId> all_of(const Design& design) {
  std::vector<PieceId> ids;
  for (const Piece& piece : design.pieces) ids.push_back(piece.id);
  return ids;
}

Design demo(std::string_view id) {
  for (const Demo& shown : shipped_demos()) {
    if (shown.id == id) return std::get<DesignDocument>(read_design_text(shown.text, shipped())).design;
  }
  ADD_FAILURE() << "no demo " << id;
  return {};
}

/// Two runs about an elbow, 1 m east and 1 m north, and a run beyond a second elbow.
Drawn bent_run() {
  Drawn drawn{bench_pipe(), "p1"};
  drawn = grown(drawn, heading_north, 1000.0 * millimetre);
  return grown(drawn, heading_east, 1000.0 * millimetre);
}

TEST(MirroringTwice, GivesBackWhatStoodThere) {
  const Design design = demo("bench_spring_200");
  for (const Heading& across : {heading_east, heading_north}) {
    const GridPoint pivot = in_millimetres(700, 200, 0);
    const SetResult once = mirror_pieces(design, shipped(), all_of(design), across, pivot);
    EXPECT_TRUE(gaps(taken(once.edit)).empty()) << gaps(*once.edit.design).front();
    EXPECT_EQ(once.edit.design->joints.size(), design.joints.size());
    const SetResult twice = mirror_pieces(*once.edit.design, shipped(), all_of(design), across, pivot);
    EXPECT_EQ(taken(twice.edit), design);
  }
}

// Every type with every turn, lying and standing: a shape that were not mirrored by its turn would show here.
TEST(MirroredPorts, AreThePortsMirrored) {
  for (const PieceType& type : shipped().piece_types) {
    for (const Heading& heading : {heading_east, heading_north, heading_up(), heading_down(90.0 * degree)}) {
      for (const Turn turn : {Turn::left, Turn::right, Turn::up, Turn::down}) {
        Design design = taken(place_piece({}, shipped(), type.id, in_millimetres(300, 200, 100), heading));
        design.pieces.front().turn = turn;
        const Design mirrored = taken(mirror_pieces(design, shipped(), {"p1"}, heading_east, {}).edit);
        const auto before = geometries(design, shipped()).front();
        const auto after = geometries(mirrored, shipped()).front();
        for (std::size_t i = 0; i < before.ports.size(); ++i) {
          const Position& at = before.ports[i].at;
          EXPECT_TRUE(is_at(after.ports[i].at, -in(at.x, millimetre), in(at.y, millimetre), in(at.z, millimetre)))
              << type.id << '.' << before.ports[i].name << " turn " << static_cast<int>(turn);
        }
      }
    }
  }
}

TEST(TurningFourTimes, GivesBackWhatStoodThere) {
  const Design design = demo("bench_spring_200");
  Design turned_design = design;
  for (int i = 0; i < 4; ++i) {
    turned_design = taken(turn_pieces(turned_design, shipped(), all_of(design), 1, in_millimetres(100, 50, 0)).edit);
    EXPECT_TRUE(gaps(turned_design).empty());
  }
  EXPECT_EQ(turned_design, design);
}

TEST(TurningAPart, LetsGoOfTheRestAndKeepsItsOwnJoints) {
  const Drawn drawn = bent_run();
  const SetResult turned_part = turn_pieces(drawn.design, shipped(), {"p4", "p5"}, 1, in_millimetres(2000, 2000, 0));
  const Design& design = taken(turned_part.edit);
  EXPECT_EQ(design.joints.size(), drawn.design.joints.size() - 1);
  EXPECT_TRUE(gaps(design).empty());
  EXPECT_EQ(turned_part.pieces, (std::vector<PieceId>{"p4", "p5"}));
}

TEST(MovingPieces, TheRunsAlongTheStepTakeItUp) {
  const Drawn drawn = bent_run();
  // Elbow and what follows go 200 mm east: the first run is that much longer.
  const SetResult moved = move_pieces(drawn.design, shipped(), {"p2", "p3", "p4", "p5"}, in_millimetres(200, 0, 0));
  const Design& design = taken(moved.edit);
  EXPECT_NEAR(millimetres(design, "p1"), millimetres(drawn.design, "p1") + 200.0, 1e-6);
  EXPECT_TRUE(gaps(design).empty());
  EXPECT_EQ(design.joints.size(), drawn.design.joints.size());
}

TEST(MovingPieces, AcrossTheRunTheyComeApart) {
  const Drawn drawn = bent_run();
  const SetResult moved = move_pieces(drawn.design, shipped(), {"p2", "p3", "p4", "p5"}, in_millimetres(0, 200, 0));
  EXPECT_EQ(taken(moved.edit).joints.size(), drawn.design.joints.size() - 1);
  EXPECT_NEAR(millimetres(*moved.edit.design, "p1"), millimetres(drawn.design, "p1"), 1e-6);
}

TEST(MovingPieces, FartherThanARunIsLongIsRefused) {
  const Drawn drawn = bent_run();
  const SetResult moved = move_pieces(drawn.design, shipped(), {"p2", "p3", "p4", "p5"}, in_millimetres(-3000, 0, 0));
  EXPECT_TRUE(refused_as(moved.edit, Refusal::too_short));
}

TEST(Pasting, BringsFreshNamesTheJointsAmongThemAndTheirOwnWalls) {
  Design design = bent_run().design;
  Wall own;
  own.id = "own";
  own.layers = shipped().walls.front().layers;
  design.walls.push_back(own);
  design.piece("p2")->fields["wall"] = std::string{"own"};
  const Clip clip = copy_pieces(design, shipped(), {"p2", "p3", "nobody"});
  ASSERT_EQ(clip.pieces.size(), 2U);
  EXPECT_EQ(clip.joints.size(), 1U);
  const SetResult pasted = paste_pieces(design, shipped(), clip, in_millimetres(0, 0, 500));
  EXPECT_EQ(taken(pasted.edit).pieces.size(), design.pieces.size() + 2);
  EXPECT_TRUE(disorder(*pasted.edit.design).empty());
  EXPECT_TRUE(gaps(*pasted.edit.design).empty());
  const SetResult elsewhere = paste_pieces({}, shipped(), clip, {});
  EXPECT_EQ(taken(elsewhere.edit).walls.size(), 1U);
}

TEST(Removing, AllPiecesLeavesNothing) {
  const Design design = demo("bench_small_150");
  const SetResult removed = remove_pieces(design, shipped(), all_of(design));
  EXPECT_TRUE(taken(removed.edit).pieces.empty());
  EXPECT_TRUE(removed.edit.design->joints.empty());
}

TEST(BreakingAndHealing, GiveBackTheSameJoints) {
  const Design design = demo("bench_small_150");
  Design broken = design;
  for (const PortRef& port : {PortRef{"p6", "out"}, PortRef{"p9", "in"}}) broken = taken(break_joint(broken, port));
  EXPECT_EQ(broken.joints.size(), design.joints.size() - 2);
  EXPECT_EQ(open_ends(broken, shipped()).size(), 4U);
  const Design healed = taken(heal_joints(broken, shipped()));
  EXPECT_EQ(healed.joints.size(), design.joints.size());
  EXPECT_EQ(healed.pieces, design.pieces);
  EXPECT_TRUE(refused_as(heal_joints(design, shipped()), Refusal::not_an_open_end));
}

}  // namespace
}  // namespace fluewright::tests
