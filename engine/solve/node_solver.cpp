// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/node_solver.hpp"

#include <Eigen/LU>

#include <algorithm>
#include <cmath>

namespace fluewright {
namespace {

/// A side branch starts with at most this share of the main path's flow: small, but not at rest, as nobody knows yet
/// which way it runs.
constexpr double side_share = 0.05;
/// Rough Darcy friction factor for that guess.
constexpr double rough_friction = 0.04;

/// A step is accepted if it takes at least this share off the remainder, is halved otherwise, so many times at most.
constexpr double least_gain = 0.05;
constexpr int step_halvings = 9;
/// A kept Jacobian whose step leaves more than this is taken anew.
constexpr double stalled = 0.5;
/// No flow changes by more than this many times the largest in one step.
constexpr double longest_step = 1.0;
constexpr double least_longest_step = 2e-3;  // kg/s

/// How often a branch may be turned round to get out of a hollow, and the flow under which none is moving.
constexpr int most_turns = 3;
constexpr double moving_flow = 1e-4;  // kg/s

/// Rough resistance of a branch: pressure lost over half the flow squared over density [1/m4].
double resistance(const Branch& branch) {
  double sum = 0.0;
  for (const Stretch& s : branch.stretches) {
    double coefficient = rough_friction * in(s.length / s.section.hydraulic_diameter(), Ratio(1.0));
    for (const LocalLoss& l : s.at_start) coefficient += l.forward;
    for (const LocalLoss& l : s.at_end) coefficient += l.forward;
    const double area = in(s.section.area(), square_metre);
    sum += coefficient / (area * area);
  }
  if (branch.opening) {
    const double area = in(branch.opening->set_draft ? branch.opening->shut_area : branch.opening->area, square_metre);
    sum += 1.0 / (area * area);
  }
  return sum;
}

/// One run of Newton's method: where it stands.
class Newton {
 public:
  Newton(const NetworkMarch& march, const std::optional<HeldFlow>& held, NetworkSolution start)
      : march_{&march}, equations_{march, held}, s_{std::move(start)} {
    s_.passes = 0;
    s_.converged = false;
  }

  NetworkSolution run(const NodeTolerance& tolerance) {
    const double close = in(tolerance.pressure, pascal);
    const bool slopes_wanted = s_.slopes.size() == 0;
    if (s_.walked == march_ && !slopes_wanted) {
      f_ = s_.values;  // as it was left, but for the flow that is held now
      equations_.set_branch_rows(s_.x, s_.state, f_);
    } else {
      f_ = evaluate(s_.x, s_.state, slopes_wanted);
    }
    if (slopes_wanted) take_slopes();
    int turns = most_turns;
    for (int step = 0; step < tolerance.steps && !(norm(f_) <= close); ++step) {
      if (!advance() && (turns-- == 0 || !turn_round())) break;
    }
    s_.converged = norm(f_) <= close;
    return finished();
  }

 private:
  Eigen::VectorXd evaluate(Eigen::VectorXd& x, NetworkState& state, bool with_slopes) {
    s_.passes += with_slopes ? 3 : 1;
    return equations_.values(x, state, with_slopes);
  }
  static double norm(const Eigen::VectorXd& f) { return f.size() == 0 ? 0.0 : f.lpNorm<Eigen::Infinity>(); }

  void take_slopes() {
    s_.slopes = equations_.slopes(s_.x, s_.state);
    fresh_ = true;
  }
  void renew_slopes() {
    f_ = evaluate(s_.x, s_.state, true);
    take_slopes();
  }

  /// Out of a hollow: where no step helps, the branch that would have to change most for its flow runs the other way.
  bool turn_round() {
    const Eigen::VectorXd step = s_.slopes.partialPivLu().solve(-f_);
    if (!step.allFinite()) return false;
    Eigen::Index most = 0;
    double furthest = 0.0;
    for (Eigen::Index b = 0; b < equations_.branch_count(); ++b) {
      const double change = std::abs(step(b)) / (std::abs(s_.x(b)) + moving_flow);
      if (change > furthest) {
        furthest = change;
        most = b;
      }
    }
    s_.x(most) = -s_.x(most);
    renew_slopes();
    return f_.allFinite();
  }

  /// One accepted step, or false where nothing helps any more.
  bool advance() {
    if (try_steps(fresh_ ? step_halvings : 1)) return true;
    if (fresh_) return false;
    renew_slopes();
    return try_steps(step_halvings);
  }

  bool try_steps(int tries) {
    Eigen::VectorXd step = s_.slopes.partialPivLu().solve(-f_);
    if (!step.allFinite()) return false;
    const Eigen::Index flows = equations_.branch_count();
    const double largest = s_.x.head(flows).lpNorm<Eigen::Infinity>();
    const double room = std::max(longest_step * largest, least_longest_step);
    const double longest = step.head(flows).lpNorm<Eigen::Infinity>();
    double share = longest > room ? room / longest : 1.0;
    for (int i = 0; i < tries; ++i, share *= 0.5) {
      Eigen::VectorXd x = s_.x + share * step;
      NetworkState state = s_.state;
      const Eigen::VectorXd f = evaluate(x, state, false);
      const bool closer = norm(f) <= (1.0 - least_gain * share) * norm(f_);
      if (!f.allFinite() || !closer) continue;
      const bool slow = norm(f) > stalled * norm(f_);
      learn(x - s_.x, f - f_);
      s_.x = x;
      s_.state = std::move(state);
      f_ = f;
      if (slow && !fresh_) renew_slopes();
      return true;
    }
    return false;
  }

  /// Broyden's update, in variables of like size: grams a second, pascals, tenths of a pascal a kelvin.
  void learn(const Eigen::VectorXd& moved, const Eigen::VectorXd& changed) {
    Eigen::VectorXd weight = Eigen::VectorXd::Constant(moved.size(), 1.0);
    weight.head(equations_.branch_count()).setConstant(1e3);
    weight.tail(equations_.node_count()).setConstant(NetworkEquations::temperature_weight);
    const Eigen::VectorXd scaled = weight.cwiseProduct(moved);
    const double size = scaled.squaredNorm();
    if (!(size > 0.0)) return;
    const Eigen::VectorXd missed = changed - s_.slopes * moved;
    s_.slopes += missed * weight.cwiseProduct(scaled).transpose() / size;
    fresh_ = false;
  }

  NetworkSolution finished() {
    const Eigen::Index flows = equations_.branch_count();
    const Eigen::Index nodes = equations_.node_count();
    for (std::size_t b = 0; b < s_.flows.size(); ++b) s_.flows[b] = s_.x(index_at(b)) * kilogram_per_second;
    for (std::size_t n = 0; n < s_.node_gauges.size(); ++n) s_.node_gauges[n] = s_.x(flows + index_at(n)) * pascal;
    s_.values = f_;
    s_.walked = march_;
    s_.left_over = equations_.left_over(s_.x, s_.state);
    s_.worst_pressure = norm(f_.head(flows)) * pascal;
    s_.worst_mass = norm(f_.segment(flows, nodes)) / NetworkEquations::mass_weight * kilogram_per_second;
    return std::move(s_);
  }

  const NetworkMarch* march_;
  NetworkEquations equations_;
  NetworkSolution s_;
  Eigen::VectorXd f_;
  bool fresh_ = false;
};

}  // namespace

NetworkSolution NodeSolver::first_guess(MassFlow main, std::size_t turned) const {
  const FlueNetwork& network = march_->network();
  NetworkSolution guess;
  guess.state = march_->at_rest();
  double along = 0.0;
  for (const std::size_t b : network.main_path) along += resistance(network.branches[b]);
  std::size_t sides = 0;
  for (std::size_t b = 0; b < network.branches.size(); ++b) {
    const double share = std::min(side_share, std::sqrt(along / resistance(network.branches[b])));
    const bool side = std::find(network.main_path.begin(), network.main_path.end(), b) == network.main_path.end();
    guess.flows.push_back((side && ++sides == turned ? -share : share) * abs(main));
  }
  for (const std::size_t b : network.main_path) guess.flows[b] = main;
  guess.node_gauges.resize(network.nodes.size());
  const NetworkEquations equations{*march_, std::nullopt};
  guess.x = Eigen::VectorXd::Zero(equations.size());
  for (std::size_t b = 0; b < guess.flows.size(); ++b) guess.x(index_at(b)) = in(guess.flows[b], kilogram_per_second);
  guess.x.tail(equations.node_count()).setConstant(in_kelvin(march_->surround().room));
  return guess;
}

NetworkSolution NodeSolver::solve(const NetworkSolution& guess, const std::optional<HeldFlow>& held,
                                  const NodeTolerance& tolerance) const {
  return Newton{*march_, held, guess}.run(tolerance);
}

NetworkSolution NodeSolver::solve_afresh(MassFlow main, const std::optional<HeldFlow>& held,
                                         const NodeTolerance& tolerance) const {
  const std::size_t sides = march_->network().branches.size() - march_->network().main_path.size();
  NetworkSolution found = solve(first_guess(main), held, tolerance);
  for (std::size_t turned = 1; turned <= sides && !found.converged; ++turned) {
    found = solve(first_guess(main, turned), held, tolerance);
  }
  return found;
}

}  // namespace fluewright
