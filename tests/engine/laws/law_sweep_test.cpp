// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Sweeps over what a path may meet: no law of flow may return a NaN, change its sign or jump.

#include "engine/flow/bends.hpp"
#include "engine/flow/buoyancy.hpp"
#include "engine/flow/friction.hpp"
#include "engine/flow/local_loss.hpp"
#include "engine/flow/tees.hpp"
#include "engine/site/atmosphere.hpp"
#include "engine/site/house.hpp"
#include "tests/engine/laws/sweep.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace fluewright {
namespace {

RC_GTEST_PROP(Sweep, FrictionIsPositiveContinuousAndWorseWithRoughness, ()) {
  const double re = over_decades(1e-3, 1e7);
  const double rough = between(0.0, 0.05);
  const double f = friction_factor(re, rough);
  RC_ASSERT(std::isfinite(f) && f > 0.0);
  expect_no_jump([rough](double r) { return friction_factor(r, rough).value(); }, re, 1e-6 * re, 1e-5 * f);
  RC_ASSERT(friction_factor(re, rough + 0.001).value() >= f * (1.0 - 1e-12));
  // The loss itself, f Re^2, never falls as the flow rises.
  RC_ASSERT(friction_factor(1.01 * re, rough).value() * 1.0201 > f);
}

RC_GTEST_PROP(Sweep, LossesOfPiecesAreFiniteAndNotNegative, ()) {
  const double angle = between(0.0, 180.0);
  const double ratio = between(0.3, 3.0);
  const double area = between(0.01, 1.0);
  const Area narrow = area * square_metre;
  const Area wide = 1.0 * square_metre;
  for (const Ratio& k :
       {mitre_bend(angle * degree), smooth_bend(ratio, angle * degree), gored_bend(3, ratio, angle * degree),
        gored_bend(4, ratio, angle * degree), gored_bend(5, ratio, angle * degree),
        rectangular_mitre_bend(ratio, angle * degree), sharp_restriction(area), sudden_expansion(narrow, wide),
        sudden_contraction(wide, narrow), gradual_expansion(narrow, wide, angle * degree),
        gradual_contraction(wide, narrow, angle * degree), blade_damper(angle * degree), rain_cap(ratio),
        thin_wall_entry(area * 0.05), bellmouth_entry(area * 0.2), mitre_reynolds_factor(over_decades(1.0, 1e7)),
        stamped_elbow_90(ratio * 100.0 * millimetre), pleated_elbow_45(ratio * 100.0 * millimetre)}) {
    RC_ASSERT(std::isfinite(k.value()) && k.value() >= 0.0);
  }
}

RC_GTEST_PROP(Sweep, LossesOfPiecesHaveNoJumps, ()) {
  const double angle = between(0.0, 175.0);
  const double ratio = between(0.3, 3.0);
  const double share = between(0.02, 0.99);
  expect_no_jump([](double a) { return mitre_bend(a * degree).value(); }, angle, 1e-6, 1e-6);
  expect_no_jump([ratio](double a) { return smooth_bend(ratio, a * degree).value(); }, angle, 1e-6, 1e-6);
  expect_no_jump([](double r) { return smooth_bend(r, 90.0 * degree).value(); }, ratio, 1e-6, 1e-5);
  expect_no_jump([ratio](double a) { return rectangular_mitre_bend(ratio, a * degree).value(); }, angle, 1e-6, 1e-6);
  expect_no_jump([](double a) { return blade_damper(a * degree).value(); }, angle, 1e-6, 1e-3);
  const Area one = 1.0 * square_metre;
  expect_no_jump([&](double a) { return gradual_expansion(share * one, one, a * degree).value(); }, angle, 1e-6, 1e-6);
  expect_no_jump([&](double a) { return gradual_contraction(one, share * one, a * degree).value(); }, angle, 1e-6,
                 1e-3);
  expect_no_jump([](double phi) { return sharp_restriction(phi).value(); }, share, 1e-9 * share,
                 1e-7 * (1.0 + sharp_restriction(share).value()));
  RC_ASSERT(sharp_restriction(share + 0.005).value() < sharp_restriction(share).value());
}

RC_GTEST_PROP(Sweep, TeesAreFiniteAndHaveNoJumpsInTheFlowShare, ()) {
  const double q = between(0.0, 0.999);
  const double area = between(0.2, 1.0);
  const Angle angle = between(30.0, 90.0) * degree;
  const double step = 1e-8;
  // The slopes grow like (q/area)^2.
  const double allowed = step * 100.0 / (area * area);
  expect_no_jump([&](double x) { return converging_branch(x, area, angle).value(); }, q, step, allowed);
  expect_no_jump([&](double x) { return converging_run(x, area, angle).value(); }, q, step, allowed);
  expect_no_jump([&](double x) { return diverging_branch(x, area, angle).value(); }, q, step, allowed);
  expect_no_jump([&](double x) { return diverging_run(x, area).value(); }, q, step, allowed);
  // Neither do they jump with the angle.
  const double degrees = in(angle, degree);
  expect_no_jump([&](double a) { return diverging_branch(q, area, a * degree).value(); }, degrees, 1e-6, 1e-3);
  expect_no_jump([&](double a) { return converging_run(q, area, a * degree).value(); }, degrees, 1e-6, 1e-3);
}

RC_GTEST_PROP(Sweep, DraftGrowsWithHeightAndWithHeat, ()) {
  const Temperature outdoors = celsius(between(-40.0, 40.0));
  const double gas = between(50.0, 900.0);
  const Length height = between(0.1, 15.0) * metre;
  const Pressure p = pressure_at_altitude(between(-100.0, 4000.0) * metre);
  const auto draft = [&](double t, Length h) {
    return buoyancy(moist_air_density(outdoors, p, 0.0), moist_air_density(celsius(t), p, 0.0), h).value();
  };
  RC_ASSERT(std::isfinite(draft(gas, height)) && draft(gas, height) > 0.0);
  RC_ASSERT(draft(gas, 1.1 * height) > draft(gas, height));
  RC_ASSERT(draft(gas + 1.0, height) > draft(gas, height));
}

RC_GTEST_PROP(Sweep, SiteAndHouseStayFiniteAndOrdered, ()) {
  const double z = between(-100.0, 4000.0);
  const Temperature t = celsius(between(-40.0, 45.0));
  const double humidity = between(0.0, 1.0);
  const Pressure p = pressure_at_altitude(z * metre);
  RC_ASSERT(pressure_at_altitude((z + 1.0) * metre) < p);
  RC_ASSERT(moist_air_density(t, p, humidity).value() > 0.0);
  RC_ASSERT(moist_air_density(t, p, humidity) <= moist_air_density(t, p, 0.0));
  RC_ASSERT(moist_air_density(t + 1.0 * kelvin, p, humidity) < moist_air_density(t, p, humidity));
  const double water = water_mole_fraction(t, p, humidity);
  RC_ASSERT(water >= 0.0 && water < 0.2);
  const VolumeFlow exhaust = between(0.0, 0.3) * cubic_metre / second;
  const Volume house = between(50.0, 1000.0) * cubic_metre;
  const double leaks = over_decades(0.3, 30.0);
  const Pressure pulled = exhaust_depressurisation(exhaust, house, leaks);
  RC_ASSERT(std::isfinite(pulled.value()) && pulled.value() >= 0.0);
  RC_ASSERT(exhaust_depressurisation(exhaust, house, 1.1 * leaks) <= pulled);
  const Density out = moist_air_density(t, p, 0.0);
  const Density room = moist_air_density(celsius(20.0), p, 0.0);
  const Length np = neutral_level(5.0 * metre, over_decades(1e-3, 0.1) * square_metre,
                                  over_decades(1e-3, 0.1) * square_metre, out, room);
  RC_ASSERT(np.value() > 0.0 && np.value() < 5.0);
}

}  // namespace
}  // namespace fluewright
