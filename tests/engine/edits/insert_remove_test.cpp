// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

// A tee of 150 mm bore and branch is 250 mm long (branch and 50 mm collars).

namespace fluewright::tests {

namespace {

constexpr double tee_length = 250.0;

EditResult insert(const Design& design, std::string_view run, double along_mm, std::string_view type = "cleanout_tee") {
  return insert_in_run(design, shipped(), std::string{run}, along_mm * millimetre, type, Turn::left);
}

/// A pipe east, a smooth elbow, a pipe north.
Drawn corner() { return grown({bench_pipe(), "p1"}, heading_north, 1225.0 * millimetre); }

}  // namespace

TEST(Insert, splits_the_run_around_the_piece_and_keeps_the_far_end) {
  const EditResult result = insert(corner().design, "p1", 300.0);
  const Design design = taken(result);
  ASSERT_EQ(design.pieces.size(), 5u);
  EXPECT_DOUBLE_EQ(millimetres(design, "p1"), 300.0);
  EXPECT_TRUE(is_at(port_of(design, result.touched, "in").at, 300.0, 0.0, 0.0));
  EXPECT_TRUE(is_at(port_of(design, result.touched, "out").at, 300.0 + tee_length, 0.0, 0.0));
  const PieceId behind = design.joined_to({result.touched, "out"})->piece;
  EXPECT_DOUBLE_EQ(millimetres(design, behind), 1000.0 - 300.0 - tee_length);
  EXPECT_TRUE(is_at(port_of(design, behind, "out").at, 1000.0, 0.0, 0.0));
  EXPECT_EQ(design.joined_to({behind, "out"}), (PortRef{"p2", "in"}));
  EXPECT_EQ(*design.piece("p2"), *corner().design.piece("p2"));
}

TEST(Insert, gives_both_parts_the_fields_of_the_run) {
  const Design wide = taken(set_field(bench_pipe(), shipped(), "p1", "mass_width", 800.0 * millimetre));
  const EditResult result = insert(wide, "p1", 300.0);
  const Design design = taken(result);
  const PieceId behind = design.joined_to({result.touched, "out"})->piece;
  EXPECT_DOUBLE_EQ(millimetres(design, "p1", "mass_width"), 800.0);
  EXPECT_DOUBLE_EQ(millimetres(design, behind, "mass_width"), 800.0);
  EXPECT_DOUBLE_EQ(millimetres(design, result.touched, "mass_width"), 800.0);
}

TEST(Insert, at_either_end_leaves_one_run) {
  const EditResult first = insert(corner().design, "p1", 0.0);
  EXPECT_EQ(taken(first).pieces.size(), 4u);
  EXPECT_EQ(taken(first).joined_to({first.touched, "out"}), (PortRef{"p1", "in"}));
  EXPECT_DOUBLE_EQ(millimetres(taken(first), "p1"), 1000.0 - tee_length);
  const EditResult last = insert(corner().design, "p1", 1000.0 - tee_length);
  EXPECT_EQ(taken(last).pieces.size(), 4u);
  EXPECT_EQ(taken(last).joined_to({last.touched, "out"}), (PortRef{"p2", "in"}));
}

TEST(Insert, as_long_as_the_run_takes_its_place) {
  const Design design = taken(set_field(corner().design, shipped(), "p1", "length", tee_length * millimetre));
  const EditResult result = insert(design, "p1", 0.0);
  EXPECT_EQ(taken(result).pieces.size(), 3u);
  EXPECT_EQ(taken(result).joined_to({result.touched, "out"}), (PortRef{"p2", "in"}));
}

TEST(Insert, without_room_says_too_short) {
  EXPECT_TRUE(refused_as(insert(bench_pipe(), "p1", 900.0), Refusal::too_short));
  EXPECT_TRUE(refused_as(insert(bench_pipe(), "p1", -1.0), Refusal::too_short));
  EXPECT_TRUE(refused_as(insert(bench_pipe(), "p1", 10.0), Refusal::too_short));  // a pipe has at least 20 mm
  EXPECT_TRUE(refused_as(insert(bench_pipe(100.0 * millimetre), "p1", 50.0), Refusal::too_short));
}

TEST(Insert, of_a_piece_that_turns_does_not_fit) {
  EXPECT_TRUE(refused_as(insert(bench_pipe(), "p1", 300.0, "elbow_smooth"), Refusal::does_not_fit));
  EXPECT_TRUE(refused_as(insert(bench_pipe(), "p1", 300.0, "cleanout_cap"), Refusal::does_not_fit));
}

TEST(Insert, only_into_a_run) {
  EXPECT_TRUE(refused_as(insert(corner().design, "p2", 100.0), Refusal::not_a_run));
  EXPECT_TRUE(refused_as(insert(bench_pipe(), "p8", 100.0), Refusal::unknown_piece));
  EXPECT_TRUE(refused_as(insert(bench_pipe(), "p1", 100.0, "teapot"), Refusal::unknown_type));
}

TEST(Insert, into_a_sloping_run_keeps_it_connected) {
  // The pipe is the first of its path: a slope lets its free end down.
  const Design design = taken(set_field(corner().design, shipped(), "p1", "slope", FieldValue{Ratio{0.02}}));
  EXPECT_TRUE(is_at(port_of(design, "p1", "in").at, 0.0, 0.0, -20.0));
  EXPECT_TRUE(is_at(port_of(design, "p2", "in").at, 1000.0, 0.0, 0.0));
  const EditResult damper = insert(design, "p1", 300.0, "damper");  // slopes with the pipe
  EXPECT_TRUE(is_at(port_of(taken(damper), "p2", "in").at, 1000.0, 0.0, 0.0));
  const EditResult tee = insert(design, "p1", 300.0);  // lies level: what follows comes down by its share
  EXPECT_TRUE(is_at(port_of(taken(tee), "p2", "in").at, 1000.0, 0.0, -0.02 * tee_length));
}

TEST(Remove, undoes_an_insertion) {
  const Design before = corner().design;
  const EditResult inserted = insert(before, "p1", 300.0);
  const EditResult removed = remove_piece(taken(inserted), shipped(), inserted.touched);
  const Design after = taken(removed);
  ASSERT_EQ(after.pieces.size(), before.pieces.size());
  EXPECT_DOUBLE_EQ(millimetres(after, "p1"), 1000.0);
  EXPECT_EQ(after.joined_to({"p1", "out"}), (PortRef{"p2", "in"}));
  for (const Piece& piece : before.pieces) {
    EXPECT_EQ(piece_of(after, piece.id).at, piece.at);
  }
}

TEST(Remove, a_fitting_beside_one_run_gives_its_place_to_the_run) {
  const EditResult inserted = insert(corner().design, "p1", 1000.0 - tee_length);
  const Design after = taken(remove_piece(taken(inserted), shipped(), inserted.touched));
  EXPECT_DOUBLE_EQ(millimetres(after, "p1"), 1000.0);
  EXPECT_EQ(after.joined_to({"p1", "out"}), (PortRef{"p2", "in"}));
}

TEST(Remove, a_run_lets_its_neighbours_close_up) {
  // Elbow, pipe of 500 mm, elbow: without the pipe the second elbow comes down onto the first.
  Drawn drawn = grown(corner(), heading_east, 225.0 * millimetre);
  const Position end = port_of(drawn.design, drawn.last, "out").at;
  const EditResult removed = remove_piece(drawn.design, shipped(), "p3");
  const Design after = taken(removed);
  EXPECT_EQ(after.joined_to({"p2", "out"}), (PortRef{drawn.last, "in"}));
  EXPECT_TRUE(is_at(port_of(after, drawn.last, "out").at, in(end.x, millimetre), in(end.y, millimetre) - 1000.0, 0.0));
}

TEST(Remove, a_bend_leaves_two_open_ends) {
  const Design after = taken(remove_piece(corner().design, shipped(), "p2"));
  EXPECT_EQ(after.pieces.size(), 2u);
  EXPECT_TRUE(after.joints.empty());
  EXPECT_EQ(open_ends(after, shipped()).size(), 4u);
}

TEST(Remove, the_only_piece_leaves_an_empty_desk) {
  EXPECT_TRUE(taken(remove_piece(bench_pipe(), shipped(), "p1")).pieces.empty());
  EXPECT_TRUE(refused_as(remove_piece(bench_pipe(), shipped(), "p2"), Refusal::unknown_piece));
}

}  // namespace fluewright::tests
