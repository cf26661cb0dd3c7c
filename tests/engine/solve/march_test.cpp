// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/solve/hand_built_heater.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <memory>

namespace fluewright::test {
namespace {

struct Marched {
  HandBuiltHeater heater;  // owns the materials the branch points to
  Branch branch;
  Surround surround;
  SlicedPath path;
  MarchTotals totals;
  std::vector<SliceState> rows;
  FireState fire;
};

/// One march at a given excess air; the branch lives in the result because the path points into it.
std::unique_ptr<Marched> march(const HandBuiltHeater& heater, const Design& day, double excess_air,
                               Length slice = 50.0 * millimetre) {
  auto m = std::make_unique<Marched>();
  m->heater = heater;
  m->branch = m->heater.branch();
  m->surround = surround_of(day);
  m->path = slice_branch(m->branch, slice);
  const Burning burning{usual_wood(), 3.0 * kilogram_per_hour, m->surround.room_water};
  m->fire = burning.at_excess_air(excess_air);
  const GasTable air{moist_air(m->surround.room_water)};
  const GasTable gas = burning.gas(m->fire);
  m->totals = March{m->path, m->surround}.run(m->fire, air, gas, {}, &m->rows);
  return m;
}

TEST(March, rows_add_up_to_the_totals_in_pressure_and_in_heat) {
  const auto m = march({}, a_day(5.0, 18.0), 3.0);
  Pressure buoyancy{};
  Pressure loss{};
  for (const SliceState& row : m->rows) {
    buoyancy += row.buoyancy;
    loss += row.loss;
    EXPECT_NEAR(in(row.loss, pascal), in(row.friction + row.local + row.acceleration, pascal), 1e-12);
  }
  EXPECT_NEAR(in(buoyancy, pascal), in(m->totals.buoyancy, pascal), 1e-9);
  EXPECT_NEAR(in(loss, pascal), in(m->totals.loss(), pascal), 1e-9);
}

TEST(March, heat_released_is_heat_accounted_for_to_a_billionth) {
  // Identity, no source needed: first law over the whole path.
  for (const double excess_air : {1.2, 2.5, 6.0}) {
    const auto m = march({}, a_day(5.0, 18.0), excess_air);
    const Power accounted = m->totals.to_room + m->totals.into_mass + m->totals.to_outdoors + m->totals.stack;
    EXPECT_NEAR(in(accounted, watt) / in(m->fire.added, watt), 1.0, 1e-9) << "excess air " << excess_air;
  }
}

TEST(March, gas_cools_along_a_pipe_as_the_cooling_number_says) {
  // EN 13384-1: T = T_amb + (T_0 - T_amb) exp(-K), K = sum of U P ds / (m cp); relation from memory, the exponential is
  // exact for constant properties. Here over 6 m of bench pipe in which cp changes by 3 %, so 1 % of the fall.
  const auto m = march({}, a_day(5.0, 18.0), 2.5);
  double cooling_number = 0.0;
  Temperature start;
  Temperature end;
  const GasTable gas = Burning{usual_wood(), 3.0 * kilogram_per_hour, m->surround.room_water}.gas(m->fire);
  for (std::size_t i = 0; i < m->rows.size(); ++i) {
    const Stretch& stretch = m->path.stretch_of(m->path.slices[i]);
    if (stretch.place != Place::mass) continue;
    if (cooling_number == 0.0) start = m->rows[i - 1].gas;
    end = m->rows[i].gas;
    cooling_number += in(m->rows[i].overall * m->path.slices[i].surface / (m->fire.flue * gas.specific_heat(end)), Ratio(1.0));
  }
  const double level = in_celsius(m->surround.room);
  EXPECT_GT(cooling_number, 0.3);
  EXPECT_NEAR((in_celsius(end) - level) / (in_celsius(start) - level), std::exp(-cooling_number), 0.01);
}

TEST(March, buoyancy_of_a_hot_stack_is_the_handbook_draft) {
  // ASHRAE Systems and Equipment, chimney chapter: D = 0.03413 B H (1/To - 1/Tm) [Pa, m, K]. The relation takes flue gas
  // and air as one gas; ours differ by the gas constant (wood at an excess air of 6: 0.3 %) and by humidity.
  HandBuiltHeater heater;
  heater.bench = 0.5 * metre;
  heater.stack = 10.0 * metre;
  const Design day = a_day(0.0, 18.0);
  const auto m = march(heater, day, 6.0);
  double ours = 0.0;
  double handbook = 0.0;
  for (std::size_t i = m->rows.size() - 100; i < m->rows.size(); ++i) {
    const Slice& slice = m->path.slices[i];
    const double mean = 0.5 * (in_kelvin(m->rows[i].gas) + in_kelvin(m->rows[i - 1].gas));
    ours += in(m->rows[i].buoyancy, pascal);
    handbook += 0.03413 * 101325.0 * in(slice.rise, metre) * (1.0 / 273.15 - 1.0 / mean);
  }
  EXPECT_NEAR(ours / handbook, 1.0, 0.01);
}

TEST(March, halving_the_slices_hardly_moves_the_answer) {
  const auto coarse = march({}, a_day(5.0, 18.0), 2.5, 50.0 * millimetre);
  const auto fine = march({}, a_day(5.0, 18.0), 2.5, 25.0 * millimetre);
  EXPECT_NEAR(in(coarse->totals.buoyancy, pascal), in(fine->totals.buoyancy, pascal), 0.02);
  EXPECT_NEAR(in_celsius(coarse->totals.exit), in_celsius(fine->totals.exit), 0.2);
}

TEST(March, a_riser_inside_a_barrel_gives_the_barrel_what_it_loses) {
  HandBuiltHeater inside;
  HandBuiltHeater leaky = inside;
  leaky.materials.front() = inside.materials.front();
  for (Material& material : leaky.materials) {
    if (material.id == "fibre") material.conductivity_points[0].conductivity = 2.0 * watt_per_metre_kelvin;
  }
  const auto tight = march(inside, a_day(5.0, 18.0), 2.5);
  const auto open = march(leaky, a_day(5.0, 18.0), 2.5);
  // A riser that leaks heat into the annulus is cooler at its top and leaves the annulus warmer; what leaves the barrel
  // differs far less than what the riser lost.
  const auto at_end_of = [](const Marched& m, std::size_t stretch) {
    for (std::size_t i = 0; i < m.rows.size(); ++i) {
      if (m.path.slices[i].stretch == stretch && m.path.slices[i].closes_stretch) return in_celsius(m.rows[i].gas);
    }
    return std::nan("");
  };
  const double riser_fall = at_end_of(*tight, 2) - at_end_of(*open, 2);
  const double barrel_fall = at_end_of(*tight, 3) - at_end_of(*open, 3);
  EXPECT_GT(riser_fall, 30.0);
  EXPECT_LT(std::abs(barrel_fall), 0.5 * riser_fall);
  EXPECT_NEAR(in(open->totals.to_room + open->totals.into_mass + open->totals.to_outdoors + open->totals.stack, watt),
              in(open->fire.added, watt), 1e-6);
}

TEST(March, the_top_of_a_barrel_is_as_hot_as_builders_measure) {
  // Common practice, no source: gauges on barrel tops read 340 degC to over 480 degC in full burn.
  for (const double excess_air : {1.8, 2.5}) {
    const auto m = march({}, a_day(5.0, 18.0), excess_air);
    for (std::size_t i = 0; i < m->rows.size(); ++i) {
      if (!m->path.slices[i].lid) continue;
      EXPECT_GT(in_celsius(m->rows[i].surface), 320.0);
      EXPECT_LT(in_celsius(m->rows[i].surface), 520.0);
    }
  }
}

TEST(March, gas_in_a_bell_cools_over_its_height_as_measured) {
  // Common practice, no source: one series of measurements in a 210 mm system's bell found 600, 315 and 175 degC at the
  // top, in the middle and at the foot of one metre. Its surface is not told: the steel bell here is 1.0 by 0.8 m, at 5.5 kg/h,
  // with the excess air that leaves 600 degC under its lid. What is checked is the fall below that.
  Branch bell;
  HandBuiltHeater materials;
  Stretch s;
  s.length = 1.0 * metre;
  s.rise = -1.0 * metre;
  s.start_height = 1.2 * metre;
  s.section = Section::rectangle(1.0 * metre, 0.8 * metre);
  s.roughness = 5.0 * millimetre;
  s.wall = {{&materials.get("steel"), 1.2 * millimetre}};
  s.chamber = true;
  s.stands_upright = true;
  s.fire = true;  // sets the gas's temperature by its excess air
  s.lid = Lid{0.8 * square_metre, 0.8 * metre, {}, {}};
  bell.from = {EndKind::room_air, 0, 1.2 * metre};
  bell.to = {EndKind::outdoor_air, 0, 0.2 * metre};
  bell.stretches = {s};
  const Surround surround = surround_of(a_day(5.0, 18.0));
  const SlicedPath path = slice_branch(bell, 50.0 * millimetre);
  const Burning burning{usual_wood(), 5.5 * kilogram_per_hour, surround.room_water};
  const FireState fire = burning.at_excess_air(2.5);
  std::vector<SliceState> rows;
  (void)March{path, surround}.run(fire, GasTable{moist_air(surround.room_water)}, burning.gas(fire), {}, &rows);
  const auto at = [&](double fallen) {
    for (const SliceState& row : rows) {
      if (in(row.s, metre) >= fallen) return in_celsius(row.gas);
    }
    return std::nan("");
  };
  EXPECT_NEAR(at(0.0), 600.0, 40.0);
  EXPECT_NEAR(at(0.5), 315.0, 60.0);
  EXPECT_NEAR(at(1.0), 175.0, 40.0);
}

TEST(March, water_condenses_only_below_the_dew_point_and_only_as_much_as_there_is) {
  HandBuiltHeater heater;
  heater.bench = 40.0 * metre;  // cold long before its end
  const auto m = march(heater, a_day(5.0, 18.0), 1.5);
  MassFlow wet{};
  for (const SliceState& row : m->rows) {
    if (row.condensing > MassFlow{}) {
      EXPECT_LT(in_celsius(row.wall), in_celsius(row.dew_point) + 1e-9);
    }
    wet += row.condensing;
  }
  const GasTable gas = Burning{usual_wood(), 3.0 * kilogram_per_hour, m->surround.room_water}.gas(m->fire);
  const double water_share = 0.018015 * gas.mixture().mole_fraction(Species::water).value() / in(gas.mixture().molar_mass(), kilogram_per_mole);
  EXPECT_GT(wet, MassFlow{});
  EXPECT_LT(in(wet, kilogram_per_second), water_share * in(m->fire.flue, kilogram_per_second));
  EXPECT_LT(in_celsius(m->rows.back().dew_point), in_celsius(m->rows[60].dew_point)) << "gas that has lost water is drier";
}

}  // namespace
}  // namespace fluewright::test
