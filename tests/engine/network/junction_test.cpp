// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/junction.hpp"

#include "engine/flow/bends.hpp"
#include "engine/flow/tees.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <numbers>

namespace fluewright::test {
namespace {

constexpr Density unit_density = 1.0 * kilogram_per_cubic_metre;
const Area run_area = 0.01 * square_metre;

JunctionForm form(double degrees, double area_ratio, bool side_opening = false) {
  return {run_area, area_ratio * run_area, degrees * degree, side_opening};
}

JunctionFlows flows(double run_in, double run_out, double branch) {
  return {run_in * kilogram_per_second, run_out * kilogram_per_second, branch * kilogram_per_second};
}

/// Velocity head of that flow in the run.
double head(double flow, Area area = run_area) {
  const double g = flow / in(area, square_metre);
  return 0.5 * g * g;
}

TEST(Junction, divides_as_crane_s_tee_and_wye) {
  // Crane TP-410 by the functions of tees.hpp: from the run, 30 % into the branch.
  for (const double degrees : {45.0, 60.0, 90.0}) {
    const JunctionHeads h = junction_heads(form(degrees, 0.8), flows(0.01, -0.007, -0.003), unit_density);
    EXPECT_NEAR(in(h.branch, pascal), -head(0.01) * diverging_branch(0.3, 0.8, degrees * degree).value(), 1e-12) << degrees;
    EXPECT_NEAR(in(h.run_out, pascal), -head(0.01) * diverging_run(0.3, 0.8).value(), 1e-12) << degrees;
  }
}

TEST(Junction, joins_as_crane_s_tee_and_wye_on_the_side_the_branch_leans_from) {
  // Into run_in the branch turns gently: Crane's wye.
  for (const double degrees : {45.0, 60.0, 90.0}) {
    const JunctionHeads h = junction_heads(form(degrees, 0.8), flows(-0.01, 0.006, 0.004), unit_density);
    EXPECT_NEAR(in(h.branch, pascal), head(0.01) * converging_branch(0.4, 0.8, degrees * degree).value(), 1e-12) << degrees;
    EXPECT_NEAR(in(h.run_out, pascal), head(0.01) * converging_run(0.4, 0.8, degrees * degree).value(), 1e-12) << degrees;
  }
}

TEST(Junction, a_right_angled_tee_is_the_same_from_either_end_of_its_run) {
  for (const double branch : {-0.004, 0.004}) {
    const JunctionHeads a = junction_heads(form(90.0, 0.7), flows(0.01, -0.01 - branch, branch), unit_density);
    const JunctionHeads b = junction_heads(form(90.0, 0.7), flows(-0.01 - branch, 0.01, branch), unit_density);
    EXPECT_NEAR(in(a.branch - a.run_out, pascal), in(b.branch, pascal), 1e-12);
    EXPECT_NEAR(in(a.run_out, pascal), -in(b.run_out, pascal), 1e-12);
  }
}

TEST(Junction, a_turn_against_the_lean_costs_more_than_one_with_it) {
  const JunctionHeads with = junction_heads(form(45.0, 1.0), flows(0.01, -0.001, -0.009), unit_density);
  const JunctionHeads against = junction_heads(form(45.0, 1.0), flows(-0.001, 0.01, -0.009), unit_density);
  EXPECT_LT(in(against.branch - against.run_out, pascal), in(with.branch, pascal));
}

TEST(Junction, both_legs_join_into_the_branch_and_part_from_it_as_idelchik_s_symmetric_tee) {
  // Idelchik, diagram 7-29, equal areas, equal flows: joining 0.55 (1 + 1 - 3/4), parting 1 + 0.3/4.
  const JunctionHeads join = junction_heads(form(90.0, 1.0), flows(0.005, 0.005, -0.01), unit_density);
  EXPECT_NEAR(in(join.branch, pascal), -head(0.01) * 0.55 * 1.25, 1e-12);
  EXPECT_NEAR(in(join.run_out, pascal), 0.0, 1e-15);
  const JunctionHeads part = junction_heads(form(90.0, 1.0), flows(-0.005, -0.005, 0.01), unit_density);
  EXPECT_NEAR(in(part.branch, pascal), head(0.01) * 1.075, 1e-12);
  EXPECT_NEAR(in(part.run_out, pascal), 0.0, 1e-15);
}

TEST(Junction, an_opening_in_the_wall_feels_the_static_pressure_of_the_run) {
  // Identity: static = total - velocity head.
  const JunctionHeads h = junction_heads(form(90.0, 0.01, true), flows(0.01, -0.01, 0.0), unit_density);
  EXPECT_NEAR(in(h.branch, pascal), -head(0.01), 1e-12);
  EXPECT_NEAR(in(h.run_out, pascal), 0.0, 1e-12);
}

TEST(Junction, is_continuous_with_its_slope_all_the_way_round_the_roles) {
  // Identity, no source needed. 3600 directions of the flows: steps and second differences stay small at every change of
  // role; the whole range is some 2 Pa wide.
  for (const bool hole : {false, true}) {
    for (const double degrees : {45.0, 90.0}) {
      std::array<double, 3> out{};
      std::array<double, 3> side{};
      double step = 0.0;
      double bend = 0.0;
      constexpr int turns = 36000;
      for (int i = 0; i <= turns + 2; ++i) {
        const double a = 2.0 * std::numbers::pi * i / turns;
        const double u = 0.01 * std::cos(a);
        const double v = 0.01 * std::sin(a) / std::sqrt(3.0);
        const JunctionHeads h = junction_heads(form(degrees, 0.9, hole), flows(u + v, -u + v, -2.0 * v), unit_density);
        out = {out[1], out[2], in(h.run_out, pascal)};
        side = {side[1], side[2], in(h.branch, pascal)};
        if (i < 2) continue;
        for (const auto& row : {out, side}) {
          step = std::max(step, std::abs(row[2] - row[1]));
          bend = std::max(bend, std::abs(row[2] - 2.0 * row[1] + row[0]));
        }
      }
      EXPECT_LT(step, 4e-3) << degrees << hole;
      EXPECT_LT(bend, 5e-4) << degrees << hole;
    }
  }
}

TEST(Junction, grows_with_the_square_of_the_flows_and_is_nothing_at_rest) {
  const JunctionHeads one = junction_heads(form(90.0, 0.8), flows(0.01, -0.007, -0.003), unit_density);
  const JunctionHeads three = junction_heads(form(90.0, 0.8), flows(0.03, -0.021, -0.009), unit_density);
  EXPECT_NEAR(in(three.branch, pascal), 9.0 * in(one.branch, pascal), 1e-12);
  const JunctionHeads rest = junction_heads(form(90.0, 0.8), {}, unit_density);
  EXPECT_EQ(rest.branch, Pressure{});
  EXPECT_EQ(rest.run_out, Pressure{});
}

}  // namespace
}  // namespace fluewright::test
