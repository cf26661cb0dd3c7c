// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

namespace fluewright::tests {

namespace {

Design elbowed_run() { return grown({bench_pipe(), "p1"}, heading_north, 1225.0 * millimetre).design; }

}  // namespace

TEST(SetType, keeps_the_fields_the_new_type_has_and_lets_the_rest_follow) {
  const Design wide = taken(set_field(elbowed_run(), shipped(), "p2", "bore", 200.0 * millimetre));
  const Design after = taken(set_type(wide, shipped(), "p2", "elbow_mitre"));
  EXPECT_EQ(piece_of(after, "p2").type, "elbow_mitre");
  EXPECT_DOUBLE_EQ(millimetres(after, "p2", "bore"), 200.0);
  EXPECT_EQ(piece_of(after, "p2").fields.count("radius_ratio"), 0u);
  // A sharp turn of 200 mm has legs of half the bore.
  EXPECT_TRUE(is_at(port_of(after, "p3", "in").at, 1100.0, 100.0, 0.0));
}

TEST(SetType, there_and_back_puts_everything_where_it_was) {
  const Design before = elbowed_run();
  const Design back = taken(set_type(taken(set_type(before, shipped(), "p2", "elbow_mitre")), shipped(), "p2", "elbow_smooth"));
  for (const Piece& piece : before.pieces) {
    EXPECT_EQ(piece_of(back, piece.id).at, piece.at);
    EXPECT_EQ(piece_of(back, piece.id).heading, piece.heading);
  }
}

TEST(SetType, to_a_straight_piece_straightens_the_path) {
  const Design after = taken(set_type(elbowed_run(), shipped(), "p2", "damper"));
  EXPECT_TRUE(is_at(port_of(after, "p3", "in").at, 1150.0, 0.0, 0.0));
  EXPECT_TRUE(same_direction(piece_of(after, "p3").heading, heading_east));
}

TEST(SetType, renames_the_ports_of_the_joints) {
  // A cap's free end is its top, a pipe's is its out.
  Design design = taken(attach_piece(bench_pipe(), shipped(), {"p1", "out"}, "cap_plain"));
  design = taken(set_type(design, shipped(), "p1", "stovepipe"));
  EXPECT_EQ(design.joined_to({"p1", "out"}), (PortRef{"p2", "in"}));
  const Design feed = taken(attach_piece(bench_pipe(), shipped(), {"p1", "in"}, "feed_tube_round"));
  const Design duct = taken(set_type(feed, shipped(), "p2", "outside_air_duct"));
  EXPECT_EQ(duct.joined_to({"p1", "in"}), (PortRef{"p2", "out"}));
}

TEST(SetType, to_one_with_too_few_ports_does_not_fit) {
  EXPECT_TRUE(refused_as(set_type(elbowed_run(), shipped(), "p2", "cap_plain"), Refusal::does_not_fit));
  EXPECT_TRUE(refused_as(set_type(elbowed_run(), shipped(), "p2", "cleanout_cap"), Refusal::does_not_fit));
  EXPECT_TRUE(refused_as(set_type(elbowed_run(), shipped(), "p2", "teapot"), Refusal::unknown_type));
  EXPECT_TRUE(refused_as(set_type(elbowed_run(), shipped(), "p20", "damper"), Refusal::unknown_piece));
}

TEST(SetType, follows_the_bore_where_the_old_type_had_none) {
  Design design = taken(set_field(bench_pipe(), shipped(), "p1", "bore", 180.0 * millimetre));
  const EditResult channel = attach_piece(design, shipped(), {"p1", "out"}, "bench_brick_channel");
  design = taken(set_type(taken(channel), shipped(), channel.touched, "bench_pipe"));
  EXPECT_NEAR(millimetres(design, channel.touched, "bore"), 180.0, 1.0);
}

}  // namespace fluewright::tests
