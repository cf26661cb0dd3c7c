// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/start_class.hpp"
#include "tests/app/burn/demo_burns.hpp"

#include <gtest/gtest.h>

namespace fluewright::test {
namespace {

StartAnswer start_of(const Design& design, double outdoors, double room) {
  const auto question = ask_for_start(design, *shipped_library());
  EXPECT_TRUE(question);
  return classify_start(*question, celsius(outdoors), celsius(room));
}

TEST(StartClass, in_frost_a_usual_heater_lights_with_kindling_at_the_most) {
  const StartAnswer answer = start_of(demo("bench_small_150"), -5.0, 17.0);
  EXPECT_LE(answer.start, StartClass::with_kindling);
  EXPECT_TRUE(answer.certain);
}

TEST(StartClass, in_a_house_colder_than_outdoors_kindling_is_not_enough) {
  // Common practice, no source: an unaided fire burns backward there.
  const StartAnswer answer = start_of(demo("bench_small_150"), 20.0, 14.0);
  EXPECT_GT(answer.start, StartClass::with_kindling);
  ASSERT_GE(answer.trials.size(), 2u);
  EXPECT_FALSE(answer.trials[1].holds);
  EXPECT_TRUE(answer.trials[1].fault == StartFault::smoke || answer.trials[1].fault == StartFault::ran_backward);
}

TEST(StartClass, is_the_least_aid_that_holds_and_every_lesser_one_was_tried_and_failed) {
  for (const double outdoors : {-10.0, 12.0, 17.0, 24.0}) {
    const StartAnswer answer = start_of(demo("bench_small_150"), outdoors, 16.0);
    ASSERT_FALSE(answer.trials.empty());
    for (std::size_t i = 0; i + 1 < answer.trials.size(); ++i) EXPECT_FALSE(answer.trials[i].holds) << outdoors;
    EXPECT_EQ(answer.trials.back().holds, answer.start != StartClass::only_with_fan) << outdoors;
  }
}

TEST(StartClass, stopping_early_decides_as_the_whole_run_would) {
  // The same plan run to its end without anybody watching: the record must show the fault that was called, and a start
  // that was said to hold must show none.
  for (const double outdoors : {-5.0, 22.0}) {
    Design design = demo("bench_small_150");
    design.site.outdoor_temperature = celsius(outdoors);
    const StartRules rules;
    StartAid aid;
    const StartTrial trial = try_start(design, *shipped_library(), aid, rules);
    BurnOptions options;
    options.grid = rules.grid;
    const BurnRecord whole = run_burn(design, *shipped_library(), start_plan(design, *shipped_library(), aid, rules), options);
    ASSERT_EQ(whole.end, BurnEnd::done);
    bool backward = false;
    for (const BurnRow& row : whole.rows) backward = backward || (row.at > trial.aid_ends && row.wanted > MassFlow{} && !row.forward);
    Mass starving{};
    for (std::size_t i = 1; i < whole.rows.size(); ++i) {
      const BurnRow& row = whole.rows[i];
      if (row.wanted > MassFlow{} && row.excess_air_ratio < rules.starved_under) starving += row.burnt - whole.rows[i - 1].burnt;
    }
    const bool holds = !backward && whole.summary.smoke <= rules.puff &&
                       whole.summary.burnt - starving >= rules.least_burnt * whole.summary.wanted;
    EXPECT_EQ(trial.holds, holds) << outdoors;
    EXPECT_LE(trial.decided_at, whole.rows.back().at);
    if (!holds) {
      EXPECT_LT(trial.decided_at, whole.rows.back().at) << "it was stopped early";
    }
  }
}

TEST(StartClass, suction_in_the_house_never_makes_a_start_easier) {
  Design drawn = demo("bench_small_150");
  drawn.room.extra_depressurisation = 5.0 * pascal;
  for (const double outdoors : {0.0, 10.0}) {
    EXPECT_GE(start_of(drawn, outdoors, 17.0).start, start_of(demo("bench_small_150"), outdoors, 17.0).start) << outdoors;
  }
}

/// How much warmer than the room it may be outdoors for a start with kindling to hold, by halving [K].
double kindling_border(const std::string& id, const BurnGrid& grid) {
  double holds = -8.0;
  double fails = 12.0;
  while (fails - holds > 0.3) {
    const double middle = 0.5 * (holds + fails);
    Design design = demo(id);
    design.site.outdoor_temperature = design.room.temperature + middle * kelvin;
    StartRules rules;
    rules.grid = grid;
    (try_start(design, *shipped_library(), {}, rules).holds ? holds : fails) = middle;
  }
  return 0.5 * (holds + fails);
}

TEST(StartClass, slices_of_the_map_put_the_border_within_a_kelvin_and_a_half_of_fine_slices) {
  // A start is decided by how the first hot gas climbs: slices of half a metre there moved the border by up to four kelvin.
  BurnGrid fine;
  fine.slice = fine.level_slice = 50.0 * millimetre;
  for (const char* id : {"bench_spring_200", "bench_small_150"}) {
    EXPECT_NEAR(kindling_border(id, BurnGrid::coarse()), kindling_border(id, fine), 1.5) << id;
  }
}

TEST(StartClass, a_heater_that_merely_starves_does_not_hold) {
  // It burns all its wood, but with less than one and a half times the air it needs.
  Design design = demo("bench_small_150");
  design.fire.burn_rate = 2.6 * design.fire.burn_rate;
  const StartTrial trial = try_start(design, *shipped_library(), {});
  EXPECT_FALSE(trial.holds);
  EXPECT_EQ(trial.fault, StartFault::starved);
  EXPECT_GT(trial.starving, Mass{});
}

TEST(StartClass, a_drawing_without_a_path_has_none) {
  EXPECT_FALSE(ask_for_start(Design{}, *shipped_library()));
}

TEST(StartTrial, is_called_off_at_the_next_step) {
  int asked = 0;
  const StartTrial trial = try_start(demo("bench_small_150"), *shipped_library(), {}, {}, [&] { return ++asked < 4; });
  EXPECT_TRUE(trial.cancelled);
  EXPECT_FALSE(trial.holds);
  EXPECT_EQ(asked, 4);
}

}  // namespace
}  // namespace fluewright::test
