// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/price_reader.hpp"
#include "app/shared/remedy_report.hpp"
#include "app/shared/remedy_words.hpp"
#include "tests/app/advice/advised.hpp"

#include <chrono>
#include <set>

namespace fluewright {
namespace {

using test::demo;

RemedyList search(const Design& design, bool pairs) {
  return search_remedies({design, *shipped_library(), shipped_prices(), pairs, {}, {}, {}});
}

TEST(ARemedy, GivesExactlyTheNumbersItWasShownWith) {
  std::size_t compared = 0;
  for (const Demo& shipped : shipped_demos()) {
    const Design design = demo(shipped.id);
    for (const TriedRemedy& tried : search(design, false).remedies) {
      const auto applied = remedied(design, *shipped_library(), tried.remedy);
      ASSERT_TRUE(applied);
      const Assessment after = assess(*applied, *shipped_library());
      EXPECT_EQ(after.worst_margin, tried.after.margin);
      EXPECT_EQ(after.exit_temperature, tried.after.exit);
      ++compared;
    }
  }
  EXPECT_GT(compared, 15u);
}

TEST(ARemedy, CanAlwaysBeBuilt) {
  for (const Demo& shipped : shipped_demos()) {
    const Design design = demo(shipped.id);
    for (const TriedRemedy& tried : search(design, true).remedies) {
      const auto applied = remedied(design, *shipped_library(), tried.remedy);
      ASSERT_TRUE(applied) << shipped.id;
      const TracedPath path = trace_path(*applied, *shipped_library());
      EXPECT_TRUE(path.complete) << shipped.id << ' '
                                 << remedy_sentence(tried.remedy, design, *shipped_library(), UnitSystem::metric);
      for (const Finding& finding : check_values(*applied, *shipped_library())) ADD_FAILURE() << finding_name(finding.code);
    }
  }
}

TEST(ARunThatIsTooLong, IsMendedByAShorterBenchWithATallerStack) {
  const Design design = demo("run_too_long");
  const RemedyList list = search(design, true);
  ASSERT_TRUE(list.before);
  EXPECT_EQ(list.before->verdict, Verdict::will_not_draw);
  ASSERT_FALSE(list.remedies.empty());
  const TriedRemedy& best = list.remedies.front();
  EXPECT_NE(best.after.verdict, Verdict::will_not_draw);
  std::set<ChangeKind> kinds;
  for (const Change& change : best.remedy.changes) kinds.insert(change.kind);
  EXPECT_TRUE(kinds.count(ChangeKind::shorten_bench)) << "its story says so";
}

TEST(AChimneyOutside, IsOfferedInsulationAndAPlaceIndoors) {
  const Design design = demo("chimney_outside");
  std::set<ChangeKind> kinds;
  for (const TriedRemedy& tried : search(design, false).remedies) kinds.insert(tried.remedy.changes.front().kind);
  EXPECT_TRUE(kinds.count(ChangeKind::insulate_stack));
  EXPECT_TRUE(kinds.count(ChangeKind::stack_indoors));
  EXPECT_TRUE(kinds.count(ChangeKind::drier_wood));
}

TEST(Remedies, StandBestFirst) {
  const RemedyList list = search(demo("run_too_long"), true);
  for (std::size_t i = 0; i + 1 < list.remedies.size(); ++i) {
    EXPECT_FALSE(ranks_before(list.remedies[i + 1], list.remedies[i])) << i;
  }
}

TEST(Remedies, AreNotTriedOnADesignWithGaps) {
  const Design design = test::with_gap(demo("bench_small_150"));
  const RemedyList list = search(design, true);
  EXPECT_FALSE(list.before);
  EXPECT_TRUE(list.remedies.empty());
  EXPECT_EQ(list.state.tried, 0u);
}

TEST(TheSearch, StopsWhenItIsTold) {
  const Design design = demo("run_too_long");
  std::stop_source stop;
  RemedySearch asked{design, *shipped_library(), shipped_prices(), true, stop.get_token(), {}, {}};
  asked.moved_on = [&stop](const SearchState& state) {
    if (state.tried == 3) stop.request_stop();
  };
  const RemedyList list = search_remedies(asked);
  // Each thread may have had one in hand.
  EXPECT_LE(list.state.tried, 3u + std::thread::hardware_concurrency());
}

TEST(TheSearch, FindsTheSameOnEveryRun) {
  const Design design = demo("chimney_outside");
  const RemedyList once = search(design, true);
  const RemedyList again = search(design, true);
  ASSERT_EQ(once.remedies.size(), again.remedies.size());
  const auto said = [&](const RemedyList& list) {
    std::multiset<std::string> all;
    for (const TriedRemedy& tried : list.remedies) {
      all.insert(remedy_sentence(tried.remedy, design, *shipped_library(), UnitSystem::metric));
    }
    return all;
  };
  EXPECT_EQ(said(once), said(again));
}

}  // namespace
}  // namespace fluewright
