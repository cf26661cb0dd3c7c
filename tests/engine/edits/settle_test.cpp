// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

namespace fluewright::tests {

namespace {

/// A heater's worth of directions: east, north, up, west, down.
Design winding() {
  Drawn drawn{bench_pipe(), "p1"};
  for (const Heading& heading : {heading_north, heading_up(), heading_west, heading_down()}) {
    drawn = grown(drawn, heading, 1000.0 * millimetre);
  }
  return drawn.design;
}

}  // namespace

TEST(Settle, leaves_a_settled_design_as_it_is) {
  for (const char* anchor : {"p1", "p5", "p9"}) {
    Design design = winding();
    settle(design, shipped(), anchor);
    EXPECT_EQ(design, winding()) << anchor;
  }
}

TEST(Settle, brings_scattered_pieces_together) {
  for (const char* anchor : {"p1", "p4", "p9"}) {
    Design design = winding();
    for (Piece& piece : design.pieces) {
      if (piece.id != anchor) {
        piece.at = in_millimetres(-3000.0, 777.0, 12.5);
      }
    }
    settle(design, shipped(), anchor);
    EXPECT_TRUE(gaps(design).empty()) << anchor;
    EXPECT_EQ(design, winding()) << anchor;
  }
}

TEST(Settle, turns_pieces_to_face_their_neighbours) {
  Design design = winding();
  for (Piece& piece : design.pieces) {
    if (piece.id != "p1") {
      piece.heading = heading_west;
    }
  }
  settle(design, shipped(), "p1");
  EXPECT_TRUE(gaps(design).empty());
}

TEST(Settle, places_a_piece_by_a_port_other_than_its_first) {
  // From the far end backwards every piece is reached by its "out".
  Design design = winding();
  for (Piece& piece : design.pieces) {
    if (piece.id != "p9") {
      piece.at = {};
      piece.heading.azimuth = piece.heading.azimuth + 90.0 * degree;
    }
  }
  settle(design, shipped(), "p9");
  EXPECT_TRUE(gaps(design).empty());
}

TEST(Settle, joins_two_entries_and_two_exits_as_well) {
  // Joints written against the flow, as a file may have them.
  Design design = taken(place_piece(bench_pipe(), shipped(), "elbow_smooth", {}, heading_east));
  design = taken(place_piece(design, shipped(), "bench_pipe", {}, heading_south));
  design.joints = {{{"p1", "out"}, {"p2", "out"}}, {{"p2", "in"}, {"p3", "out"}}};
  settle(design, shipped(), "p1");
  EXPECT_TRUE(gaps(design).empty());
}

TEST(Settle, reaches_the_branch_of_a_tee) {
  const EditResult tee = attach_piece(bench_pipe(), shipped(), {"p1", "out"}, "tee", Turn::up);
  Design design = taken(attach_piece(taken(tee), shipped(), {tee.touched, "branch"}, "stovepipe"));
  const Design before = design;
  design.pieces[2].at = {};
  design.pieces[2].heading = heading_east;
  settle(design, shipped(), "p1");
  EXPECT_TRUE(gaps(design).empty());
  EXPECT_EQ(design.pieces[2].at, before.pieces[2].at);
  EXPECT_TRUE(same_direction(design.pieces[2].heading, heading_up()));
}

TEST(Settle, leaves_a_loop_that_cannot_close_and_the_path_check_says_gap) {
  Design design = winding();
  design.joints.push_back({{"p9", "out"}, {"p1", "in"}});
  const Design before = design;
  settle(design, shipped(), "p1");
  EXPECT_EQ(design, before);
  bool said = false;
  for (const Finding& finding : trace_path(design, shipped()).findings) {
    said = said || finding.code == FindingCode::gap;
  }
  EXPECT_TRUE(said);
}

TEST(Settle, survives_joints_to_nowhere) {
  Design design = winding();
  design.joints.push_back({{"p9", "out"}, {"ghost", "in"}});
  design.joints.push_back({{"p9", "spout"}, {"p1", "in"}});
  design.pieces.push_back({"x", "teapot", {}, {}, {}, Turn::left, {}, {}});
  design.joints.push_back({{"x", "in"}, {"p1", "in"}});
  const Design before = design;
  settle(design, shipped(), "p1");
  settle(design, shipped(), "ghost");
  EXPECT_EQ(design, before);
}

}  // namespace fluewright::tests
