// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The least help that gets a cold heater to draw and to go on drawing by itself, at a pair of temperatures.

#include "engine/burn/fan_fitting.hpp"
#include "engine/burn/start_trial.hpp"

#include <array>
#include <functional>
#include <optional>
#include <vector>

namespace fluewright {

enum class StartClass {
  by_itself,     ///< it draws before anything is lit, and takes the whole fire at once
  with_kindling, ///< shut until the match, a small fire first
  with_priming,  ///< the stack primed first
  with_fan,      ///< a fan for the first minutes
  only_with_fan  ///< it will not hold without the fan
};
inline constexpr std::array start_classes{StartClass::by_itself, StartClass::with_kindling, StartClass::with_priming,
                                          StartClass::with_fan, StartClass::only_with_fan};

/// How much of each aid a class allows.
struct StartAllowance {
  Time priming_lasts = 6.0 * minute;       ///< common practice, no source
  Mass priming_starter = 400.0 * gram;     ///< likewise
  Time fan_lasts = 10.0 * minute;          ///< practice allows five to ten minutes
};

/// A design made ready for the question.
struct StartQuestion {
  Design design;
  const Library* library = nullptr;
  StartRules rules;
  StartAllowance allowance;
  std::optional<FanFitted> fan;  ///< its own fan, else a generic inducer beside the stack's foot; nothing: no room for one
  bool can_prime = false;        ///< there is a tee with a shut port on the way up the stack
};

/// Nothing where the drawing has no complete path with a fire. The library must outlive the question.
[[nodiscard]] std::optional<StartQuestion> ask_for_start(const Design& design, const Library& library,
                                                         const StartRules& rules = {});

/// The answer at one pair of temperatures.
struct StartAnswer {
  StartClass start = StartClass::only_with_fan;
  std::vector<StartTrial> trials;  ///< from the least aid on; the last is the one that held, if any
  bool draws_with_fan = false;     ///< only_with_fan: while the fan ran the gas at least went up
  bool certain = true;             ///< every trial ran to its end (false: steps that did not converge)
  bool cancelled = false;
};

/// Tries one aid after the other, from the least on, each by a run from walls soaked at their surroundings, and stops
/// at the first that holds. Aids that the design has no place for are not tried.
[[nodiscard]] StartAnswer classify_start(const StartQuestion& question, Temperature outdoors, Temperature room,
                                         const std::function<bool()>& go_on = {});

/// The piece with the tee in which the stack is primed; nothing where there is none with a shut port on the way up.
[[nodiscard]] std::optional<PieceId> primed_at(const Design& design, const Library& library);

/// Whether a priming fire finds its tee in this design.
[[nodiscard]] bool can_be_primed(const Design& design, const Library& library);

}  // namespace fluewright
