// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What happens when the mains fail while a fan runs and the feed is loaded. No option of a program leaves this out.

#include "engine/burn/burn_run.hpp"

#include <functional>
#include <optional>

namespace fluewright {

/// How the power-cut run is made.
struct PowerCutRules {
  Time fan_before_match = 1.0 * minute;
  Ratio kindling_share = 0.6;           ///< of the full burn rate (common practice, no source)
  Time kindling_lasts = 10.0 * minute;  ///< likewise
  Time cut_after = 60.0 * minute;       ///< from the beginning, walls cold then
  Time load_lasts = 45.0 * minute;      ///< what is in the feed at the cut would burn so long at the full rate (common practice)
  Ratio starved_below = 0.85;           ///< of the wanted burn rate
  Ratio starved_under = 1.5;            ///< excess-air ratio under which the steady answer calls a fire starved too
  Mass puff = 5.0 * gram;               ///< of burnt gas in the room that still counts as none (chosen)
  /// Suction of the depressurised house: the level at which caution is usual (common practice). It stays when the mains
  /// fail, as a leaky upper storey's or another fire's does; hoods and dryers stop with the fan.
  Pressure suction = 5.0 * pascal;
  BurnGrid grid = BurnGrid::coarse();
  BurnAccuracy accuracy;
};

/// One such run.
struct PowerCutRun {
  Pressure suction{};              ///< of the house, on top of its own stack effect
  bool drew_before = false;        ///< with the fan on: forward, and the wanted fire burning
  bool holds = false;              ///< after the cut: forward to the load's end, not starved, no smoke
  std::optional<Time> starves;     ///< after the cut; from then on it burns less than `starved_below` of the wanted, or with too little air
  std::optional<Time> reverses;    ///< after the cut; the gas turns
  Mass smoke{};                    ///< burnt gas into the room from the cut until the load would have burnt out
  Temperature fire_before;         ///< as the gas leaves the fire, just before the cut
};

/// The two houses side by side.
struct PowerCutAnswer {
  PowerCutRun neutral;
  PowerCutRun depressurised;
  /// The draft holds only with the fan on: unsafe, whatever else is right.
  [[nodiscard]] bool depends_on_fan() const { return !neutral.holds; }
};

/// Runs `fan` at `speed` from cold walls, lets the fire burn, cuts the power. Other fans stand still. Nothing where the
/// path cannot be run or the run is called off.
[[nodiscard]] std::optional<PowerCutAnswer> run_power_cut(const Design& design, const Library& library, const PieceId& fan,
                                                          Ratio speed = 1.0, const PowerCutRules& rules = {},
                                                          const std::function<bool()>& go_on = {});

/// The same for the design's own fans at their own speeds; nothing where none runs.
[[nodiscard]] std::optional<PowerCutAnswer> run_power_cut(const Design& design, const Library& library,
                                                          const PowerCutRules& rules = {},
                                                          const std::function<bool()>& go_on = {});

}  // namespace fluewright
