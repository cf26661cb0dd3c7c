// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/assessment.hpp"

#include <vector>

namespace fluewright {

/// The same answer with the checks of some ages replaced by others, as followed in time: worst margin, verdict and what is
/// found of a fan's part in it follow. The new ones keep the fan states of those they replace.
[[nodiscard]] Assessment with_design_flows(Assessment answer, const std::vector<DesignFlow>& flows);

/// What the margins say together: the least of them, whose it is, and the verdict.
void judge_margins(Assessment& assessment);

/// Says where the draft depends on a fan, and takes back what an earlier answer said of it.
void say_dependence(Assessment& assessment);

}  // namespace fluewright
