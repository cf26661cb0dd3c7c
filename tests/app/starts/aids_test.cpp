// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/aid_figures.hpp"
#include "app/shared/start_report.hpp"
#include "app/shared/start_words.hpp"
#include "tests/app/burn/demo_burns.hpp"

#include <gtest/gtest.h>

#include <fstream>

namespace fluewright::test {
namespace {

AidsQuestion spring() { return {spring_evening(), shipped_library().get(), shipped_aid_figures(), {}}; }

TEST(Aids, on_a_spring_evening_a_short_fan_run_is_enough_and_less_than_a_fan_is_ranked_before_it) {
  // Common practice, no source: a short fan run gets it drawing and it stays so. Practice allows five to ten minutes; the
  // search stops at twenty.
  const AidRow kindling = compute_aid(spring(), {AidKind::kindling});
  EXPECT_EQ(kindling.state, AidState::computed);
  const AidRow fan = compute_aid(spring(), {AidKind::side_inducer, 1.0});
  EXPECT_EQ(fan.state, AidState::computed);
  EXPECT_TRUE(fan.starts) << reason_sentence(fan, UnitSystem::metric);
  EXPECT_LE(fan.trial.aid.lasts, 20.0 * minute);
  ASSERT_TRUE(fan.left_on);
  EXPECT_FALSE(fan.left_on->motor_in_stream);
  ASSERT_TRUE(fan.power_cut);
  std::vector<AidRow> rows{kindling, fan};
  rank_aids(rows);
  EXPECT_EQ(rows.front().task.kind, kindling.starts ? AidKind::kindling : AidKind::side_inducer);
  for (const AidRow& row : rows) EXPECT_FALSE(reason_sentence(row, UnitSystem::metric).empty());
}

TEST(Aids, a_stronger_fan_left_on_cools_the_fire_more) {
  // Builders see it; the enthalpy balance of the fire says why.
  const AidRow weak = compute_aid(spring(), {AidKind::side_inducer, 1.0 / 3.0});
  const AidRow strong = compute_aid(spring(), {AidKind::side_inducer, 1.0});
  ASSERT_TRUE(weak.left_on && strong.left_on);
  EXPECT_LT(strong.left_on->last_fire, weak.left_on->last_fire);
}

TEST(Aids, a_motor_at_the_stacks_foot_is_hotter_than_one_under_the_cap) {
  const AidRow low = compute_aid(spring(), {AidKind::duct_fan_at_foot});
  const AidRow high = compute_aid(spring(), {AidKind::duct_fan_under_cap});
  ASSERT_TRUE(low.left_on && high.left_on);
  EXPECT_GT(low.left_on->hottest_motor, high.left_on->hottest_motor);
}

TEST(Aids, a_bypass_that_is_not_drawn_is_named_and_not_guessed) {
  const AidRow row = compute_aid(spring(), {AidKind::bypass});
  EXPECT_EQ(row.state, AidState::not_drawn);
  EXPECT_EQ(row.reason, AidReason::cannot_be_tried);
  EXPECT_EQ(aid_columns().front().cell(row, UnitSystem::metric), "–");
}

TEST(Aids, a_bypass_that_is_drawn_is_tried_open_and_then_shut) {
  const AidsQuestion question{demo("bench_bypass_150"), shipped_library().get(), shipped_aid_figures(), {}};
  const AidRow row = compute_aid(question, {AidKind::bypass});
  EXPECT_EQ(row.state, AidState::computed);
  EXPECT_TRUE(row.own);
  EXPECT_TRUE(row.starts) << reason_sentence(row, UnitSystem::metric);
  EXPECT_GE(row.trial.aid.lasts, 5.0 * minute);
  const BurnPlan plan = start_plan(question.design, *shipped_library(), row.trial.aid, question.rules);
  ASSERT_EQ(plan.moves.size(), 2u);
  EXPECT_EQ(plan.moves[0].open, Ratio(1.0));
  EXPECT_EQ(plan.moves[1].open, Ratio(0.0));
  EXPECT_EQ(plan.moves[1].at, row.trial.aid.lasts);
}

TEST(Aids, the_table_has_every_column_and_every_aid) {
  std::string headings;
  for (const AidColumn& column : aid_columns()) headings += std::string{column.heading} + "|";
  for (const char* wanted : {"starts", "draws alone from", "smoke", "motor / rated", "dew at motor", "fire colder by", "power cut", "price", "ten years"}) {
    EXPECT_NE(headings.find(wanted), std::string::npos) << wanted;
  }
  std::string aids;
  for (const AidTask& task : aid_tasks()) aids += aid_name(task) + "|";
  for (const char* wanted : {"None", "Kindling", "Priming fire", "Bypass", "Duct fan in the stream, stack's foot", "under the cap", "Fan on top",
                             "Side inducer at 33 %", "Side inducer at 67 %", "Side inducer at 100 %"}) {
    EXPECT_NE(aids.find(wanted), std::string::npos) << wanted;
  }
}

TEST(Aids, ten_years_cost_what_the_figures_say) {
  AidsQuestion question = spring();
  question.figures.side_inducer = {100.0, 4.0 * 365.25 * 24.0 * hour, {}};
  question.figures.starts_per_year = 100.0;
  question.figures.price_per_kilowatt_hour = 0.5;
  question.figures.burns_per_start = 2.0 * hour;
  const AidRow row = compute_aid(question, {AidKind::side_inducer, 1.0});
  const double hours = row.starts ? in(row.trial.aid.lasts, hour) : 2.0;
  // Bought three times in ten years; 25 W of the generic sheet, a thousand starts.
  EXPECT_NEAR(row.ten_years.value(), 3.0 * 100.0 + 1000.0 * 0.025 * hours * 0.5, 1e-6);
}

TEST(Aids, unsafe_stands_behind_everything_that_starts) {
  AidRow unsafe;
  unsafe.reason = AidReason::only_while_it_runs;
  AidRow hot;
  hot.reason = AidReason::motor_too_hot;
  hot.ten_years = 5000.0;
  AidRow good;
  good.reason = AidReason::holds_after;
  good.ten_years = 9000.0;
  AidRow cheap = good;
  cheap.ten_years = 10.0;
  AidRow untried;
  std::vector<AidRow> rows{untried, unsafe, hot, good, cheap};
  rank_aids(rows);
  EXPECT_EQ(rows[0].ten_years, Ratio(10.0));
  EXPECT_EQ(rows[1].reason, AidReason::holds_after);
  EXPECT_EQ(rows[2].reason, AidReason::motor_too_hot);
  EXPECT_EQ(rows[3].reason, AidReason::only_while_it_runs);
  EXPECT_EQ(rows[4].reason, AidReason::cannot_be_tried);
}

TEST(AidFigures, that_ship_are_marked_as_common_practice) {
  const AidFigures& figures = shipped_aid_figures();
  for (const AidPrice& device : {figures.bypass, figures.duct_fan, figures.top_fan, figures.side_inducer}) {
    EXPECT_GT(device.price, Ratio(0.0));
    EXPECT_EQ(device.citation.standing, Standing::common_practice);
  }
  EXPECT_EQ(figures.habits.standing, Standing::common_practice);
}

TEST(AidFigures, of_a_user_are_read_strictly) {
  const auto said = [](std::string_view text) {
    const FiguresResult read = read_aid_figures_text(text, "mine.json");
    const auto* fault = std::get_if<FileFault>(&read);
    return fault != nullptr ? fault->text() : std::string{};
  };
  EXPECT_NE(said("{").find("mine.json"), std::string::npos);
  EXPECT_NE(said(R"({"about": "x", "habits": {"starts_per_year": -3}, "devices": []})").find("starts_per_year"), std::string::npos);
  const auto missing = read_aid_figures_file("/nowhere/mine.json");
  EXPECT_TRUE(std::holds_alternative<FileFault>(missing));
}

}  // namespace
}  // namespace fluewright::test
