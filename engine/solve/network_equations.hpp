// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/network_march.hpp"

#include <Eigen/Core>

#include <optional>

namespace fluewright {

/// A branch whose flow is given, on the side where the gas comes in. Its own pressure balance then has something left
/// over.
struct HeldFlow {
  std::size_t branch = 0;
  MassFlow flow{};
};

[[nodiscard]] inline Eigen::Index index_at(std::size_t i) { return static_cast<Eigen::Index>(i); }

/// The equations of a network at steady flow:
///   a branch    p_from + drive - p_to = 0   or, for an opening, flow - C A sqrt(2 rho (p_from - p_to)) = 0
///   a node      sum of flows in = 0
///   a node      temperature - temperature of what has mixed = 0 (not met by itself only where a circle was cut)
/// Unknowns x: flow by branch [kg/s], total pressure at each node's run_in [Pa], temperature at each node [K]. The
/// values are scaled to pascals of like weight: see mass_weight and so on. Plain SI numbers, for linear algebra.
class NetworkEquations {
 public:
  NetworkEquations(const NetworkMarch& march, std::optional<HeldFlow> held);

  /// Follows the gas at x and fills `state`; the temperatures in x become those of the state.
  [[nodiscard]] Eigen::VectorXd values(Eigen::VectorXd& x, NetworkState& state, bool with_slopes) const;
  /// The branches' equations alone, in values that were taken with another flow held or with none.
  void set_branch_rows(const Eigen::VectorXd& x, const NetworkState& state, Eigen::VectorXd& values) const;
  /// At a state with slopes.
  [[nodiscard]] Eigen::MatrixXd slopes(const Eigen::VectorXd& x, const NetworkState& state) const;
  /// Pressure left over in the branch whose flow is held, else in the stack.
  [[nodiscard]] Pressure left_over(const Eigen::VectorXd& x, const NetworkState& state) const;
  /// Total pressure at an end of a branch: of the free air there, or just outside the junction's port.
  [[nodiscard]] Pressure total_pressure(const BranchEnd& end, const Eigen::VectorXd& x, const NetworkState& state) const {
    return pressure_at(end, x, state) * pascal;
  }
  /// An opening's flow by pressure difference [kg/(s Pa)] at a state.
  [[nodiscard]] double opening_slope(std::size_t branch, const Eigen::VectorXd& x, const NetworkState& state) const;

  [[nodiscard]] Eigen::Index branch_count() const { return branches_; }
  [[nodiscard]] Eigen::Index node_count() const { return nodes_; }
  [[nodiscard]] Eigen::Index size() const { return branches_ + 2 * nodes_; }

  static constexpr double mass_weight = 1e4;         ///< Pa per kg/s, of a node's balance
  static constexpr double opening_weight = 1e3;      ///< Pa per kg/s, of an opening's flow
  static constexpr double temperature_weight = 0.1;  ///< Pa per K

 private:
  [[nodiscard]] JunctionFlows into(std::size_t node, const NetworkState& state) const;
  [[nodiscard]] double pressure_at(const BranchEnd& end, const Eigen::VectorXd& x, const NetworkState& state) const;
  [[nodiscard]] double balance(std::size_t branch, const Eigen::VectorXd& x, const NetworkState& state) const;
  [[nodiscard]] double opening_flow(std::size_t branch, double difference, const NetworkState& state) const;
  void add_branch_row(std::size_t branch, const Eigen::VectorXd& x, const NetworkState& state, Eigen::MatrixXd& j) const;
  void add_end(std::size_t branch, const BranchEnd& end, double sign, const NetworkState& state, Eigen::MatrixXd& j) const;
  void add_node_rows(const NetworkState& state, Eigen::MatrixXd& j) const;

  const NetworkMarch* march_;
  std::optional<HeldFlow> held_;
  Eigen::Index branches_;
  Eigen::Index nodes_;
};

}  // namespace fluewright
