// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/fuel/combustion.hpp"
#include "engine/moisture/condensation.hpp"
#include "engine/moisture/saturation.hpp"
#include "tests/support/published_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace fluewright {
namespace {

using test::published_check;
using test::within;
using test::within_percent;

double saturation_at(double celsius_t) { return in(saturation_pressure(celsius(celsius_t)), pascal); }

TEST(SaturationPressure, IsThatOfTheSteamTables) {
  // IAPWS-IF97 rounded as in its steam tables.
  const std::pair<double, double> rows[] = {{0.01, 611.657}, {10.0, 1228.2},  {20.0, 2339.3},   {30.0, 4247.0},
                                            {40.0, 7384.9},  {50.0, 12352.0}, {60.0, 19946.0},  {70.0, 31201.0},
                                            {80.0, 47415.0}, {90.0, 70182.0}, {100.0, 101420.0}};
  for (const auto& [t, p] : rows) {
    published_check("saturation pressure at " + std::to_string(t).substr(0, 5) + " degC [Pa]",
                    "IAPWS-IF97 steam tables", Standing::from_memory, p, saturation_at(t), within_percent(0.05));
  }
  const std::pair<double, double> exact[] = {{300.0, 3536.58941}, {500.0, 2.63889776e6}, {600.0, 1.23443146e7}};
  for (const auto& [t, p] : exact) {
    published_check("saturation pressure at " + std::to_string(int(t)) + " K [Pa]",
                    "IAPWS-IF97 Table 35, computer-program verification", Standing::published, p,
                    in(saturation_pressure(kelvins(t)), pascal), within_percent(1e-6));
  }
}

TEST(SaturationPressure, AgreesWithBuckBetweenFreezingAndBoiling) {
  for (double t = 0.5; t <= 100.0; t += 4.5) {
    const double buck = 611.21 * std::exp((18.678 - t / 234.5) * t / (257.14 + t));
    published_check("saturation pressure at " + std::to_string(t).substr(0, 4) + " degC by another relation [Pa]",
                    "Buck 1981, revised", Standing::published, buck, saturation_at(t), within_percent(0.2));
  }
}

TEST(SaturationPressure, GoesOverToIceBelowTheTriplePoint) {
  published_check("sublimation pressure at 230 K [Pa]", "IAPWS R14-08(2011), verification value", Standing::from_memory,
                  8.94735, in(saturation_pressure(kelvins(230.0)), pascal), within_percent(1e-4));
  const double below = in(saturation_pressure(kelvins(std::nextafter(273.16, 0.0))), pascal);
  const double above = in(saturation_pressure(kelvins(273.16)), pascal);
  EXPECT_NEAR(below / above, 1.0, 1e-6);
}

TEST(DewPoint, IsTheInverseOfTheSaturationPressure) {
  const std::pair<double, double> rows[] = {{0.1e6, 372.755919}, {1.0e6, 453.035632}, {10.0e6, 584.149488}};
  for (const auto& [p, t] : rows) {
    published_check("saturation temperature at " + std::to_string(p * 1e-6).substr(0, 4) + " MPa [K]",
                    "IAPWS-IF97 Table 36, computer-program verification", Standing::from_memory, t,
                    in_kelvin(dew_point(p * pascal)), within(1e-6));
  }
  for (double t = 190.0; t < 640.0; t += 7.7) {
    EXPECT_NEAR(in_kelvin(dew_point(saturation_pressure(kelvins(t)))), t, 1e-6) << t;
  }
}

TEST(SaturationPressure, IsBoundlessAboveTheCriticalPoint) {
  EXPECT_NEAR(in(saturation_pressure(kelvins(647.096)), pascal), 22.064e6, 0.001e6);
  EXPECT_TRUE(std::isinf(in(saturation_pressure(kelvins(900.0)), pascal)));
}

TEST(DewPoint, OfNoVapourAtAllIsTheEndOfTheRelation) {
  EXPECT_EQ(in_kelvin(dew_point(0.0 * pascal)), 50.0);
  EXPECT_FALSE(saturation_range().contains(kelvins(49.0)));
}

TEST(VapourDiffusivity, IsThatOfWaterInAir) {
  published_check("diffusivity of water vapour in air, 298 K [mm2/s]", "Incropera & DeWitt Table A.8",
                  Standing::from_memory, 26.0, 1e6 * vapour_diffusivity(kelvins(298.0), 101325.0 * pascal).value(),
                  within_percent(6.0));
}

TEST(CondensingFlux, IsZeroOnAWallAboveTheDewPoint) {
  const GasTable gas{flue_gas(WoodFuel{}, 2.5, 0.008).mixture};
  const Pressure total = 101325.0 * pascal;
  const Pressure vapour = total * gas.mixture().mole_fraction(Species::water);
  const Temperature dew = dew_point(vapour);
  const FilmCoefficient film = 8.0 * watt_per_square_metre_kelvin;
  EXPECT_EQ(condensing_flux(film, gas, vapour, total, dew + 0.1 * kelvin, celsius(90.0)).value(), 0.0);
  EXPECT_GT(condensing_flux(film, gas, vapour, total, dew - 0.1 * kelvin, celsius(90.0)).value(), 0.0);
}

TEST(CondensingFlux, FollowsTheAnalogyOfHeatAndMass) {
  // By hand: h 10 W/m2K, gas 80 degC, wall 20 degC, 8 % water at 101325 Pa, film 50 degC. There the gas has 1.059
  // kg/m3, 1.051 kJ/(kg K) and 0.0275 W/(m K), vapour diffuses at 2.96e-5 m2/s: Le = 2.47/2.96 = 0.835, Le^(2/3) =
  // 0.887, h_m = 10/(1113 x 0.887) = 1.013e-2 m/s; vapour scale 101325 x 0.018015/(8.314 x 323.15) = 0.679 kg/m3; drive
  // ln((101325 - 2339)/(101325 - 8106)) = 0.0600.
  const GasMixture gas = moist_air(0.08);
  const double ours = condensing_flux(10.0 * watt_per_square_metre_kelvin, gas, 8106.0 * pascal, 101325.0 * pascal,
                                      celsius(20.0), celsius(80.0))
                          .value();
  published_check("condensing flux of a hand-worked case [g/(m2 h)]", "Chilton-Colburn analogy, worked by hand",
                  Standing::published, 1.013e-2 * 0.679 * 0.0600 * 3.6e6, ours * 3.6e6, within_percent(3.0));
  // The table and the mixture are the same gas.
  const double tabled = condensing_flux(10.0 * watt_per_square_metre_kelvin, GasTable{gas}, 8106.0 * pascal,
                                        101325.0 * pascal, celsius(20.0), celsius(80.0))
                            .value();
  EXPECT_NEAR(tabled / ours, 1.0, 1e-4);
}

}  // namespace
}  // namespace fluewright
