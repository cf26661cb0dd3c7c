// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/space.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace fluewright {
namespace {

constexpr Angle right_angle = 90.0 * degree;

void expect_heading(const Heading& h, double azimuth, double elevation) {
  EXPECT_DOUBLE_EQ(in(h.azimuth, degree), azimuth);
  EXPECT_DOUBLE_EQ(in(h.elevation, degree), elevation);
}

void expect_step(const Position& p, double x, double y, double z) {
  EXPECT_NEAR(in(p.x, millimetre), x, 1e-9);
  EXPECT_NEAR(in(p.y, millimetre), y, 1e-9);
  EXPECT_NEAR(in(p.z, millimetre), z, 1e-9);
}

double dot(const Ratio (&a)[3], const Ratio (&b)[3]) {
  double sum = 0.0;
  for (int i = 0; i < 3; ++i) sum += a[i] * b[i];
  return sum;
}

Heading any_heading() { return {*rc::gen::inRange(0, 360) * 1.0 * degree, *rc::gen::inRange(-90, 91) * 1.0 * degree}; }

TEST(AGridPoint, HoldsTheMetricAndTheInchGridExactly) {
  EXPECT_EQ(grid_point_near({25.0 * millimetre, 1.0 * inch, -300.0 * millimetre}), (GridPoint{250, 254, -3000}));
  const Position p = position_of({250, 254, -3000});
  EXPECT_DOUBLE_EQ(in(p.y, inch), 1.0);
  EXPECT_DOUBLE_EQ(in(p.z, millimetre), -300.0);
}

TEST(AGridPoint, IsTheNearestOneOnBothSidesOfZero) {
  EXPECT_EQ(grid_point_near({0.06 * millimetre, -0.06 * millimetre, -0.04 * millimetre}), (GridPoint{1, -1, 0}));
}

RC_GTEST_PROP(AGridPoint, ComesBackFromItsPosition, (std::int32_t x, std::int32_t y, std::int32_t z)) {
  const GridPoint point{x, y, z};
  RC_ASSERT(grid_point_near(position_of(point)) == point);
}

TEST(ADistance, FollowsPythagoras) {
  const Position a{1.0 * metre, 2.0 * metre, 3.0 * metre};
  const Position b{3.0 * metre, 5.0 * metre, 9.0 * metre};
  EXPECT_DOUBLE_EQ(in(distance(a, b), metre), 7.0);
}

TEST(AHeading, PointsWhereItsNameSays) {
  expect_step(step_along(heading_east, 1.0 * metre), 1000, 0, 0);
  expect_step(step_along(heading_north, 1.0 * metre), 0, 1000, 0);
  expect_step(step_along(heading_west, 1.0 * metre), -1000, 0, 0);
  expect_step(step_along(heading_south, 1.0 * metre), 0, -1000, 0);
  expect_step(step_along(heading_up(), 1.0 * metre), 0, 0, 1000);
  expect_step(step_along(heading_down(right_angle), 1.0 * metre), 0, 0, -1000);
}

TEST(AHeading, HasItsLeftAndUpWhereAWalkerHasThem) {
  expect_step(step_along(heading_east, {}, 1.0 * metre, {}), 0, 1000, 0);
  expect_step(step_along(heading_east, {}, {}, 1.0 * metre), 0, 0, 1000);
  expect_step(step_along(heading_north, {}, 1.0 * metre, {}), -1000, 0, 0);
  // Climbing, the head leans back from the facing side; falling, it leans towards it.
  expect_step(step_along(heading_up(), {}, {}, 1.0 * metre), -1000, 0, 0);
  expect_step(step_along(heading_down(), {}, {}, 1.0 * metre), 1000, 0, 0);
  // Left of the facing azimuth stays left, up or down.
  expect_step(step_along(heading_up(), {}, 1.0 * metre, {}), 0, 1000, 0);
  expect_step(step_along(heading_down(), {}, 1.0 * metre, {}), 0, 1000, 0);
}

RC_GTEST_PROP(AFrame, IsRightHandedAndSquareOnEveryHeading, ()) {
  const Frame f = frame_of(any_heading());
  RC_ASSERT(std::abs(dot(f.forward, f.left)) < 1e-12);
  RC_ASSERT(std::abs(dot(f.forward, f.up)) < 1e-12);
  RC_ASSERT(std::abs(dot(f.left, f.up)) < 1e-12);
  RC_ASSERT(std::abs(dot(f.forward, f.forward) - 1.0) < 1e-12);
  for (int i = 0; i < 3; ++i) {
    const int j = (i + 1) % 3;
    const int k = (i + 2) % 3;
    RC_ASSERT(std::abs(f.forward[j] * f.left[k] - f.forward[k] * f.left[j] - f.up[i]) < 1e-12);
  }
}

TEST(ATurn, OnTheLevelGoesRoundTheCompass) {
  expect_heading(turned(heading_east, Turn::left, right_angle), 90, 0);
  expect_heading(turned(heading_east, Turn::right, right_angle), 270, 0);
  expect_heading(turned(heading_north, Turn::left, 45.0 * degree), 135, 0);
  expect_heading(turned(heading_south, Turn::left, right_angle), 0, 0);
}

TEST(ATurn, IntoTheVerticalKeepsTheAzimuthItCameWith) {
  expect_heading(turned(heading_north, Turn::up, right_angle), 90, 90);
  expect_heading(turned(heading_west, Turn::down, right_angle), 180, -90);
}

TEST(ATurn, OutOfTheVerticalGoesByTheFacingAzimuth) {
  expect_heading(turned(heading_up(right_angle), Turn::down, right_angle), 90, 0);
  expect_heading(turned(heading_up(right_angle), Turn::up, right_angle), 270, 0);
  expect_heading(turned(heading_up(right_angle), Turn::left, right_angle), 180, 0);
  expect_heading(turned(heading_up(right_angle), Turn::right, right_angle), 0, 0);
  expect_heading(turned(heading_down(right_angle), Turn::up, right_angle), 90, 0);
  expect_heading(turned(heading_down(right_angle), Turn::down, right_angle), 270, 0);
  expect_heading(turned(heading_down(right_angle), Turn::left, right_angle), 180, 0);
}

TEST(ATurn, UpAndThenDownAgainGoesOnTheWayItCame) {
  const Heading up = turned(heading_south, Turn::up, right_angle);
  expect_heading(turned(up, Turn::down, right_angle), 270, 0);
  const Heading down = turned(heading_south, Turn::down, right_angle);
  expect_heading(turned(down, Turn::up, right_angle), 270, 0);
}

RC_GTEST_PROP(ATurn, LeansFromTheOldHeadingByItsAngle, ()) {
  const Heading h = any_heading();
  const Turn turn = *rc::gen::element(Turn::left, Turn::right, Turn::up, Turn::down);
  const double degrees = *rc::gen::inRange(0, 181);
  const double cosine = dot(frame_of(h).forward, frame_of(turned(h, turn, degrees * degree)).forward);
  RC_ASSERT(std::abs(cosine - std::cos(degrees * std::numbers::pi / 180.0)) < 1e-9);
}

RC_GTEST_PROP(ATurn, FourTimesARightAngleEndsWhereItBegan, ()) {
  Heading h{*rc::gen::inRange(0, 4) * 90.0 * degree, {}};
  const Heading start = h;
  const Turn turn = *rc::gen::element(Turn::left, Turn::right);
  for (int i = 0; i < 4; ++i) h = turned(h, turn, right_angle);
  RC_ASSERT(in(h.azimuth, degree) == in(start.azimuth, degree));
  RC_ASSERT(in(h.elevation, degree) == 0.0);
}

TEST(AnOppositeHeading, TurnsRoundButKeepsTheFacingOfAVerticalOne) {
  expect_heading(opposite(heading_east), 180, 0);
  expect_heading(opposite(heading_south), 90, 0);
  expect_heading(opposite(Heading{30.0 * degree, 20.0 * degree}), 210, -20);
  expect_heading(opposite(heading_up(right_angle)), 90, -90);
}

RC_GTEST_PROP(AnOppositeHeading, OfAnOppositeIsTheSameDirection, ()) {
  const Heading h = any_heading();
  RC_ASSERT(same_direction(opposite(opposite(h)), h));
  RC_ASSERT(!same_direction(opposite(h), h));
}

TEST(TwoHeadings, AreTheSameDirectionWhateverTheyFaceStandingUpright) {
  EXPECT_TRUE(same_direction(heading_up(), heading_up(right_angle)));
  EXPECT_FALSE(same_direction(heading_east, heading_north));
  EXPECT_FALSE(same_direction(heading_east, Heading{0.1 * degree, {}}));
  EXPECT_TRUE(same_direction(heading_east, Heading{360.0 * degree, {}}));
}

}  // namespace
}  // namespace fluewright
