// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The client's curve says what the calculation and the limits say.
#include "app/paper/length_curve.hpp"
#include "tests/app/paper/paper_support.hpp"

namespace fluewright::paper {
namespace {

TEST(TheLengthCurve, GoesThroughTheDesignItselfAndNamesWhereItStopsDrawing) {
  const Design design = demo("bench_spring_200");
  const Dossier dossier(design, library(), UnitSystem::metric);
  const auto curve = length_curve(dossier);
  ASSERT_TRUE(curve);
  EXPECT_EQ(in(curve->yours.margin, pascal), in(dossier.answer().worst_margin, pascal));
  for (std::size_t i = 1; i < curve->points.size(); ++i) {
    EXPECT_GT(in(curve->points[i].bench, metre), in(curve->points[i - 1].bench, metre));
  }
  ASSERT_TRUE(curve->longest);
  EXPECT_EQ(*curve->longest > curve->yours.bench, dossier.answer().worst_margin >= Pressure{});
}

TEST(TheLengthCurve, IsNoneForAnUnfinishedPath) {
  Design design = demo("bench_small_150");
  design.joints.erase(design.joints.begin());
  EXPECT_FALSE(length_curve(Dossier(design, library(), UnitSystem::metric)));
}

}  // namespace
}  // namespace fluewright::paper
