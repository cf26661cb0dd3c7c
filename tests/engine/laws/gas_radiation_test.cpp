// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/gas_radiation.hpp"
#include "tests/support/published_check.hpp"
#include "tests/support/reference_table.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace fluewright {
namespace {

using test::published_check;
using test::within_percent;

double film(double gas, double wall, double co2 = 8000.0, double water = 8000.0, double path = 0.14) {
  return in(gas_radiation_film(kelvins(gas), kelvins(wall), co2 * pascal, water * pascal, path * metre, 0.9),
            watt_per_square_metre_kelvin);
}

TEST(GreyGases, AreThePublishedSumAtEqualPartialPressures) {
  // By hand from the published set for p_H2O/p_CO2 = 1 at 1000 K and 0.1 atm m:
  // a = 0.36755, 0.22538, 0.05926; 1 - exp(-k x 0.1) = 0.04212, 0.50614, 1.0000; sum 0.18882.
  published_check("emissivity at 1000 K, 0.1 atm m, equal CO2 and H2O", "Smith, Shen & Friedman 1982, worked by hand",
                  Standing::published, 0.18882,
                  emissivity(kelvins(1000.0), 0.05 * 101325.0 * pascal, 0.05 * 101325.0 * pascal, 1.0 * metre),
                  within_percent(0.05));
}

TEST(GreyGases, HaveWeightsThatLeaveAClearWindow) {
  for (const auto& set : grey_gas::sets) {
    for (double t = 600.0; t <= 2400.0; t += 50.0) {
      double sum = 0.0;
      for (const auto& b : set.b) {
        const double a = b[0] + t * (b[1] + t * (b[2] + t * b[3]));
        EXPECT_GE(a, -0.002) << t;  // the published CO2 set grazes zero at the hot end
        sum += a;
      }
      EXPECT_GT(sum, 0.0);
      EXPECT_LT(sum, 1.0);
    }
  }
}

TEST(GreyGases, AgreeWithAnotherPublishedClosure) {
  for (const auto& row : test::reference_table("emissivity.csv")) {
    const double t = row.number("t_K");
    const Ratio ours = emissivity(kelvins(t), row.number("co2_bar") * 1e5 * pascal,
                                  row.number("h2o_bar") * 1e5 * pascal, row.number("path_m") * metre);
    published_check("emissivity at " + row.text("t_K") + " K, CO2 " + row.text("co2_bar") + " bar, H2O " +
                        row.text("h2o_bar") + " bar, " + row.text("path_m") + " m",
                    "Leckner 1972", Standing::from_memory, row.number("emissivity"), ours,
                    within_percent(t < 750.0 ? 32.0 : 18.0));
  }
}

TEST(GreyGases, AreHeldOutsideTheirRange) {
  const Pressure p = 8000.0 * pascal;
  const auto at = [p](double t) { return emissivity(kelvins(t), p, p, 0.14 * metre).value(); };
  EXPECT_EQ(at(350.0), at(600.0));
  EXPECT_EQ(at(2600.0), at(2400.0));
  EXPECT_FALSE(gas_radiation_range().contains(kelvins(599.0)));
  EXPECT_EQ(absorptivity(kelvins(900.0), p, p, 0.14 * metre).value(), at(900.0));
}

TEST(GreyGases, PassWithoutAJumpFromOneWaterShareToTheNext) {
  const auto at = [](double share) {
    return emissivity(kelvins(900.0), (1.0 - share) * 16000.0 * pascal, share * 16000.0 * pascal, 0.14 * metre).value();
  };
  for (const double node : {0.5, 2.0 / 3.0}) {
    EXPECT_NEAR(at(node - 1e-9), at(node + 1e-9), 1e-8);
  }
  EXPECT_GT(at(0.0), 0.0);
  EXPECT_GT(at(1.0), at(0.0));
}

TEST(GasRadiationFilm, IsTheNetFluxOverTheDifference) {
  const Pressure p = 8000.0 * pascal;
  const std::pair<double, double> pairs[] = {{1100.0, 900.0}, {1000.0, 450.0},  {550.0, 400.0},  {2500.0, 500.0},
                                             {350.0, 700.0},  {2700.0, 2500.0}, {2600.0, 2000.0}};
  for (const auto& [gas, wall] : pairs) {
    const double e = emissivity(kelvins(gas), p, p, 0.14 * metre);
    const double a = absorptivity(kelvins(wall), p, p, 0.14 * metre);
    const double flux = 0.95 * stefan_boltzmann * (e * std::pow(gas, 4) - a * std::pow(wall, 4));
    EXPECT_NEAR(film(gas, wall), flux / (gas - wall), 1e-9 * std::abs(film(gas, wall))) << gas << " / " << wall;
  }
}

TEST(GasRadiationFilm, IsSmoothWhereGasAndWallMeet) {
  for (const double t : {450.0, 590.0, 601.0, 900.0, 1500.0}) {
    const double at = film(t, t);
    EXPECT_TRUE(std::isfinite(at));
    for (const double step : {1e-9, 1e-6, 1e-3}) {
      EXPECT_NEAR(film(t + step, t), at, 1e-3 * at);
      EXPECT_NEAR(film(t - step, t), at, 1e-3 * at);
    }
  }
  // Where the weights stop changing the film has a corner, but the flux has none.
  for (const double edge : {600.0, 2400.0}) {
    for (const double step : {-1e-3, 1e-3}) {
      EXPECT_NEAR(film(edge + step, edge) * step, 0.0, 0.1);
      EXPECT_NEAR(film(edge + step, 500.0) * (edge + step - 500.0), film(edge, 500.0) * (edge - 500.0), 0.1);
    }
  }
}

TEST(GasRadiationFilm, IsNothingWithoutRadiatingGas) {
  EXPECT_EQ(film(1200.0, 400.0, 0.0, 0.0), 0.0);
  EXPECT_EQ(film(1200.0, 400.0, 8000.0, 8000.0, 0.0), 0.0);
}

}  // namespace
}  // namespace fluewright
