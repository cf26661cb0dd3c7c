// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What three streams lose where they meet, against the published coefficients, by the flows alone: which stream is the
// whole one is found out by the junction.

#include "engine/flow/crack.hpp"
#include "engine/flow/junction.hpp"
#include "tests/support/published_check.hpp"
#include "tests/support/reference_table.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace fluewright {
namespace {

using test::published_check;
using test::within;
using test::within_percent;

/// Total pressures at the junction over the head of a whole flow of 1 in a run of 1 m2.
struct Coefficients {
  double run_out = 0.0;
  double branch = 0.0;
};

Coefficients coefficients(double area_ratio, Angle angle, double run_in, double run_out, double branch) {
  const JunctionForm form{1.0 * square_metre, area_ratio * square_metre, angle, false};
  const JunctionFlows flows{run_in * kilogram_per_second, run_out * kilogram_per_second, branch * kilogram_per_second};
  const JunctionHeads heads = junction_heads(form, flows, 1.0 * kilogram_per_cubic_metre);
  return {in(heads.run_out, pascal) / 0.5, in(heads.branch, pascal) / 0.5};
}

TEST(AJunction, DividesAndJoinsByCranesCoefficientsAtEveryShare) {
  int compared = 0;
  for (const auto& row : test::reference_table("fittings.csv")) {
    const std::string& law = row.text("law");
    const bool joining = law == "converging_branch" || law == "converging_run";
    const bool dividing = law == "diverging_branch" || law == "diverging_run";
    if (!joining && !dividing) continue;
    const double q = row.number("first");
    const double area = row.number("second");
    const double degrees = row.number("angle_deg");
    // Equal bores, tee and wye; where a stream rests two published expressions meet and one gives way to the other.
    const bool taken = area > 0.999 && (degrees == 90.0 || degrees == 45.0) && q > role_blend && q < 1.0 - role_blend;
    if (!taken) continue;
    const bool near_a_step = law == "diverging_branch" && degrees < 75.0 && q > 0.35 && q < 0.67;
    // Joining into run_in, dividing from it: the branch leans away from it.
    const Coefficients c = joining ? coefficients(area, degrees * degree, -1.0, 1.0 - q, q)
                                   : coefficients(area, degrees * degree, 1.0, -(1.0 - q), -q);
    const double ours = (joining ? 1.0 : -1.0) * (law.ends_with("branch") ? c.branch : c.run_out);
    published_check("streams that meet, " + law + ", " + row.text("first").substr(0, 4) + " by the branch, " +
                        row.text("angle_deg") + " degrees",
                    "Crane TP-410 (fluids)", Standing::published, row.number("coefficient"), ours,
                    near_a_step ? within_percent(7.0) : within(1e-9));
    ++compared;
  }
  EXPECT_GT(compared, 30);
}

TEST(AJunction, GivesCranesWorkedExamples) {
  const double q35 = 0.00633 / (0.018917 + 0.00633);
  const Coefficients join = coefficients(1.0, 90.0 * degree, -1.0, 1.0 - q35, q35);
  published_check("example 7-35 by the flows, branch", "Crane TP-410 example 7-35", Standing::published, -0.04026,
                  join.branch, within(3e-4));
  published_check("example 7-35 by the flows, run", "Crane TP-410 example 7-35 (fluids)", Standing::published, 0.32576,
                  join.run_out, within(2e-5));
  const double q36 = 0.01583 / (0.02525 + 0.01583);
  const Coefficients part = coefficients(1.0, 45.0 * degree, 1.0, -(1.0 - q36), -q36);
  published_check("example 7-36 by the flows, branch", "Crane TP-410 example 7-36 (fluids)", Standing::published, 0.46399,
                  -part.branch, within(2e-5));
  published_check("example 7-36 by the flows, run", "Crane TP-410 example 7-36 (fluids)", Standing::published, -0.06810,
                  -part.run_out, within(2e-5));
}

TEST(AJunction, JoinsTwoOpposedStreamsAsTheSymmetricTee) {
  // 0.55 (1 + 1 - 3/4) and 1 + 0.3/4 for equal areas and equal shares.
  const Coefficients join = coefficients(1.0, 90.0 * degree, 0.5, 0.5, -1.0);
  published_check("two equal streams join into the branch", "Idelchik, diagram 7-29", Standing::published, 0.6875,
                  -join.branch, within(1e-9));
  const Coefficients part = coefficients(1.0, 90.0 * degree, -0.5, -0.5, 1.0);
  published_check("the branch parts into two equal streams", "Idelchik, diagram 7-29", Standing::from_memory, 1.075,
                  part.branch, within(1e-9));
}

TEST(ACrack, PassesWhatAnOrificeOfThatAreaPasses) {
  // 10 cm2 at 4 Pa, the effective leakage area of ASHRAE: Q = C A sqrt(2 dp / rho), with air of 1.2 kg/m3 and C = 0.6
  // 0.6 x 0.001 x sqrt(2 x 4 / 1.2) = 1.549e-3 m3/s.
  const MassFlow flow =
      crack_flow(1e-3 * square_metre, 1.2 * kilogram_per_cubic_metre, 4.0 * pascal);
  published_check("flow through 10 cm2 at 4 Pa [l/s]", "ASHRAE Fundamentals, effective leakage area", Standing::from_memory,
                  1.549193, 1000.0 * in(flow, kilogram_per_second) / 1.2, within(1e-5));
}

}  // namespace
}  // namespace fluewright
