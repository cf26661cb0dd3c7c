// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

namespace fluewright::tests {

TEST(Place, puts_the_first_port_where_asked) {
  const EditResult result = place_piece({}, shipped(), "stovepipe", in_millimetres(100.0, 200.0, 300.0), heading_up());
  const Design design = taken(result);
  EXPECT_EQ(result.touched, "p1");
  EXPECT_TRUE(is_at(port_of(design, "p1", "in").at, 100.0, 200.0, 300.0));
  EXPECT_TRUE(is_at(port_of(design, "p1", "out").at, 100.0, 200.0, 1300.0));
}

TEST(Place, refuses_a_type_the_catalogue_has_not) {
  EXPECT_TRUE(refused_as(place_piece({}, shipped(), "teapot", {}, heading_east), Refusal::unknown_type));
}

TEST(Attach, pushes_the_first_port_onto_the_open_end) {
  const EditResult result = attach_piece(bench_pipe(), shipped(), {"p1", "out"}, "elbow_smooth", Turn::right);
  const Design design = taken(result);
  EXPECT_EQ(design.joined_to({"p1", "out"}), (PortRef{result.touched, "in"}));
  EXPECT_TRUE(is_at(port_of(design, result.touched, "out").at, 1225.0, -225.0, 0.0));
  EXPECT_TRUE(same_direction(port_of(design, result.touched, "out").outward, heading_south));
}

TEST(Attach, upstream_of_an_entry_pushes_the_far_port) {
  const EditResult result = attach_piece(bench_pipe(), shipped(), {"p1", "in"}, "elbow_smooth", Turn::left);
  const Design design = taken(result);
  EXPECT_EQ(design.joined_to({"p1", "in"}), (PortRef{result.touched, "out"}));
  EXPECT_TRUE(same_direction(piece_of(design, result.touched).heading, heading_south));
}

TEST(Attach, a_feed_by_its_only_joint_and_with_its_mouth_up) {
  const Design tunnel = taken(place_piece({}, shipped(), "burn_tunnel", {}, heading_down()));
  const EditResult result = attach_piece(tunnel, shipped(), {"p1", "in"}, "feed_tube", Turn::up);
  const Design design = taken(result);
  EXPECT_EQ(design.joined_to({"p1", "in"}), (PortRef{result.touched, "out"}));
  EXPECT_TRUE(is_at(port_of(design, result.touched, "mouth").at, 0.0, 0.0, 300.0));
}

TEST(Attach, carries_the_system_size_from_the_port) {
  Design design = taken(set_field(bench_pipe(), shipped(), "p1", "bore", 200.0 * millimetre));
  const EditResult tee = attach_piece(design, shipped(), {"p1", "out"}, "tee", Turn::left);
  design = taken(tee);
  EXPECT_DOUBLE_EQ(millimetres(design, tee.touched, "bore"), 200.0);
  EXPECT_DOUBLE_EQ(millimetres(design, tee.touched, "branch_bore"), 200.0);
  const EditResult channel = attach_piece(design, shipped(), {tee.touched, "out"}, "adapter_to_channel", Turn::left);
  EXPECT_DOUBLE_EQ(millimetres(taken(channel), channel.touched, "bore"), 200.0);
  EXPECT_DOUBLE_EQ(millimetres(taken(channel), channel.touched, "out_width"), 200.0);
}

TEST(Attach, narrows_the_branch_of_a_tee_with_its_run) {
  const Design design = taken(set_field(bench_pipe(), shipped(), "p1", "bore", 100.0 * millimetre));
  const EditResult tee = attach_piece(design, shipped(), {"p1", "out"}, "cleanout_tee", Turn::left);
  EXPECT_DOUBLE_EQ(millimetres(taken(tee), tee.touched, "branch_bore"), 100.0);
  EXPECT_TRUE(disorder(taken(tee)).empty());
}

TEST(Attach, keeps_the_area_between_square_and_round) {
  // A square of 177 mm passes what a circle of 199.7 mm does.
  Design design = taken(place_piece({}, shipped(), "burn_tunnel", {}, heading_down()));
  design = taken(set_field(design, shipped(), "p1", "width", 177.0 * millimetre));
  design = taken(set_field(design, shipped(), "p1", "height", 177.0 * millimetre));
  const EditResult riser = attach_piece(design, shipped(), {"p1", "out"}, "heat_riser");
  EXPECT_DOUBLE_EQ(millimetres(taken(riser), riser.touched, "bore"), 200.0);
}

TEST(Attach, does_not_narrow_masonry_that_is_wider_than_the_pipe) {
  const Design design = taken(place_piece({}, shipped(), "stovepipe", {}, heading_up()));
  const EditResult flue = attach_piece(design, shipped(), {"p1", "out"}, "masonry_flue");
  EXPECT_DOUBLE_EQ(millimetres(taken(flue), flue.touched, "width"), 200.0);
}

TEST(Attach, a_stack_piece_does_not_take_the_bench_along) {
  Drawn bench = grown({bench_pipe(), "p1"}, heading_up(), 225.0 * millimetre);
  ASSERT_EQ(std::get<std::string>(piece_of(bench.design, bench.last).fields.at("place")), "bench");
  const EditResult stack = attach_piece(bench.design, shipped(), {bench.last, "out"}, "stack_insulated");
  EXPECT_EQ(piece_of(taken(stack), stack.touched).fields.count("place"), 0u);
  EXPECT_EQ(piece_of(taken(stack), stack.touched).fields.count("wall"), 0u);
}

TEST(Attach, says_why_not) {
  const Design design = bench_pipe();
  EXPECT_TRUE(refused_as(attach_piece(design, shipped(), {"p7", "out"}, "tee"), Refusal::unknown_piece));
  EXPECT_TRUE(refused_as(attach_piece(design, shipped(), {"p1", "out"}, "teapot"), Refusal::unknown_type));
  EXPECT_TRUE(refused_as(attach_piece(design, shipped(), {"p1", "spout"}, "tee"), Refusal::not_an_open_end));
  const Design more = taken(attach_piece(design, shipped(), {"p1", "out"}, "tee"));
  EXPECT_TRUE(refused_as(attach_piece(more, shipped(), {"p1", "out"}, "tee"), Refusal::not_an_open_end));
  const Design feed = taken(place_piece({}, shipped(), "feed_tube", {}, heading_down()));
  EXPECT_TRUE(refused_as(attach_piece(feed, shipped(), {"p1", "mouth"}, "bench_pipe"), Refusal::not_an_open_end));
}

TEST(OpenEnds, are_the_joints_that_nothing_is_pushed_into) {
  const auto ends = open_ends(bench_pipe(), shipped());
  ASSERT_EQ(ends.size(), 2u);
  EXPECT_EQ(ends[0].ref, (PortRef{"p1", "in"}));
  EXPECT_EQ(ends[1].ref, (PortRef{"p1", "out"}));
}

TEST(OpenEnds, a_capped_branch_is_free_but_not_open_once_the_path_goes_through) {
  const EditResult tee = attach_piece(bench_pipe(), shipped(), {"p1", "out"}, "cleanout_tee", Turn::left);
  EXPECT_EQ(open_ends(taken(tee), shipped()).size(), 3u);  // the pipe's entry, and both ways on
  const Design through = taken(attach_piece(taken(tee), shipped(), {tee.touched, "out"}, "bench_pipe"));
  EXPECT_EQ(open_ends(through, shipped()).size(), 2u);
  EXPECT_EQ(free_ports(through, shipped()).size(), 3u);
}

}  // namespace fluewright::tests
