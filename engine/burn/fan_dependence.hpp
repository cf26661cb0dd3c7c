// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Whether the draft of a burn hangs on a fan, and what a power cut does.

#include "engine/burn/burn_run.hpp"

#include <functional>
#include <optional>

namespace fluewright {

/// A house in which the mains are cut while the fan runs over a loaded feed.
struct PowerCutOutcome {
  Pressure suction{};                  ///< in the house, whatever draws it there
  std::optional<Time> reverses_after;  ///< since the cut; nothing: the gas goes on forward
  std::optional<Time> starves_after;   ///< since the cut the oxygen limits the fire; nothing: it does not
  Mass smoke{};                        ///< burnt gas let into the room after the cut
  [[nodiscard]] bool holds() const { return !reverses_after && !starves_after; }
};

struct FanDependence {
  Time cut_at{};      ///< half-way through the longest spell in which a fan runs while something burns
  Time watched{};     ///< so long after the cut, or until nothing burns
  PowerCutOutcome neutral;
  PowerCutOutcome depressurised;
  /// The draft never holds by itself: it lasts as long as the fan does.
  bool only_with_fan = false;
};

/// Whether the plan lets a fan run while something burns.
[[nodiscard]] bool switches_fans(const BurnPlan& plan, const Design& design, const Library& library);

/// Cuts the mains of a plan that runs well with its fan: in a neutral house, and in one under the suction of the design
/// or 5 Pa, whichever is more (chosen). `record` is the plan's own run. Nothing where no fan runs over a fire, or where
/// `go_on` called it off.
[[nodiscard]] std::optional<FanDependence> fan_dependence(const Design& design, const Library& library,
                                                          const BurnPlan& plan, const BurnRecord& record,
                                                          const std::function<bool(Ratio)>& go_on = {});

}  // namespace fluewright
