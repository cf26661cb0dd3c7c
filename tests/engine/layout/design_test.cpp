// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/design.hpp"

#include <gtest/gtest.h>

namespace fluewright {
namespace {

PieceType pipe_type() {
  PieceType type;
  type.id = "bench_pipe";
  FieldSpec bore;
  bore.key = "bore";
  bore.fallback = 150.0 * millimetre;
  FieldSpec wall;
  wall.key = "wall";
  wall.kind = FieldKind::wall;
  wall.fallback = std::string("steel");
  type.fields = {bore, wall};
  return type;
}

Wall named_wall(const char* id, Length thickness) {
  Wall wall;
  wall.id = id;
  wall.layers = {{"steel", thickness}};
  return wall;
}

TEST(ADesign, FindsPiecesById) {
  Design design;
  Piece piece;
  piece.id = "p1";
  design.pieces = {piece};
  ASSERT_NE(design.piece("p1"), nullptr);
  design.piece("p1")->label = "the long leg";
  EXPECT_EQ(design.pieces[0].label, "the long leg");
  EXPECT_EQ(design.piece("p2"), nullptr);
}

TEST(ADesign, KnowsWhichPortIsJoinedToWhich) {
  Design design;
  design.joints = {{{"p1", "out"}, {"p2", "in"}}};
  EXPECT_EQ(design.joined_to({"p1", "out"}), (PortRef{"p2", "in"}));
  EXPECT_EQ(design.joined_to({"p2", "in"}), (PortRef{"p1", "out"}));
  EXPECT_FALSE(design.joined_to({"p1", "in"}));
  EXPECT_FALSE(design.joined_to({"p3", "out"}));
}

TEST(AFreshId, IsOneThatNoPieceHas) {
  Design design;
  EXPECT_EQ(design.fresh_id(), "p1");
  for (const char* id : {"p7", "p3", "chimney", "p12x", "p"}) {
    Piece piece;
    piece.id = id;
    design.pieces.push_back(piece);
  }
  EXPECT_EQ(design.fresh_id(), "p8");
}

TEST(APieceView, AnswersWithTheGivenValueElseWithTheFallback) {
  const Library library;
  const PieceType type = pipe_type();
  Design design;
  Piece piece;
  const PieceView bare(design, library, piece, type);
  EXPECT_DOUBLE_EQ(in(bare.length("bore"), millimetre), 150.0);

  Piece wide;
  wide.fields["bore"] = 200.0 * millimetre;
  const PieceView view(design, library, wide, type);
  EXPECT_DOUBLE_EQ(in(view.length("bore"), millimetre), 200.0);
  EXPECT_TRUE(view.has("bore"));
  EXPECT_FALSE(view.has("slope"));
}

TEST(APieceView, TakesTheDesignsOwnWallBeforeTheLibrarys) {
  Library library;
  library.walls = {named_wall("steel", 0.7 * millimetre)};
  const PieceType type = pipe_type();
  Design design;
  Piece piece;
  const PieceView view(design, library, piece, type);
  ASSERT_NE(view.wall("wall"), nullptr);
  EXPECT_DOUBLE_EQ(in(view.wall("wall")->layers[0].thickness, millimetre), 0.7);

  design.walls = {named_wall("steel", 2.0 * millimetre)};
  EXPECT_DOUBLE_EQ(in(view.wall("wall")->layers[0].thickness, millimetre), 2.0);

  piece.fields["wall"] = std::string("gold");
  EXPECT_EQ(view.wall("wall"), nullptr);
}

}  // namespace
}  // namespace fluewright
