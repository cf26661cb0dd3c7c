// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_equations.hpp"

#include <array>
#include <cstddef>
#include <vector>

namespace fluewright::kernel {

/// Solves (s I - J) u = r for the burn's own J: each wall is a chain that ends in its gas, the gas of a branch a chain along
/// the flow, and a branch's flow reaches all of them; so a wall is eliminated into its gas, the gas is swept once, and the
/// flow is a scalar. Two sweeps along the path; nothing is stored but a few numbers a node. The heat that a riser gives
/// to the gas around it is in J when the gas comes from the riser, and is left to the error control when it does not.
class ImplicitStep {
 public:
  explicit ImplicitStep(const BurnCells& cells);

  /// Prepares for a shift s = 1/(h gamma), at the state the slopes were taken at.
  void prepare(const Slopes& slopes, const double* state, double shift, bool flow_is_given);
  /// r in, u out.
  void solve(std::vector<double>& u);
  /// What the lines' rates gain by a step u of the state: the same slopes, so that what leaves one place by them enters
  /// another.
  void add_lines(const std::vector<double>& u, const GasPair& gas, Lines& lines) const;

 private:
  /// Answer of a cell to a unit step of its branch's flow.
  struct ByFlow {
    double gas = 0.0;
    double share = 0.0;
  };
  /// What is carried from cell to cell.
  struct Carried {
    double gas = 0.0;
    double share = 0.0;
    double regained = 0.0;  ///< by the gas around a riser [W]
    double drive = 0.0;
  };
  void solve_branch(std::size_t index, std::vector<double>& u);
  void prepare_branch(std::size_t index);
  void eliminate_wall(const Cell& cell, const CellSlopes& c);
  [[nodiscard]] double outermost(const Cell& cell, double first) const;
  [[nodiscard]] double given_around(const BranchCells& branch, std::size_t cell) const;
  [[nodiscard]] bool in_riser(const BranchCells& branch, std::size_t cell) const;

  const BurnCells* cells_;
  const Slopes* slopes_ = nullptr;
  double shift_ = 0.0;
  bool flow_is_given_ = false;
  std::vector<bool> forward_;
  std::vector<double> pivot_;      ///< a node's diagonal after those behind it are eliminated
  std::vector<double> gas_pivot_;
  std::vector<double> carry_;      ///< gas: share of the entering step that arrives
  std::vector<ByFlow> by_flow_;
  std::vector<double> flow_pivot_; ///< a branch
};

}  // namespace fluewright::kernel
