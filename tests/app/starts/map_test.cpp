// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/start_report.hpp"
#include "app/shared/start_words.hpp"
#include "engine/burn/start_map.hpp"

#include <gtest/gtest.h>

namespace fluewright::test {
namespace {

StartMapGrid grid_of(std::size_t side) {
  const auto n = static_cast<double>(side - 1);
  return {{celsius(-10.0), 40.0 / n * kelvin, side}, {celsius(0.0), 24.0 / n * kelvin, side}};
}

/// An invented heater: kindling is enough while the room is two kelvin warmer than outdoors, then a fan is wanted.
StartAnswer invented(Temperature outdoors, Temperature room) {
  StartAnswer answer;
  const double over = in(room - outdoors, kelvin);
  answer.start = over > 12.0 ? StartClass::by_itself : over > 2.0 ? StartClass::with_kindling : over > -5.0 ? StartClass::with_fan : StartClass::only_with_fan;
  return answer;
}

struct Rounds {
  std::size_t count = 0;
  std::size_t first = 0;            ///< cells in the coarse picture
  std::size_t until_all_known = 0;  ///< computed when no cell was unknown any more
  std::size_t wrong_guesses = 0;
};

Rounds compute(StartMap& map) {
  Rounds rounds;
  for (std::vector<std::size_t> open = map.next(); !open.empty(); open = map.next()) {
    if (rounds.count++ == 0) rounds.first = open.size();
    for (const std::size_t i : open) map.set(i, invented(map.outdoors(i), map.room(i)));
    map.fill_between();
    bool known = true;
    for (std::size_t i = 0; i < map.size(); ++i) {
      const StartCell& cell = map.cell(i);
      known = known && cell.state != CellState::unknown;
      if (cell.state == CellState::between && cell.start != invented(map.outdoors(i), map.room(i)).start) ++rounds.wrong_guesses;
    }
    if (known && rounds.until_all_known == 0) rounds.until_all_known = map.computed();
  }
  return rounds;
}

TEST(StartMap, shows_a_coarse_picture_first_then_refines_and_computes_every_cell_in_the_end) {
  StartMap map{grid_of(41)};
  const Rounds rounds = compute(map);
  EXPECT_TRUE(map.complete());
  EXPECT_LE(rounds.first, 64u);
  EXPECT_LT(rounds.until_all_known, map.size() / 2) << "the picture stands long before the last cell";
  EXPECT_EQ(rounds.wrong_guesses, 0u) << "straight borders: what lies between agreeing cells is what they are";
  for (std::size_t i = 0; i < map.size(); ++i) {
    EXPECT_EQ(map.cell(i).state, CellState::computed);
    EXPECT_EQ(map.cell(i).start, invented(map.outdoors(i), map.room(i)).start);
  }
}

TEST(StartMap, works_for_any_number_of_cells) {
  for (const std::size_t side : {2u, 3u, 7u, 16u, 33u}) {
    StartMap map{grid_of(side)};
    (void)compute(map);
    EXPECT_TRUE(map.complete()) << side;
  }
}

TEST(StartMap, cells_that_lie_between_say_so) {
  StartMap map{grid_of(9)};
  for (const std::size_t i : map.next()) map.set(i, invented(celsius(-10.0), celsius(24.0)));
  map.fill_between();
  std::size_t between = 0;
  for (std::size_t i = 0; i < map.size(); ++i) between += map.cell(i).state == CellState::between ? 1u : 0u;
  EXPECT_EQ(between + map.computed(), map.size());
  EXPECT_GT(between, 0u);
  EXPECT_FALSE(map.complete());
}

TEST(StartMap, answers_below_what_difference_more_than_kindling_is_wanted) {
  StartMap map{grid_of(41)};
  (void)compute(map);
  const StartLimit limit = map.limit(celsius(12.0));
  ASSERT_TRUE(limit.enough && limit.not_enough && limit.then_needs);
  EXPECT_TRUE(limit.known);
  EXPECT_GT(*limit.enough, 2.0 * kelvin);
  EXPECT_LE(*limit.not_enough, 2.0 * kelvin);
  EXPECT_NEAR(in(*limit.enough - *limit.not_enough, kelvin), 1.0, 1e-9) << "one cell apart";
  EXPECT_EQ(*limit.then_needs, StartClass::with_fan);
  const std::string words = limit_sentence(limit, UnitSystem::metric);
  EXPECT_NE(words.find("needs a fan"), std::string::npos) << words;
}

TEST(StartMap, the_usual_grid_holds_the_designs_own_day) {
  Design design;
  design.site.outdoor_temperature = celsius(-31.0);
  design.room.temperature = celsius(27.0);
  const StartMapGrid grid = usual_grid(design);
  EXPECT_TRUE(grid.outdoors.holds(design.site.outdoor_temperature));
  EXPECT_TRUE(grid.room.holds(design.room.temperature));
  EXPECT_EQ(grid.outdoors.count, 41u);
}

}  // namespace
}  // namespace fluewright::test
