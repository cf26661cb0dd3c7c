// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/openings.hpp"

#include "engine/flow/local_loss.hpp"
#include "engine/flow/mouth.hpp"
#include "engine/flow/tees.hpp"
#include "tests/support/published_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace fluewright {
namespace {

using test::published_check;
using test::within;
using test::within_percent;

TEST(APartlyCoveredOpening, IsTheSharpEntryWhenWideOpen) {
  published_check("entry through an opening, wide open", "Crane TP-410, flush sharp entry", Standing::published, 0.5,
                  restricted_entry(1.0), within(1e-3));
  EXPECT_NEAR(restricted_exit(1.0), 0.0, 1e-12);
}

TEST(APartlyCoveredOpening, LetsOutAsRennelsAndHudsonSay) {
  // Discharge from a sharp-edged orifice on the orifice's head: 0.0696 (1 - b^5) l^2 + l^2 with
  // l = 1 + 0.622 (1 - 0.215 b^2 - 0.785 b^5). Two handbooks that differ by up to 6 %.
  for (const double phi : {0.1, 0.2, 0.3, 0.5, 0.7}) {
    const double b5 = std::pow(phi, 2.5);
    const double l = 1.0 + 0.622 * (1.0 - 0.215 * phi - 0.785 * b5);
    const double theirs = (0.0696 * (1.0 - b5) + 1.0) * l * l / (phi * phi);
    published_check("exit through an opening of free share " + std::to_string(phi).substr(0, 3) + ", whole loss",
                    "Rennels & Hudson, Pipe Flow (2012), orifice into free air", Standing::from_memory, theirs,
                    restricted_exit(phi) + 1.0, within_percent(6.0));
  }
}

TEST(APartlyCoveredOpening, ResistsLeastInsideADuctAndMoreTheLessIsOpen) {
  double before = restricted_entry(0.02);
  for (double phi = 0.03; phi <= 1.0; phi += 0.01) {
    EXPECT_LT(restricted_entry(phi), before) << phi;
    EXPECT_LE(sharp_restriction(phi), restricted_entry(phi)) << phi;
    EXPECT_LE(sharp_restriction(phi), restricted_exit(phi) + 1e-12) << phi;
    before = restricted_entry(phi);
  }
}

TEST(AnOpenMouth, WantsTheAirSpeedOfOpposedFlowToHoldHotGasBack) {
  // NFPA 92's rule of opposed airflow worked by hand: a door 2 m high, smoke at 600 K, air at 293 K:
  // 0.64 sqrt(9.80665 x 2 x 307/600) = 2.0275 m/s.
  const Ratio at_limit = mouth_froude(2.0275 * metre_per_second, 2.0 * metre, kelvins(600.0), kelvins(293.0));
  published_check("opposed airflow at a door, w/sqrt(gH dT/T) [-]", "NFPA 92, opposed airflow (Heskestad)", Standing::from_memory,
                  counterflow_below, at_limit, within(1e-3));
  EXPECT_TRUE(std::isinf(mouth_froude(0.1 * metre_per_second, 0.1 * metre, celsius(10.0), celsius(20.0)).value()));
}

TEST(AShutBranch, HardlyResistsTheRun) {
  published_check("tee, straight past a shut branch", "Rennels & Hudson, Pipe Flow (2012)", Standing::from_memory, 0.03,
                  straight_past_branch(), within(1e-12));
}

}  // namespace
}  // namespace fluewright
