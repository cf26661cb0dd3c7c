// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/pieces/one_piece.hpp"

namespace fluewright::test {
namespace {

double turn_loss(const OnePiece& piece) { return zeta(piece.way("in", "out")); }

// SMACNA HVAC Systems Duct Design, 4th ed., Tables A-7A to A-7D; read in the table, so exact.
TEST(AnElbow, HasThePublishedLossOfItsMake) {
  EXPECT_NEAR(turn_loss(OnePiece("elbow_smooth")), 0.15, 1e-12);  // A-7A, R/D 1.5
  EXPECT_NEAR(turn_loss(OnePiece("elbow_smooth").with("radius_ratio", Ratio{1.0})), 0.22, 1e-12);
  EXPECT_NEAR(turn_loss(OnePiece("elbow_smooth").with("angle", 45.0 * degree)), 0.15 * 0.60, 1e-12);
  EXPECT_NEAR(turn_loss(OnePiece("elbow_segmented")), 0.37, 1e-12);  // A-7B, 4 pieces, R/D 1.0
  EXPECT_NEAR(turn_loss(OnePiece("elbow_segmented").with("gores", Count{3})), 0.42, 1e-12);
  EXPECT_NEAR(turn_loss(OnePiece("elbow_segmented").with("gores", Count{5})), 0.33, 1e-12);
  EXPECT_NEAR(turn_loss(OnePiece("elbow_mitre")), 1.2, 1e-12);  // A-7C
  EXPECT_NEAR(turn_loss(OnePiece("elbow_mitre").with("angle", 45.0 * degree)), 0.34, 1e-12);
  EXPECT_NEAR(turn_loss(OnePiece("channel_turn")), 1.2, 1e-12);  // A-7D, H/W 1
}

TEST(AnElbow, IsCorrectedForLowFlowOnlyWhereItIsSharp) {
  const auto correction = [](const char* type) { return OnePiece(type).way("in", "out")[0].at_start[0].correction; };
  EXPECT_EQ(correction("elbow_mitre"), LocalLoss::Reynolds::mitre);
  EXPECT_EQ(correction("channel_turn"), LocalLoss::Reynolds::mitre);
  EXPECT_EQ(correction("elbow_smooth"), LocalLoss::Reynolds::none);
  EXPECT_EQ(correction("elbow_segmented"), LocalLoss::Reynolds::none);
}

TEST(AChannelTurn, CountsItsSidesByThePlaneOfTheTurn) {
  // A channel twice as wide as high: level, its axis of turning is the short side; upright, the long one.
  OnePiece level("channel_turn", heading_east, Turn::left);
  level.with_mm("width", 300).with_mm("height", 150);
  EXPECT_NEAR(turn_loss(level), 1.3, 1e-12);  // SMACNA A-7D, H/W 0.5
  OnePiece upright("channel_turn", heading_east, Turn::up);
  upright.with_mm("width", 300).with_mm("height", 150);
  EXPECT_NEAR(turn_loss(upright), 1.1, 1e-12);  // H/W 2
  EXPECT_NEAR(in(level.way("in", "out")[0].length, millimetre), 300.0, 1e-9);
  EXPECT_NEAR(in(upright.way("in", "out")[0].length, millimetre), 150.0, 1e-9);
}

TEST(ASmoothElbow, EndsOneRadiusOnAndOneRadiusAside) {
  const OnePiece up("elbow_smooth", heading_east, Turn::up);
  expect_at(up.port("out").at, 225, 0, 225);  // R = 1.5 x 150
  EXPECT_TRUE(same_direction(up.port("out").outward, heading_up()));
  const Stretch stretch = up.way("in", "out")[0];
  EXPECT_NEAR(in(stretch.length, millimetre), 225.0 * std::numbers::pi / 2.0, 1e-9);
  EXPECT_NEAR(in(stretch.rise, millimetre), 225.0, 1e-9);
}

TEST(AMitredElbow, HasLegsOfHalfItsBore) {
  expect_at(OnePiece("elbow_mitre", heading_north, Turn::right).port("out").at, 75, 75, 0);
}

// Crane TP-410 with the whole flow in the branch and equal bores, worked by hand: joining 0.55 (1 + 1) = 1.10,
// dividing (1 + 0.3) (1 + 0.3) = 1.69.
TEST(ACappedTee, IsWorseEnteredByItsRunThanByItsBranch) {
  const OnePiece tee("tee");
  EXPECT_NEAR(zeta(tee.way("branch", "out")), 1.10, 1e-12);
  EXPECT_NEAR(zeta(tee.way("branch", "in")), 1.10, 1e-12);
  EXPECT_NEAR(zeta(tee.way("in", "branch")), 1.69, 1e-12);
  EXPECT_NEAR(zeta(tee.way("out", "branch")), 1.69, 1e-12);
}

TEST(ATee, HardlyResistsStraightOn) {
  // Rennels & Hudson, Pipe Flow (2012): 0.03. From memory.
  EXPECT_NEAR(zeta(OnePiece("tee").way("in", "out")), 0.03, 1e-12);
  EXPECT_NEAR(zeta(OnePiece("cleanout_tee").way("out", "in")), 0.03, 1e-12);
}

TEST(ATee, StandsOnTheGridWithItsBranchToTheSideOfItsTurn) {
  const OnePiece tee("tee", heading_east, Turn::left);
  expect_at(tee.port("out").at, 250, 0, 0);
  expect_at(tee.port("branch").at, 125, 125, 0);
  EXPECT_TRUE(same_direction(tee.port("branch").outward, heading_north));
}

TEST(ATee, KeepsTheStepIntoANarrowBranchInsideCranesCoefficient) {
  OnePiece tee("tee");
  tee.with_mm("branch_bore", 100);
  const std::vector<Stretch> way = tee.way("in", "branch");
  ASSERT_EQ(way.size(), 2u);
  EXPECT_TRUE(way[1].eased_step_at_start);
  // On the head of the run, q = 1, area ratio (100/150)^2: Crane's dividing slender branch, 1 + (1/b)^2 = 6.0625.
  EXPECT_NEAR(way[0].at_end[0].forward, 1.0 + std::pow(1.5, 4.0), 1e-9);
  EXPECT_TRUE(tee.way("branch", "in")[1].eased_step_at_start);
}

TEST(ATee, SaysWhichEndsMayStayShut) {
  const auto shut = [](const char* capped) {
    std::string names;
    for (const Port& port : OnePiece("tee").with("capped", std::string(capped)).geometry().ports) {
      if (port.may_stay_shut) names += port.name + " ";
    }
    return names;
  };
  EXPECT_EQ(shut("any"), "in out branch ");
  EXPECT_EQ(shut("branch"), "branch ");
  EXPECT_EQ(shut("none"), "");
}

TEST(ATee, DoesNotTakeABranchWiderThanItsRun) {
  EXPECT_TRUE(OnePiece("tee").clashes().empty());
  const std::vector<FieldClash> found = OnePiece("tee").with_mm("branch_bore", 160).clashes();
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0].field, "branch_bore");
  EXPECT_NEAR(in(std::get<Length>(*found[0].highest), millimetre), 150.0, 1e-9);
}

TEST(AWye, IsEasyWithItsLeanAndHardAgainstIt) {
  const OnePiece wye("wye");
  // Crane TP-410 at 45 degrees, q = b = 1: joining 0.55 (2 - 1.41) = 0.3245, dividing 0.6 (2 - 2 cos 45) = 0.3515.
  EXPECT_NEAR(zeta(wye.way("branch", "in")), 0.3245, 1e-4);
  EXPECT_NEAR(zeta(wye.way("in", "branch")), 0.3515, 1e-4);
  // Against it: the tee's, times SMACNA's angle factor at 135 degrees, 1.22.
  EXPECT_NEAR(zeta(wye.way("branch", "out")), 1.10 * 1.22, 1e-9);
  EXPECT_NEAR(zeta(wye.way("out", "branch")), 1.69 * 1.22, 1e-9);
}

TEST(AWye, SendsItsBranchForwardByItsAngle) {
  const OnePiece wye("wye", heading_east, Turn::left);
  const Port branch = wye.port("branch");
  expect_at(branch.at, 175 + 125, 125, 0);
  EXPECT_NEAR(in(branch.outward.azimuth, degree), 45.0, 1e-9);
}

TEST(AReducer, LosesOnItsNarrowSideAndEasesTheStep) {
  // 150 to 200 mm over 150 mm: half angle atan(25/150) = 9.462 degrees, sine 0.16440; area ratio 0.5625.
  const OnePiece wider("reducer");
  const std::vector<Stretch> out = wider.way("in", "out");
  ASSERT_EQ(out.size(), 2u);
  EXPECT_TRUE(out[1].eased_step_at_start);
  EXPECT_NEAR(in(out[0].length + out[1].length, millimetre), 150.0, 1e-9);
  // Crane TP-410 from memory: widening 2.6 sin(a/2) (1 - A1/A2)^2, narrowing 0.8 sin(a/2) (1 - A2/A1).
  EXPECT_NEAR(out[0].at_end.at(0).forward, 2.6 * 0.16440 * 0.4375 * 0.4375, 1e-5);
  EXPECT_NEAR(out[0].at_end.at(0).backward, 0.8 * 0.16440 * 0.4375, 1e-5);
  const OnePiece narrower = OnePiece("reducer").with_mm("bore", 200).with_mm("out_bore", 150);
  EXPECT_NEAR(zeta(narrower.way("in", "out")), 0.8 * 0.16440 * 0.4375, 1e-5);
  EXPECT_NEAR(zeta(narrower.way("out", "in")), 2.6 * 0.16440 * 0.4375 * 0.4375, 1e-5);
}

TEST(AnAdapter, OfEqualAreaLosesNothing) {
  OnePiece adapter("adapter_to_channel");
  const double side = 150.0 * std::sqrt(std::numbers::pi) / 2.0;
  adapter.with_mm("out_width", side).with_mm("out_height", side);
  EXPECT_NEAR(zeta(adapter.way("in", "out")), 0.0, 1e-9);
  EXPECT_EQ(adapter.port("out").section.form(), Section::Form::rectangle);
  EXPECT_EQ(OnePiece("adapter_to_pipe").port("out").section.form(), Section::Form::circle);
}

TEST(ADamper, ResistsByTheAngleOfItsBlade) {
  const auto at = [](double degrees) {
    return zeta(OnePiece("damper").with("blade_angle", degrees * degree).way("in", "out"));
  };
  // Weisbach, in Idelchik; open from ASHRAE CD9-1. From memory.
  EXPECT_NEAR(at(0), 0.20, 1e-12);
  EXPECT_NEAR(at(30), 3.91, 1e-12);
  EXPECT_NEAR(at(60), 118.0, 1e-9);
  // Shut with a leak of 5 %: Idelchik's restriction, (1 + 0.707 sqrt(0.95) - 0.05)^2 / 0.05^2 = 1074.2.
  EXPECT_NEAR(at(90), 1074.2, 0.5);
  for (int degrees = 1; degrees <= 90; ++degrees) EXPECT_GE(at(degrees), at(degrees - 1)) << degrees;
}

TEST(AnEndCap, HasOnePort) {
  const PieceGeometry cap = OnePiece("cleanout_cap").geometry();
  ASSERT_EQ(cap.ports.size(), 1u);
  EXPECT_EQ(cap.ports[0].name, "in");
}

}  // namespace
}  // namespace fluewright::test
