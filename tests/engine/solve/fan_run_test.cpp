// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/fans.hpp"
#include "tests/engine/solve/hand_built_heater.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <numbers>

namespace fluewright::test {
namespace {

constexpr VolumeFlow hourly = cubic_metre / hour;

FanSheet small_inducer() {
  FanSheet sheet;
  sheet.id = sheet.name = "invented";
  sheet.points = {{{}, 30.0 * pascal}, {60.0 * hourly, 27.0 * pascal}, {125.0 * hourly, 20.0 * pascal}, {250.0 * hourly, {}}};
  sheet.off_loss = 2.0;
  return sheet;
}

/// A straight upright pipe of cold air with a fan in its foot; no fire, no heat, nothing but friction and fan.
struct PlainPipe {
  Branch branch;
  Surround surround;
  SlicedPath path;

  explicit PlainPipe(const Fan& fan) {
    Stretch s;
    s.length = s.rise = 4.0 * metre;
    s.section = Section::circle(150.0 * millimetre);
    s.roughness = 1.0 * millimetre;
    s.fan = fan;
    branch.from = {EndKind::room_air, 0, {}};
    branch.to = {EndKind::outdoor_air, 0, 4.0 * metre};
    branch.stretches = {s};
    surround = surround_of(a_day(18.0, 18.0));
    path = slice_branch(branch, 50.0 * millimetre);
  }

  [[nodiscard]] MarchTotals at(double kg_s, bool forward) const {
    FireState still;
    still.air = still.flue = kg_s * kilogram_per_second;
    still.forward = forward;
    const GasTable air{moist_air(surround.room_water)};
    return March{path, surround}.run(still, air, air, {});
  }
};

TEST(AFanInAPlainPipe, givesTheHeadOfItsCurveAtTheVolumeThatPassesIt) {
  const Fan fan{FanCurve{small_inducer()}, 1.0, true, false};
  const PlainPipe pipe{fan};
  const MarchTotals totals = pipe.at(0.03, true);
  ASSERT_EQ(totals.fans.size(), 1u);
  const FanState& state = totals.fans.front();
  // By hand: 0.03 kg/s of air at 18 degC and 1 atm, about 1.20 kg/m3, is 90 m3/h; the sheet lies near 24 Pa there.
  EXPECT_NEAR(in(state.density, kilogram_per_cubic_metre), 1.203, 0.01);
  EXPECT_NEAR(in(state.flow, hourly), 0.03 / in(state.density, kilogram_per_cubic_metre) * 3600.0, 1e-9);
  EXPECT_NEAR(in(totals.fan, pascal), 24.0, 0.5);
  EXPECT_NEAR(in(totals.fan, pascal),
              in(state.density, kilogram_per_cubic_metre) / 1.2 * in(fan.curve.head(state.flow), pascal), 1e-9);
  EXPECT_NEAR(in(state.gas - pipe.surround.room, kelvin), 0.0, 1e-9);
}

TEST(AFanInAPlainPipe, standingStillIsALossOfItsSheet) {
  const PlainPipe still{{FanCurve{small_inducer()}, 0.0, true, false}};
  FanSheet free_sheet = small_inducer();
  free_sheet.off_loss = 0.0;
  const PlainPipe none{{FanCurve{free_sheet}, 0.0, true, false}};
  const MarchTotals a = still.at(0.03, true);
  const MarchTotals b = none.at(0.03, true);
  EXPECT_EQ(a.fan, Pressure{});
  const double speed = 0.03 / in(a.fans.front().density, kilogram_per_cubic_metre) / (0.25 * std::numbers::pi * 0.15 * 0.15);
  EXPECT_NEAR(in(a.local - b.local, pascal),
              2.0 * 0.5 * in(a.fans.front().density, kilogram_per_cubic_metre) * speed * speed, 1e-9);
}

TEST(AFanInAPlainPipe, drawnBackwardsPushesTheOtherWay) {
  const PlainPipe with{{FanCurve{small_inducer()}, 1.0, true, false}};
  const PlainPipe against{{FanCurve{small_inducer()}, 1.0, false, true}};
  EXPECT_GT(with.at(0.03, true).fan, Pressure{});
  EXPECT_LT(against.at(0.03, true).fan, Pressure{});
  // What runs down the pipe through a fan that blows up it meets the same as what runs up through one that blows down.
  EXPECT_NEAR(in(with.at(0.03, false).fan, pascal), -in(against.at(0.03, true).fan, pascal), 1e-9);
  EXPECT_EQ(with.at(0.03, false).fans.front().effect.range, FanRange::backward);
}

struct Blown {
  HandBuiltHeater heater;
  Branch branch;
  Surround surround;
  SlicedPath fine;
  SlicedPath coarse;
  std::unique_ptr<FreeRun> free;
};

/// The invented heater with a fan at the foot of its stack.
std::unique_ptr<Blown> blown(const FanSheet& sheet, double speed, const Design& day) {
  auto b = std::make_unique<Blown>();
  b->branch = b->heater.branch();
  b->branch.stretches[b->branch.stretches.size() - 3].fan = Fan{FanCurve{sheet}, speed, true, false};
  b->surround = surround_of(day);
  b->fine = slice_branch(b->branch, 50.0 * millimetre);
  b->coarse = slice_branch(b->branch, 500.0 * millimetre);
  b->free = std::make_unique<FreeRun>(b->fine, b->coarse, b->surround, usual_wood(), 3.0 * kilogram_per_hour);
  return b;
}

TEST(AHeaterWithAFan, balancesPressureFanIncluded) {
  const auto b = blown(small_inducer(), 0.7, a_day(5.0, 18.0));
  const auto points = b->free->points();
  ASSERT_FALSE(points.empty());
  std::vector<SliceState> rows;
  (void)b->free->march(points.front().flue_gas, &rows);
  Pressure sum = b->surround.gauge_at(b->branch.from);
  Pressure fan{};
  for (const SliceState& row : rows) {
    sum += row.buoyancy + row.fan - row.loss;
    fan += row.fan;
  }
  EXPECT_NEAR(in(sum, pascal), in(b->surround.cap_gauge, pascal), 1e-6);
  EXPECT_GT(in(fan, pascal), 2.0);
  EXPECT_LT(points.front().heat.closure.value(), 1e-9);
}

TEST(AHeaterWithAFan, drawsMoreAirAndCoolsItsFireTheFasterTheFanTurns) {
  // A stronger fan lowers the fire's temperature (common practice, no source).
  double air = 0.0;
  Temperature fire = celsius(2000);
  for (const double speed : {0.0, 0.4, 0.7, 1.0}) {
    const auto points = blown(small_inducer(), speed, a_day(5.0, 18.0))->free->points();
    ASSERT_FALSE(points.empty());
    EXPECT_GT(points.front().excess_air_ratio.value(), air) << speed;
    EXPECT_LT(points.front().fire_temperature, fire) << speed;
    air = points.front().excess_air_ratio;
    fire = points.front().fire_temperature;
  }
}

TEST(AHeaterWithAFan, hasTheSameAnswerWithTheFanOffAsWithItsLossInTheFlue) {
  const auto off = blown(small_inducer(), 0.0, a_day(5.0, 18.0))->free->points();
  HandBuiltHeater heater;
  Branch branch = heater.branch();
  branch.stretches[branch.stretches.size() - 3].at_start.push_back({2.0, 2.0, LocalLoss::Reynolds::none, "fan off", {}});
  const Surround surround = surround_of(a_day(5.0, 18.0));
  const SlicedPath fine = slice_branch(branch, 50.0 * millimetre);
  const SlicedPath coarse = slice_branch(branch, 500.0 * millimetre);
  const auto plain = FreeRun{fine, coarse, surround, usual_wood(), 3.0 * kilogram_per_hour}.points();
  ASSERT_EQ(off.size(), plain.size());
  EXPECT_NEAR(in(off.front().flue_gas, kilogram_per_second), in(plain.front().flue_gas, kilogram_per_second), 1e-11);
}

TEST(AHeaterWhoseFanRisesBeforeItFalls, reportsEveryStateAndWhichAreSteady) {
  // A deep dip: the curve crosses the heater's own demand three times, the middle crossing not stable.
  FanSheet sheet = small_inducer();
  sheet.points = {{{}, 40.0 * pascal}, {60.0 * hourly, 5.0 * pascal}, {130.0 * hourly, {}}, {190.0 * hourly, 90.0 * pascal},
                  {300.0 * hourly, {}}};
  const auto b = blown(sheet, 1.0, a_day(5.0, 18.0));
  const auto points = b->free->points();
  int stable = 0;
  int unstable = 0;
  for (const OperatingPoint& p : points) {
    if (!p.forward) continue;
    (p.stable ? stable : unstable) += 1;
    EXPECT_LT(abs(p.residual), 1e-7 * pascal);
    const MassFlow step = 1e-4 * p.flue_gas;
    const bool falls = b->free->residual(p.flue_gas + step) < b->free->residual(p.flue_gas - step);
    EXPECT_EQ(falls, p.stable) << in(p.flue_gas, kilogram_per_second);
  }
  EXPECT_EQ(stable, 2);
  EXPECT_EQ(unstable, 1);
}

RC_GTEST_PROP(AHeaterWithAnyFan, HasFiniteNumbersAndBalances, ()) {
  FanSheet sheet;
  sheet.id = sheet.name = "any";
  VolumeFlow flow{};
  const int count = *rc::gen::inRange(2, 7);
  for (int i = 0; i < count; ++i) {
    sheet.points.push_back({flow, *rc::gen::inRange(0, 1501) * 0.1 * pascal});
    flow += static_cast<double>(*rc::gen::inRange(10, 200)) * hourly;
  }
  sheet.points.front().head += 0.1 * pascal;
  sheet.off_loss = *rc::gen::inRange(0, 300) * 0.1;
  const auto b = blown(sheet, *rc::gen::inRange(0, 101) * 0.01, a_day(*rc::gen::inRange(-15, 25), *rc::gen::inRange(0, 25)));
  for (const OperatingPoint& p : b->free->points()) {
    RC_ASSERT(std::isfinite(p.flue_gas.value()) && std::isfinite(in_kelvin(p.exit_temperature)));
    RC_ASSERT(p.heat.closure < 1e-8);
    RC_ASSERT(abs(p.residual) < 1e-7 * pascal);
    for (const FanState& f : p.fans) RC_ASSERT(std::isfinite(f.effect.head.value()) && std::isfinite(f.effect.loss.value()));
  }
}

}  // namespace
}  // namespace fluewright::test
