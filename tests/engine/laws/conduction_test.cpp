// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/heat/conduction.hpp"
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

constexpr double pi = std::numbers::pi;

TEST(Layers, ResistAsFourierSays) {
  EXPECT_DOUBLE_EQ(plane_layer(0.1 * metre, 0.5 * watt_per_metre_kelvin).value(), 0.2);
  // 25 mm of 0.05 W/mK around a 150 mm pipe: ln(200/150)/(2 pi 0.05) = 0.9157 m K/W.
  published_check("25 mm of insulation around 150 mm [m K/W]", "Fourier's law, worked by hand", Standing::published,
                  0.9157, cylinder_layer(150.0 * millimetre, 200.0 * millimetre, 0.05 * watt_per_metre_kelvin).value(),
                  within(0.0001));
  // Per area of the bore it is the same heat flow.
  const double per_bore =
      cylinder_layer_on(150.0 * millimetre, 150.0 * millimetre, 200.0 * millimetre, 0.05 * watt_per_metre_kelvin)
          .value();
  EXPECT_NEAR(per_bore / (pi * 0.150), 0.9157, 1e-4);
}

TEST(ShapeFactors, AreThoseOfTheTable) {
  // 150 mm pipe in a 500 mm square: 2 pi / ln(3.6) = 4.905.
  published_check("shape factor, 150 mm pipe in a 500 mm square", "Incropera & DeWitt Table 4.1 case 6, worked by hand",
                  Standing::published, 4.905, centred_in_square_shape_factor(0.5 * metre, 0.15 * metre), within(0.001));
  // 200 mm pipe 600 mm deep: 2 pi / acosh(6) = 2.536.
  published_check("shape factor, 200 mm pipe 600 mm deep", "Incropera & DeWitt Table 4.1 case 2, worked by hand",
                  Standing::published, 2.536, buried_pipe_shape_factor(0.6 * metre, 0.2 * metre), within(0.001));
  // Two 150 mm pipes 400 mm apart: 2 pi / acosh((0.64 - 0.045)/0.045) = 2 pi / acosh(13.22) = 1.920.
  published_check("shape factor, two 150 mm pipes 400 mm apart", "Incropera & DeWitt Table 4.1 case 4, worked by hand",
                  Standing::published, 1.920, parallel_pipes_shape_factor(0.4 * metre, 0.15 * metre, 0.15 * metre),
                  within(0.001));
}

TEST(ShapeFactors, MeetTheirOwnLimitsAndImages) {
  for (const double depth : {0.3, 0.6, 1.5}) {
    // The plane is halfway to the mirror image, so two pipes are twice the resistance.
    EXPECT_NEAR(parallel_pipes_shape_factor(2.0 * depth * metre, 0.2 * metre, 0.2 * metre),
                0.5 * buried_pipe_shape_factor(depth * metre, 0.2 * metre), 1e-12);
  }
  // Deep below, acosh(2z/D) is ln(4z/D).
  EXPECT_NEAR(buried_pipe_shape_factor(20.0 * metre, 0.2 * metre), 2.0 * pi / std::log(400.0), 1e-4);
  // A circle of equal area is within a few percent of the square.
  const double square = 1.0 / centred_in_square_shape_factor(0.5 * metre, 0.15 * metre);
  const double circle = 1.0 / equal_area_shape_factor(0.5 * metre, 0.5 * metre, 0.15 * metre);
  EXPECT_GT(circle, square);
  EXPECT_NEAR(circle / square, 1.0, 0.04);
}

TEST(PenetrationResistance, FollowsTheExactIntegral) {
  for (const auto& row : test::reference_table("penetration.csv")) {
    const double fourier = row.number("fourier");
    const double ours =
        penetration_resistance(1.0 * metre, 1.0 * watt_per_metre_kelvin, 1.0 * square_metre / second, fourier * second)
            .value();
    const double percent = fourier <= 0.3 ? 1.0 : (fourier >= 50.0 ? 1.0 : 6.5);
    published_check("resistance of a wide mass around a heated bore, Fo " + row.text("fourier"),
                    "Carslaw & Jaeger 13.5 eq. 5, integrated", Standing::published, row.number("resistance_k_over_a"),
                    ours, within_percent(percent));
  }
}

TEST(PenetrationResistance, HasNoJumpAtItsHandOverAndScales) {
  const auto at = [](double seconds) {
    return penetration_resistance(0.075 * metre, 0.8 * watt_per_metre_kelvin, 5e-7 * square_metre / second,
                                  seconds * second)
        .value();
  };
  const double hand_over = 0.075 * 0.075 / 5e-7;
  EXPECT_NEAR(at(hand_over * (1.0 - 1e-12)), at(hand_over * (1.0 + 1e-12)), 1e-9 * at(hand_over));
  EXPECT_EQ(at(0.0), 0.0);
  // A bore grown wide is a plane.
  const double plane =
      plane_penetration_resistance(0.8 * watt_per_metre_kelvin, 5e-7 * square_metre / second, 600.0 * second).value();
  const double wide =
      penetration_resistance(50.0 * metre, 0.8 * watt_per_metre_kelvin, 5e-7 * square_metre / second, 600.0 * second)
          .value();
  EXPECT_NEAR(wide / plane, 1.0, 1e-3);
  EXPECT_NEAR(plane, std::sqrt(pi * 5e-7 * 600.0) / 0.8, 1e-12);
}

TEST(ThinWall, WarmsByTwoThirdsInItsTimeConstant) {
  const ArealHeatCapacity steel =
      2.0e-3 * metre * 7800.0 * kilogram_per_cubic_metre * 450.0 * joule_per_kilogram_kelvin;
  const FilmCoefficient films = 25.0 * watt_per_square_metre_kelvin;
  const Time constant = steel / films;
  published_check("time constant of 2 mm steel between films of 25 W/(m2 K) [s]", "lumped capacitance, worked by hand",
                  Standing::published, 280.8, in(constant, second), within(0.1));
  EXPECT_NEAR(thin_wall_warmed_share(constant, films, steel), 1.0 - std::exp(-1.0), 1e-12);
  EXPECT_EQ(thin_wall_warmed_share(0.0 * constant, films, steel).value(), 0.0);
}

}  // namespace
}  // namespace fluewright
