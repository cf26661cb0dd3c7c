// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/network_equations.hpp"

#include <vector>

namespace fluewright {

/// How far a solution is driven.
struct NodeTolerance {
  Pressure pressure = 1e-9 * pascal;  ///< of every branch, and what that weighs in mass and temperature
  int steps = 60;
};

/// A steady state of a network, or the guess for one. Eigen's parts are the solver's memory from one state to the next.
struct NetworkSolution {
  bool converged = false;
  std::vector<MassFlow> flows;         ///< signed, by branch, where the gas comes in
  std::vector<Pressure> node_gauges;   ///< total pressure at each node's run_in
  Pressure left_over{};                ///< in the branch whose flow was held, else in the stack
  Pressure worst_pressure{};           ///< largest remainder of a branch
  MassFlow worst_mass{};               ///< largest remainder of a node
  NetworkState state;
  int passes = 0;                      ///< walks through the network it took

  Eigen::VectorXd x;
  Eigen::MatrixXd slopes;              ///< the Jacobian as far as it is known; empty if not
  Eigen::VectorXd values;              ///< the equations at x in `walked`
  const NetworkMarch* walked = nullptr;///< the march that gave values and state; nullptr once x has been changed
};

/// Damped Newton on branch flows and node pressures at once (the global gradient method: Todini & Pilati, in Computer
/// Applications in Water Supply, 1988), with the nodes' temperatures along. The Jacobian comes from difference quotients
/// of single branches and is kept up to date from step to step (Broyden, Math. Comp. 19 (1965) 577); where that stalls
/// it is taken anew.
class NodeSolver {
 public:
  explicit NodeSolver(const NetworkMarch& march) : march_{&march} {}

  /// A first guess: `main` along the main path and a little along every other branch, the way it is written; with
  /// `turned` against it, counted from 1 among the side branches (0: none).
  [[nodiscard]] NetworkSolution first_guess(MassFlow main, std::size_t turned = 0) const;
  /// From a guess. With a held flow that branch's balance is left over; without, every branch balances.
  [[nodiscard]] NetworkSolution solve(const NetworkSolution& guess, const std::optional<HeldFlow>& held,
                                      const NodeTolerance& tolerance = {}) const;
  /// The same from first guesses alone: with the side branches as they are written, then with each turned round. Newton
  /// from the wrong side of a still branch can end in a hollow that is no solution.
  [[nodiscard]] NetworkSolution solve_afresh(MassFlow main, const std::optional<HeldFlow>& held,
                                             const NodeTolerance& tolerance = {}) const;
  /// Whether a free steady state comes back by itself when disturbed: every loop's flow, moved against the inertia L/A
  /// of its branches with gas temperatures following at once, decays. All eigenvalues of that system lie left of zero.
  [[nodiscard]] bool is_stable(const NetworkSolution& solution) const;

 private:
  const NetworkMarch* march_;
};

}  // namespace fluewright
