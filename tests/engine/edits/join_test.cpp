// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

namespace fluewright::tests {

namespace {

/// Two loose lines: p1 east from the origin, and far off p2 up with an elbow p3 and a pipe p4 beyond it.
Design two_lines() {
  const Design second = taken(place_piece(bench_pipe(), shipped(), "stovepipe", in_millimetres(5000.0, 0.0, 0.0),
                                          heading_up(90.0 * degree)));
  return grown({second, "p2"}, heading_north, 1000.0 * millimetre, "out", "stovepipe").design;
}

}  // namespace

TEST(Join, brings_the_moving_group_to_the_fixed_port) {
  const Design before = two_lines();
  const Design after = taken(join_ports(before, shipped(), {"p1", "out"}, {"p2", "in"}));
  EXPECT_EQ(after.joined_to({"p1", "out"}), (PortRef{"p2", "in"}));
  EXPECT_EQ(piece_of(after, "p1"), piece_of(before, "p1"));
  EXPECT_TRUE(is_at(port_of(after, "p2", "in").at, 1000.0, 0.0, 0.0));
  EXPECT_TRUE(same_direction(port_of(after, "p2", "out").outward, heading_east));
}

TEST(Join, mends_what_removing_a_bend_took_apart) {
  Drawn drawn = grown({bench_pipe(), "p1"}, heading_north, 1000.0 * millimetre);
  Design design = taken(remove_piece(drawn.design, shipped(), "p2"));
  const EditResult bend = attach_piece(design, shipped(), {"p1", "out"}, "elbow_mitre", Turn::right);
  design = taken(join_ports(taken(bend), shipped(), {bend.touched, "out"}, {drawn.last, "in"}));
  EXPECT_TRUE(same_direction(port_of(design, drawn.last, "out").outward, heading_south));
  EXPECT_EQ(open_ends(design, shipped()).size(), 2u);
}

TEST(Join, within_a_group_only_where_the_ports_meet) {
  const Design design = grown({bench_pipe(), "p1"}, heading_north, 1000.0 * millimetre).design;
  EXPECT_TRUE(refused_as(join_ports(design, shipped(), {"p1", "in"}, {"p3", "out"}), Refusal::does_not_fit));
  EXPECT_TRUE(refused_as(join_ports(design, shipped(), {"p1", "out"}, {"p3", "out"}), Refusal::not_an_open_end));
  EXPECT_TRUE(refused_as(join_ports(design, shipped(), {"p1", "in"}, {"p1", "in"}), Refusal::does_not_fit));
}

TEST(MoveGroup, moves_all_that_hangs_together_and_nothing_else) {
  const Design before = two_lines();
  const Design after = taken(move_group(before, shipped(), "p3", {10, -20, 30}));
  for (const char* id : {"p2", "p3", "p4"}) {
    EXPECT_EQ(piece_of(after, id).at.x - piece_of(before, id).at.x, 10);
    EXPECT_EQ(piece_of(after, id).at.y - piece_of(before, id).at.y, -20);
    EXPECT_EQ(piece_of(after, id).at.z - piece_of(before, id).at.z, 30);
  }
  EXPECT_EQ(piece_of(after, "p1"), piece_of(before, "p1"));
  EXPECT_TRUE(refused_as(move_group(before, shipped(), "p3", {2147483647, 0, 0}), Refusal::out_of_range));
  EXPECT_TRUE(refused_as(move_group(before, shipped(), "p30", {}), Refusal::unknown_piece));
}

}  // namespace fluewright::tests
