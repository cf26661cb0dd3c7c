// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/design_flow.hpp"
#include "engine/solve/node_solver.hpp"

#include <optional>

namespace fluewright {

/// The design-flow check of a path that branches, and the flows it was made with.
struct NetworkDesignFlow {
  DesignFlow check;
  NetworkSolution solution;
};

/// The flow through the fire is held at what the wanted burn rate and excess air take; every other branch takes what the
/// pressures at its ends make it take, so an open tee draws its air and cools the stack. The margin is what is left over
/// in the fire's own branch, what its inlet could be choked by. Since all other branches balance, it is also the sum of
/// check_design_flow() along the main path: resistance counts what its branches and junctions cost.
/// `coarse` and `fine` are the same network; `near` is a state to start from where there is one. Nothing if the flows
/// cannot be found.
[[nodiscard]] std::optional<NetworkDesignFlow> check_network_design_flow(const NetworkMarch& coarse,
                                                                         const NetworkMarch& fine, const Design& design,
                                                                         BenchAge age,
                                                                         const NetworkSolution* near = nullptr);

/// standing_draft() along the main path.
[[nodiscard]] Pressure standing_draft(const SlicedNetwork& network, const Surround& surround);

}  // namespace fluewright
