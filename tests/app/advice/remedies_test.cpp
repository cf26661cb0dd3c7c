// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/price_reader.hpp"
#include "app/shared/remedy_report.hpp"
#include "app/shared/remedy_words.hpp"
#include "engine/advice/reshaping.hpp"
#include "tests/app/advice/advised.hpp"

#include <chrono>
#include <set>

namespace fluewright {
namespace {

using test::demo;
using test::first;

RemedyList search(const Design& design, bool pairs) {
  return search_remedies({design, *shipped_library(), shipped_prices(), pairs, {}, {}, {}});
}

/// All remedies of the run that is too long, pairs too: many tests look at them.
const RemedyList& of_the_run_too_long() {
  static const RemedyList list = search(demo("run_too_long"), true);
  return list;
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
      EXPECT_TRUE(after.path.complete);
      EXPECT_TRUE(check_values(*applied, *shipped_library()).empty());
      ++compared;
    }
  }
  EXPECT_GT(compared, 15u);
}

TEST(ARemedyOfTwoChanges, GivesExactlyTheNumbersItWasShownWith) {
  const Design design = demo("run_too_long");
  std::size_t pairs = 0;
  for (const TriedRemedy& tried : of_the_run_too_long().remedies) {
    if (tried.remedy.changes.size() != 2) continue;
    ++pairs;
    const Assessment after = assess(*remedied(design, *shipped_library(), tried.remedy), *shipped_library());
    EXPECT_EQ(after.worst_margin, tried.after.margin);
    EXPECT_EQ(after.exit_temperature, tried.after.exit);
    if (pairs == 12) break;
  }
  EXPECT_GE(pairs, 8u);
}

TEST(ARemedy, CanAlwaysBeBuilt) {
  const Design design = demo("run_too_long");
  for (const TriedRemedy& tried : of_the_run_too_long().remedies) {
    const auto applied = remedied(design, *shipped_library(), tried.remedy);
    ASSERT_TRUE(applied);
    const TracedPath path = trace_path(*applied, *shipped_library());
    const std::string said = remedy_sentence(tried.remedy, design, *shipped_library(), UnitSystem::metric);
    EXPECT_TRUE(path.complete) << said;
    for (const Finding& finding : check_values(*applied, *shipped_library())) ADD_FAILURE() << said << finding_name(finding.code);
    for (const Finding& finding : path.findings) ADD_FAILURE() << said << finding_name(finding.code);
  }
}

std::vector<ChangeKind> kinds_of(const TriedRemedy& tried) {
  std::vector<ChangeKind> kinds;
  for (const Change& change : tried.remedy.changes) kinds.push_back(change.kind);
  return kinds;
}

bool holds(const TriedRemedy& tried, ChangeKind kind) {
  const auto kinds = kinds_of(tried);
  return std::find(kinds.begin(), kinds.end(), kind) != kinds.end();
}

// A builder wants to keep the bench and its heat: what comes first reaches the wanted margin, and nothing behind it
// reaches it with less heat lost.
TEST(ARunThatIsTooLong, IsMendedFirstByWhatKeepsItsHeat) {
  const RemedyList& list = of_the_run_too_long();
  ASSERT_TRUE(list.before);
  EXPECT_EQ(list.before->verdict, Verdict::will_not_draw);
  ASSERT_FALSE(list.remedies.empty());
  const TriedRemedy& best = list.remedies.front();
  EXPECT_EQ(best.after.verdict, Verdict::draws);
  EXPECT_FALSE(best.after.shut) << "with a bypass it draws only as long as its blade is open";
  EXPECT_GE(best.after.margin, marginal_below);
  for (const TriedRemedy& other : list.remedies) {
    const bool new_fault = std::any_of(other.raised.begin(), other.raised.end(),
                                       [](const Finding& f) { return f.severity >= Severity::fault; });
    if (other.after.verdict != Verdict::draws || new_fault || other.after.shut) continue;
    EXPECT_LE(in(best.lost, watt), in(other.lost, watt) + 200.0)
        << remedy_sentence(other.remedy, demo("run_too_long"), *shipped_library(), UnitSystem::metric);
  }
}

// The bench is cut by no more than it takes: a step of the grid more and the margin is no longer there.
TEST(ACutOfTheBench, IsTheSmallestThatReachesTheWantedMargin) {
  std::size_t cuts = 0;
  const Design design = demo("run_too_long");
  for (const TriedRemedy& tried : of_the_run_too_long().remedies) {
    if (!holds(tried, ChangeKind::shorten_bench) || tried.remedy.changes.size() == 1) continue;
    ++cuts;
    EXPECT_GE(tried.after.margin, marginal_below);
    Remedy longer = tried.remedy;
    for (Change& change : longer.changes) {
      if (change.kind == ChangeKind::shorten_bench) change.amount = Length(std::get<Length>(change.amount) + 50.0 * millimetre);
    }
    const auto changed = remedied(design, *shipped_library(), longer);
    EXPECT_TRUE(!changed || assess(*changed, *shipped_library()).worst_margin < marginal_below);
  }
  EXPECT_GE(cuts, 1u) << "its story says that a shorter run with a taller stack does it";
}

TEST(ABypass, LeadsPastTheBenchAndCanBeShut) {
  for (const char* id : {"run_too_long", "bench_small_150", "bench_spring_200"}) {
    const Design design = demo(id);
    const Assessment before = assess(design, *shipped_library());
    const auto standing = standing_of(design, *shipped_library(), before, shipped_prices());
    const Remedy bypass{{Change{ChangeKind::bypass, {}, Length{}, {}}}};
    const auto tried = try_remedy(design, *shipped_library(), *standing, bypass, shipped_prices());
    ASSERT_TRUE(tried) << id;
    EXPECT_GT(tried->after.margin, before.worst_margin) << id << ": its blade is open";
    // With the blade shut it is nearly the heater that was: the tees cost a little, the blade's leak warms the chimney.
    ASSERT_TRUE(tried->after.shut) << id;
    EXPECT_NEAR(in(*tried->after.shut, pascal), in(before.design_flow.back().margin, pascal), 1.0) << id;
    const Design built = *remedied(design, *shipped_library(), bypass);
    const Assessment after = assess(built, *shipped_library());
    EXPECT_EQ(after.branches.size(), 4u) << id << ": before, through, past and behind the bench";
    EXPECT_EQ(after.worst_margin, tried->after.margin);
  }
}

// What the bench is must not look mended because a branch begins before it.
TEST(ABypass, MendsNeitherCleanoutsNorTheOutlet) {
  const Design design = demo("run_too_long");
  const auto before = test::findings_of(design);
  const auto after = test::findings_of(*remedied(design, *shipped_library(), {{Change{ChangeKind::bypass, {}, Length{}, {}}}}));
  const auto count = [](const std::vector<Finding>& findings, FindingCode code) {
    return std::count_if(findings.begin(), findings.end(), [code](const Finding& f) { return f.code == code; });
  };
  EXPECT_GE(count(after, FindingCode::missing_cleanout), count(before, FindingCode::missing_cleanout));
  const Design spring = test::demo("bench_spring_200");
  EXPECT_TRUE(test::has(spring, FindingCode::low_outlet));
  EXPECT_TRUE(test::has(*remedied(spring, *shipped_library(), {{Change{ChangeKind::bypass, {}, Length{}, {}}}}), FindingCode::low_outlet));
}

TEST(ABypass, IsNotLedPastOneThatIsThereAlready) {
  const Design design = demo("bench_bypass_150");
  EXPECT_FALSE(remedied(design, *shipped_library(), {{Change{ChangeKind::bypass, {}, Length{}, {}}}}));
}

// A change that would put two pieces into one place, or that leaves an end open, is not made.
TEST(ARemedy, IsRefusedWhereItWouldRunIntoSomething) {
  const Design design = demo("run_too_long");
  const auto parts = advice::parts_of(design, *shipped_library(), trace_path(design, *shipped_library()));
  const Length taller = advice::stack_height(design, *shipped_library(), parts) + 1.5 * metre;
  const Remedy raise{{Change{ChangeKind::taller_stack, {}, taller, {}}}};
  ASSERT_TRUE(remedied(design, *shipped_library(), raise));
  // Something stands where the chimney would go up.
  const Piece& cap = *design.piece(first(design, "cap_plain"));
  const EditResult in_the_way = place_piece(design, *shipped_library(), "bench_pipe",
                                            {cap.at.x - 5000, cap.at.y, cap.at.z + 7000}, heading_east);
  ASSERT_TRUE(in_the_way.design);
  EXPECT_TRUE(assess(*in_the_way.design, *shipped_library()).verdict) << "a loose piece is a caution";
  EXPECT_FALSE(remedied(*in_the_way.design, *shipped_library(), raise));
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
  const RemedyList& list = of_the_run_too_long();
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
  const Design design = demo("run_too_long");
  const RemedyList& once = of_the_run_too_long();
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
