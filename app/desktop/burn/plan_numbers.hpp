// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The numbers of a time line as people read and type them: times of three kinds, wood by weight, and what the other
// fields know already.

#include "app/shared/units.hpp"
#include "engine/burn/burn_plan.hpp"

#include <optional>
#include <string>
#include <string_view>
#include <variant>

namespace fluewright {

enum class PlanMeaning {
  moment,         ///< since the run's beginning: "1:30"
  duration,       ///< "45 min", "1 h 30 min"
  clock,          ///< the hour of the day: "17:00"
  wood,           ///< kg | lb
  starter,        ///< g | oz
  rate,           ///< kg/h | lb/h
  exhaust,        ///< m3/h | cfm
  share,          ///< %
  temperature,
  step,           ///< K | degF
  heating_value   ///< MJ/kg | Btu/lb
};

using PlanNumber = std::variant<Time, Mass, MassFlow, VolumeFlow, Ratio, Temperature, TemperatureDifference, SpecificEnergy>;

[[nodiscard]] Shown show(const PlanNumber& number, PlanMeaning meaning, UnitSystem units);
/// Unit optional, comma or dot, either system's units: "1:30", "90", "90 min", "1 h 30 min"; "4.5 kg", "10 lb".
[[nodiscard]] Parsed<PlanNumber> parse_plan_number(std::string_view typed, PlanMeaning meaning, UnitSystem units);
/// To the next whole step of the scale that is shown.
[[nodiscard]] PlanNumber stepped(const PlanNumber& number, PlanMeaning meaning, UnitSystem units, int steps);
[[nodiscard]] bool same(const PlanNumber& a, const PlanNumber& b);

/// "1:30", with seconds where they are not naught: "1:30:15".
[[nodiscard]] std::string moment_text(Time at);
/// "45 min", "1 h 30 min", "30 s".
[[nodiscard]] std::string duration_text(Time lasts);
/// The clock's hour at a moment of the run: "18:30"; from the second day on with its number: "day 2, 18:30".
[[nodiscard]] std::string clock_text(const BurnPlan& plan, Time at);
[[nodiscard]] std::string wood_text(Mass wood, UnitSystem units);
/// Smoke, water, starter: grams or ounces.
[[nodiscard]] std::string grams_text(Mass mass, UnitSystem units);

}  // namespace fluewright
