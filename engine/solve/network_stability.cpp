// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/node_solver.hpp"

#include <Eigen/Eigenvalues>
#include <Eigen/LU>

#include <cmath>

namespace fluewright {
namespace {

/// Inertia of a branch, sum of L/A [1/m]: what its flow resists a change with, per Pa. A hole moves a plug as long as
/// it is wide.
double inertia(const Branch& branch) {
  if (branch.opening) return 1.0 / std::sqrt(in(branch.opening->area, square_metre));
  double sum = 0.0;
  for (const Stretch& s : branch.stretches) sum += in(s.length, metre) / in(s.section.area(), square_metre);
  return sum;
}

}  // namespace

bool NodeSolver::is_stable(const NetworkSolution& solution) const {
  const NetworkEquations equations{*march_, std::nullopt};
  Eigen::VectorXd x = solution.x;
  NetworkState state = solution.state;
  (void)equations.values(x, state, true);
  Eigen::MatrixXd j = equations.slopes(x, state);
  const Eigen::Index branches = equations.branch_count();
  const Eigen::Index nodes = equations.node_count();

  // Openings' rows are flows; as pressures they are like the others.
  Eigen::VectorXd mass(branches);
  const auto& written = march_->network().branches;
  for (std::size_t b = 0; b < written.size(); ++b) {
    mass(index_at(b)) = inertia(written[b]);
    if (written[b].opening) j.row(index_at(b)) /= -NetworkEquations::opening_weight * equations.opening_slope(b, x, state);
  }
  if (nodes == 0) return j(0, 0) < 0.0;

  // Temperatures follow at once: out they go.
  const Eigen::MatrixXd follow = j.bottomRightCorner(nodes, nodes).partialPivLu().solve(j.bottomLeftCorner(nodes, branches));
  const Eigen::MatrixXd by_flow = j.topLeftCorner(branches, branches) - j.topRightCorner(branches, nodes) * follow;
  const Eigen::MatrixXd by_pressure = j.block(0, branches, branches, nodes);
  const Eigen::MatrixXd balance = j.block(branches, 0, nodes, branches);
  // Flows that keep the nodes' balance, and sums of branch equations that are free of node pressures: the loops.
  const Eigen::MatrixXd flows = balance.fullPivLu().kernel();
  const Eigen::MatrixXd loops = by_pressure.transpose().fullPivLu().kernel();
  const Eigen::MatrixXd slow = loops.transpose() * mass.asDiagonal() * flows;
  const Eigen::MatrixXd drive = loops.transpose() * by_flow * flows;
  const Eigen::MatrixXd rates = slow.partialPivLu().solve(drive);
  return Eigen::EigenSolver<Eigen::MatrixXd>(rates, false).eigenvalues().real().maxCoeff() < 0.0;
}

}  // namespace fluewright
