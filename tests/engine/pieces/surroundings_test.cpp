// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Walls, roughness, slope and what lies around a piece.

#include "engine/layout/path.hpp"
#include "tests/engine/pieces/one_piece.hpp"

namespace fluewright::test {
namespace {

Stretch only(const OnePiece& piece) { return piece.way("in", "out").at(0); }

TEST(ABenchPipe, LiesInTheMassItsFieldsDescribe) {
  OnePiece pipe("bench_pipe");
  pipe.with_mm("mass_width", 700).with("mass_material", std::string("brick")).with("exposed_share", Ratio{0.6});
  const Stretch stretch = only(pipe);
  EXPECT_EQ(stretch.place, Place::mass);
  ASSERT_NE(stretch.embedding.material, nullptr);
  EXPECT_EQ(stretch.embedding.material->id, "brick");
  EXPECT_NEAR(in(stretch.embedding.width, millimetre), 700.0, 1e-9);
  EXPECT_NEAR(in(stretch.embedding.height, millimetre), 450.0, 1e-9);
  EXPECT_DOUBLE_EQ(stretch.embedding.exposed_share, 0.6);
}

TEST(AFloorTunnel, LiesInTheGround) {
  OnePiece tunnel("floor_tunnel");
  tunnel.with("under_open_sky", std::string("yes"));
  const Stretch stretch = only(tunnel);
  EXPECT_EQ(stretch.place, Place::ground);
  EXPECT_EQ(stretch.embedding.material->id, "soil_clay");
  EXPECT_TRUE(stretch.embedding.under_open_sky);
  EXPECT_FALSE(only(OnePiece("floor_tunnel")).embedding.under_open_sky);
}

TEST(AFitting, LiesWhereItsPlaceSays) {
  const auto place = [](const char* word) {
    return only(OnePiece("elbow_smooth").with("place", std::string(word))).place;
  };
  EXPECT_EQ(place("room"), Place::room);
  EXPECT_EQ(place("bench"), Place::mass);
  EXPECT_EQ(place("ground"), Place::ground);
  EXPECT_EQ(place("attic"), Place::attic);
  EXPECT_EQ(place("outdoors"), Place::outdoors);
}

TEST(AWall, GivesItsLayersAndItsInnerFacesRoughness) {
  const Stretch stretch = only(OnePiece("stack_insulated", heading_up()));
  ASSERT_EQ(stretch.wall.size(), 3u);
  EXPECT_EQ(stretch.wall[1].material->id, "mineral_wool");
  EXPECT_NEAR(in(stretch.wall[1].thickness, millimetre), 25.0, 1e-9);
  EXPECT_EQ(stretch.roughness, stretch.wall[0].material->roughness);
  EXPECT_EQ(stretch.roughness_citation.source, stretch.wall[0].material->roughness_citation.source);
}

TEST(APieceWithoutAWall, IsAsRoughAsTheMassAroundIt) {
  OnePiece channel("bench_brick_channel");
  channel.with("wall", std::string("none"));
  EXPECT_EQ(only(channel).roughness, shipped_library()->material("cob")->roughness);
}

TEST(ASlope, LiftsTheFarEndWithoutTurningIt) {
  OnePiece pipe("bench_pipe", heading_north);
  pipe.with_mm("length", 2000).with("slope", Ratio{0.02});
  expect_at(pipe.port("out").at, 0, 2000, 40);
  EXPECT_TRUE(same_direction(pipe.port("out").outward, heading_north));
  const Stretch stretch = only(pipe);
  EXPECT_NEAR(in(stretch.length, millimetre), std::hypot(2000.0, 40.0), 1e-9);
  EXPECT_NEAR(in(stretch.rise, millimetre), 40.0, 1e-9);
  EXPECT_FALSE(stretch.stands_upright);
}

TEST(ASlope, MeansNothingOnAStandingPipe) {
  OnePiece pipe("stovepipe", heading_up());
  pipe.with("slope", Ratio{0.1});
  expect_at(pipe.port("out").at, 0, 0, 1000);
  EXPECT_TRUE(only(pipe).stands_upright);
}

TEST(AHalfBarrelChannel, HasHalfARoundSection) {
  EXPECT_EQ(only(OnePiece("bench_half_barrel")).section, Section::half_round(570.0 * millimetre));
}

/// Fields of a lone bench pipe that check_values() finds fault with.
std::string faults(const char* type, const char* key, double mm) {
  Design design;
  Piece piece;
  piece.id = "p1";
  piece.type = type;
  piece.fields[key] = mm * millimetre;
  design.pieces = {piece};
  std::string fields;
  for (const Finding& f : check_values(design, *shipped_library())) fields += f.field + " ";
  return fields;
}

TEST(AMass, MustBeWiderAndHigherThanThePipeInIt) {
  EXPECT_EQ(faults("bench_pipe", "mass_width", 161.0), "");  // bore 150, wall 2 x 0.5, 10 mm to spare
  EXPECT_EQ(faults("bench_pipe", "mass_width", 160.0), "mass_width ");
  EXPECT_EQ(faults("bench_pipe", "mass_height", 155.0), "mass_height ");
  EXPECT_EQ(faults("floor_pipe", "depth", 75.0), "depth ");
  EXPECT_EQ(faults("floor_pipe", "depth", 81.0), "");
}

TEST(AMass, MattersToAFittingOnlyWhereItLiesInOne) {
  EXPECT_EQ(faults("elbow_mitre", "mass_width", 100.0), "");
  EXPECT_EQ(faults("channel_turn", "mass_width", 100.0), "mass_width ");
}

}  // namespace
}  // namespace fluewright::test
