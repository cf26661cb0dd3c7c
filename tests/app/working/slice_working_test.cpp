// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/app/working/hand_calculator.hpp"
#include "tests/app/working/worked_heater.hpp"

#include <gtest/gtest.h>

#include <iostream>

namespace fluewright::test {
namespace {

enum Stretches { feed, tunnel, riser, barrel, bench, foot, stack_inside, stack_outside };

const std::vector<std::string> headlines_of_a_slice{"Re", "f", "Nu", "h_i", "U", "q", "T_out", "T_m_again", "dp_f", "dp"};

TEST(ASliceWorkedByHand, GivesThePrintedDigitsEverywhereOnThePath) {
  const auto w = worked({}, a_day(5.0, 18.0));
  const auto run = retrace_profile(w->design, w->library, w->answer);
  ASSERT_NE(run, nullptr);
  for (std::size_t row = 0; row < run->rows.size(); ++row) {
    const Working working = explain_slice(*run, row);
    const Followed f = follow_by_digits(working);
    if (row % 25 == 0)
      std::cout << row << " relations " << f.relations << " looked up " << f.looked_up << " worst " << f.worst << " "
                << f.worst_step << " through " << follow_through(working, headlines_of_a_slice) << "\n";
  }
}

/// An inducer at a speed, by a sheet that ends at a flow.
Fan inducer(double speed, double last_flow, bool blows_along = true) {
  constexpr VolumeFlow hourly = cubic_metre / hour;
  FanSheet sheet;
  sheet.id = sheet.name = "invented";
  sheet.points = {{{}, 30.0 * pascal}, {0.3 * last_flow * hourly, 26.5 * pascal}, {0.7 * last_flow * hourly, 13.0 * pascal},
                  {last_flow * hourly, 1.5 * pascal}};
  sheet.reference_density = 1.1 * kilogram_per_cubic_metre;
  sheet.off_loss = 2.3;
  return {FanCurve{sheet}, speed, blows_along, false};
}

TEST(AFanWorkedByHand, GivesThePrintedDigitsWhereverItStandsOnItsCurve) {
  const std::vector<std::pair<Fan, FanRange>> fans{{inducer(0.6, 300.0), FanRange::within},
                                                   {inducer(0.5, 60.0), FanRange::beyond},
                                                   {inducer(0.2, 300.0, false), FanRange::backward},
                                                   {inducer(0.0, 300.0), FanRange::standing}};
  for (const auto& [fan, range] : fans) {
    HandBuiltHeater heater;
    heater.fan = fan;
    const auto w = worked(heater, a_day(-5.0, 18.0));
    const auto run = retrace_profile(w->design, w->library, w->answer);
    ASSERT_NE(run, nullptr);
    ASSERT_EQ(run->totals.fans.size(), 1u);
    ASSERT_EQ(run->totals.fans.front().effect.range, range);
    const std::size_t row = w->row(*run, foot, 0);
    const Working working = explain_slice(*run, row);
    (void)follow_by_digits(working);
    EXPECT_LT(follow_through(working, {"dp_fan", "dp_off", "p_t1"}), 1e-4);
    ASSERT_NE(working.step(range == FanRange::standing ? "dp_off" : "dp_fan"), nullptr);
    if (range != FanRange::standing) {
      EXPECT_NEAR(in(std::get<Pressure>(working.step("dp_fan")->value), pascal), in(run->rows[row].fan, pascal), 1e-12);
      EXPECT_EQ(working.step("p_sheet")->range->left, range != FanRange::within);
    }
    EXPECT_NEAR(in(std::get<Pressure>(working.step("p_g")->value), pascal), in(run->rows[row].gauge, pascal), 0.05);
    // The piece's own working shows the slice with the fan.
    const auto piece = explain_piece(*run, run->rows[row].piece);
    ASSERT_TRUE(piece);
    EXPECT_NE(piece->step("Q_fan"), nullptr);
    (void)follow_by_digits(*piece);
  }
}

TEST(AHeadlineWorkedByHand, CountsTheFanInTheBalanceAndLeavesItOutOfTheMargin) {
  HandBuiltHeater heater;
  heater.fan = inducer(0.6, 300.0);
  const auto w = worked(heater, a_day(5.0, 18.0));
  for (const NamedHeadline& headline : headlines()) {
    const auto working = explain_headline(w->design, w->library, w->answer, headline.headline);
    ASSERT_TRUE(working) << headline.name;
    (void)follow_by_digits(*working);
  }
  const auto air = explain_headline(w->design, w->library, w->answer, HeadlineNumber::excess_air);
  EXPECT_NE(air->step("dp_fan"), nullptr);
  const auto margin = explain_headline(w->design, w->library, w->answer, HeadlineNumber::draft_margin_charged);
  EXPECT_EQ(margin->step("dp_fan"), nullptr);
  EXPECT_EQ(std::get<Pressure>(margin->step("margin_on")->value), *w->answer.design_flow.back().margin_with_fans);
}

}  // namespace
}  // namespace fluewright::test
