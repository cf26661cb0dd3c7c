// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/card_table.hpp"
#include "engine/burn/aids.hpp"
#include "tests/app/burn/demo_burns.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace fluewright::test {
namespace {

CardTable table_of(const Design& design, const CardDays& days) {
  const auto job = CardTableJob::begin(design, shipped_library(), days);
  job->wait();
  EXPECT_TRUE(job->done());
  EXPECT_EQ(job->progress().value(), 1.0);
  return job->table().value();
}

TEST(CardTable, says_what_the_start_map_says_where_no_priming_is_needed) {
  const Design design = demo("bench_small_150");
  const CardDays days = card_days(UnitSystem::metric);
  const CardTable table = table_of(design, days);
  const auto question = ask_for_start(design, *shipped_library());
  ASSERT_EQ(table.rows.size(), 5u);
  bool lit = false;
  bool primed = false;
  for (std::size_t o = 0; o < days.outdoor.size(); ++o) {
    ASSERT_EQ(table.rows[o].size(), 4u);
    for (std::size_t r = 0; r < days.room.size(); ++r) {
      const StartClass start = classify_start(*question, days.outdoor[o], days.room[r]).start;
      const CardStep step = table.rows[o][r].step;
      EXPECT_EQ(step == CardStep::light, start == StartClass::by_itself) << o << ' ' << r;
      EXPECT_EQ(step == CardStep::kindle_at_the_foot, start == StartClass::with_kindling) << o << ' ' << r;
      lit = lit || step == CardStep::light;
      primed = primed || step == CardStep::prime;
    }
  }
  EXPECT_TRUE(lit);
  EXPECT_TRUE(primed);
}

TEST(CardTable, primes_with_the_least_that_holds) {
  // A cold room in April: the case the card is for.
  const Design design = demo("bench_small_150");
  const CardTable table = table_of(design, {{celsius(20.0)}, {celsius(5.0)}});
  const CardCell& cell = table.rows[0][0];
  ASSERT_EQ(cell.step, CardStep::prime);
  EXPECT_EQ(table.primed_at, "p10");
  Design day = design;
  day.site.outdoor_temperature = celsius(20.0);
  day.room.temperature = celsius(5.0);
  StartAid aid;
  aid.kind = StartAidKind::priming;
  aid.heating_value = starter("newspaper")->heating_value;
  aid.starter = cell.priming;
  aid.lasts = cell.lasts;
  EXPECT_TRUE(try_start(day, *shipped_library(), aid).holds);
  if (cell.priming > 100.0 * gram) {  // the least that is ever tried
    aid.starter = 0.5 * cell.priming;
    EXPECT_FALSE(try_start(day, *shipped_library(), aid).holds);
  }
}

TEST(CardTable, offers_no_fan_that_is_not_drawn) {
  const CardTable without = table_of(demo("bench_small_150"), {{celsius(30.0)}, {celsius(5.0)}});
  EXPECT_NE(without.rows[0][0].step, CardStep::fan);
}

TEST(CardTable, of_an_unfinished_drawing_is_not_begun) {
  Design design = demo("bench_small_150");
  design.joints.clear();
  EXPECT_EQ(CardTableJob::begin(design, shipped_library(), card_days(UnitSystem::metric)), nullptr);
}

TEST(CardTable, that_was_called_off_is_no_table) {
  const auto job = CardTableJob::begin(demo("bench_small_150"), shipped_library(), card_days(UnitSystem::metric));
  job->cancel();
  job->wait();
  EXPECT_TRUE(job->done());
  EXPECT_FALSE(job->table().has_value());
}

TEST(CardDays, are_round_in_the_readers_unit) {
  for (const UnitSystem units : {UnitSystem::metric, UnitSystem::imperial}) {
    for (const Temperature& t : card_days(units).outdoor) {
      const double level = in_shown_unit(t, units);
      EXPECT_NEAR(level, 10.0 * std::round(level / 10.0), 1e-9);
    }
  }
}

}  // namespace
}  // namespace fluewright::test
