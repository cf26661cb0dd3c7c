// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Walls that are suddenly heated, against the published solutions: air of one temperature blown through one cell.

#include "engine/burn/burn_stepper.hpp"
#include "tests/engine/solve/hand_built_heater.hpp"
#include "tests/support/published_check.hpp"
#include "tests/support/reference_table.hpp"

#include <gtest/gtest.h>

#include <boost/math/special_functions/erf.hpp>

#include <cmath>
#include <memory>
#include <string>

namespace fluewright::test {
namespace {

constexpr double cold = 300.0;
constexpr double hot = 340.0;

/// One cell of duct with one layer of wall, the outer face of which is insulated. The gas in it stays at the room's
/// temperature, because much of it is blown through.
struct HeatedWall {
  Material material;
  Branch branch;
  Surround surround;
  SlicedPath path;
  BurnGrid grid;
  std::unique_ptr<kernel::GasPair> gas;
  std::unique_ptr<kernel::BurnCells> cells;
  std::unique_ptr<kernel::BurnEquations> equations;
  kernel::Interval interval;
  double flow;

  HeatedWall(Length bore, Length thickness, double conductivity, double flow_kg_s, std::size_t nodes)
      : material{test::material("trial", 1800, conductivity, 900)}, flow{flow_kg_s} {
    Design day = a_day(20.0, hot - 273.15);
    day.room.humidity = day.site.outdoor_humidity = 0.0;
    surround = surround_of(day);
    Stretch s;
    s.length = 0.1 * metre;
    s.section = Section::circle(bore);
    s.roughness = 1.0 * millimetre;
    s.wall = {{&material, thickness}};
    s.place = Place::jacket;  // with no gas around it: insulated
    branch.from = {EndKind::room_air, 0, {}};
    branch.to = {EndKind::outdoor_air, 0, {}};
    branch.stretches = {s};
    grid.slice = 100.0 * millimetre;
    grid.layer_nodes = nodes;
    grid.first_node = 1.0 * millimetre;
    path = slice_branch(branch, grid.slice);
    gas = std::make_unique<kernel::GasPair>(usual_wood(), 0.0);
    cells = std::make_unique<kernel::BurnCells>(path, *gas,
                                                kernel::AirRange{293.15, 293.15, hot}, grid);
    equations = std::make_unique<kernel::BurnEquations>(*cells, *gas, surround, 0.0);
    interval.end = 1e7;
    interval.outdoor_begin = interval.outdoor_end = 293.15;
    interval.flow_is_given = true;
  }

  [[nodiscard]] std::vector<double> begun() const {
    std::vector<double> state(cells->unknowns, cold);
    state[0] = hot;
    state[1] = 0.0;
    state.back() = flow;
    return state;
  }
  /// Film of the gas on the wall [W/m2K].
  [[nodiscard]] double film() {
    std::vector<double> state = begun();
    std::vector<double> rate(state.size());
    equations->rates(0.0, interval, state.data(), rate.data());
    return equations->cells_now()[0].film;
  }
  /// The state after so many seconds; cells_now() belongs to it.
  [[nodiscard]] std::vector<double> after(double seconds) {
    kernel::BurnStepper stepper{*equations, BurnAccuracy{}.scaled(0.02)};
    stepper.start(begun(), 0.0);
    stepper.enter(interval);
    while (stepper.moment() < seconds) {
      if (!stepper.step(seconds, 1e6)) return {};
    }
    return stepper.state();
  }
};

TEST(SuddenlyHeatedWall, FollowsTheSemiInfiniteSolid) {
  // Surface convection on a semi-infinite solid: (Ts - Ti)/(T - Ti) = 1 - exp(b^2) erfc(b), b = h sqrt(a t)/k.
  // 2.5 m bore: within the warmed depth its wall is as good as plane (0.5 % at 1200 s). Erfc by the library.
  HeatedWall wall{2.5 * metre, 400.0 * millimetre, 0.9, 60.0, 24};
  const double h = wall.film();
  const double diffusivity = 0.9 / (1800.0 * 900.0);
  for (const double seconds : {60.0, 300.0, 1200.0}) {
    ASSERT_FALSE(wall.after(seconds).empty());
    const double b = h * std::sqrt(diffusivity * seconds) / 0.9;
    const double published = 1.0 - std::exp(b * b) * boost::math::erfc(b);
    const double ours = (wall.equations->cells_now()[0].face - cold) / (hot - cold);
    published_check("surface of a suddenly heated thick wall after " + std::to_string(static_cast<int>(seconds)) + " s [-]",
                    "Incropera & DeWitt eq. 5.63, semi-infinite solid with convection", Standing::published, published, ours,
                    within_percent(1.5));
  }
}

TEST(SuddenlyHeatedWall, FollowsTheSlabOfHeislersChart) {
  // One-term solution for Fo > 0.2, insulated face: C1 exp(-z1^2 Fo); z1 and C1 by Bi from Table 5.1 (from memory, and each
  // z1 satisfies z tan z = Bi to its digits, which the test checks).
  struct Row {
    double biot, zeta, c;
  };
  const double thickness = 0.06;
  for (const Row& row : {Row{0.1, 0.3111, 1.0161}, Row{1.0, 0.8603, 1.1191}, Row{10.0, 1.4289, 1.2620}}) {
    EXPECT_NEAR(row.zeta * std::tan(row.zeta), row.biot, 5e-3 * row.biot);
    HeatedWall probe{8.0 * metre, thickness * metre, 1.0, 200.0, 16};
    const double conductivity = probe.film() * thickness / row.biot;
    HeatedWall wall{8.0 * metre, thickness * metre, conductivity, 200.0, 16};
    const double diffusivity = conductivity / (1800.0 * 900.0);
    for (const double fourier : {0.5, 1.0, 2.0}) {
      const double seconds = fourier * thickness * thickness / diffusivity;
      const std::vector<double> state = wall.after(seconds);
      ASSERT_FALSE(state.empty());
      const double published = row.c * std::exp(-row.zeta * row.zeta * fourier);
      const double ours = (hot - state[2 + 15]) / (hot - cold);
      // Within a hundredth of the whole step of temperature.
      published_check("insulated face of a slab, Bi " + std::to_string(row.biot).substr(0, 4) + ", Fo " +
                          std::to_string(fourier).substr(0, 3) + " [-]",
                      "Heisler chart / Incropera & DeWitt Table 5.1, one term", Standing::from_memory, published, ours,
                      within(0.01));
    }
  }
}

TEST(SuddenlyHeatedWall, FollowsTheCylinderAroundABore) {
  // The exact integral of the region around a bore whose face is suddenly heated, as tabulated for penetration_resistance().
  // The face is held by much gas on a poor conductor: its film counts for 2 % of what the wall resists and is taken off.
  const double radius = 0.075;
  const double conductivity = 0.05;
  for (const auto& row : reference_table("penetration.csv")) {
    const double fourier = row.number("fourier");
    if (fourier < 0.01 || fourier > 5.0) continue;
    HeatedWall wall{2.0 * radius * metre, 900.0 * millimetre, conductivity, 4.0, 40};
    const double seconds = fourier * radius * radius / (conductivity / (1800.0 * 900.0));
    ASSERT_FALSE(wall.after(seconds).empty());
    const kernel::CellNow& now = wall.equations->cells_now()[0];
    const double flux = now.through / wall.cells->cells[0].surface;
    const double ours = (now.face - cold) / flux * conductivity / radius;
    published_check("resistance around a suddenly heated bore, Fo " + row.text("fourier") + " [-]",
                    "Carslaw & Jaeger 13.5 eq. 5, integrated", Standing::published, row.number("resistance_k_over_a"), ours,
                    within_percent(2.0));
  }
}

TEST(SuddenlyHeatedWall, ResistsInTheEndWhatItsShapeFactorSays) {
  // Identity: the nodes of a bench add up to the published shape factor of a pipe centred in a square (Incropera & DeWitt,
  // Table 4.1), those of the ground to a buried pipe's.
  const HandBuiltHeater heater;
  const Branch branch = heater.branch();
  const SlicedPath path = slice_branch(branch, 100.0 * millimetre);
  for (std::size_t i = 0; i < path.slices.size(); ++i) {
    const Slice& slice = path.slices[i];
    if (path.stretch_of(slice).place != Place::mass) continue;
    const WallGeometry& wall = path.walls[slice.stretch];
    double sum = 0.0;
    for (const kernel::WallNode& node : kernel::wall_nodes(path.stretch_of(slice), wall, slice.surface, {})) {
      if (node.embedding) sum += node.inner + node.outer;
    }
    EXPECT_NEAR(sum * in(slice.surface, square_metre) / in(wall.embedding_spread, metre), 1.0, 1e-12);
    return;
  }
  FAIL() << "no bench on the path";
}

TEST(WideningNodes, fill_the_wall_and_grow_by_one_factor) {
  const std::vector<double> t = kernel::widening(0.2, 0.004, 8);
  double sum = 0.0;
  for (std::size_t i = 0; i < t.size(); ++i) {
    sum += t[i];
    if (i > 1) {
      EXPECT_NEAR(t[i] / t[i - 1], t[1] / t[0], 1e-9);
    }
  }
  EXPECT_NEAR(sum, 0.2, 1e-12);
  EXPECT_NEAR(t[0], 0.004, 1e-6);
  for (const double each : kernel::widening(0.02, 0.01, 4)) EXPECT_DOUBLE_EQ(each, 0.005);
}

}  // namespace
}  // namespace fluewright::test
