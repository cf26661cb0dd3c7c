// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_equations.hpp"

#include <Eigen/Dense>

#include <array>
#include <cstddef>
#include <vector>

namespace fluewright::kernel {

/// Solves (s I - J) u = r for the burn's own J: each wall is a chain that ends in its gas, the gas of a branch a chain along
/// the flow. A wall is eliminated into its gas and the gas is swept once; what is left is a small dense border: the
/// flows, and the pressure, temperature and share of flue gas of every node. The heat that a riser gives to the gas
/// around it is in J when the gas comes from the riser, and is left to the error control when it does not.
class ImplicitStep {
 public:
  explicit ImplicitStep(const BurnCells& cells);

  /// Prepares for a shift s = 1/(h gamma), at the state the slopes were taken at.
  void prepare(const Slopes& slopes, const double* state, double shift);
  /// r in, u out.
  void solve(std::vector<double>& u);
  /// What the lines' rates gain by a step u of the state: the same slopes, so that what leaves one place by them enters
  /// another.
  void add_lines(const std::vector<double>& u, const GasPair& gas, Lines& lines) const;

 private:
  /// What moves a branch's gas from outside: its flow, and what arrives from a node.
  enum Cause : std::size_t { by_flow, by_arriving_gas, by_arriving_share, cause_count };
  struct Answer {
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
  [[nodiscard]] std::size_t at(const BranchCells& branch, std::size_t index, std::size_t n) const {
    return forward_[index] ? branch.first + n : branch.last - 1 - n;
  }
  void eliminate_walls(std::size_t index);
  [[nodiscard]] Carried answer_to(std::size_t index, Cause cause);
  [[nodiscard]] Carried sweep(std::size_t index, std::vector<double>& u);
  void complete(std::size_t index, std::vector<double>& u) const;
  [[nodiscard]] double outermost(const Cell& cell, double first) const;
  [[nodiscard]] double given_around(const BranchCells& branch, std::size_t cell) const;
  [[nodiscard]] bool in_riser(const BranchCells& branch, std::size_t cell) const;
  [[nodiscard]] const BranchEnd& source(std::size_t index) const;
  [[nodiscard]] const BranchEnd& sink(std::size_t index) const;
  void fill_border();
  void add_flow_row(std::size_t index);
  void add_node_rows(std::size_t index);

  // Rows and columns of the border.
  [[nodiscard]] Eigen::Index flow_at(std::size_t branch) const { return static_cast<Eigen::Index>(branch); }
  [[nodiscard]] Eigen::Index pressure_at(std::size_t node) const { return static_cast<Eigen::Index>(branches_ + node); }
  [[nodiscard]] Eigen::Index gas_at(std::size_t node) const { return static_cast<Eigen::Index>(branches_ + nodes_ + node); }
  [[nodiscard]] Eigen::Index share_at(std::size_t node) const { return static_cast<Eigen::Index>(branches_ + 2 * nodes_ + node); }

  const BurnCells* cells_;
  std::size_t branches_;
  std::size_t nodes_;
  const Slopes* slopes_ = nullptr;
  double shift_ = 0.0;
  std::vector<bool> forward_;
  std::vector<double> pivot_;      ///< a node's diagonal after those behind it are eliminated
  std::vector<double> gas_pivot_;
  std::vector<double> carry_;      ///< gas: share of the entering step that arrives
  std::array<std::vector<Answer>, cause_count> answers_;  ///< by cell
  std::vector<std::array<Carried, cause_count>> ends_;    ///< by branch
  Eigen::MatrixXd border_;
  Eigen::PartialPivLU<Eigen::MatrixXd> factors_;
  Eigen::VectorXd outer_;          ///< the border's step
};

}  // namespace fluewright::kernel
