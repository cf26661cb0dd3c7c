// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/fan_watch.hpp"

#include "engine/fuel/combustion.hpp"
#include "engine/moisture/saturation.hpp"
#include "engine/solve/surround.hpp"

#include <algorithm>

namespace fluewright {
namespace {

/// Reads a record of a fan left on.
class Reading {
 public:
  Reading(const Design& design, const Library& library, const PieceId& fan)
      : piece_{static_cast<std::size_t>(design.piece(fan) - design.pieces.data())}, sheet_{*sheet_of(design, library, fan)},
        surround_{surround_of(design)},
        fuel_{library.wood(design.fire.wood)->analysis, design.fire.moisture, design.fire.unburned_share} {}

  [[nodiscard]] FanLeftOn of(const BurnRecord& record) const {
    FanLeftOn seen;
    seen.rated_gas = sheet_.rated_gas;
    seen.rated_motor = sheet_.rated_motor;
    seen.motor_in_stream = sheet_.motor_in_stream;
    Time before{};
    for (const BurnRow& row : record.rows) {
      const bool burns = row.burning > MassFlow{};
      if (burns) seen.last_fire = row.fire;
      for (std::size_t i = 0; i < record.slices.size(); ++i) {
        if (record.slices[i].piece == piece_) seen.hottest_gas = std::max(seen.hottest_gas, row.gas[i]);
      }
      for (const auto& [piece, motor] : row.motors) {
        if (piece != piece_) continue;
        seen.hottest_motor = std::max(seen.hottest_motor, motor);
        if (sheet_.motor_in_stream && burns && row.forward && motor < dew_of(row)) seen.wet += row.at - before;
      }
      before = row.at;
    }
    return seen;
  }

 private:
  [[nodiscard]] Temperature dew_of(const BurnRow& row) const {
    const FlueGas gas = flue_gas(fuel_, row.excess_air_ratio, surround_.room_water);
    return dew_point(gas.mixture.mole_fraction(Species::water) * surround_.absolute);
  }

  std::size_t piece_;
  FanSheet sheet_;
  Surround surround_;
  WoodFuel fuel_;
};

}  // namespace

std::optional<FanLeftOn> watch_fan_left_on(const Design& design, const Library& library, const StartAid& aid,
                                           const StartRules& rules, const std::function<bool()>& go_on) {
  BurnPlan plan = start_plan(design, library, aid, rules);
  for (FanSwitch& fan : plan.fans) {
    if (fan.fan == aid.piece) fan.runs_for.reset();
  }
  BurnOptions options;
  options.grid = rules.grid;
  options.accuracy = rules.accuracy;
  if (go_on) options.go_on = [&go_on](Ratio) { return go_on(); };
  const BurnRecord record = run_burn(design, library, plan, options);
  if (record.end != BurnEnd::done) return std::nullopt;
  return Reading{design, library, aid.piece}.of(record);
}

}  // namespace fluewright
