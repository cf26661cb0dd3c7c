// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

namespace fluewright::tests {

namespace {

/// Pipes east, north, east, up; elbows p2, p4, p6 between p1, p3, p5 and p7. Corners at 1225 and so on.
Design staircase() {
  Drawn drawn = grown({bench_pipe(), "p1"}, heading_north, 1450.0 * millimetre);
  drawn = grown(drawn, heading_east, 1450.0 * millimetre);
  return grown(drawn, heading_up(), 1450.0 * millimetre).design;
}

EditResult move_by(const Design& design, std::string_view piece, std::string_view port, double x, double y, double z) {
  const Position at = port_of(design, piece, port).at;
  return move_joint(design, shipped(), {std::string{piece}, std::string{port}},
                    grid_point_near(at + Position{x * millimetre, y * millimetre, z * millimetre}));
}

bool stays(const Design& before, const Design& after, std::string_view piece) {
  return piece_of(before, piece) == piece_of(after, piece);
}

}  // namespace

TEST(MoveJoint, along_a_run_lengthens_one_side_and_shortens_the_other) {
  const Design before = staircase();
  const Design after = taken(move_by(before, "p2", "in", 100.0, 0.0, 0.0));
  EXPECT_DOUBLE_EQ(millimetres(after, "p1"), 1100.0);
  EXPECT_DOUBLE_EQ(millimetres(after, "p5"), millimetres(before, "p5") - 100.0);
  EXPECT_TRUE(is_at(port_of(after, "p3", "in").at, 1325.0, 225.0, 0.0));
  EXPECT_TRUE(stays(before, after, "p6"));
  EXPECT_TRUE(stays(before, after, "p7"));
}

TEST(MoveJoint, is_the_same_from_either_port_of_the_joint) {
  const Design before = staircase();
  EXPECT_EQ(taken(move_by(before, "p2", "in", 75.0, 0.0, 0.0)), taken(move_by(before, "p1", "out", 75.0, 0.0, 0.0)));
}

TEST(MoveJoint, in_two_directions_at_once_uses_a_run_for_each) {
  const Design before = staircase();
  const Design after = taken(move_by(before, "p4", "out", 50.0, 100.0, 0.0));
  EXPECT_DOUBLE_EQ(millimetres(after, "p1"), 1050.0);
  EXPECT_DOUBLE_EQ(millimetres(after, "p3"), millimetres(before, "p3") + 100.0);
  EXPECT_DOUBLE_EQ(millimetres(after, "p5"), millimetres(before, "p5") - 50.0);
  // Nothing beyond runs north: what comes after goes along.
  EXPECT_EQ(piece_of(after, "p7").at.y - piece_of(before, "p7").at.y, 1000);
  EXPECT_EQ(piece_of(after, "p7").at.x, piece_of(before, "p7").at.x);
}

TEST(MoveJoint, with_a_run_on_one_side_only_takes_the_free_side_along) {
  const Design before = staircase();
  const Design after = taken(move_by(before, "p6", "out", 0.0, 0.0, -200.0));
  // The only upright run is beyond the joint: it gets longer and its free end stays.
  EXPECT_DOUBLE_EQ(millimetres(after, "p7"), millimetres(before, "p7") + 200.0);
  EXPECT_TRUE(is_at(port_of(after, "p1", "in").at, 0.0, 0.0, -200.0));
}

TEST(MoveJoint, of_an_open_end_stretches_the_path_behind_it) {
  const Design before = staircase();
  const Design after = taken(move_by(before, "p7", "out", 25.0, -50.0, 300.0));
  EXPECT_DOUBLE_EQ(millimetres(after, "p7"), millimetres(before, "p7") + 300.0);
  EXPECT_DOUBLE_EQ(millimetres(after, "p5"), millimetres(before, "p5") + 25.0);
  EXPECT_DOUBLE_EQ(millimetres(after, "p3"), millimetres(before, "p3") - 50.0);
  EXPECT_TRUE(stays(before, after, "p1"));
}

TEST(MoveJoint, there_and_back_gives_the_same_design) {
  const Design before = staircase();
  for (const auto& [piece, port] : {std::pair{"p2", "in"}, {"p3", "out"}, {"p5", "in"}, {"p6", "out"}, {"p7", "out"}}) {
    const Design there = taken(move_by(before, piece, port, 50.0, -25.0, 75.0));
    EXPECT_EQ(taken(move_by(there, piece, port, -50.0, 25.0, -75.0)), before) << piece;
  }
}

TEST(MoveJoint, along_a_slanting_run_keeps_the_angles) {
  // East, 45 degrees to the north-east, east again: the middle run slants, the outer ones are parallel.
  Drawn drawn = grown({bench_pipe(), "p1"}, {45.0 * degree, {}}, 1500.0 * millimetre);
  drawn = grown(drawn, heading_east, 1500.0 * millimetre);
  const Design before = drawn.design;
  const Design sideways = taken(move_by(before, "p4", "in", 0.0, 100.0, 0.0));
  EXPECT_NEAR(millimetres(sideways, "p3"), millimetres(before, "p3") + 100.0 * std::sqrt(2.0), 1e-3);
  EXPECT_NEAR(millimetres(sideways, "p1"), millimetres(before, "p1") - 100.0, 1e-3);
  const Design along = taken(move_by(before, "p3", "in", 60.0, 0.0, 0.0));
  EXPECT_DOUBLE_EQ(millimetres(along, "p1"), 1060.0);
  EXPECT_DOUBLE_EQ(millimetres(along, "p3"), millimetres(before, "p3"));
  EXPECT_DOUBLE_EQ(millimetres(along, "p5"), millimetres(before, "p5") - 60.0);
}

TEST(MoveJoint, along_a_slope_follows_the_slope) {
  Design before = taken(set_field(staircase(), shipped(), "p1", "slope", FieldValue{Ratio{0.02}}));
  const Design after = taken(move_by(before, "p1", "out", 100.0, 0.0, 0.0));
  EXPECT_DOUBLE_EQ(millimetres(after, "p1"), 1100.0);
  EXPECT_TRUE(is_at(port_of(after, "p1", "out").at, 1100.0, 0.0, 2.0));
  // The level run takes up the way along, the upright one the 2 mm of rise; the top stays.
  EXPECT_DOUBLE_EQ(millimetres(after, "p5"), millimetres(before, "p5") - 100.0);
  EXPECT_DOUBLE_EQ(millimetres(after, "p7"), millimetres(before, "p7") - 2.0);
}

TEST(MoveJoint, refuses_what_the_runs_cannot_give) {
  const Design design = staircase();
  EXPECT_TRUE(refused_as(move_by(design, "p2", "in", 1210.0, 0.0, 0.0), Refusal::too_short));
  EXPECT_TRUE(refused_as(move_by(design, "p2", "in", -990.0, 0.0, 0.0), Refusal::too_short));
  EXPECT_TRUE(refused_as(move_by(bench_pipe(), "p1", "out", 0.0, 50.0, 0.0), Refusal::does_not_fit));
  EXPECT_TRUE(refused_as(move_joint(design, shipped(), {"p99", "in"}, {}), Refusal::unknown_piece));
  EXPECT_TRUE(refused_as(move_joint(design, shipped(), {"p1", "lid"}, {}), Refusal::not_an_open_end));
}

TEST(MoveJoint, to_where_it_is_changes_nothing) {
  EXPECT_EQ(taken(move_by(staircase(), "p3", "in", 0.0, 0.0, 0.0)), staircase());
}

TEST(MoveJoint, in_a_ring_moves_only_what_lies_between_the_runs) {
  // Four pipes and four elbows that close: a square of 1000 mm pipes.
  Drawn drawn{bench_pipe(), "p1"};
  for (const Heading& heading : {heading_north, heading_west, heading_south}) {
    drawn = grown(drawn, heading, 1225.0 * millimetre);
  }
  drawn = grown(drawn, heading_east, 225.0 * millimetre);
  const Design ring = taken(join_ports(drawn.design, shipped(), {"p1", "in"}, {drawn.last, "out"}));
  ASSERT_EQ(ring.joints.size(), 8u);
  const Design after = taken(move_by(ring, "p2", "in", 150.0, 0.0, 0.0));
  EXPECT_DOUBLE_EQ(millimetres(after, "p1"), 1150.0);
  EXPECT_DOUBLE_EQ(millimetres(after, "p5"), 1150.0);
  EXPECT_TRUE(stays(ring, after, "p7"));
}

}  // namespace fluewright::tests
