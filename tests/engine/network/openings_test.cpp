// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/crack.hpp"

#include <gtest/gtest.h>

#include <cmath>

namespace fluewright::test {
namespace {

constexpr Density air = 1.2 * kilogram_per_cubic_metre;

TEST(Crack, passes_what_bernoulli_and_the_vena_contracta_say) {
  // 1 cm2, 10 Pa, 1.2 kg/m3: 0.6 x 1e-4 x sqrt(2 x 1.2 x 10) = 2.9394e-4 kg/s, by hand.
  EXPECT_NEAR(in(crack_flow(1e-4 * square_metre, air, 10.0 * pascal), kilogram_per_second), 2.9394e-4, 1e-8);
}

TEST(Crack, is_the_same_both_ways_and_has_a_slope_at_rest) {
  const auto flow = [](double dp) { return in(crack_flow(1e-4 * square_metre, air, dp * pascal), kilogram_per_second); };
  EXPECT_EQ(flow(-3.0), -flow(3.0));
  EXPECT_EQ(flow(0.0), 0.0);
  EXPECT_NEAR(flow(1e-6) / 1e-6, flow(1e-7) / 1e-7, 1e-6 * flow(1e-7) / 1e-7);
  // Identity: at 1 Pa the straightened middle is no longer felt.
  EXPECT_NEAR(flow(1.0) / (0.6e-4 * std::sqrt(2.4)), 1.0, 1e-6);
}

TEST(Flap, stays_shut_to_its_set_draft_and_is_wide_open_a_span_above) {
  const auto share = [](double draft) { return flap_opening(draft * pascal, 10.0 * pascal, 4.0 * pascal).value(); };
  EXPECT_EQ(share(-50.0), 0.0);
  EXPECT_EQ(share(10.0), 0.0);
  EXPECT_GT(share(10.1), 0.0);
  EXPECT_NEAR(share(12.0), 0.5, 1e-15);
  EXPECT_EQ(share(14.0), 1.0);
  EXPECT_EQ(share(90.0), 1.0);
}

}  // namespace
}  // namespace fluewright::test
