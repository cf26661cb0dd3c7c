// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/burning.hpp"
#include "engine/solve/march.hpp"

#include <vector>

namespace fluewright {

/// The age as time since lighting; nothing when charged.
[[nodiscard]] WallAge wall_age(BenchAge age);

/// Everything the design-flow check needs besides the age.
struct DesignFlowQuestion {
  const SlicedPath* path = nullptr;  ///< with every fan standing still
  const Surround* surround = nullptr;
  const WoodFuel* fuel = nullptr;
  MassFlow burn_rate{};
  Ratio excess_air_ratio = 2.5;
  Ratio flow_safety = 1.5;
  Pressure wind_allowance{};
  const SlicedPath* with_fans = nullptr;  ///< the same path with fans running, where there are any
};

/// margin = inlet gauge + buoyancy - S_E (friction + fittings) - acceleration - wind allowance - cap gauge, and with fans
/// running what they add.
/// The safety factor applies to acceleration only where it is a loss (EN 13384-1: S_EG = S_E if P_G >= 0, else 1; from
/// memory). With `rows` the profile of that flow.
[[nodiscard]] DesignFlow check_design_flow(const DesignFlowQuestion& question, BenchAge age,
                                           std::vector<SliceState>* rows = nullptr);

/// Buoyancy along a path whose gas is in every slice as warm as what surrounds it.
[[nodiscard]] Pressure standing_buoyancy(const SlicedPath& path, const Surround& surround);

/// Draft before anything burns, the gas in every slice as warm as what surrounds it: inlet gauge + buoyancy - cap gauge.
/// Negative: left alone, air comes down the stack and a fire starts backwards.
[[nodiscard]] Pressure standing_draft(const SlicedPath& path, const Surround& surround);

}  // namespace fluewright
