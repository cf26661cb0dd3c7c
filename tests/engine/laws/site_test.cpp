// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/gas/mixture.hpp"
#include "engine/moisture/saturation.hpp"
#include "engine/site/atmosphere.hpp"
#include "engine/site/house.hpp"
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

constexpr VolumeFlow cubic_metre_per_hour = cubic_metre / hour;

TEST(StandardAtmosphere, HasThePressureOfTheTables) {
  for (const auto& row : test::reference_table("atmosphere.csv")) {
    published_check("standard pressure at " + row.text("z_m") + " m [Pa]", "U.S. Standard Atmosphere 1976 (fluids)",
                    Standing::published, row.number("pressure_Pa"),
                    in(pressure_at_altitude(row.number("z_m") * metre), pascal), within_percent(0.05));
  }
}

TEST(DryAir, HasTheDensityOfTheStandardAtmosphere) {
  for (const auto& row : test::reference_table("atmosphere.csv")) {
    const Temperature t = kelvins(row.number("temperature_K"));
    const Pressure p = row.number("pressure_Pa") * pascal;
    published_check("density of dry air at " + row.text("z_m") + " m [kg/m3]", "U.S. Standard Atmosphere 1976 (fluids)",
                    Standing::published, row.number("density_kg_m3"),
                    in(moist_air_density(t, p, 0.0), kilogram_per_cubic_metre), within_percent(0.01));
  }
}

TEST(MoistAir, IsLighterThanDryAirByItsWater) {
  // 30 degC, 1013.25 hPa, saturated: e = 4247 Pa; (101325 - 0.378 x 4247)/(287.05 x 303.15) = 1.1460.
  published_check("density of saturated air at 30 degC [kg/m3]", "ideal gas, worked by hand", Standing::published,
                  1.1460, in(moist_air_density(celsius(30.0), 101325.0 * pascal, 1.0), kilogram_per_cubic_metre),
                  within(0.0005));
  // The rule of thumb and the mixture of gases agree.
  const Ratio water = water_mole_fraction(celsius(30.0), 101325.0 * pascal, 0.6);
  const double mixture = in(moist_air(water).density(celsius(30.0), 101325.0 * pascal), kilogram_per_cubic_metre);
  EXPECT_NEAR(in(moist_air_density(celsius(30.0), 101325.0 * pascal, 0.6), kilogram_per_cubic_metre), mixture, 2e-4);
  EXPECT_NEAR(water.value(), 0.6 * 4246.9 / 101325.0, 1e-5);
}

TEST(RoomGauge, IsNegativeBelowTheNeutralPlaneOfAWarmHouse) {
  const Density cold = 1.292 * kilogram_per_cubic_metre;
  const Density warm = 1.204 * kilogram_per_cubic_metre;
  // 0 against 20 degC over 2.5 m: 0.088 x 9.80665 x 2.5 = 2.157 Pa.
  published_check("room pressure 2.5 m below the neutral plane, 0/20 degC [Pa]", "hydrostatics, worked by hand",
                  Standing::published, -2.157,
                  in(room_gauge(0.0 * metre, 2.5 * metre, cold, warm, 0.0 * pascal), pascal), within(0.001));
  EXPECT_GT(room_gauge(4.0 * metre, 2.5 * metre, cold, warm, 0.0 * pascal).value(), 0.0);
  EXPECT_GT(room_gauge(0.0 * metre, 2.5 * metre, warm, cold, 0.0 * pascal).value(), 0.0);  // colder house
  EXPECT_DOUBLE_EQ(room_gauge(2.5 * metre, 2.5 * metre, cold, warm, 5.0 * pascal).value(), -5.0);
}

TEST(ExhaustDepressurisation, FollowsTheBlowerDoor) {
  const Volume house = 300.0 * cubic_metre;
  // An exhaust as strong as the blower door's own flow pulls its 50 Pa.
  EXPECT_NEAR(in(exhaust_depressurisation(900.0 * cubic_metre_per_hour, house, 3.0), pascal), 50.0, 1e-9);
  // 300 m3/h of 900: 50 (1/3)^(1/0.65) = 9.22 Pa.
  published_check("depressurisation by a third of the 50 Pa flow [Pa]", "power law, exponent 0.65, worked by hand",
                  Standing::published, 9.22,
                  in(exhaust_depressurisation(300.0 * cubic_metre_per_hour, house, 3.0), pascal), within(0.01));
  EXPECT_EQ(exhaust_depressurisation(0.0 * cubic_metre_per_hour, house, 3.0).value(), 0.0);
}

TEST(NeutralLevel, BalancesTheFlowsThroughTwoOpenings) {
  const Density out = 1.29 * kilogram_per_cubic_metre;
  const Density room = 1.20 * kilogram_per_cubic_metre;
  const Length height = 6.0 * metre;
  const auto flow = [](Area area, Density density, Length head, Density difference) {
    return area.value() * std::sqrt(2.0 * density.value() * difference.value() * 9.80665 * head.value());
  };
  for (const double upper : {0.01, 0.02, 0.05}) {
    const Area low = 0.02 * square_metre;
    const Area high = upper * square_metre;
    const Length warm = neutral_level(height, low, high, out, room);
    EXPECT_NEAR(flow(low, out, warm, out - room), flow(high, room, height - warm, out - room), 1e-12);
    const Length cold = neutral_level(height, low, high, room, out);  // densities exchanged: a cold house
    EXPECT_NEAR(flow(low, out, cold, out - room), flow(high, room, height - cold, out - room), 1e-12);
  }
  // Equal openings: a little below the middle.
  published_check(
      "neutral level of equal openings, share of the height", "ASHRAE Fundamentals, infiltration",
      Standing::from_memory, 1.0 / (1.0 + 293.15 / 273.15),
      neutral_level(height, 0.02 * square_metre, 0.02 * square_metre, 293.15 / 273.15 * room, room) / height,
      within(1e-12));
}

TEST(WindPressure, IsTheDynamicPressureTimesItsCoefficient) {
  // 8 m/s against 1.25 kg/m3: 40 Pa of dynamic pressure.
  EXPECT_NEAR(in(wind_pressure(-0.4, 8.0 * metre_per_second, 1.25 * kilogram_per_cubic_metre), pascal), -16.0, 1e-12);
}

}  // namespace
}  // namespace fluewright
