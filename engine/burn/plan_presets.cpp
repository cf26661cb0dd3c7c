// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/burn_plan.hpp"

#include <algorithm>

namespace fluewright {
namespace {

/// Ten minutes of kindling at a good half of the full rate (common practice, no source).
constexpr Time kindling_lasts = 10.0 * minute;
constexpr double kindling_share = 0.6;
constexpr Time load_lasts = 45.0 * minute;
/// How much colder than outdoors the house of the spring presets is (chosen).
constexpr TemperatureDifference colder_house = 4.0 * kelvin;
/// Practice allows five to ten minutes of fan.
constexpr Time fan_minutes = 8.0 * minute;

/// Kindling and so many loads; when it is burnt down.
Time fire(BurnPlan& plan, const Design& design, Time at, int loads) {
  const MassFlow rate = design.fire.burn_rate;
  plan.loads.push_back({at, kindling_share * rate * kindling_lasts, kindling_lasts});
  Time now = at + kindling_lasts;
  for (int i = 0; i < loads; ++i) {
    plan.loads.push_back({now, rate * load_lasts, load_lasts});
    now += load_lasts;
  }
  return now;
}

/// Every fan of the design off from the beginning.
void still_fans(BurnPlan& plan, const Design& design, const Library& library) {
  for (const Piece& piece : design.pieces) {
    const PieceType* type = library.piece_type(piece.type);
    if (type != nullptr && (type->shape == "fan" || type->shape == "fan_head")) plan.fans.push_back({{}, piece.id, 0.0, {}});
  }
}

BurnPlan spring(const Design& design, const Library& library, std::string_view name, Time lit) {
  BurnPlan plan;
  plan.name = std::string{name};
  plan.length = 4.0 * hour;
  plan.outdoors = design.room.temperature + colder_house;
  still_fans(plan, design, library);
  fire(plan, design, lit, 3);
  return plan;
}

}  // namespace

std::optional<BurnPlan> preset_plan(std::string_view id, const Design& design, const Library& library) {
  const auto preset = std::find_if(plan_presets.begin(), plan_presets.end(), [&](const PlanPreset& p) { return p.id == id; });
  if (preset == plan_presets.end()) return std::nullopt;
  if (id == "spring_start") return spring(design, library, preset->name, {});
  if (id == "primed_start") {
    PrimingFire priming;
    priming.lasts = 6.0 * minute;
    priming.starter = 400.0 * gram;
    BurnPlan plan = spring(design, library, preset->name, priming.lasts);
    plan.priming.push_back(priming);
    return plan;
  }
  if (id == "top_fan_start" || id == "side_inducer_start") {
    const std::string_view wanted = id == "top_fan_start" ? "fan_top" : "fan_side";
    const auto fan = std::find_if(design.pieces.begin(), design.pieces.end(), [&](const Piece& p) { return p.type == wanted; });
    if (fan == design.pieces.end()) return std::nullopt;
    BurnPlan plan = spring(design, library, preset->name, 1.0 * minute);
    for (FanSwitch& f : plan.fans) {
      if (f.fan == fan->id) f = {{}, fan->id, 1.0, fan_minutes};
    }
    return plan;
  }
  BurnPlan plan;
  plan.name = std::string{preset->name};
  if (id == "typical_evening") {
    fire(plan, design, {}, 4);
    plan.length = 12.0 * hour;
  } else {
    plan.length = 72.0 * hour;
    plan.begins_at = 7.0 * hour;
    plan.outdoors = OutdoorDay{design.site.outdoor_temperature, 4.0 * kelvin, 15.0 * hour};
    for (int day = 0; day < 3; ++day) {
      fire(plan, design, (24.0 * day) * hour, 1);
      fire(plan, design, (24.0 * day + 10.0) * hour, 5);
    }
  }
  return plan;
}

}  // namespace fluewright
