// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/fan.hpp"

#include "tests/support/published_check.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace fluewright {
namespace {

using test::published_check;
using test::within;
using test::within_percent;

constexpr VolumeFlow hourly = cubic_metre / hour;
constexpr VolumeFlow per_second = cubic_metre / second;
constexpr Density standard_air = 1.2 * kilogram_per_cubic_metre;
const Area bore_area = 0.25 * std::numbers::pi * 150.0 * millimetre * (150.0 * millimetre);

FanSheet sheet_of(const std::vector<std::pair<double, double>>& points) {
  FanSheet sheet;
  sheet.id = sheet.name = "invented";
  for (const auto& [flow, head] : points) sheet.points.push_back({flow * hourly, head * pascal});
  return sheet;
}

/// 60 Pa at no flow falling to nothing at 300 m3/h.
FanSheet falling() { return sheet_of({{0, 60}, {75, 52}, {150, 40}, {225, 22}, {300, 0}}); }

Fan at_speed(const FanSheet& sheet, double speed) { return {FanCurve{sheet}, speed, true, false}; }

double head_at(const FanCurve& curve, double flow) { return in(curve.head(flow * hourly), pascal); }

// --- fan laws against worked examples ---------------------------------------------------------------------------

TEST(FanLaws, giveThePowerOfAWorkedProblemAtAnotherAirTemperature) {
  // 20 r/s, 2.4 m3/s, 340 Pa and 1.8 kW in air of 20 degC; the same speed in air of 40 degC.
  FanSheet sheet = sheet_of({{0, 500}, {2.4 * 3600.0, 340}, {4.0 * 3600.0, 0}});
  sheet.power = 1800.0 * watt;
  const Fan fan = at_speed(sheet, 1.0);
  const Density warm = standard_air * (293.15 / 313.15);
  published_check("fan in air of 40 degC that takes 1.8 kW at 20 degC, power [kW]",
                  "Stoecker & Jones, Refrigeration and Air Conditioning, 2nd ed., problem 6-8 (answer to c)",
                  Standing::published, 1.685, in(fan_power(fan, warm), 1000.0 * watt), within(0.001));
  // The book prints no answer to (a) and (b): flow unchanged, head by density.
  const FanEffect effect = fan_effect(fan, 2.4 * per_second, warm, bore_area);
  EXPECT_NEAR(in(effect.head, pascal), 340.0 * 293.15 / 313.15, 1e-9);
}

TEST(FanLaws, giveTheHeadAndPowerOfAMakersExampleInThinWarmAir) {
  // 7500 cfm against 1.5 in at 6000 ft and 200 F: density factor 0.643, so the table is entered at 2.33 in, and the
  // 3.53 hp read there become 2.27 hp.
  const double factor = 0.643;
  FanSheet sheet = sheet_of({{0, 3.0 * 249.08891}, {12742.6, 2.33 * 249.08891}, {20000, 0}});  // 7500 cfm
  sheet.power = 3.53 * 745.7 * watt;
  const Fan fan = at_speed(sheet, 1.0);
  const FanEffect effect = fan_effect(fan, 12742.6 * hourly, factor * standard_air, bore_area);
  const char* const source = "a fan maker's catalogue, air density factors for altitude and temperature, example";
  published_check("fan of 2.33 in w.c. in air of density factor 0.643, head [in w.c.]", source, Standing::published, 1.5,
                  in(effect.head, inch_of_water), within(0.005));
  published_check("fan of 3.53 hp in air of density factor 0.643, power [hp]", source, Standing::published, 2.27,
                  in(fan_power(fan, factor * standard_air), 745.7 * watt), within(0.005));
}

TEST(FanLaws, raiseFlowHeadAndPowerOnAFixedSystemByTheirPowersOfTheSpeed) {
  // A system that resists by the square of the flow: a fan turned 10 % faster moves 10 % more against 21 % more and takes
  // 33 % more power (the textbook statement of the three laws, ASHRAE Systems and Equipment, Fans).
  FanSheet sheet = falling();
  sheet.power = 30.0 * watt;
  const double system = 40.0 / (150.0 * 150.0);  // Pa per (m3/h)^2: crosses the curve at its third point
  const auto settles_at = [&](double speed) {
    const Fan fan = at_speed(sheet, speed);
    const auto spare = [&](double flow) {
      return in(fan_effect(fan, flow * hourly, standard_air, bore_area).head, pascal) - system * flow * flow;
    };
    std::uintmax_t rounds = 60;
    const auto found = boost::math::tools::toms748_solve(spare, 1.0, 400.0, boost::math::tools::eps_tolerance<double>(48), rounds);
    return 0.5 * (found.first + found.second);
  };
  const char* const source = "ASHRAE Handbook, HVAC Systems and Equipment, fan laws 1a to 1c, 10 % more speed";
  const double before = settles_at(0.8);
  const double after = settles_at(0.88);
  EXPECT_NEAR(settles_at(1.0), 150.0, 1e-6);  // the intersection by hand
  published_check("10 % faster on the same system, flow", source, Standing::from_memory, 1.10, after / before, within(1e-6));
  published_check("10 % faster on the same system, head", source, Standing::from_memory, 1.21,
                  after * after / (before * before), within(1e-6));
  published_check("10 % faster on the same system, power", source, Standing::from_memory, 1.331,
                  fan_power(at_speed(sheet, 0.88), standard_air) / fan_power(at_speed(sheet, 0.8), standard_air),
                  within(1e-6));
}

TEST(FanLaws, crossAStraightCurveAndASystemWhereTheQuadraticFormulaSays) {
  // 50 Pa - 0.25 Q against 0.004 Q^2: Q = (sqrt(0.0625 + 0.8) - 0.25)/0.008 = 84.8386 m3/h, by hand.
  const FanSheet sheet = sheet_of({{0, 50}, {200, 0}});
  const Fan fan = at_speed(sheet, 1.0);
  const double flow = (std::sqrt(0.25 * 0.25 + 4.0 * 0.004 * 50.0) - 0.25) / 0.008;
  EXPECT_NEAR(flow, 84.8386, 1e-4);
  EXPECT_NEAR(in(fan_effect(fan, flow * hourly, standard_air, bore_area).head, pascal), 0.004 * flow * flow, 1e-9);
}

// --- the curve ---------------------------------------------------------------------------------------------------

TEST(AFanCurve, passesThroughItsPointsAndStraightThroughTwo) {
  const FanCurve curve{falling()};
  for (const FanPoint& p : falling().points) EXPECT_NEAR(in(curve.head(p.flow), pascal), in(p.head, pascal), 1e-12);
  const FanCurve line{sheet_of({{0, 50}, {200, 10}})};
  for (double q = 0.0; q <= 200.0; q += 12.5) EXPECT_NEAR(head_at(line, q), 50.0 - 0.2 * q, 1e-12);
}

TEST(AFanCurve, ofThreePointsHasTheHarmonicMeanOfTheSlopesInTheMiddle) {
  // Fritsch & Butland 1984: slopes -0.1 and -0.4 over equal steps give 2/(1/0.1 + 1/0.4) = 0.16 down.
  const FanCurve curve{sheet_of({{0, 50}, {100, 40}, {200, 0}})};
  const double h = 1e-4;
  EXPECT_NEAR((head_at(curve, 100.0 + h) - head_at(curve, 100.0 - h)) / (2.0 * h), -0.16, 1e-6);
}

TEST(AFanCurve, fallsEverywhereIfItsPointsFall) {
  const FanCurve curve{falling()};
  EXPECT_FALSE(curve.rising());
  double before = head_at(curve, 0.0);
  for (double q = 0.5; q <= 300.0; q += 0.5) {
    EXPECT_LE(head_at(curve, q), before + 1e-12) << q;
    before = head_at(curve, q);
  }
}

TEST(AFanCurve, keepsADipAndSaysWhereItRises) {
  const FanCurve curve{sheet_of({{0, 50}, {40, 30}, {100, 45}, {200, 0}})};
  EXPECT_NEAR(head_at(curve, 40.0), 30.0, 1e-12);
  for (double q = 1.0; q < 100.0; q += 1.0) EXPECT_GE(head_at(curve, q), 30.0 - 1e-12);
  ASSERT_TRUE(curve.rising());
  EXPECT_NEAR(in(curve.rising()->low, hourly), 40.0, 1e-9);
  EXPECT_NEAR(in(curve.rising()->high, hourly), 100.0, 1e-9);
}

TEST(AFanCurve, ofPointsThatMakeNoneHasNoHead) {
  for (const auto& points : std::vector<std::vector<std::pair<double, double>>>{
           {}, {{0, 50}}, {{10, 50}, {20, 0}}, {{0, 50}, {0, 20}}, {{0, 50}, {80, 30}, {60, 10}}, {{0, 0}, {50, 0}}}) {
    const FanSheet sheet = sheet_of(points);
    EXPECT_FALSE(makes_a_curve(sheet.points));
    EXPECT_EQ(FanCurve{sheet}.head(20.0 * hourly), Pressure{});
  }
}

// --- outside the points ------------------------------------------------------------------------------------------

TEST(AFan, pastItsLastPointBrakesMoreAndMoreAndSaysSo) {
  const Fan fan = at_speed(falling(), 1.0);
  const FanEffect at_end = fan_effect(fan, 300.0 * hourly, standard_air, bore_area);
  EXPECT_EQ(at_end.range, FanRange::within);
  EXPECT_NEAR(in(at_end.head, pascal), 0.0, 1e-9);
  const FanEffect beyond = fan_effect(fan, 360.0 * hourly, standard_air, bore_area);
  EXPECT_EQ(beyond.range, FanRange::beyond);
  EXPECT_NEAR(in(beyond.head, pascal), -22.0 / 75.0 * 60.0, 1e-9);  // the slope of the last two points
  EXPECT_GT(beyond.loss, Pressure{});
}

TEST(AFan, whoseSheetEndsRisingFallsBeyondItAllTheSame) {
  const Fan fan = at_speed(sheet_of({{0, 30}, {100, 20}, {200, 40}}), 1.0);
  EXPECT_NEAR(in(fan_effect(fan, 300.0 * hourly, standard_air, bore_area).head, pascal), 40.0 - 40.0 / 200.0 * 100.0, 1e-9);
}

TEST(AFan, thatTheGasPassesBackwardPushesWithItsHeadAtNoFlowAndStandsInTheWay) {
  const Fan fan = at_speed(falling(), 1.0);
  const FanEffect effect = fan_effect(fan, -100.0 * hourly, standard_air, bore_area);
  EXPECT_EQ(effect.range, FanRange::backward);
  EXPECT_NEAR(in(effect.head, pascal), 60.0, 1e-9);
  const double speed = 100.0 / 3600.0 / in(bore_area, square_metre);
  EXPECT_NEAR(in(effect.loss, pascal), 5.0 * 0.5 * 1.2 * speed * speed, 1e-9);
}

TEST(AFan, turnedDownToNothingIsTheFanStandingStill) {
  const FanEffect standing = fan_effect(at_speed(falling(), 0.0), 80.0 * hourly, standard_air, bore_area);
  EXPECT_EQ(standing.range, FanRange::standing);
  EXPECT_EQ(standing.head, Pressure{});
  const FanEffect crawling = fan_effect(at_speed(falling(), 1e-6), 80.0 * hourly, standard_air, bore_area);
  EXPECT_NEAR(in(crawling.loss - crawling.head, pascal), in(standing.loss, pascal), 1e-3);
  EXPECT_EQ(fan_power(at_speed(falling(), 0.0), standard_air), Power{});
}

TEST(AMotor, isAsHotAsTheGasInTheStreamAndAQuarterOfTheWayThereOutside) {
  FanSheet sheet = falling();
  EXPECT_NEAR(in_celsius(motor_temperature(sheet, celsius(140), celsius(20))), 140.0, 1e-9);
  sheet.motor_in_stream = false;
  EXPECT_NEAR(in_celsius(motor_temperature(sheet, celsius(140), celsius(20))), 50.0, 1e-9);
}

// --- any sheet at all --------------------------------------------------------------------------------------------

/// Two to twelve points, flows rising from nothing, heads from 0 to 200 Pa in any order.
FanSheet any_sheet() {
  const auto count = *rc::gen::inRange(2, 13);
  FanSheet sheet;
  double flow = 0.0;
  for (int i = 0; i < count; ++i) {
    sheet.points.push_back({flow * hourly, *rc::gen::inRange(0, 2001) * 0.1 * pascal});
    flow += *rc::gen::inRange(1, 2000) * 0.1;
  }
  sheet.points.front().head += 0.1 * pascal;
  sheet.off_loss = *rc::gen::inRange(0, 200) * 0.1;
  return sheet;
}

RC_GTEST_PROP(AnyFan, GivesANumberAtEveryFlowSpeedAndDensity, ()) {
  const FanSheet sheet = any_sheet();
  const Fan fan = at_speed(sheet, *rc::gen::inRange(0, 101) * 0.01);
  const VolumeFlow flow = *rc::gen::inRange(-40000, 40001) * 0.1 * hourly;
  const Density gas = *rc::gen::inRange(20, 150) * 0.01 * kilogram_per_cubic_metre;
  const FanEffect effect = fan_effect(fan, flow, gas, bore_area);
  RC_ASSERT(std::isfinite(effect.head.value()) && std::isfinite(effect.loss.value()));
  RC_ASSERT(effect.loss >= Pressure{});
  RC_ASSERT(std::isfinite(fan_power(fan, gas).value()));
}

RC_GTEST_PROP(AnyFan, StaysBetweenNeighbouringPoints, ()) {
  const FanSheet sheet = any_sheet();
  const FanCurve curve{sheet};
  for (std::size_t i = 0; i + 1 < sheet.points.size(); ++i) {
    const FanPoint& a = sheet.points[i];
    const FanPoint& b = sheet.points[i + 1];
    for (double share = 0.1; share < 1.0; share += 0.2) {
      const Pressure head = curve.head(a.flow + share * (b.flow - a.flow));
      RC_ASSERT(head >= std::min(a.head, b.head) - 1e-9 * pascal);
      RC_ASSERT(head <= std::max(a.head, b.head) + 1e-9 * pascal);
    }
  }
}

RC_GTEST_PROP(AnyFan, HasNoJumpAtNoFlowNorAtItsLastPoint, ()) {
  const FanSheet sheet = any_sheet();
  const Fan fan = at_speed(sheet, *rc::gen::inRange(5, 101) * 0.01);
  const auto gained = [&](VolumeFlow flow) {
    const FanEffect e = fan_effect(fan, flow, standard_air, bore_area);
    return in(flow < VolumeFlow{} ? Pressure(e.head + e.loss) : Pressure(e.head - e.loss), pascal);
  };
  const VolumeFlow step = 1e-9 * hourly;
  const VolumeFlow last = fan.speed * fan.curve.last_flow();
  RC_ASSERT(std::abs(gained(-step) - gained({})) < 1e-3);
  RC_ASSERT(std::abs(gained(last - step) - gained(last + step)) < 1e-3);
}

RC_GTEST_PROP(AnyFan, ScalesBySpeedAndDensity, ()) {
  const FanSheet sheet = any_sheet();
  const double n = *rc::gen::inRange(10, 101) * 0.01;
  const double rho = *rc::gen::inRange(40, 130) * 0.01;
  const VolumeFlow flow = *rc::gen::inRange(0, 101) * 0.01 * FanCurve{sheet}.last_flow();
  const FanEffect full = fan_effect(at_speed(sheet, 1.0), flow, standard_air, bore_area);
  const FanEffect slowed = fan_effect(at_speed(sheet, n), n * flow, rho * kilogram_per_cubic_metre, bore_area);
  RC_ASSERT(std::abs(in(slowed.head, pascal) - n * n * rho / 1.2 * in(full.head, pascal)) < 1e-6);
}

}  // namespace
}  // namespace fluewright
