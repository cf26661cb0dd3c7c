// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Starting aids side by side for one design on one day.

#include "engine/burn/power_cut.hpp"
#include "engine/burn/start_class.hpp"

#include <functional>
#include <optional>
#include <string>
#include <vector>

namespace fluewright {

enum class AidKind { none, kindling, priming, bypass, duct_fan_at_foot, duct_fan_under_cap, fan_on_top, side_inducer };

/// What a device costs, in the user's own money.
struct AidPrice {
  Ratio price = 0.0;
  Time life{};          ///< then it is bought anew; zero: never
  Citation citation;
};

/// The user's figures. Money is a pure number, in whichever currency all of them are in.
struct AidFigures {
  AidPrice bypass;
  AidPrice duct_fan;
  AidPrice top_fan;
  AidPrice side_inducer;
  Ratio starts_per_year = 0.0;
  Ratio price_per_kilowatt_hour = 0.0;
  Ratio price_per_kilogram_of_starter = 0.0;
  Time burns_per_start{};  ///< how long a fan that may not be switched off runs each time
  Citation habits;         ///< where starts, burning time and the two prices are from
};

/// One line to be computed.
struct AidTask {
  AidKind kind = AidKind::none;
  Ratio speed = 1.0;
};
/// All lines, in the order in which people ask for them.
[[nodiscard]] std::vector<AidTask> aid_tasks();

enum class AidState {
  computed,
  no_place,     ///< the drawing has no room for it, or no tee with a shut port to prime in
  not_drawn     ///< a bypass must be drawn before it can be tried
};

/// The reason behind a line's rank.
enum class AidReason {
  no_help_needed,         ///< it draws before anything is lit and takes the whole fire
  small_fire_is_enough,
  holds_after,            ///< after so many minutes it holds by itself
  motor_too_hot,          ///< it would hold, but the gas is too hot for motor or fan
  motor_wet,              ///< it would hold, but water condenses at the motor
  only_while_it_runs,     ///< unsafe
  runs_backward,
  smokes,
  starves,
  cannot_be_tried
};

/// A fan left on for as long as the start lasts.
struct FanLeftOn {
  Temperature hottest_gas;     ///< at the fan
  Temperature hottest_motor;
  Temperature rated_gas;
  Temperature rated_motor;
  bool motor_in_stream = false;
  Time wet{};                  ///< a motor in the stream stands below the dew point
  Temperature last_fire;       ///< of the gas leaving the fire, at the end
  [[nodiscard]] bool too_hot() const { return hottest_gas > rated_gas || hottest_motor > rated_motor; }
};

struct AidRow {
  AidTask task;
  AidState state = AidState::computed;
  bool own = false;                ///< the design has it; else it was put into a copy
  bool starts = false;
  StartTrial trial;                ///< with the least amount that holds, else with the most that was tried
  std::size_t trials = 0;
  std::optional<Time> self_sustaining;  ///< from the beginning; from then on it draws without help
  std::optional<FanLeftOn> left_on;
  std::optional<TemperatureDifference> fire_lost;  ///< how much colder the fire burns when the fan is left on
  std::optional<PowerCutAnswer> power_cut;         ///< fan left on, feed loaded
  Ratio price = 0.0;
  Ratio ten_years = 0.0;
  AidReason reason = AidReason::cannot_be_tried;
  bool cancelled = false;
};

/// A design made ready.
struct AidsQuestion {
  Design design;            ///< its own day is the day
  const Library* library = nullptr;
  AidFigures figures;
  StartRules rules;
};

/// The least of an aid that gets it to hold, of the amounts that are tried: a fan for up to twenty minutes, a bypass
/// likewise, priming with 100 to 800 g over three to ten minutes, little before much.
struct LeastAmount {
  StartTrial trial;  ///< the one that held, else the last
  std::size_t trials = 0;
};
[[nodiscard]] LeastAmount least_amount(const Design& design, const Library& library, const StartAid& aid,
                                       const StartRules& rules, const std::function<bool()>& go_on = {});

/// Computes one line by runs: the least grams and minutes that hold are searched for, up to twenty minutes of a fan and
/// 800 g over ten minutes of priming.
[[nodiscard]] AidRow compute_aid(const AidsQuestion& question, const AidTask& task, const std::function<bool()>& go_on = {});

/// Best first: what starts without anything that can break, then what starts with less smoke and less money; a fan that
/// may not be switched off stands behind every aid that starts, and what cannot be tried stands last.
void rank_aids(std::vector<AidRow>& rows);

}  // namespace fluewright
