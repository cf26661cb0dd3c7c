// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Whether the draft of a burn hangs on a fan, and what a power cut does.

#include "engine/burn/power_cut.hpp"

#include <functional>
#include <optional>

namespace fluewright {

struct FanDependence {
  Time cut_at{};      ///< half-way through the longest spell in which a fan runs while something burns
  Time watched{};     ///< so long after the cut, or until nothing burns
  PowerCutAnswer cut; ///< of this time line, by the same rules as a standard start's
  /// The draft of this time line never holds by itself: it lasts as long as the fan does.
  bool only_with_fan = false;
  [[nodiscard]] bool holds() const { return cut.neutral.holds && cut.depressurised.holds; }
};

/// Whether a fan runs while something burns: switched on by the plan, or as the design says.
[[nodiscard]] bool switches_fans(const BurnPlan& plan, const Design& design, const Library& library);

/// Cuts the mains of a plan that runs well with its fan: in a neutral house, and in one under the suction of the design
/// or 5 Pa, whichever is more (chosen). `record` is the plan's own run. Nothing where no fan runs over a fire, or where
/// `go_on` called it off.
[[nodiscard]] std::optional<FanDependence> fan_dependence(const Design& design, const Library& library,
                                                          const BurnPlan& plan, const BurnRecord& record,
                                                          const std::function<bool(Ratio)>& go_on = {});

}  // namespace fluewright
