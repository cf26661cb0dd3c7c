// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_stepper.hpp"
#include "engine/burn/wall_nodes.hpp"
#include "engine/solve/design_flow.hpp"

#include <functional>
#include <optional>
#include <vector>

namespace fluewright {

/// The design-flow check at the young ages of the bench, worked out in time instead of by the quick estimate: from walls
/// at rest the design flow is kept up, the fire at its wanted rate and excess air, and after ten minutes and after an
/// hour the pressures are added up as check_design_flow() does. In the order cold bench, one hour; `quick_estimate` is
/// false in both, `fans` is left empty. Nothing where the steps would not converge.
///
/// Slices of `grid`, whatever the question's own path has; the two agree within 0.1 Pa (checked).
[[nodiscard]] std::optional<std::vector<DesignFlow>> young_design_flows(const DesignFlowQuestion& question,
                                                                        Ratio outdoor_humidity, const BurnGrid& grid = {},
                                                                        const BurnAccuracy& accuracy = {},
                                                                        const std::function<bool()>& go_on = {});

/// The same for a whole design, with or without branches: the fire's own branch carries the flow that it needs, every
/// other finds its own. Nothing where the path is not complete, where the steps would not converge, or where `go_on`,
/// asked at every step, called it off.
[[nodiscard]] std::optional<std::vector<DesignFlow>> young_design_flows(const Design& design, const Library& library,
                                                                        const BurnGrid& grid = {},
                                                                        const BurnAccuracy& accuracy = {},
                                                                        const std::function<bool()>& go_on = {});

}  // namespace fluewright
