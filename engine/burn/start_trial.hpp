// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// One start tried out: a cold heater, one aid, and whether the draft then holds by itself.

#include "engine/burn/burn_run.hpp"

#include <functional>
#include <optional>

namespace fluewright {

/// What helps a cold heater to draw.
enum class StartAidKind {
  none,      ///< the heater stands open until its draft has set in, then the whole fire at once
  kindling,  ///< shut until the match, so that the air in it stands still; then a small fire first
  priming,   ///< a small fire in the open tee at the stack's foot, then kindling
  bypass,    ///< a bypass open, with kindling
  fan        ///< a fan running, with kindling, then switched off
};

/// An aid and how much of it. Every aid but none goes with kindling.
struct StartAid {
  StartAidKind kind = StartAidKind::kindling;
  Time lasts{};             ///< priming, bypass, fan
  Mass starter{};           ///< priming
  SpecificEnergy heating_value = starters[2].heating_value;
  PieceId piece;            ///< the fan or bypass
  Ratio speed = 1.0;        ///< of the fan
};

/// How a start is made and when it counts.
struct StartRules {
  Ratio kindling_share = 0.6;               ///< of the full burn rate (common practice, no source)
  Time kindling_lasts = 10.0 * minute;      ///< likewise
  Time open_before_match = 2.0 * minute;    ///< without help the heater stands open that long before it is lit (chosen)
  Time fan_before_match = 1.0 * minute;     ///< the fan runs that long before anything is lit
  Time holds_for = 60.0 * minute;           ///< forward flow for so long after the last aid
  Ratio least_burnt = 0.85;                 ///< of what was put in, over the whole start
  Ratio starved_under = 1.5;                ///< excess-air ratio: what burns with less does not count as burnt (common practice)
  Mass puff = 5.0 * gram;                   ///< less burnt gas than this in the room is a match's smoke, not the fire's (chosen)
  BurnGrid grid = BurnGrid::coarse();
  BurnAccuracy accuracy;
};

/// Why a start failed.
enum class StartFault {
  none,
  ran_backward,    ///< gas ran from the cap to the feed after the aid had ended
  smoke,           ///< burnt gas came into the room
  starved,         ///< too little of the wood burnt for want of air
  not_computed     ///< the drawing has no path to run, the aid finds no place, or the steps did not converge
};

/// How a start came out.
struct StartTrial {
  StartAid aid;
  bool holds = false;
  bool cancelled = false;
  StartFault fault = StartFault::none;
  Time decided_at{};               ///< from the beginning, when the fault was plain; the end of the run where it holds
  Time aid_ends{};
  std::optional<Time> draws_from;  ///< since then the gas has run forward
  bool forward_at_aid_end = false; ///< the aid at least got it to draw
  Mass smoke{};                    ///< until decided
  Mass wanted{};                   ///< put in over the whole start
  Mass burnt{};                    ///< until decided
  Mass starving{};                 ///< of it, with less air than `starved_under`
  Temperature last_fire;           ///< at the end: as the gas leaves the fire
};

/// The time line of a start, from walls at rest. Fans that are not the aid stand still.
[[nodiscard]] BurnPlan start_plan(const Design& design, const Library& library, const StartAid& aid, const StartRules& rules);

/// Tries it, and stops as soon as the outcome is plain. It holds when for `holds_for` after the last aid the gas runs
/// forward, no more than a puff of smoke comes into the room and `least_burnt` of the wood burns with air enough.
/// `go_on` is asked after every step; false calls the trial off.
[[nodiscard]] StartTrial try_start(const Design& design, const Library& library, const StartAid& aid,
                                   const StartRules& rules = {}, const std::function<bool()>& go_on = {});

}  // namespace fluewright
