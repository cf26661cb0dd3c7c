// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/inlet_share.hpp"
#include "tests/app/advice/advised.hpp"

namespace fluewright {
namespace {

using test::demo;
using test::with_field;

// No published case: the claim is that the fire then settles at the wanted excess air, which the solver checks.
TEST(TheWantedInletShare, MakesTheFireSettleAtTheWantedAir) {
  std::size_t tried = 0;
  for (const Demo& shipped : shipped_demos()) {
    const Design design = demo(shipped.id);
    const auto share = wanted_inlet_share(design, *shipped_library(), assess(design, *shipped_library()));
    if (!share || !share->reaches) continue;
    const Design set = with_field(design, design.pieces[share->piece].id, "free_share", share->wanted);
    const Assessment after = assess(set, *shipped_library());
    ASSERT_NE(after.running_point(), nullptr) << shipped.id;
    EXPECT_NEAR(after.running_point()->excess_air_ratio, design.fire.wanted_excess_air, 0.01) << shipped.id;
    ++tried;
  }
  EXPECT_GE(tried, 3u);
}

TEST(TheWantedInletShare, IsMissingWhereNothingRuns) {
  const Design design = test::with_gap(demo("bench_small_150"));
  EXPECT_FALSE(wanted_inlet_share(design, *shipped_library(), assess(design, *shipped_library())));
}

}  // namespace
}  // namespace fluewright
