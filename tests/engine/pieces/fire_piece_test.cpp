// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Burn tunnel, batch box, riser, barrel, bell and manifold.

#include "tests/engine/pieces/one_piece.hpp"

namespace fluewright::test {
namespace {

/// The tunnel as it hangs under a feed that faces east.
OnePiece tunnel() { return OnePiece("burn_tunnel", heading_down(), usual_turn(heading_down())); }

TEST(ABurnTunnel, RunsTheWayTheFeedFacesAndLeavesUpwards) {
  const Port out = tunnel().port("out");
  expect_at(out.at, 600, 0, 0);
  EXPECT_TRUE(same_direction(out.outward, heading_up()));
  EXPECT_DOUBLE_EQ(in(out.outward.azimuth, degree), 0.0);
}

TEST(ABurnTunnel, TurnsColdAirIntoTheFireAndHotGasOutOfIt) {
  const std::vector<Stretch> way = tunnel().way("in", "out");
  ASSERT_EQ(way.size(), 2u);
  EXPECT_FALSE(way[0].fire);
  EXPECT_TRUE(way[1].fire);
  EXPECT_NEAR(way[0].at_end.at(0).forward, 1.2, 1e-12);  // SMACNA A-7D, square
  EXPECT_NEAR(way[1].at_end.at(0).forward, 1.2, 1e-12);
  EXPECT_NEAR(in(way[0].length, millimetre), 66.5, 1e-9);
  EXPECT_NEAR(in(way[1].length, millimetre), 666.5, 1e-9);
}

TEST(ABurnTunnel, EnteredAndLeftByItsEndsHasNoTurns) {
  OnePiece straight("burn_tunnel", heading_north);
  straight.with("entry", std::string("end")).with("exit", std::string("end"));
  const std::vector<Stretch> way = straight.way("in", "out");
  ASSERT_EQ(way.size(), 1u);
  EXPECT_TRUE(way[0].fire);
  EXPECT_EQ(zeta(way), 0.0);
  expect_at(straight.port("out").at, 0, 600, 0);
}

TEST(ABatchBox, BurnsInTheBoxAndThrottlesInThePort) {
  const OnePiece box("batch_box");
  const std::vector<Stretch> way = box.way("in", "out");
  ASSERT_EQ(way.size(), 2u);
  EXPECT_TRUE(way[0].fire);
  EXPECT_FALSE(way[1].fire);
  EXPECT_NEAR(in(way[1].section.area(), square_metre), 0.054 * 0.240, 1e-12);
  EXPECT_NEAR(zeta(way), 1.2, 1e-12);  // one sharp turn, SMACNA A-7C; steps in area are not the piece's
  expect_at(box.port("out").at, 485 + 60 + 75, 0, 0);
}

TEST(AFirePiece, IsTheOnlySortThatHoldsAFire) {
  for (const Shape* shape : all_shapes()) {
    const bool burns = shape->id() == "burn_tunnel" || shape->id() == "batch_box";
    EXPECT_EQ(shape->holds_fire(), burns) << shape->id();
  }
}

TEST(ARiser, GivesItsLossBackInsideABarrelAndToTheRoomOutsideOne) {
  EXPECT_EQ(OnePiece("heat_riser", heading_up()).way("in", "out")[0].place, Place::jacket);
  OnePiece bare("heat_riser", heading_up());
  bare.with("jacketed", std::string("no"));
  EXPECT_EQ(bare.way("in", "out")[0].place, Place::room);
}

OnePiece barrel() { return OnePiece("barrel", heading_up(), usual_turn(heading_up())); }

TEST(ABarrel, LeavesAtItsFootTowardsWhereTheRiserFaces) {
  const Port out = barrel().port("out");
  // 850 high, 50 over the rim, outlet 150 above the foot: 650 below the rim, half of 570 aside.
  expect_at(out.at, 285, 0, -650);
  EXPECT_TRUE(same_direction(out.outward, heading_east));
}

TEST(ABarrel, TurnsUnderTheLidThroughARingAsWideAsTheRiserAtAQuarterBore) {
  OnePiece piece = barrel();
  piece.with_mm("gap", 37.5);
  const std::vector<Stretch> way = piece.way("in", "out");
  ASSERT_EQ(way.size(), 2u);
  const double riser = in(Section::circle(150.0 * millimetre).area(), square_metre);
  EXPECT_NEAR(in(way[0].section.area(), square_metre), riser, 1e-12);
  EXPECT_EQ(way[0].place, Place::jacket);
  // Two sharp turns, SMACNA A-7C: 2.4 on the ring.
  EXPECT_NEAR(way[0].at_start.at(0).forward + way[0].at_end.at(0).forward, 2.4, 1e-12);
}

TEST(ABarrel, HeatsTheRoomThroughLidAndWall) {
  const std::vector<Stretch> way = barrel().way("in", "out");
  const Stretch& down = way[1];
  EXPECT_TRUE(down.chamber);
  EXPECT_EQ(down.place, Place::room);
  EXPECT_EQ(down.section, Section::annulus(570.0 * millimetre, 250.0 * millimetre));
  EXPECT_NEAR(in(down.length, millimetre), 650.0, 1e-9);
  EXPECT_NEAR(in(down.rise, millimetre), -650.0, 1e-9);
  // Lid pi/4 0.57^2 = 0.25518, wall above the rim pi 0.57 0.05 = 0.08954.
  EXPECT_NEAR(in(down.lid->surface, square_metre), 0.34471, 1e-5);
}

TEST(ABarrel, MustHoldItsRiserAndItsOutlet) {
  const auto faulty = [](const char* key, double mm) {
    std::string fields;
    for (const FieldClash& clash : barrel().with_mm(key, mm).clashes()) fields += clash.field + " ";
    return fields;
  };
  EXPECT_EQ(faulty("height", 850), "");
  EXPECT_EQ(faulty("diameter", 255), "riser_outer ");
  EXPECT_EQ(faulty("diameter", 260), "");
  EXPECT_EQ(faulty("riser_outer", 140), "bore ");
  EXPECT_EQ(faulty("gap", 600), "");
  EXPECT_EQ(faulty("out_height", 795), "out_height ");
  EXPECT_EQ(faulty("out_height", 70), "out_bore ");
}

TEST(ABell, RisesFreelyAndSinksThroughItsWholeSection) {
  const OnePiece bell("bell");
  const std::vector<Stretch> way = bell.way("in", "out");
  ASSERT_EQ(way.size(), 2u);
  EXPECT_EQ(way[0].place, Place::jacket);
  EXPECT_NEAR(in(way[0].rise, millimetre), 600.0, 1e-9);
  EXPECT_TRUE(way[1].chamber);
  EXPECT_NEAR(in(way[1].rise, millimetre), -1050.0, 1e-9);
  EXPECT_NEAR(in(way[1].lid->surface, square_metre), 0.36, 1e-12);  // the ceiling
  EXPECT_EQ(zeta(way), 0.0);  // the jet's head is lost in the widening, which is the solver's
}

TEST(ABell, HasItsOutletInTheWallThatIsAskedFor) {
  const auto outlet = [](const char* side) { return OnePiece("bell").with("out_side", std::string(side)).port("out"); };
  expect_at(outlet("far").at, 600, 0, -450);
  expect_at(outlet("left").at, 300, 300, -450);
  expect_at(outlet("right").at, 300, -300, -450);
  expect_at(outlet("entry").at, 0, 0, -450);
  EXPECT_TRUE(same_direction(outlet("entry").outward, heading_west));
}

TEST(ABell, MayStandOverARiserInside) {
  const OnePiece bell("bell", heading_up());
  expect_at(bell.port("out").at, 300, 0, -450);
}

TEST(AManifold, IsWideInsideAndAsNarrowAsItsPipesAtItsEnds) {
  const OnePiece manifold("manifold");
  EXPECT_EQ(manifold.way("in", "out")[0].section, Section::rectangle(250.0 * millimetre, 250.0 * millimetre));
  EXPECT_EQ(manifold.port("out").section, Section::circle(150.0 * millimetre));
}

}  // namespace
}  // namespace fluewright::test
