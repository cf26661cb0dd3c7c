// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Worked chimney examples of textbooks and handbooks, as far as they are closed-form: column, draft, velocity.

#include "engine/flow/buoyancy.hpp"
#include "engine/site/atmosphere.hpp"
#include "tests/support/published_check.hpp"

#include <gtest/gtest.h>

#include <array>
#include <cmath>
#include <string>

namespace fluewright {
namespace {

using test::published_check;
using test::one_atmosphere;
using test::within;
using test::within_percent;

/// A millimetre of water column, 9.80665 Pa.
constexpr Pressure millimetre_of_water = 9.80665 * pascal;

Density air_at(Temperature t, Pressure p = one_atmosphere) { return moist_air_density(t, p, 0.0); }

/// Draft of a stack full of air at one temperature, the handbooks' way.
Pressure air_draft(Length height, Temperature outdoors, Temperature gas, Pressure p = one_atmosphere) {
  return buoyancy(air_at(outdoors, p), air_at(gas, p), height);
}

TEST(TheoreticalDraft, IsThatOfTheSteamHandbook) {
  const Length hundred_feet = 100.0 * foot;
  const Pressure psi = 6894.757 * pascal;
  published_check("draft of 100 ft, 60/500 degF, 14.7 psi [in w.c.]", "Steam, Its Generation and Use, chimneys",
                  Standing::published, 0.67,
                  in(air_draft(hundred_feet, fahrenheit(60.0), fahrenheit(500.0), 14.7 * psi), inch_of_water),
                  within_percent(1.0));
  published_check("draft of 100 ft, 60/500 degF, 10 psi [in w.c.]", "Steam, Its Generation and Use, chimneys",
                  Standing::published, 0.457,
                  in(air_draft(hundred_feet, fahrenheit(60.0), fahrenheit(500.0), 10.0 * psi), inch_of_water),
                  within_percent(1.0));
  published_check("density of air at 62 degF [lb/ft3]", "Steam, Its Generation and Use, chimneys", Standing::published,
                  0.0761, in(air_at(fahrenheit(62.0)), kilogram_per_cubic_metre) / 16.018463, within(0.0002));
  published_check("density of air at 500 degF [lb/ft3]", "Steam, Its Generation and Use, chimneys", Standing::published,
                  0.0414, in(air_at(fahrenheit(500.0)), kilogram_per_cubic_metre) / 16.018463, within(0.0001));
}

TEST(TheoreticalDraft, IsThatOfTheHeatingHandbook) {
  // 25 ft, 70/250 degF at 29.92 in Hg.
  published_check("draft of 25 ft, 70/250 degF [in w.c.]", "ASHRAE chimney chapter, worked example",
                  Standing::published, 0.091,
                  in(air_draft(25.0 * foot, fahrenheit(70.0), fahrenheit(250.0)), inch_of_water), within(0.001));
  published_check("draft of 25 ft, 70/250 degF [Pa]", "ASHRAE chimney chapter, 0.03413 B H (1/To - 1/Tm)",
                  Standing::published, 22.69, in(air_draft(25.0 * foot, fahrenheit(70.0), fahrenheit(250.0)), pascal),
                  within_percent(0.3));
}

TEST(TheoreticalDraft, IsThatOfTheMechanicalDraftTable) {
  // The table's gas is 4.3 % heavier than air of its temperature (inferred from the two entries).
  const auto draft = [](double outdoors) {
    const Density gas = 1.043 * air_at(fahrenheit(500.0));
    return in(buoyancy(air_at(fahrenheit(outdoors)), gas, 100.0 * foot), inch_of_water);
  };
  published_check("draft of 100 ft, 500 degF gas, 30 degF outside [in w.c.]",
                  "Steam Boilers, Engines and Turbines, Table XV", Standing::published, 0.73, draft(30.0),
                  within_percent(1.5));
  published_check("draft of 100 ft, 500 degF gas, 100 degF outside [in w.c.]",
                  "Steam Boilers, Engines and Turbines, Table XV", Standing::published, 0.534, draft(100.0),
                  within_percent(1.5));
}

TEST(TheoreticalDraft, FollowsTheHandbookEquationOverItsGrid) {
  const std::array<double, 10> gas{40, 60, 80, 100, 125, 150, 200, 250, 300, 400};
  struct Row {
    double outdoors;
    std::array<double, 10> pascals_per_metre;
  };
  // 0.0342 B (1/To - 1/Tm) worked out with 287.05 J/(kg K) at 101325 Pa.
  const Row rows[] = {{-20, {2.62, 3.28, 3.87, 4.40, 4.98, 5.49, 6.36, 7.06, 7.64, 8.53}},
                      {-10, {2.10, 2.76, 3.35, 3.88, 4.46, 4.97, 5.84, 6.54, 7.12, 8.01}},
                      {0, {1.62, 2.28, 2.87, 3.40, 3.98, 4.49, 5.36, 6.06, 6.63, 7.53}},
                      {10, {1.17, 1.84, 2.42, 2.95, 3.53, 4.05, 4.91, 5.61, 6.19, 7.08}},
                      {15, {0.96, 1.62, 2.21, 2.74, 3.32, 3.83, 4.70, 5.40, 5.97, 6.87}},
                      {20, {0.75, 1.42, 2.01, 2.53, 3.11, 3.63, 4.49, 5.19, 5.77, 6.67}}};
  for (const Row& row : rows) {
    for (std::size_t i = 0; i < gas.size(); ++i) {
      for (const double height : {1.0, 4.0, 9.0}) {
        published_check(
            "draft of " + std::to_string(int(height)) + " m, " + std::to_string(int(row.outdoors)) + "/" +
                std::to_string(int(gas[i])) + " degC [Pa]",
            "handbook chimney equation, ASHRAE chimney chapter", Standing::published, height * row.pascals_per_metre[i],
            in(air_draft(height * metre, celsius(row.outdoors), celsius(gas[i])), pascal), within(0.0065 * height));
      }
    }
  }
}

/// A textbook chimney: gas as (m+1)/m times air of its temperature, m kilograms of air per kilogram of fuel.
struct TextbookChimney {
  double height, outdoors, gas, air_per_fuel;  // m, K, K, kg/kg

  [[nodiscard]] Density gas_density() const { return (air_per_fuel + 1.0) / air_per_fuel * air_at(kelvins(gas)); }
  [[nodiscard]] Pressure draft() const { return buoyancy(air_at(kelvins(outdoors)), gas_density(), height * metre); }
  /// The draft as a column of the hot gas itself [m].
  [[nodiscard]] double column() const {
    return in(draft(), pascal) / (in(gas_density(), kilogram_per_cubic_metre) * standard_gravity.value());
  }
};

TEST(WorkedChimneys, OfTheThermalTextbook) {
  const char* const book = "thermal engineering textbook, example ";
  const TextbookChimney first{24.0, 298.0, 573.0, 20.0};
  published_check("draft of a 24 m chimney, 298/573 K, 20 kg air [mm w.c.]", std::string{book} + "11.14",
                  Standing::published, 12.905, in(first.draft(), millimetre_of_water), within_percent(0.2));
  published_check("draft of a 24 m chimney as hot gas [m]", std::string{book} + "11.14", Standing::published, 19.950,
                  first.column(), within_percent(0.2));

  // 38 m, 1.8 m across, 45 % of the column lost: 15.286 m left drive the gas at 17.318 m/s.
  const TextbookChimney second{38.0, 300.0, 550.0, 17.0};
  published_check("hot-gas column of a 38 m chimney [m]", std::string{book} + "11.15", Standing::published, 27.796,
                  second.column(), within_percent(0.2));
  const double velocity = std::sqrt(2.0 * 9.81 * 0.55 * second.column());
  published_check("gas velocity in a 38 m chimney [m/s]", std::string{book} + "11.15", Standing::published, 17.318,
                  velocity, within_percent(0.2));
  const double density = in(second.gas_density(), kilogram_per_cubic_metre);
  published_check("gas density in a 38 m chimney [kg/m3]", std::string{book} + "11.15", Standing::published, 0.67957,
                  density, within_percent(0.2));
  published_check("gas flow of a 38 m chimney [kg/s]", std::string{book} + "11.15", Standing::published, 29.95,
                  density * velocity * 3.14159265 / 4.0 * 1.8 * 1.8, within_percent(0.3));

  // Height for a wanted draft.
  const auto height_for = [](double draft_mm, TextbookChimney chimney) {
    chimney.height = 1.0;
    return draft_mm / in(chimney.draft(), millimetre_of_water);
  };
  published_check("height for 18 mm w.c., 300/543 K [m]", std::string{book} + "11.21", Standing::published, 36.700,
                  height_for(18.0, {0.0, 300.0, 543.0, 18.0}), within_percent(0.2));
  published_check("height for 20 mm w.c., 300/600 K [m]", std::string{book} + "11.06", Standing::published, 35.784,
                  height_for(20.0, {0.0, 300.0, 600.0, 20.0}), within_percent(0.2));
  published_check("height for 14/0.6 mm w.c., 300/630 K [m]", "second thermal engineering textbook, example 11.21",
                  Standing::published, 40.300, height_for(14.0 / 0.6, {0.0, 300.0, 630.0, 15.0}), within_percent(0.2));
}

TEST(WorkedChimneys, OfTheFurnaceBook) {
  // Gas of 1.32 and air of 1.293 kg/m3 at 0 degC; gas at 600, air at 30 degC.
  const char* const book = "The Flow of Gases in Furnaces, p. 288";
  const Density gas = 1.32 * kilogram_per_cubic_metre * (273.0 / 873.0);
  const Density air = air_at(celsius(30.0));
  published_check("density of air at 30 degC [kg/m3]", book, Standing::published, 1.165,
                  in(air, kilogram_per_cubic_metre), within(0.002));
  published_check("density difference [kg/m3]", book, Standing::published, 0.753,
                  in(air - gas, kilogram_per_cubic_metre), within(0.003));
  const Pressure per_metre = buoyancy(air, gas, 1.0 * metre);
  published_check("draft per metre [Pa]", book, Standing::published, 7.38, in(per_metre, pascal), within(0.03));
  published_check("height for 47.72 mm w.c. [m]", book, Standing::published, 63.5,
                  47.72 / in(per_metre, millimetre_of_water), within_percent(0.5));
}

}  // namespace
}  // namespace fluewright
