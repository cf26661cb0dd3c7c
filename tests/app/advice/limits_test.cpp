// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/limit_report.hpp"
#include "app/shared/limit_search.hpp"
#include "tests/app/advice/advised.hpp"

namespace fluewright {
namespace {

using test::demo;

constexpr Length usual_slice = AssessOptions{}.slice;

LimitAnswer search(LimitKind kind, const Design& design, Pressure wanted = marginal_below) {
  const auto answer = search_limit({kind, design, *shipped_library(), wanted, 12, {}, {}});
  EXPECT_TRUE(answer) << limit_name(kind);
  return answer ? *answer : LimitAnswer{};
}

/// A little further towards the bad side.
FieldValue beyond(LimitKind kind, const FieldValue& x) {
  if (const auto* length = std::get_if<Length>(&x)) {
    return kind == LimitKind::longest_bench ? Length(*length + 0.1 * metre) : Length(*length - 0.02 * *length);
  }
  if (const auto* t = std::get_if<Temperature>(&x)) {
    return kind == LimitKind::coldest_bench ? *t - 0.5 * kelvin : *t + 0.5 * kelvin;
  }
  return Count{std::get<Count>(x).value + 1};
}

// Consistency, not a published value: at the limit the whole calculation gives the wanted margin to 0.01 Pa, and a little
// further it gives less.
TEST(ALimit, HasTheWantedMarginAndLessBeyondIt) {
  std::size_t found = 0;
  for (const char* id : {"bench_small_150", "bench_spring_200", "chimney_outside", "run_too_long"}) {
    const Design design = demo(id);
    for (const LimitKind kind : limit_kinds) {
      const LimitAnswer answer = search(kind, design);
      if (answer.state != LimitState::found) continue;
      ++found;
      const auto margin = margin_at({kind, design, *shipped_library()}, *answer.found, usual_slice);
      ASSERT_TRUE(margin) << id << ' ' << limit_name(kind);
      if (kind != LimitKind::most_bends) {
        EXPECT_NEAR(in(*margin, pascal), 2.0, 0.01) << id << ' ' << limit_name(kind);
      }
      EXPECT_GE(in(*margin, pascal), 2.0 - 1e-6) << id << ' ' << limit_name(kind);
      const auto less = margin_at({kind, design, *shipped_library()}, beyond(kind, *answer.found), usual_slice);
      if (less) EXPECT_LT(in(*less, pascal), 2.0) << id << ' ' << limit_name(kind);
    }
  }
  EXPECT_GE(found, 10u);
}

TEST(TheLongestBench, OfTheRunThatIsTooLongIsShorterThanDrawn) {
  const LimitAnswer answer = search(LimitKind::longest_bench, demo("run_too_long"), 0.0 * pascal);
  ASSERT_EQ(answer.state, LimitState::found);
  EXPECT_LT(std::get<Length>(*answer.found), std::get<Length>(answer.scale.today));
}

TEST(TheCurve, RisesWithTheValueAndHoldsTodaysPoint) {
  const Design design = demo("bench_small_150");
  const Assessment now = assess(design, *shipped_library());
  for (const LimitKind kind : limit_kinds) {
    const LimitAnswer answer = search(kind, design);
    bool today = false;
    for (std::size_t i = 0; i < answer.curve.size(); ++i) {
      if (i > 0) EXPECT_LT(limit_number(answer.curve[i - 1].x), limit_number(answer.curve[i].x));
      if (answer.curve[i].x != answer.scale.today) continue;
      today = true;
      ASSERT_TRUE(answer.curve[i].margin);
      EXPECT_NEAR(in(*answer.curve[i].margin, pascal), in(now.worst_margin, pascal), 1e-9) << limit_name(kind);
    }
    EXPECT_TRUE(today) << limit_name(kind);
  }
}

TEST(ALimitThatDoesNotExist, IsSaidInWords) {
  const Design design = demo("bench_small_150");
  const LimitAnswer never = search(LimitKind::longest_bench, design, 90.0 * pascal);
  EXPECT_EQ(never.state, LimitState::never);
  EXPECT_NE(limit_sentence(never, design, UnitSystem::metric).find("No bench is short enough"), std::string::npos);
  const LimitAnswer always = search(LimitKind::longest_bench, design, -40.0 * pascal);
  EXPECT_EQ(always.state, LimitState::always);
  EXPECT_NE(limit_sentence(always, design, UnitSystem::metric).find("No limit"), std::string::npos);
}

TEST(ALimit, IsMissingWhereTheDesignLacksWhatItIsAbout) {
  const Design gap = test::with_gap(demo("bench_small_150"));
  for (const LimitKind kind : limit_kinds) {
    EXPECT_FALSE(search_limit({kind, gap, *shipped_library(), marginal_below, 8, {}, {}})) << limit_name(kind);
  }
}

// The shortcut past findings and states gives the same number, for every demo, kind and value.
TEST(TheMarginAlone, IsThatOfTheWholeAnswer) {
  for (const Demo& shipped : shipped_demos()) {
    const Design design = demo(shipped.id);
    const Assessment now = assess(design, *shipped_library());
    for (const LimitKind kind : limit_kinds) {
      const auto scale = limit_scale(kind, design, *shipped_library(), now);
      if (!scale) continue;
      const LimitDesigns designs(kind, design, *shipped_library());
      for (const FieldValue& x : {scale->lowest, scale->today, scale->highest}) {
        const auto changed = designs.at(x);
        const auto margin = margin_at(designs, x, usual_slice);
        if (!changed) {
          EXPECT_FALSE(margin);
          continue;
        }
        AssessOptions margins_only;
        margins_only.operating_points = false;
        const Assessment whole = assess(*changed, *shipped_library(), margins_only);
        ASSERT_EQ(margin.has_value(), whole.verdict.has_value()) << shipped.id << ' ' << limit_name(kind);
        EXPECT_TRUE(!margin || *margin == whole.worst_margin) << shipped.id << ' ' << limit_name(kind);
      }
    }
  }
}

// Worked out in time the limit holds as well: at it the wanted margin, a little beyond it less.
TEST(ALimitInTime, HasTheWantedMarginAndLessBeyondIt) {
  const Design design = demo("bench_spring_200");
  const LimitSearch asked{LimitKind::longest_bench, design, *shipped_library(), 1.0 * pascal, 4, {}, {}};
  const auto quick = search_limit(asked);
  ASSERT_TRUE(quick);
  std::size_t brought = 0;
  const auto refined = refined_limit(asked, *quick, [&brought](std::size_t, const LimitPoint&) { ++brought; });
  ASSERT_TRUE(refined);
  EXPECT_EQ(brought, quick->curve.size());
  ASSERT_EQ(refined->state, LimitState::found);
  EXPECT_EQ(refined->by, MarginBy::steps_in_time);
  EXPECT_NEAR(in(refined->margin, pascal), 1.0, 0.01);
  const auto less = margin_at({asked.kind, design, *shipped_library()}, beyond(asked.kind, *refined->found), usual_slice,
                              MarginBy::steps_in_time);
  ASSERT_TRUE(less);
  EXPECT_LT(in(*less, pascal), 1.0);
}

TEST(ALimitInTime, IsNotWorkedOutOfAPathThatBranchesNorAfterAStop) {
  const Design branched = demo("bench_bypass_150");
  const LimitSearch of_branched{LimitKind::weakest_difference, branched, *shipped_library(), marginal_below, 4, {}, {}};
  EXPECT_FALSE(refined_limit(of_branched, *search_limit(of_branched), {}));
  const Design design = demo("bench_small_150");
  std::stop_source stop;
  LimitSearch asked{LimitKind::longest_bench, design, *shipped_library(), marginal_below, 4, {}, {}};
  const auto quick = search_limit(asked);
  asked.stop = stop.get_token();
  std::size_t brought = 0;
  EXPECT_FALSE(refined_limit(asked, *quick, [&](std::size_t, const LimitPoint&) {
    ++brought;
    stop.request_stop();
  }));
  EXPECT_EQ(brought, 1u) << "nothing comes after a stop";
}

// The quick curve is for a picture: close to the usual one, within what a line on a plot shows.
TEST(TheQuickCurve, LiesCloseToTheUsualOne) {
  const Design design = demo("run_too_long");
  const auto scale = limit_scale(LimitKind::longest_bench, design, *shipped_library(), assess(design, *shipped_library()));
  const LimitSearch asked{LimitKind::longest_bench, design, *shipped_library(), marginal_below, 10, {}, {}};
  const auto quick = limit_curve(asked, *scale, quick_slice);
  const auto usual = limit_curve(asked, *scale, usual_slice);
  for (std::size_t i = 0; i < usual.size(); ++i) EXPECT_NEAR(in(*quick[i].margin, pascal), in(*usual[i].margin, pascal), 0.3);
}

}  // namespace
}  // namespace fluewright
