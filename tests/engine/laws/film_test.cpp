// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/friction.hpp"
#include "engine/heat/cooling.hpp"
#include "engine/heat/inside_film.hpp"
#include "engine/heat/outside_film.hpp"
#include "tests/support/published_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace fluewright {
namespace {

using test::published_check;
using test::one_atmosphere;
using test::within;
using test::within_percent;


double in_film(FilmCoefficient h) { return in(h, watt_per_square_metre_kelvin); }

TEST(Gnielinski, GivesTheWorkedValue) {
  published_check("Nusselt number, Re 1e5, Pr 1.2, f 0.0185", "Gnielinski 1976 (library ht)", Standing::published,
                  254.6268, gnielinski_nusselt(1e5, 1.2, 0.0185), within(1e-3));
}

TEST(LaminarEntry, FollowsTheExactSeriesAndEndsAtItsLimit) {
  // Mean Nusselt number of the thermal entry, Shah & London: 3.657 + 0.0499 Gz for Gz < 33; 1.615 Gz^(1/3) - 0.2 up to
  // 200. Hausen's one expression stays within a few percent of it.
  for (const double graetz : {1.0, 5.0, 10.0, 25.0, 50.0, 100.0, 150.0}) {
    const double series = graetz < 33.0 ? 3.657 + 0.0499 * graetz : 1.615 * std::cbrt(graetz) - 0.2;
    published_check("mean Nusselt number of laminar entry, Gz " + std::to_string(int(graetz)), "Shah & London 1978",
                    Standing::from_memory, series, laminar_entry_nusselt(graetz, 1.0, 1.0), within_percent(4.0));
  }
  published_check("laminar Nusselt number far from the entrance", "exact, constant wall temperature",
                  Standing::published, 3.66, inside_nusselt(800.0, 0.7, 0.08, 0.0), within(1e-12));
}

TEST(InsideNusselt, BlendsLaminarIntoTurbulentWithoutAJump) {
  const auto nusselt = [](double re) { return inside_nusselt(re, 0.7, friction_factor(re, 0.003), 0.1).value(); };
  for (const double border : {laminar_film_ends, turbulent_film_begins}) {
    EXPECT_NEAR(nusselt(border - 1e-7), nusselt(border + 1e-7), 1e-6);
  }
  // With entry effect the fully turbulent value carries 1 + (D/L)^(2/3).
  const double f = friction_factor(6000.0, 0.003);
  EXPECT_NEAR(inside_nusselt(6000.0, 0.7, f, 0.1),
              gnielinski_nusselt(6000.0, 0.7, f) * (1.0 + std::pow(0.1, 2.0 / 3.0)), 1e-9);
}

TEST(FreeConvection, GivesTheWorkedNusseltNumbers) {
  const double rayleigh = 2.63e9 * 0.69;
  published_check("Nusselt number of a horizontal cylinder, Gr 2.63e9, Pr 0.69", "Churchill & Chu 1975 (library ht)",
                  Standing::published, 139.13494, horizontal_cylinder_nusselt(rayleigh, 0.69), within(1e-4));
  published_check("Nusselt number of a vertical wall, Gr 2.63e9, Pr 0.69", "Churchill & Chu 1975 (library ht)",
                  Standing::published, 147.16185, vertical_wall_nusselt(rayleigh, 0.69), within(1e-4));
}

TEST(FreeConvection, GivesTheTextbooksFilms) {
  published_check("film of a horizontal pipe, 0.1 m, 165/23 degC [W/(m2 K)]", "Incropera & DeWitt example 9.4",
                  Standing::from_memory, 7.29,
                  in_film(horizontal_cylinder_film(0.1 * metre, celsius(165.0), celsius(23.0), one_atmosphere)),
                  within_percent(3.0));
  published_check("film of a fireplace screen, 0.71 m, 232/23 degC [W/(m2 K)]", "Incropera & DeWitt example 9.2",
                  Standing::from_memory, 7.0,
                  in_film(vertical_wall_film(0.71 * metre, celsius(232.0), celsius(23.0), one_atmosphere)),
                  within_percent(3.0));
  published_check("film of a cylinder in cross-flow, 12.7 mm, 10 m/s, 128.4/26.2 degC [W/(m2 K)]",
                  "Incropera & DeWitt example 7.4", Standing::from_memory, 96.0,
                  in_film(cross_flow_film(12.7 * millimetre, celsius(128.4), celsius(26.2), 0.99997 * one_atmosphere,
                                          10.0 * metre_per_second)),
                  within_percent(3.0));
}

TEST(FreeConvection, OnAPlateIsMcAdams) {
  published_check("Nusselt number of a hot plate facing up, Ra 1e6", "McAdams 1954", Standing::published, 17.08,
                  plate_facing_up_nusselt(1e6), within(0.01));
  published_check("Nusselt number of a hot plate facing up, Ra 1e9", "McAdams 1954", Standing::published, 150.0,
                  plate_facing_up_nusselt(1e9), within(1e-6));
  published_check("Nusselt number of a hot plate facing down, Ra 1e6", "McAdams 1954", Standing::published, 8.538,
                  plate_facing_down_nusselt(1e6), within(0.001));
  // The hand-over differs from the published one, at 1e7, by less than its own step.
  EXPECT_NEAR(plate_facing_up_nusselt(9.9e6) / (0.54 * std::pow(9.9e6, 0.25)), 1.0, 0.07);
  EXPECT_NEAR(plate_facing_up_nusselt(4.7e6 * 0.999), plate_facing_up_nusselt(4.7e6 * 1.001), 0.02);
}

TEST(FreeConvection, StirsMoreUnderTheColdThanOverIt) {
  const Length size = 0.2 * metre;
  const auto up = [&](double t) {
    return in_film(plate_facing_up_film(size, celsius(t), celsius(20.0), one_atmosphere));
  };
  const auto down = [&](double t) {
    return in_film(plate_facing_down_film(size, celsius(t), celsius(20.0), one_atmosphere));
  };
  EXPECT_GT(up(40.0), down(40.0));
  EXPECT_LT(up(5.0), down(5.0));
  EXPECT_DOUBLE_EQ(up(20.0), down(20.0));
}

TEST(FreeConvection, IsWeakerInThinAir) {
  const auto film = [](double p) {
    return in_film(vertical_wall_film(0.5 * metre, celsius(80.0), celsius(20.0), p * pascal));
  };
  EXPECT_LT(film(79500.0), film(101325.0));
}

TEST(RadiationFilm, IsFourSigmaTCubedBetweenNearTemperatures) {
  published_check("radiation film of a black body at 300 K [W/(m2 K)]", "Stefan-Boltzmann law", Standing::published,
                  6.124, in_film(radiation_film(1.0, kelvins(300.0), kelvins(300.0))), within(0.001));
  // 0.9 at 100 against 20 degC: 0.9 sigma (373.15^4 - 293.15^4)/80 = 7.657
  published_check("radiation film of a grey wall, 100/20 degC [W/(m2 K)]", "Stefan-Boltzmann law, worked by hand",
                  Standing::published, 7.657, in_film(radiation_film(0.9, celsius(100.0), celsius(20.0))),
                  within(0.002));
}

TEST(CoolingNumber, IsTheExactSolutionOfALineOfSlices) {
  const LineConductance up = 2.4 * watt_per_metre_kelvin;
  const MassFlow flow = 0.012 * kilogram_per_second;
  const SpecificHeat cp = 1060.0 * joule_per_kilogram_kelvin;
  const Ratio k = cooling_number(up, 7.0 * metre, flow, cp);
  published_check("cooling number, U P 2.4 W/(m K), 7 m, 0.012 kg/s, 1060 J/(kg K)", "EN 13384-1, worked by hand",
                  Standing::from_memory, 2.4 * 7.0 / (0.012 * 1060.0), k, within(1e-12));
  // A thousand explicit steps.
  double t = 200.0;
  for (int i = 0; i < 1000; ++i) {
    t -= (t - 10.0) * k / 1000.0;
  }
  EXPECT_NEAR(in_celsius(cooled(celsius(200.0), celsius(10.0), k)), t, 0.06);
  // What the gas gives off equals the mean excess times U P L.
  const double given = 0.012 * 1060.0 * (200.0 - in_celsius(cooled(celsius(200.0), celsius(10.0), k)));
  const double mean = in_celsius(mean_while_cooling(celsius(200.0), celsius(10.0), k));
  EXPECT_NEAR(given, 2.4 * 7.0 * (mean - 10.0), 1e-9);
  EXPECT_NEAR(in_celsius(mean_while_cooling(celsius(200.0), celsius(10.0), 0.0)), 200.0, 1e-12);
}

}  // namespace
}  // namespace fluewright
