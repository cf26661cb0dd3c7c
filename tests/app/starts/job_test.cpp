// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/aid_figures.hpp"
#include "app/shared/start_jobs.hpp"
#include "app/shared/start_report.hpp"
#include "tests/app/burn/demo_burns.hpp"

#include <gtest/gtest.h>

#include <atomic>
#include <chrono>
#include <ctime>
#include <thread>

namespace fluewright::test {
namespace {

StartQuestion question() { return *ask_for_start(demo("bench_small_150"), *shipped_library()); }

TEST(StartMapJob, on_several_threads_computes_what_one_run_after_the_other_does) {
  const StartQuestion asked = question();
  const StartMapGrid grid = usual_grid(asked.design, 3);
  std::atomic<int> told{0};
  StartMapJob job(asked, shipped_library(), grid, [&] { ++told; }, 3);
  job.wait();
  EXPECT_TRUE(job.done());
  const StartMap map = job.map();
  ASSERT_TRUE(map.complete());
  EXPECT_GE(told, 9);
  for (std::size_t i = 0; i < map.size(); ++i) {
    EXPECT_EQ(map.cell(i).start, classify_start(asked, map.outdoors(i), map.room(i)).start) << i;
  }
  const auto json = start_map_json(map, asked);
  EXPECT_EQ(json["classes_by_room_then_outdoors"].size(), 3u);
  EXPECT_NE(start_map_text(map, asked, UnitSystem::metric).find("Will it start?"), std::string::npos);
}

TEST(StartMapJob, is_called_off_within_fifty_milliseconds_of_its_own_time) {
  const StartQuestion asked = question();
  constexpr std::size_t threads = 2;
  StartMapJob job(asked, shipped_library(), usual_grid(asked.design), {}, threads);
  std::this_thread::sleep_for(std::chrono::milliseconds(300));
  const std::clock_t before = std::clock();
  job.cancel();
  job.wait();
  // The program's own processor time, of all its threads: a busy machine does not count.
  const double used = static_cast<double>(std::clock() - before) / CLOCKS_PER_SEC;
  EXPECT_TRUE(job.done());
  EXPECT_LT(used, 0.050 * threads);
  EXPECT_FALSE(job.map().complete());
}

TEST(PowerCutJob, of_a_design_without_fans_has_nothing_to_say) {
  PowerCutJob job(demo("bench_small_150"), shipped_library());
  while (!job.done()) std::this_thread::sleep_for(std::chrono::milliseconds(5));
  EXPECT_FALSE(job.answer());
}

TEST(AidsJob, can_be_called_off_and_keeps_no_half_computed_line) {
  AidsJob job({spring_evening(), nullptr, shipped_aid_figures(), {}}, shipped_library());
  job.cancel();
  job.wait();
  for (const AidRow& row : job.rows()) EXPECT_FALSE(row.cancelled);
}

}  // namespace
}  // namespace fluewright::test
