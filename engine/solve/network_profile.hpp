// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/node_solver.hpp"

#include <vector>

namespace fluewright {

/// One branch of a solved network, slice by slice in the order in which the branch is written, whichever way the gas
/// runs; nothing for an opening.
struct BranchProfile {
  std::vector<SliceState> rows;
  std::vector<SliceVisit> visits;  ///< only where they were asked for
};

/// Every branch, walked in the order in which the gas passes them: water that has condensed in one is gone for the next.
[[nodiscard]] std::vector<BranchProfile> branch_profiles(const NetworkMarch& march, const NetworkSolution& solution,
                                                         bool with_visits = false);

/// The main path's rows one after another, with distances from its inlet. What the junctions cost along it is among the
/// local losses of the first slice behind each, so that pressures add up from the inlet to the cap.
[[nodiscard]] std::vector<SliceState> main_path_rows(const NetworkMarch& march, const NetworkSolution& solution,
                                                     const std::vector<BranchProfile>& branches);

/// Total pressure at an end of a branch.
[[nodiscard]] Pressure total_at(const NetworkMarch& march, const NetworkSolution& solution, const BranchEnd& end);

/// What the main path's n-th junction costs along it (n from 1): total pressure where one branch ends less where the
/// next begins.
[[nodiscard]] Pressure junction_loss(const NetworkMarch& march, const NetworkSolution& solution, std::size_t n);

}  // namespace fluewright
