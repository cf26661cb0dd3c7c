// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/design_flow.hpp"

namespace fluewright {

WallAge wall_age(BenchAge age) {
  switch (age) {
    case BenchAge::cold_bench: return 10.0 * minute;
    case BenchAge::one_hour: return 1.0 * hour;
    case BenchAge::charged: break;
  }
  return std::nullopt;
}

namespace {

Pressure margin_of(const DesignFlowQuestion& q, const MarchTotals& totals) {
  const Ratio on_acceleration = totals.acceleration > Pressure{} ? q.flow_safety : Ratio(1.0);
  return q.surround->gauge_at(q.path->branch->from) + totals.buoyancy + totals.fan -
         q.flow_safety * (totals.friction + totals.local) - on_acceleration * totals.acceleration - q.wind_allowance -
         q.surround->cap_gauge;
}

}  // namespace

DesignFlow check_design_flow(const DesignFlowQuestion& q, BenchAge age, std::vector<SliceState>* rows) {
  const bool room_air = q.path->branch->from.kind == EndKind::room_air;
  const Ratio water = room_air ? q.surround->room_water : q.surround->outdoor_water;
  const Burning burning{*q.fuel, q.burn_rate, water};
  const FireState fire = burning.at_excess_air(q.excess_air_ratio);
  const GasTable air{moist_air(water)};
  const GasTable gas = burning.gas(fire);
  const MarchTotals totals = March{*q.path, *q.surround}.run(fire, air, gas, wall_age(age), rows);

  DesignFlow d;
  d.age = age;
  d.quick_estimate = wall_age(age).has_value();
  d.buoyancy = totals.buoyancy;
  d.resistance = totals.loss();
  d.room_gauge = q.surround->gauge_at(q.path->branch->from);
  d.cap_gauge = q.surround->cap_gauge;
  d.wind_allowance = q.wind_allowance;
  d.flue_gas = fire.flue;
  d.exit_temperature = totals.exit;
  d.fire_temperature = totals.fire;
  d.fans = totals.fans;
  d.margin = margin_of(q, totals);
  if (q.with_fans != nullptr) {
    d.margin_with_fans = margin_of(q, March{*q.with_fans, *q.surround}.run(fire, air, gas, wall_age(age)));
  }
  return d;
}

Pressure standing_buoyancy(const SlicedPath& path, const Surround& surround) {
  Pressure sum{};
  for (const Slice& slice : path.slices) {
    const Stretch& stretch = path.stretch_of(slice);
    const Temperature level =
        stretch.place == Place::ground ? surround.ground : surround.beyond(stretch.place, stretch.embedding);
    const Density gas = surround.room_air * (surround.room.above_zero() / level.above_zero());
    sum += (surround.outdoor_air - gas) * standard_gravity * slice.rise;
  }
  return sum;
}

Pressure standing_draft(const SlicedPath& path, const Surround& surround) {
  return surround.gauge_at(path.branch->from) - surround.cap_gauge + standing_buoyancy(path, surround);
}

}  // namespace fluewright
