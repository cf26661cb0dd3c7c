// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/friction.hpp"
#include "engine/flow/section.hpp"
#include "tests/support/published_check.hpp"
#include "tests/support/reference_table.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <string>

namespace fluewright {
namespace {

using test::published_check;
using test::within;
using test::within_percent;

std::string state_of(const test::ReferenceRow& row) {
  return "Re " + row.text("reynolds") + ", e/D " + row.text("relative_roughness");
}

TEST(Churchill, IsTheLibrarysFromLaminarToRough) {
  for (const auto& row : test::reference_table("friction.csv")) {
    published_check("friction factor (Churchill), " + state_of(row), "Churchill 1977 (fluids)", Standing::published,
                    row.number("churchill"), friction_factor(row.number("reynolds"), row.number("relative_roughness")),
                    within_percent(1e-7));
  }
}

TEST(Churchill, IsPoiseuillesLawInLaminarFlow) {
  for (const auto& row : test::reference_table("friction.csv")) {
    const double re = row.number("reynolds");
    if (re <= 1500.0) {
      published_check("friction factor (laminar), " + state_of(row), "Hagen-Poiseuille 64/Re (fluids)",
                      Standing::published, row.number("laminar"), friction_factor(re, row.number("relative_roughness")),
                      within_percent(0.1));
    }
  }
}

TEST(Churchill, StaysNearColebrookInTurbulentFlow) {
  for (const auto& row : test::reference_table("friction.csv")) {
    // Below Re 10 000 Churchill still carries some of the transition, which Colebrook does not know.
    if (row.has("colebrook")) {
      const double re = row.number("reynolds");
      published_check("friction factor (turbulent), " + state_of(row), "Colebrook 1939 (fluids)", Standing::published,
                      row.number("colebrook"), friction_factor(re, row.number("relative_roughness")),
                      within_percent(re < 1e4 ? 5.0 : 3.5));
    }
  }
}

TEST(Colebrook, IsTheLibrarys) {
  for (const auto& row : test::reference_table("friction.csv")) {
    if (row.has("colebrook")) {
      published_check("friction factor (Colebrook), " + state_of(row), "Colebrook 1939 (fluids)", Standing::published,
                      row.number("colebrook"),
                      colebrook_friction_factor(row.number("reynolds"), row.number("relative_roughness")),
                      within_percent(1e-8));
    }
  }
  published_check("friction factor (Colebrook), Re 1e5, e/D 1e-4", "fluids, worked example", Standing::published,
                  0.018513866077471, colebrook_friction_factor(1e5, 1e-4), within(1e-12));
}

TEST(FrictionLoss, GoesToZeroWithTheFlow) {
  // f w^2 with w proportional to Re.
  for (const double re : {1.0, 1e-3, 1e-6, 1e-9, 0.0}) {
    const double loss = friction_factor(re, 0.01) * re * re;
    EXPECT_TRUE(std::isfinite(loss));
    EXPECT_NEAR(loss, 64.0 * std::min(re, re * re * 1e6), 1e-9 * re + 1e-300);
  }
}

TEST(Section, OfACircleIsItsDiameter) {
  const Section s = Section::circle(150.0 * millimetre);
  EXPECT_DOUBLE_EQ(in(s.hydraulic_diameter(), millimetre), 150.0);
  EXPECT_NEAR(in(s.area(), square_metre), std::numbers::pi * 0.0225 / 4.0, 1e-15);
  EXPECT_EQ(s.heated_perimeter(), s.wetted_perimeter());
  EXPECT_NEAR(in(s.equal_area_diameter(), millimetre), 150.0, 1e-9);
}

TEST(Section, OfARectangleIsTwoSidesOverTheirSum) {
  const Section s = Section::rectangle(200.0 * millimetre, 100.0 * millimetre);
  EXPECT_NEAR(in(s.hydraulic_diameter(), millimetre), 2.0 * 200.0 * 100.0 / 300.0, 1e-9);
}

TEST(Section, OfAnAnnulusIsTheGapTwiceAndHeatsThroughItsOuterWall) {
  const Section s = Section::annulus(560.0 * millimetre, 260.0 * millimetre);
  EXPECT_NEAR(in(s.hydraulic_diameter(), millimetre), 300.0, 1e-9);
  EXPECT_NEAR(in(s.heated_perimeter(), millimetre), std::numbers::pi * 560.0, 1e-9);
  EXPECT_NEAR(in(s.area(), square_metre), std::numbers::pi / 4.0 * (0.56 * 0.56 - 0.26 * 0.26), 1e-12);
}

TEST(Section, OfAHalfBarrelHasAFloor) {
  const Section s = Section::half_round(560.0 * millimetre);
  EXPECT_NEAR(in(s.area(), square_metre), std::numbers::pi / 8.0 * 0.56 * 0.56, 1e-12);
  EXPECT_NEAR(in(s.wetted_perimeter(), millimetre), 560.0 * (1.0 + std::numbers::pi / 2.0), 1e-9);
  EXPECT_FALSE(s == Section::circle(560.0 * millimetre));
}

}  // namespace
}  // namespace fluewright
