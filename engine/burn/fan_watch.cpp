// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/fan_watch.hpp"

#include "engine/flow/fan.hpp"
#include "engine/fuel/combustion.hpp"
#include "engine/moisture/saturation.hpp"
#include "engine/solve/surround.hpp"

#include <algorithm>

namespace fluewright {
namespace {

/// The air a motor outside the stream stands in.
Temperature beside(const Design& design, const Library& library, const Piece& fan, Temperature outdoors) {
  const PieceView view{design, library, fan, *library.piece_type(fan.type)};
  const Temperature room = design.room.temperature;
  if (!view.has("place")) return room;
  const std::string& place = view.choice("place");
  return place == "outdoors" ? outdoors : place == "attic" ? midway(room, outdoors) : room;
}

class Watch {
 public:
  Watch(const Design& design, const Library& library, const PieceId& fan, FanLeftOn& seen)
      : design_{&design}, library_{&library}, fan_{design.piece(fan)}, sheet_{*sheet_of(design, library, fan)}, seen_{&seen},
        surround_{surround_of(design)},
        fuel_{library.wood(design.fire.wood)->analysis, design.fire.moisture, design.fire.unburned_share} {
    seen.rated_gas = sheet_.rated_gas;
    seen.rated_motor = sheet_.rated_motor;
    seen.motor_in_stream = sheet_.motor_in_stream;
  }

  bool see(const BurnRow& row) {
    const Time passed = row.at - before_;
    before_ = row.at;
    if (row.burning > MassFlow{}) seen_->last_fire = row.fire;
    for (const auto& [piece, gas] : row.motors) {
      if (&design_->pieces[piece] != fan_) continue;
      const Temperature motor = motor_temperature(sheet_, gas, beside(*design_, *library_, *fan_, row.outdoors));
      seen_->hottest_gas = std::max(seen_->hottest_gas, gas);
      seen_->hottest_motor = std::max(seen_->hottest_motor, motor);
      if (sheet_.motor_in_stream && row.forward && row.burning > MassFlow{} && motor < dew_of(row)) seen_->wet += passed;
    }
    return true;
  }

 private:
  [[nodiscard]] Temperature dew_of(const BurnRow& row) const {
    const FlueGas gas = flue_gas(fuel_, row.excess_air_ratio, surround_.room_water);
    return dew_point(gas.mixture.mole_fraction(Species::water) * surround_.absolute);
  }

  const Design* design_;
  const Library* library_;
  const Piece* fan_;
  FanSheet sheet_;
  FanLeftOn* seen_;
  Surround surround_;
  WoodFuel fuel_;
  Time before_{};
};

}  // namespace

std::optional<FanLeftOn> watch_fan_left_on(const Design& design, const Library& library, const StartAid& aid,
                                           const StartRules& rules, const std::function<bool()>& go_on) {
  BurnPlan plan = start_plan(design, library, aid, rules);
  for (FanSwitch& fan : plan.fans) {
    if (fan.fan == aid.piece) fan.runs_for.reset();
  }
  FanLeftOn seen;
  Watch watch{design, library, aid.piece, seen};
  BurnOptions options;
  options.grid = rules.grid;
  options.accuracy = rules.accuracy;
  options.keep_slices = false;
  options.watch = [&watch](const BurnRow& row) { return watch.see(row); };
  if (go_on) options.go_on = [&go_on](Ratio) { return go_on(); };
  if (run_burn(design, library, plan, options).end != BurnEnd::done) return std::nullopt;
  return seen;
}

}  // namespace fluewright
