// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

#include <limits>

namespace fluewright::tests {

namespace {

/// Pipe east, elbow p2, pipe north p3, elbow p4, stovepipe up p5.
Design line() {
  Drawn drawn = grown({bench_pipe(), "p1"}, heading_north, 1225.0 * millimetre);
  return grown(drawn, heading_up(), 1225.0 * millimetre, "out", "stovepipe").design;
}

}  // namespace

TEST(SetField, lets_everything_downstream_follow) {
  const Design before = line();
  const Design after = taken(set_field(before, shipped(), "p3", "length", 1500.0 * millimetre));
  for (const char* id : {"p1", "p2"}) {
    EXPECT_EQ(piece_of(after, id), piece_of(before, id)) << id;
  }
  for (const char* id : {"p4", "p5"}) {
    EXPECT_EQ(piece_of(after, id).at.x, piece_of(before, id).at.x) << id;
    EXPECT_EQ(piece_of(after, id).at.y, piece_of(before, id).at.y + 5000) << id;
  }
}

TEST(SetField, of_a_wider_elbow_moves_what_follows_by_its_longer_legs) {
  // Radius 1.5 bores: 225 mm legs become 300 mm.
  const Design after = taken(set_field(line(), shipped(), "p2", "bore", 200.0 * millimetre));
  EXPECT_TRUE(is_at(port_of(after, "p3", "in").at, 1300.0, 300.0, 0.0));
}

TEST(SetField, of_an_angle_turns_what_follows) {
  const Design after = taken(set_field(line(), shipped(), "p2", "angle", 45.0 * degree));
  EXPECT_TRUE(same_direction(piece_of(after, "p3").heading, {45.0 * degree, {}}));
  EXPECT_TRUE(same_direction(piece_of(after, "p5").heading, heading_up()));
}

TEST(SetField, on_the_first_piece_keeps_its_joined_end_where_it_is) {
  const Design tunnel = taken(place_piece({}, shipped(), "burn_tunnel", {}, heading_down()));
  const EditResult feed = attach_piece(tunnel, shipped(), {"p1", "in"}, "feed_tube");
  const Design after = taken(set_field(taken(feed), shipped(), feed.touched, "length", 450.0 * millimetre));
  EXPECT_EQ(piece_of(after, "p1"), piece_of(tunnel, "p1"));
  EXPECT_TRUE(is_at(port_of(after, feed.touched, "mouth").at, 0.0, 0.0, 450.0));
}

TEST(SetField, on_an_unfinished_path_s_first_pipe_moves_only_its_open_end) {
  const Design before = line();
  const Design after = taken(set_field(before, shipped(), "p1", "length", 1500.0 * millimetre));
  EXPECT_TRUE(is_at(port_of(after, "p1", "in").at, -500.0, 0.0, 0.0));
  for (const char* id : {"p2", "p3", "p4", "p5"}) {
    EXPECT_EQ(piece_of(after, id), piece_of(before, id)) << id;
  }
}

TEST(SetField, there_and_back_gives_the_same_design) {
  const Design before = line();
  const Design there = taken(set_field(before, shipped(), "p1", "length", 1333.3 * millimetre));
  EXPECT_EQ(taken(set_field(there, shipped(), "p1", "length", 1000.0 * millimetre)), before);
}

TEST(SetField, holds_the_catalogue_s_range) {
  const Design design = line();
  const auto bad = [&](std::string_view key, FieldValue value) {
    return refused_as(set_field(design, shipped(), "p1", key, std::move(value)), Refusal::out_of_range);
  };
  EXPECT_TRUE(bad("bore", 0.0 * millimetre));
  EXPECT_TRUE(bad("bore", 501.0 * millimetre));
  EXPECT_TRUE(bad("length", std::numeric_limits<double>::quiet_NaN() * metre));
  EXPECT_TRUE(bad("length", std::numeric_limits<double>::infinity() * metre));
  EXPECT_TRUE(bad("length", 90.0 * degree));
  EXPECT_TRUE(bad("wall", std::string{"wet_paper"}));
  EXPECT_TRUE(bad("mass_material", std::string{"cheese"}));
  EXPECT_TRUE(bad("no_such_field", 1.0 * metre));
  EXPECT_TRUE(bad("mass_width", 150.0 * millimetre));  // the pipe would not fit into it
  EXPECT_TRUE(refused_as(set_field(design, shipped(), "p2", "place", std::string{"moon"}), Refusal::out_of_range));
  EXPECT_TRUE(refused_as(set_field(design, shipped(), "p77", "bore", 100.0 * millimetre), Refusal::unknown_piece));
}

TEST(SetField, takes_a_wall_of_the_design_s_own) {
  Design design = line();
  design.walls.push_back({"my_wall", "Own", {{"steel", 1.0 * millimetre}}, {}});
  EXPECT_EQ(std::get<std::string>(
                piece_of(taken(set_field(design, shipped(), "p1", "wall", std::string{"my_wall"})), "p1").fields.at("wall")),
            "my_wall");
}

TEST(SetField, that_would_lid_a_joined_port_open_does_not_fit) {
  // A feed fed by a duct: its mouth is joined, so it cannot open to the room.
  Design design = taken(place_piece({}, shipped(), "feed_tube_round", {}, heading_down()));
  design = taken(set_field(design, shipped(), "p1", "air_from", std::string{"duct"}));
  design = taken(attach_piece(design, shipped(), {"p1", "mouth"}, "outside_air_duct"));
  EXPECT_TRUE(refused_as(set_field(design, shipped(), "p1", "air_from", std::string{"room"}), Refusal::does_not_fit));
}

TEST(SetTurn, swings_what_follows_round) {
  const Design after = taken(set_turn(line(), shipped(), "p2", Turn::right));
  EXPECT_TRUE(is_at(port_of(after, "p3", "out").at, 1225.0, -1225.0, 0.0));
  EXPECT_TRUE(same_direction(piece_of(after, "p5").heading, heading_up()));
}

TEST(SetTurn, four_times_round_gives_the_same_design) {
  const Design before = line();
  Design design = before;
  for (const Turn turn : {Turn::right, Turn::left, Turn::right, Turn::left}) {
    design = taken(set_turn(design, shipped(), "p2", turn));
  }
  EXPECT_EQ(design, before);
}

TEST(SetTurn, keeps_the_way_an_upright_piece_faces_relative_to_its_neighbour) {
  // The stovepipe's elbow leads west; when the whole line swings by 180 degrees it leads east.
  Drawn drawn{line(), "p5"};
  drawn = grown(drawn, heading_west, 1000.0 * millimetre, "out", "stovepipe");
  const Design after = taken(set_turn(drawn.design, shipped(), "p2", Turn::right));
  EXPECT_TRUE(same_direction(piece_of(after, drawn.last).heading, heading_east));
}

TEST(SetTurn, from_level_to_upright_stands_the_rest_up) {
  const Design after = taken(set_turn(line(), shipped(), "p2", Turn::up));
  EXPECT_TRUE(same_direction(piece_of(after, "p3").heading, heading_up()));
  EXPECT_TRUE(is_at(port_of(after, "p3", "out").at, 1225.0, 0.0, 1225.0));
}

}  // namespace fluewright::tests
