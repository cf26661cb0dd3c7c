// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Common practice, no published source, where a test says so; nothing is tuned to it.

#include "app/shared/start_report.hpp"
#include "app/shared/start_words.hpp"
#include "engine/burn/fan_dependence.hpp"
#include "engine/burn/fan_fitting.hpp"
#include "engine/burn/power_cut.hpp"
#include "engine/layout/path.hpp"
#include "engine/solve/assessment.hpp"
#include "tests/app/burn/demo_burns.hpp"

#include <gtest/gtest.h>

namespace fluewright::test {
namespace {

TEST(PowerCut, a_design_without_a_running_fan_has_none) {
  EXPECT_FALSE(run_power_cut(demo("bench_small_150"), *shipped_library()));
}

TEST(PowerCut, a_path_that_a_fan_holds_turns_within_two_minutes_under_suction_and_says_so) {
  // Common practice: reversed within a minute if the house is depressurised; two minutes are allowed for the gas that is
  // under way. In a neutral house this one goes on, with half the air.
  const auto cut = run_power_cut(demo("kept_by_a_fan"), *shipped_library());
  ASSERT_TRUE(cut);
  EXPECT_TRUE(cut->neutral.drew_before);
  EXPECT_FALSE(cut->depressurised.holds);
  ASSERT_TRUE(cut->depressurised.reverses);
  EXPECT_LT(*cut->depressurised.reverses, 2.0 * minute);
  EXPECT_GT(cut->depressurised.smoke, cut->neutral.smoke);
  const std::string text = power_cut_text(*cut);
  EXPECT_EQ(text.rfind("UNSAFE", 0), 0u) << text;
}

TEST(PowerCut, a_heater_that_draws_by_itself_goes_on_after_the_fan_stops) {
  const Design design = demo("bench_small_150");
  const auto fitted = fit_fan(design, *shipped_library(), "fan_side", FanSeat::stack_foot);
  ASSERT_TRUE(fitted);
  const auto cut = run_power_cut(fitted->design, *shipped_library(), fitted->fan);
  ASSERT_TRUE(cut);
  EXPECT_TRUE(cut->neutral.drew_before);
  EXPECT_TRUE(cut->neutral.holds) << power_cut_words(cut->neutral);
  EXPECT_FALSE(cut->depends_on_fan());
}

/// The standard start as somebody would draw it on the time line, the fan on all the time.
BurnPlan standard_time_line(const Design& design, const PieceId& fan) {
  const PowerCutRules rules;
  BurnPlan plan;
  plan.length = 2.0 * rules.cut_after - rules.fan_before_match;  // so that the cut falls on the same minute
  const Time full_from = rules.fan_before_match + rules.kindling_lasts;
  plan.feeds.push_back({rules.fan_before_match, full_from, rules.kindling_share * design.fire.burn_rate});
  plan.feeds.push_back({full_from, plan.length, design.fire.burn_rate});
  plan.fans.push_back({{}, fan, 1.0, {}});
  return plan;
}

TEST(PowerCut, says_the_same_of_the_standard_start_and_of_the_time_line_that_is_one) {
  // Every demo with its own inducer, or with one put in.
  for (const Demo& each : shipped_demos()) {
    const auto fitted = fit_fan(demo(each.id), *shipped_library(), "fan_side", FanSeat::stack_foot);
    ASSERT_TRUE(fitted) << each.id;
    const auto standard = run_power_cut(fitted->design, *shipped_library(), fitted->fan);
    ASSERT_TRUE(standard) << each.id;
    const BurnPlan plan = standard_time_line(fitted->design, fitted->fan);
    ASSERT_TRUE(switches_fans(plan, fitted->design, *shipped_library()));
    const BurnRecord record = burn(fitted->design, plan);
    const auto fan = fan_dependence(fitted->design, *shipped_library(), plan, record);
    ASSERT_TRUE(fan) << each.id;
    EXPECT_NEAR(in(fan->cut_at, minute), 60.0, 1e-6);
    EXPECT_EQ(fan->cut.neutral.holds, standard->neutral.holds)
        << each.id << ": " << power_cut_words(fan->cut.neutral) << " / " << power_cut_words(standard->neutral);
    EXPECT_EQ(fan->cut.depressurised.holds, standard->depressurised.holds)
        << each.id << ": " << power_cut_words(fan->cut.depressurised) << " / " << power_cut_words(standard->depressurised);
  }
}

TEST(PowerCut, of_a_fan_that_runs_as_drawn_is_told_though_the_time_line_never_switches_it) {
  const Design design = demo("kept_by_a_fan");
  const auto plan = preset_plan("typical_evening", design, *shipped_library());
  ASSERT_TRUE(plan);
  ASSERT_TRUE(plan->fans.empty());
  EXPECT_TRUE(switches_fans(*plan, design, *shipped_library()));
  const auto fan = fan_dependence(design, *shipped_library(), *plan, burn(design, *plan));
  ASSERT_TRUE(fan);
  EXPECT_TRUE(fan->only_with_fan);
}

TEST(PowerCut, never_says_that_all_is_well_where_the_steady_answer_says_that_the_fire_starves) {
  // The steady answer calls a fire starved under 1.5 times the air it needs; so does the run.
  for (const Demo& each : shipped_demos()) {
    const Design design = demo(each.id);
    const Assessment steady = assess(design, *shipped_library());
    if (!steady.fans_off) continue;
    const OperatingPoint* left = steady.fans_off->running_point();
    const bool starves = left == nullptr || left->short_of_air || left->excess_air_ratio < Ratio(1.5);
    const auto cut = run_power_cut(design, *shipped_library());
    ASSERT_TRUE(cut) << each.id;
    if (starves) {
      EXPECT_FALSE(power_cut_headline(*cut).empty()) << each.id << ": " << power_cut_sentence(*cut);
    }
  }
}

TEST(FanFitting, puts_a_fan_into_a_copy_whose_path_stays_whole_and_as_long) {
  const auto length_of = [](const Design& design) {
    Length sum{};
    const TracedPath traced = trace_path(design, *shipped_library());
    for (const Branch& branch : traced.network.branches) {
      for (const Stretch& stretch : branch.stretches) sum += stretch.length;
    }
    return sum;
  };
  for (const Demo& each : shipped_demos()) {
    const Design design = demo(each.id);
    for (const FanSeat seat : {FanSeat::stack_foot, FanSeat::under_cap}) {
      const auto fitted = fit_fan(design, *shipped_library(), "fan_inline", seat);
      ASSERT_TRUE(fitted) << each.id;
      EXPECT_TRUE(trace_path(fitted->design, *shipped_library()).complete) << each.id;
      EXPECT_NEAR(in(length_of(fitted->design), metre), in(length_of(design), metre), 1e-6) << each.id;
      EXPECT_TRUE(sheet_of(fitted->design, *shipped_library(), fitted->fan)) << each.id;
    }
  }
}

TEST(FanFitting, a_fan_on_top_takes_the_caps_place) {
  const Design design = demo("bench_small_150");
  const auto fitted = fit_fan(design, *shipped_library(), "fan_top", FanSeat::on_top);
  ASSERT_TRUE(fitted);
  EXPECT_FALSE(fitted->own);
  EXPECT_EQ(fitted->design.pieces.size(), design.pieces.size());
  EXPECT_TRUE(trace_path(fitted->design, *shipped_library()).complete);
  EXPECT_EQ(fans_of(fitted->design, *shipped_library()).size(), 1u);
  EXPECT_TRUE(fans_of(design, *shipped_library()).empty()) << "the design itself stays as it is";
}

}  // namespace
}  // namespace fluewright::test
