// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The time line of a burn: what is done when. Times count from the moment the run begins.

#include "engine/layout/design.hpp"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace fluewright {

/// Wood put in at once that burns down evenly.
struct WoodLoad {
  Time at{};
  Mass wood{};    ///< as fired
  Time lasts{};
  friend bool operator==(const WoodLoad&, const WoodLoad&) = default;
};

/// Sticks that slide down by themselves: an even rate for as long as somebody looks after it.
struct SteadyFeed {
  Time from{};
  Time until{};
  MassFlow rate{};
  friend bool operator==(const SteadyFeed&, const SteadyFeed&) = default;
};

/// What a priming fire is made of.
struct Starter {
  std::string_view id;
  std::string_view name;
  SpecificEnergy heating_value;
};
/// Net heating values as bought and dry (from memory: paper and board 16-18, waxed board up to 30, kindling 17 MJ/kg).
inline constexpr std::array starters{
    Starter{"newspaper", "crumpled newspaper", 16.5e6 * joule_per_kilogram},
    Starter{"cardboard", "cardboard", 17.0e6 * joule_per_kilogram},
    Starter{"waxed_cardboard", "waxed cardboard", 26.0e6 * joule_per_kilogram},
    Starter{"kindling", "dry kindling", 17.0e6 * joule_per_kilogram}};
[[nodiscard]] const Starter* starter(std::string_view id);

/// A small fire in the open tee at the stack's foot. Its cap is off while it burns and goes back on at the end.
struct PrimingFire {
  Time at{};
  Time lasts{};
  Mass starter{};
  SpecificEnergy heating_value = starters[2].heating_value;
  std::string kind = std::string{starters[2].id};  ///< for the reader; the heating value counts
  PieceId tee;                                     ///< empty: the lowest tee with a shut port on the way up the stack
  friend bool operator==(const PrimingFire&, const PrimingFire&) = default;
};

/// A damper or bypass is moved: 0 shut, 1 wide open.
struct PieceMove {
  Time at{};
  PieceId piece;
  Ratio open = 1.0;
  friend bool operator==(const PieceMove&, const PieceMove&) = default;
};

/// A fan is switched; until then it runs as the design says. Speed 0 is off, 1 the curve's own; with `runs_for` it stops by itself (a run-down timer).
struct FanSwitch {
  Time at{};
  PieceId fan;
  Ratio speed = 1.0;
  std::optional<Time> runs_for;
  friend bool operator==(const FanSwitch&, const FanSwitch&) = default;
};

/// A range hood or dryer: what all exhausts together draw from the house from now on.
struct HoodSwitch {
  Time at{};
  VolumeFlow exhaust{};
  friend bool operator==(const HoodSwitch&, const HoodSwitch&) = default;
};

/// The mains are gone: fans and hoods stand still, and come back by themselves.
struct PowerCut {
  Time at{};
  Time lasts{};
  friend bool operator==(const PowerCut&, const PowerCut&) = default;
};

/// Outdoors a cosine of the hour.
struct OutdoorDay {
  Temperature mean;
  TemperatureDifference swing{};         ///< from the mean to either end
  Time warmest_at = 15.0 * hour;         ///< by the clock
  friend bool operator==(const OutdoorDay&, const OutdoorDay&) = default;
};
struct OutdoorPoint {
  Time at{};
  Temperature temperature;
  friend bool operator==(const OutdoorPoint&, const OutdoorPoint&) = default;
};
/// Nothing: as the design says. A list is linear between its points; it must reach over the whole run.
using OutdoorCourse = std::variant<std::monostate, Temperature, OutdoorDay, std::vector<OutdoorPoint>>;

struct BurnPlan {
  std::string name;
  Time length = 12.0 * hour;
  Time begins_at = 17.0 * hour;  ///< by the clock, for the day's curve
  std::vector<WoodLoad> loads;
  std::vector<SteadyFeed> feeds;
  std::vector<PrimingFire> priming;
  std::vector<PieceMove> moves;
  std::vector<FanSwitch> fans;
  std::vector<HoodSwitch> hoods;
  std::vector<PowerCut> cuts;
  OutdoorCourse outdoors;
  friend bool operator==(const BurnPlan&, const BurnPlan&) = default;
};

// What is wrong with a plan. Nothing is guessed: a run needs a plan without faults.

enum class PlanList { plan, loads, feeds, priming, moves, fans, hoods, cuts, outdoors };
enum class PlanFaultCode {
  negative,        ///< a time, mass, rate or share below zero
  nothing,         ///< zero or not a number where something is needed
  beyond_the_run,  ///< begins after the run's end or lasts beyond it
  out_of_order,    ///< begins before the entry before it
  overlapping,     ///< begins before the entry before it has ended
  unknown_piece,
  wrong_piece,     ///< the piece cannot do that: a fan switched that is no fan
  too_much,        ///< a share above 1, a temperature no weather has
  too_short        ///< a course of temperatures that does not reach over the run
};
using PlanValue = std::variant<std::monostate, Time, Mass, MassFlow, VolumeFlow, Ratio, Temperature, SpecificEnergy, PieceId>;
struct PlanFault {
  PlanFaultCode code{};
  PlanList list{};
  std::size_t index = 0;   ///< in that list, from 0
  std::string field;       ///< engine name: "at", "lasts", ...
  PlanValue value;
  PlanValue lowest;        ///< what would be allowed; nothing where there is no such end
  PlanValue highest;
  bool above = false;      ///< more than the lowest, which is not allowed itself
};

/// Everything wrong with a plan for that design, in the order of PlanList. Never throws.
[[nodiscard]] std::vector<PlanFault> check_plan(const BurnPlan& plan, const Design& design, const Library& library);

/// A plan ready to use.
struct PlanPreset {
  std::string_view id;
  std::string_view name;
  std::string_view story;
};
inline constexpr std::array plan_presets{
    PlanPreset{"typical_evening", "Typical evening", "Kindling, then four loads one after the other; the rest of the night it cools."},
    PlanPreset{"spring_start", "Spring start", "The house four degrees colder than outdoors, no aid."},
    PlanPreset{"primed_start", "Start with priming", "The same, with a priming fire at the stack's foot first."},
    PlanPreset{"top_fan_start", "Start with a fan on top", "The same, with the fan on top running for the first minutes."},
    PlanPreset{"side_inducer_start", "Start with a side inducer", "The same, with the inducer beside the stack running."},
    PlanPreset{"three_day_charge", "Three days of charging", "A fire every morning and evening while outdoors follows the hour."}};

/// The preset for a design; nothing where there is no such preset or the design lacks the fan it needs.
[[nodiscard]] std::optional<BurnPlan> preset_plan(std::string_view id, const Design& design, const Library& library);

}  // namespace fluewright
