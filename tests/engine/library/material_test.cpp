// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/library/library.hpp"

#include <gtest/gtest.h>

namespace fluewright {
namespace {

/// Fireclay brick, as VDI Heat Atlas gives it at 400 and 800 degC.
Material fireclay() {
  Material m;
  m.id = "firebrick";
  m.density = 2150.0 * kilogram_per_cubic_metre;
  m.specific_heat = 956.0 * joule_per_kilogram_kelvin;
  m.conductivity_points = {{celsius(400.0), 1.05 * watt_per_metre_kelvin},
                           {celsius(800.0), 1.15 * watt_per_metre_kelvin}};
  return m;
}

double conductivity_at(const Material& m, double degrees) {
  return in(m.conductivity(celsius(degrees)), watt_per_metre_kelvin);
}

TEST(AMaterial, ConductsLinearlyBetweenItsPoints) {
  EXPECT_NEAR(conductivity_at(fireclay(), 600.0), 1.10, 1e-12);  // VDI Heat Atlas has 1.10 at 600 degC
  EXPECT_NEAR(conductivity_at(fireclay(), 500.0), 1.075, 1e-12);
}

TEST(AMaterial, KeepsItsEndPointsBeyondThem) {
  EXPECT_NEAR(conductivity_at(fireclay(), 20.0), 1.05, 1e-12);
  EXPECT_NEAR(conductivity_at(fireclay(), 400.0), 1.05, 1e-12);
  EXPECT_NEAR(conductivity_at(fireclay(), 800.0), 1.15, 1e-12);
  EXPECT_NEAR(conductivity_at(fireclay(), 1200.0), 1.15, 1e-12);
}

TEST(AMaterial, SaysWhichTemperaturesItsPointsCover) {
  const Material m = fireclay();
  EXPECT_FALSE(m.covers(celsius(399.0)));
  EXPECT_TRUE(m.covers(celsius(400.0)));
  EXPECT_TRUE(m.covers(celsius(800.0)));
  EXPECT_FALSE(m.covers(celsius(801.0)));
}

TEST(AMaterial, WithOnePointIsTrustedBelowTwoHundredDegrees) {
  Material m = fireclay();
  m.conductivity_points = {{celsius(20.0), 0.8 * watt_per_metre_kelvin}};
  EXPECT_NEAR(conductivity_at(m, 150.0), 0.8, 1e-12);
  EXPECT_TRUE(m.covers(celsius(-30.0)));
  EXPECT_TRUE(m.covers(celsius(199.0)));
  EXPECT_FALSE(m.covers(celsius(201.0)));
}

TEST(AMaterial, DiffusesAsItsConductivityOverItsHeatCapacity) {
  // 1.05 / (2150 * 956) = 5.108e-7 m2/s, by hand.
  const Diffusivity unit = square_metre / second;
  EXPECT_NEAR(in(fireclay().diffusivity(celsius(400.0)), unit), 5.1085e-7, 1e-11);
}

TEST(TheLibrary, FindsThingsByIdAndSaysSoWhenThereAreNone) {
  Library library;
  library.materials = {fireclay()};
  Wall wall;
  wall.id = "brick_60";
  library.walls = {wall};
  PieceType type;
  type.id = "bench_pipe";
  FieldSpec bore;
  bore.key = "bore";
  type.fields = {bore};
  library.piece_types = {type};

  ASSERT_NE(library.material("firebrick"), nullptr);
  EXPECT_EQ(library.material("cob"), nullptr);
  ASSERT_NE(library.wall("brick_60"), nullptr);
  EXPECT_EQ(library.wall(""), nullptr);
  ASSERT_NE(library.piece_type("bench_pipe"), nullptr);
  EXPECT_NE(library.piece_type("bench_pipe")->field("bore"), nullptr);
  EXPECT_EQ(library.piece_type("bench_pipe")->field("length"), nullptr);
  EXPECT_EQ(library.piece_type("bench"), nullptr);
}

}  // namespace
}  // namespace fluewright
