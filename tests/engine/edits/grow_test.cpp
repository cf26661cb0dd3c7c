// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

// Geometry worked by hand. The smooth elbow of 150 mm bore has a centre-line radius of 1.5 bores = 225 mm: a right
// angle takes 225 mm of either direction, a turn by a takes r sin a of the old heading and r (1 - cos a) across.

namespace fluewright::tests {

namespace {

EditResult grow_pipe(const Design& design, std::string_view piece, std::string_view port, Heading heading, double mm) {
  return grow(design, shipped(), {std::string{piece}, std::string{port}}, heading, mm * millimetre, "bench_pipe",
              "elbow_smooth");
}

}  // namespace

TEST(Grow, straight_on_lengthens_the_last_run_of_the_same_type) {
  const Design design = taken(grow_pipe(bench_pipe(), "p1", "out", heading_east, 750.0));
  ASSERT_EQ(design.pieces.size(), 1u);
  EXPECT_DOUBLE_EQ(millimetres(design, "p1"), 1750.0);
  EXPECT_TRUE(is_at(port_of(design, "p1", "out").at, 1750.0, 0.0, 0.0));
}

TEST(Grow, from_the_entry_lengthens_backwards_and_leaves_the_far_end) {
  const Design design = taken(grow_pipe(bench_pipe(), "p1", "in", heading_west, 500.0));
  EXPECT_TRUE(is_at(port_of(design, "p1", "in").at, -500.0, 0.0, 0.0));
  EXPECT_TRUE(is_at(port_of(design, "p1", "out").at, 1000.0, 0.0, 0.0));
}

TEST(Grow, straight_on_with_another_type_adds_a_run_of_it) {
  const EditResult result = grow(bench_pipe(), shipped(), {"p1", "out"}, heading_east, 600.0 * millimetre, "stovepipe",
                                 "elbow_smooth");
  const Design design = taken(result);
  ASSERT_EQ(design.pieces.size(), 2u);
  EXPECT_EQ(piece_of(design, result.touched).type, "stovepipe");
  EXPECT_TRUE(is_at(port_of(design, result.touched, "out").at, 1600.0, 0.0, 0.0));
}

TEST(Grow, across_puts_in_a_bend_and_a_run_for_the_rest) {
  struct Case {
    Heading heading;
    Turn turn;
    double x, y, z;
  };
  for (const Case& c : {Case{heading_north, Turn::left, 0.0, 1.0, 0.0}, Case{heading_south, Turn::right, 0.0, -1.0, 0.0},
                        Case{heading_up(), Turn::up, 0.0, 0.0, 1.0}, Case{heading_down(), Turn::down, 0.0, 0.0, -1.0}}) {
    const EditResult result = grow_pipe(bench_pipe(), "p1", "out", c.heading, 1000.0);
    const Design design = taken(result);
    ASSERT_EQ(design.pieces.size(), 3u);
    const Piece& bend = design.pieces[1];
    EXPECT_EQ(bend.type, "elbow_smooth");
    EXPECT_EQ(bend.turn, c.turn);
    EXPECT_DOUBLE_EQ(millimetres(design, result.touched), 1000.0 - 225.0);
    EXPECT_TRUE(is_at(port_of(design, result.touched, "out").at, 1225.0, 1000.0 * c.y, 1000.0 * c.z));
  }
}

TEST(Grow, from_a_vertical_end_reaches_all_four_sides) {
  for (const Heading& vertical : {heading_up(), heading_down()}) {
    const Drawn standing = grown({bench_pipe(), "p1"}, vertical, 1000.0 * millimetre);
    const double z = in(vertical.elevation, degree) > 0.0 ? 1225.0 : -1225.0;
    for (int quarter = 0; quarter < 4; ++quarter) {
      const Heading heading{90.0 * quarter * degree, {}};
      const Drawn on = grown(standing, heading, 1000.0 * millimetre);
      const Position step = step_along(heading, 1000.0 * millimetre);
      EXPECT_TRUE(is_at(port_of(on.design, on.last, "out").at, 1225.0 + in(step.x, millimetre), in(step.y, millimetre), z))
          << "azimuth " << 90 * quarter;
    }
  }
}

TEST(Grow, from_a_vertical_end_reaches_any_azimuth) {
  const Drawn standing = grown({bench_pipe(), "p1"}, heading_up(), 1000.0 * millimetre);
  const Heading heading{30.0 * degree, {}};
  const Drawn on = grown(standing, heading, 1000.0 * millimetre);
  EXPECT_TRUE(same_direction(port_of(on.design, on.last, "out").outward, heading));
  EXPECT_TRUE(is_at(port_of(on.design, on.last, "out").at, 1225.0 + 866.03, 500.0, 1225.0, 0.1));
}

TEST(Grow, bends_by_the_angle_between_the_headings) {
  for (const double angle : {15.0, 30.0, 45.0, 60.0, 75.0, 90.0}) {
    for (const Heading& heading : {Heading{angle * degree, {}}, Heading{-angle * degree, {}}, Heading{{}, angle * degree},
                                   Heading{{}, -angle * degree}}) {
      const EditResult result = grow_pipe(bench_pipe(), "p1", "out", heading, 2000.0);
      const Design design = taken(result);
      ASSERT_EQ(design.pieces.size(), 3u) << angle;
      EXPECT_NEAR(in(std::get<Angle>(design.pieces[1].fields.at("angle")), degree), angle, 1e-9);
      const Port end = port_of(design, result.touched, "out");
      EXPECT_TRUE(same_direction(end.outward, heading)) << angle;
      // The length is counted along the new heading from the port, the bend's own leg included.
      const Position reach = end.at - Position{1000.0 * millimetre, {}, {}};
      const Position unit = step_along(heading, 1.0 * metre);
      const double along = in(reach.x, metre) * in(unit.x, metre) + in(reach.y, metre) * in(unit.y, metre) +
                           in(reach.z, metre) * in(unit.z, metre);
      EXPECT_NEAR(along, 2.0, 1e-4) << angle;
    }
  }
}

TEST(Grow, by_the_bend_alone_adds_no_run) {
  const EditResult result = grow_pipe(bench_pipe(), "p1", "out", heading_north, 225.0);
  const Design design = taken(result);
  ASSERT_EQ(design.pieces.size(), 2u);
  EXPECT_EQ(piece_of(design, result.touched).type, "elbow_smooth");
}

TEST(Grow, across_upstream_of_the_entry_keeps_the_flow_running_into_the_first_port) {
  const EditResult result = grow_pipe(bench_pipe(), "p1", "in", heading_north, 1000.0);
  const Design design = taken(result);
  ASSERT_EQ(design.pieces.size(), 3u);
  EXPECT_EQ(design.joined_to({"p1", "in"})->port, "out");
  EXPECT_TRUE(is_at(port_of(design, result.touched, "in").at, -225.0, 1000.0, 0.0));
  EXPECT_TRUE(same_direction(piece_of(design, result.touched).heading, heading_south));
}

TEST(Grow, backwards_shortens_and_at_last_removes_the_run) {
  Drawn drawn = grown({bench_pipe(), "p1"}, heading_north, 1000.0 * millimetre);
  drawn = grown(drawn, heading_south, 300.0 * millimetre);
  EXPECT_DOUBLE_EQ(millimetres(drawn.design, drawn.last), 475.0);
  const EditResult gone = grow_pipe(drawn.design, drawn.last, "out", heading_south, 475.0);
  EXPECT_EQ(taken(gone).pieces.size(), 2u);
  EXPECT_EQ(piece_of(taken(gone), gone.touched).type, "elbow_smooth");
}

TEST(Grow, backwards_by_more_than_there_is_says_too_short) {
  EXPECT_TRUE(refused_as(grow_pipe(bench_pipe(), "p1", "out", heading_west, 1500.0), Refusal::too_short));
  // 20 mm is the least length of a bench pipe: 10 mm may not be left over.
  EXPECT_TRUE(refused_as(grow_pipe(bench_pipe(), "p1", "out", heading_west, 990.0), Refusal::too_short));
}

TEST(Grow, backwards_from_a_bend_says_that_it_is_no_run) {
  const Drawn bent = grown({bench_pipe(), "p1"}, heading_north, 225.0 * millimetre);
  EXPECT_TRUE(refused_as(grow_pipe(bent.design, bent.last, "out", heading_south, 100.0), Refusal::not_a_run));
}

TEST(Grow, by_nothing_changes_nothing) {
  const Design design = bench_pipe();
  EXPECT_EQ(taken(grow_pipe(design, "p1", "out", heading_east, 0.0)), design);
  EXPECT_EQ(taken(grow_pipe(design, "p1", "out", heading_west, 0.0)), design);
}

TEST(Grow, in_two_steps_equals_growing_once) {
  for (const Heading& heading : {heading_east, heading_north, heading_up(), Heading{45.0 * degree, {}}}) {
    const Drawn once = grown({bench_pipe(), "p1"}, heading, 1750.0 * millimetre);
    const Drawn twice = grown(grown({bench_pipe(), "p1"}, heading, 600.0 * millimetre), heading, 1150.0 * millimetre);
    EXPECT_EQ(once.last, twice.last);
    EXPECT_EQ(once.design, twice.design);
  }
}

TEST(Grow, shorter_than_the_bend_or_the_shortest_run_says_too_short) {
  EXPECT_TRUE(refused_as(grow_pipe(bench_pipe(), "p1", "out", heading_north, 200.0), Refusal::too_short));
  EXPECT_TRUE(refused_as(grow_pipe(bench_pipe(), "p1", "out", heading_north, 235.0), Refusal::too_short));
}

TEST(Grow, past_what_the_catalogue_allows_says_out_of_range) {
  EXPECT_TRUE(refused_as(grow_pipe(bench_pipe(), "p1", "out", heading_east, 20000.0), Refusal::out_of_range));
  // No elbow turns by more than a right angle.
  EXPECT_TRUE(refused_as(grow_pipe(bench_pipe(), "p1", "out", {135.0 * degree, {}}, 2000.0), Refusal::out_of_range));
}

TEST(Grow, towards_a_heading_that_no_single_turn_reaches_does_not_fit) {
  EXPECT_TRUE(refused_as(grow_pipe(bench_pipe(), "p1", "out", {30.0 * degree, 30.0 * degree}, 2000.0),
                         Refusal::does_not_fit));
}

TEST(Grow, takes_the_bore_and_the_mass_along) {
  Design design = taken(set_field(bench_pipe(), shipped(), "p1", "bore", 200.0 * millimetre));
  design = taken(set_field(design, shipped(), "p1", "mass_width", 750.0 * millimetre));
  design = taken(set_field(design, shipped(), "p1", "wall", std::string{"pipe_single_0_7"}));
  const EditResult result = grow_pipe(design, "p1", "out", heading_north, 1000.0);
  design = taken(result);
  const PieceId bend = design.pieces[1].id;
  for (const PieceId& id : {bend, result.touched}) {
    EXPECT_DOUBLE_EQ(millimetres(design, id, "bore"), 200.0);
    EXPECT_DOUBLE_EQ(millimetres(design, id, "mass_width"), 750.0);
  }
  EXPECT_EQ(std::get<std::string>(piece_of(design, bend).fields.at("place")), "bench");
  EXPECT_EQ(std::get<std::string>(piece_of(design, result.touched).fields.at("wall")), "pipe_single_0_7");
}

TEST(Grow, names_what_is_wrong_with_the_call) {
  const Design design = bench_pipe();
  EXPECT_TRUE(refused_as(grow_pipe(design, "p9", "out", heading_east, 100.0), Refusal::unknown_piece));
  EXPECT_TRUE(refused_as(grow_pipe(design, "p1", "top", heading_east, 100.0), Refusal::not_an_open_end));
  EXPECT_TRUE(refused_as(grow(design, shipped(), {"p1", "out"}, heading_east, 1.0 * metre, "no_such", "elbow_smooth"),
                         Refusal::unknown_type));
  EXPECT_TRUE(refused_as(grow(design, shipped(), {"p1", "out"}, heading_east, 1.0 * metre, "tee", "elbow_smooth"),
                         Refusal::not_a_run));
  EXPECT_TRUE(refused_as(grow_pipe(design, "p1", "out", heading_east, -100.0), Refusal::too_short));
  const Design bent = taken(grow_pipe(design, "p1", "out", heading_north, 1000.0));
  EXPECT_TRUE(refused_as(grow_pipe(bent, "p1", "out", heading_east, 100.0), Refusal::not_an_open_end));
}

}  // namespace fluewright::tests
