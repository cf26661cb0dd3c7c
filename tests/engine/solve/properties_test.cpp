// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/solve/hand_built_heater.hpp"

#include <gtest/gtest.h>
#include <rapidcheck.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace fluewright::test {
namespace {

double between(double low, double high) { return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0; }

HandBuiltHeater any_heater() {
  HandBuiltHeater h;
  h.bore = between(100.0, 250.0) * millimetre;
  h.bench = between(0.5, 25.0) * metre;
  h.stack = between(2.0, 12.0) * metre;
  h.riser = between(0.6, 1.8) * metre;
  h.barrel = h.bore + between(250.0, 500.0) * millimetre;
  h.free_share = between(0.1, 0.9);
  h.with_riser_in_barrel = *rc::gen::arbitrary<bool>();
  return h;
}

Design any_day() {
  Design day = a_day(between(-25.0, 30.0), between(0.0, 26.0));
  day.site.altitude = between(0.0, 3000.0) * metre;
  day.room.extra_depressurisation = between(0.0, 15.0) * pascal;
  day.site.wind_speed = between(0.0, 10.0) * metre_per_second;
  return day;
}

MarchTotals totals_at(const HandBuiltHeater& heater, const Design& day, double excess_air, WallAge age = {}) {
  const Branch branch = heater.branch();
  const Surround surround = surround_of(day);
  const SlicedPath path = slice_branch(branch, 50.0 * millimetre);
  const Burning burning{usual_wood(), 3.0 * kilogram_per_hour, surround.room_water};
  const FireState fire = burning.at_excess_air(excess_air);
  return March{path, surround}.run(fire, GasTable{moist_air(surround.room_water)}, burning.gas(fire), age);
}

RC_GTEST_PROP(AnyHeater, conserves_energy_and_balances_pressure_at_every_state_it_settles_in, ()) {
  const HandBuiltHeater heater = any_heater();
  const Design day = any_day();
  const Branch branch = heater.branch();
  const Surround surround = surround_of(day);
  const SlicedPath fine = slice_branch(branch, 100.0 * millimetre);
  const SlicedPath coarse = slice_branch(branch, 500.0 * millimetre);
  const FreeRun free{fine, coarse, surround, usual_wood(), between(1.0, 8.0) * kilogram_per_hour};
  const auto points = free.points();
  RC_ASSERT(!points.empty());  // air always settles somewhere
  for (const OperatingPoint& p : points) {
    RC_ASSERT(p.heat.closure.value() < 1e-9);
    RC_ASSERT(std::abs(in(p.residual, pascal)) < 1e-6);
    RC_ASSERT(std::isfinite(in_kelvin(p.exit_temperature)));
  }
}

RC_GTEST_PROP(AnyHeater, cools_no_less_with_more_bench_at_the_same_flow, ()) {
  HandBuiltHeater heater = any_heater();
  const Design day = any_day();
  const Temperature before = totals_at(heater, day, 2.5).exit;
  heater.bench += between(0.1, 5.0) * metre;
  // With the gas already as cold as the room the two may be equal but for the last rounds of the wall temperatures.
  RC_ASSERT(in_kelvin(totals_at(heater, day, 2.5).exit) <= in_kelvin(before) + 0.05);
}

RC_GTEST_PROP(AnyHeater, leaves_the_gas_no_warmer_from_colder_walls, ()) {
  const HandBuiltHeater heater = any_heater();
  const Design day = any_day();
  const double charged = in_kelvin(totals_at(heater, day, 2.5).exit);
  const double hour = in_kelvin(totals_at(heater, day, 2.5, 60.0 * minute).exit);
  const double cold = in_kelvin(totals_at(heater, day, 2.5, 10.0 * minute).exit);
  RC_ASSERT(cold <= hour + 0.5);
  RC_ASSERT(hour <= charged + 0.5);
}

RC_GTEST_PROP(AnyStack, gains_no_less_buoyancy_when_it_grows_at_fixed_temperatures, ()) {
  // Fixed temperatures: a slice's buoyancy is (rho_out - rho_gas) g rise, so a longer stack of gas that is lighter than
  // the air adds, whatever its length.
  const Design day = any_day();
  const Surround surround = surround_of(day);
  const GasTable gas{moist_air(0.08)};
  const Temperature hot = surround.outdoor + between(5.0, 300.0) * kelvin;
  const Density inside = gas.density(hot, surround.absolute);
  const Length height = between(0.5, 12.0) * metre;
  const Length more = between(0.0, 5.0) * metre;
  const auto draft = [&](Length h) { return Pressure((surround.outdoor_air - inside) * standard_gravity * h); };
  RC_ASSERT(draft(height + more) >= draft(height));
}

}  // namespace
}  // namespace fluewright::test
