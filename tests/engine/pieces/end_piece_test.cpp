// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Where air comes in, where gas goes out, and what sits on the stack.

#include "tests/engine/pieces/one_piece.hpp"

namespace fluewright::test {
namespace {

TEST(AFeed, ChokesByWhatTheSticksLeaveOpen) {
  // (1.707 - 0.33)^2 / 0.33^2 = 17.41, by hand. Idelchik, from memory.
  EXPECT_NEAR(zeta(OnePiece("feed_tube", heading_down()).way("mouth", "out")), 17.412, 1e-3);
  EXPECT_NEAR(zeta(OnePiece("feed_tube", heading_down()).with("free_share", Ratio{1.0}).way("mouth", "out")), 0.5,
              1e-3);
}

TEST(AFeed, OpensToTheRoomAndFallsByItsLength) {
  const OnePiece feed("feed_tube", heading_down());
  EXPECT_EQ(feed.port("mouth").kind, PortKind::room_air);
  expect_at(feed.port("out").at, 0, 0, -300);
  EXPECT_NEAR(in(feed.way("mouth", "out")[0].rise, millimetre), -300.0, 1e-9);
}

TEST(AFeed, WithALidTakesADuctInsteadOfTheRoom) {
  OnePiece feed("feed_tube", heading_down());
  feed.with("air_from", std::string("duct"));
  EXPECT_EQ(feed.port("mouth").kind, PortKind::joint);
  // In a duct, not at an entry: (1 + 0.707 sqrt(0.67) - 0.33)^2 / 0.33^2 = 14.327, by hand.
  EXPECT_NEAR(zeta(feed.way("mouth", "out")), 14.327, 1e-2);
}

TEST(ADoorSlot, IsMeasuredOnItsDoorway) {
  // (1.707 - 0.06)^2 / 0.06^2 = 753.5, by hand.
  const OnePiece door("batch_door_slot");
  EXPECT_NEAR(zeta(door.way("slot", "out")), 753.5, 0.1);
  EXPECT_EQ(door.port("slot").kind, PortKind::room_air);
}

TEST(AnOutsideAirDuct, BeginsOutdoors) {
  const OnePiece duct("outside_air_duct");
  EXPECT_EQ(duct.port("intake").kind, PortKind::outdoor_air);
  EXPECT_EQ(duct.geometry().ports[0].name, "intake");
  EXPECT_EQ(duct.way("intake", "out")[0].place, Place::ground);
}

double out_of(const char* type) { return zeta(OnePiece(type, heading_up()).way("in", "top")); }

TEST(AStackHead, AddsItsCapsPublishedLossToTheFreeExit) {
  EXPECT_NEAR(out_of("open_head"), 0.0, 1e-12);  // ASHRAE: open straight 0 beyond the velocity head
  EXPECT_NEAR(out_of("masonry_head"), 0.0, 1e-12);
  EXPECT_NEAR(out_of("cap_low_resistance"), 0.5, 1e-12);  // ASHRAE
  EXPECT_NEAR(out_of("cap_plain"), 2.0, 1e-12);           // ASHRAE
  EXPECT_NEAR(out_of("cap_rain"), 0.18, 1e-12);           // ACGIH at gap 0.75, from memory
  EXPECT_NEAR(zeta(OnePiece("cap_rain").with("gap_ratio", Ratio{0.5}).way("in", "top")), 0.73, 1e-12);
}

TEST(AStackHead, WithAScreenCostsHalfAHeadMoreAndSootOnTop) {
  OnePiece head("open_head", heading_up());
  head.with("screen", std::string("yes"));
  EXPECT_NEAR(zeta(head.way("in", "top")), 0.5, 1e-12);  // ASHRAE spark screen
  head.with("clogged_share", Ratio{0.5});
  // (1 + 0.707 sqrt(0.5) - 0.5)^2 / 0.25 = 3.9996, by hand.
  EXPECT_NEAR(zeta(head.way("in", "top")), 4.5, 1e-3);
}

TEST(AStackHead, IsAFreePipeEndWhenAirComesDown) {
  EXPECT_NEAR(zeta(OnePiece("open_head", heading_up()).way("top", "in")), 1.0, 1e-12);  // Idelchik 3-1, thin edge
  EXPECT_NEAR(zeta(OnePiece("cap_low_resistance", heading_up()).way("top", "in")), 1.5, 1e-12);
}

TEST(AStackHead, EndsInOutdoorAir) {
  for (const char* type : {"cap_rain", "cap_low_resistance", "cap_plain", "open_head", "masonry_head", "fan_top"}) {
    EXPECT_EQ(OnePiece(type).port("top").kind, PortKind::outdoor_air) << type;
  }
}

const Fan& fan_in(const std::vector<Stretch>& way) { return way.at(0).fan.value(); }

TEST(AFan, BlowsTheWayItIsDrawnAndAtTheSpeedItIsSet) {
  const auto with = OnePiece("fan_inline").with("speed", Ratio{0.6}).way("in", "out");
  EXPECT_TRUE(fan_in(with).blows_along);
  EXPECT_FALSE(fan_in(with).at_end);
  EXPECT_EQ(fan_in(with).speed, 0.6);
  EXPECT_EQ(fan_in(with).curve.sheet().id, "duct_fan_in_stream");
  const auto against = OnePiece("fan_inline").way("out", "in");
  EXPECT_FALSE(fan_in(against).blows_along);
  EXPECT_TRUE(fan_in(against).at_end);
}

TEST(AFan, InTheStreamStandsInTheWayAndABladeAtTheSideHardlyDoes) {
  EXPECT_GT(fan_in(OnePiece("fan_inline").way("in", "out")).curve.sheet().off_loss, 1.0);
  EXPECT_LT(fan_in(OnePiece("fan_side").way("in", "out")).curve.sheet().off_loss, 0.2);
  EXPECT_TRUE(fan_in(OnePiece("fan_inline").way("in", "out")).curve.sheet().motor_in_stream);
  EXPECT_FALSE(fan_in(OnePiece("fan_side").way("in", "out")).curve.sheet().motor_in_stream);
}

TEST(AFan, OnTopOfTheStackStandsAtItsEndAndBlowsOut) {
  const auto out = OnePiece("fan_top", heading_up()).way("in", "top");
  EXPECT_TRUE(fan_in(out).at_end);
  EXPECT_TRUE(fan_in(out).blows_along);
}

TEST(ADraftRegulator, IsCalculatedInFull) { EXPECT_EQ(OnePiece("draft_regulator").shape().left_out(), ""); }

TEST(AFan, IsCalculatedInFull) {
  for (const char* type : {"fan_inline", "fan_side", "fan_top"}) EXPECT_EQ(OnePiece(type).shape().left_out(), "") << type;
}

}  // namespace
}  // namespace fluewright::test
