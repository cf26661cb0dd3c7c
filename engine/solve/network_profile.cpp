// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_profile.hpp"

#include <algorithm>

namespace fluewright {

namespace {

/// The share of the water that has not condensed yet, carried along with the gas and mixed at nodes.
class WaterLeft {
 public:
  WaterLeft(const FlueNetwork& network, const NetworkState& state)
      : network_{&network}, state_{&state}, done_(state.branches.size()), left_(state.branches.size(), Ratio(1.0)) {}

  /// The next branch whose gas is known; where the gas runs in a circle the first of those that wait.
  [[nodiscard]] std::size_t next() const {
    for (std::size_t b = 0; b < done_.size(); ++b) {
      if (!done_[b] && !waits(b)) return b;
    }
    return static_cast<std::size_t>(std::find(done_.begin(), done_.end(), false) - done_.begin());
  }
  [[nodiscard]] Ratio entering(std::size_t branch) const {
    const BranchEnd& source = source_of(branch);
    if (source.kind != EndKind::node) return 1.0;
    double brought = 0.0;
    double left = 0.0;
    for (std::size_t b = 0; b < done_.size(); ++b) {
      if (!arrives(b, source.node) || !done_[b]) continue;
      const BranchFlow& f = state_->branches[b];
      const double water = in(f.outflow() * f.leaving[index_of(Species::water)], mole / second);
      brought += water;
      left += water * left_[b].value();
    }
    return brought > 0.0 ? left / brought : 1.0;
  }
  void set(std::size_t branch, Ratio left) {
    done_[branch] = true;
    left_[branch] = left;
  }

 private:
  [[nodiscard]] const BranchEnd& source_of(std::size_t b) const {
    return state_->branches[b].forward ? network_->branches[b].from : network_->branches[b].to;
  }
  [[nodiscard]] bool arrives(std::size_t b, std::size_t node) const {
    const BranchEnd& sink = state_->branches[b].forward ? network_->branches[b].to : network_->branches[b].from;
    return sink.kind == EndKind::node && sink.node == node;
  }
  [[nodiscard]] bool waits(std::size_t b) const {
    const BranchEnd& source = source_of(b);
    if (source.kind != EndKind::node) return false;
    for (std::size_t other = 0; other < done_.size(); ++other) {
      if (!done_[other] && arrives(other, source.node)) return true;
    }
    return false;
  }

  const FlueNetwork* network_;
  const NetworkState* state_;
  std::vector<bool> done_;
  std::vector<Ratio> left_;
};

}  // namespace

Pressure total_at(const NetworkMarch& march, const NetworkSolution& solution, const BranchEnd& end) {
  return NetworkEquations{march, std::nullopt}.total_pressure(end, solution.x, solution.state);
}

Pressure junction_loss(const NetworkMarch& march, const NetworkSolution& solution, std::size_t n) {
  const FlueNetwork& network = march.network();
  return total_at(march, solution, network.branches[network.main_path[n - 1]].to) -
         total_at(march, solution, network.branches[network.main_path[n]].from);
}

std::vector<BranchProfile> branch_profiles(const NetworkMarch& march, const NetworkSolution& solution, bool with_visits) {
  const FlueNetwork& network = march.network();
  WaterLeft water{network, solution.state};
  std::vector<BranchProfile> profiles(network.branches.size());
  for (std::size_t n = 0; n < profiles.size(); ++n) {
    const std::size_t b = water.next();
    const Branch& branch = network.branches[b];
    const Ratio entering = water.entering(b);
    if (branch.opening) {
      water.set(b, entering);
      continue;
    }
    const bool forward = solution.state.branches[b].forward;
    BranchProfile& profile = profiles[b];
    const Pressure total = total_at(march, solution, forward ? branch.from : branch.to);
    const MarchTotals totals =
        march.rows(solution.state, b, total, entering, profile.rows, with_visits ? &profile.visits : nullptr);
    water.set(b, totals.vapour_left);
    if (!forward) {
      std::reverse(profile.rows.begin(), profile.rows.end());
      std::reverse(profile.visits.begin(), profile.visits.end());
    }
  }
  return profiles;
}

std::vector<SliceState> main_path_rows(const NetworkMarch& march, const NetworkSolution& solution,
                                       const std::vector<BranchProfile>& branches) {
  std::vector<SliceState> rows;
  Length before{};
  const std::vector<std::size_t>& path = march.network().main_path;
  for (std::size_t n = 0; n < path.size(); ++n) {
    const std::size_t first = rows.size();
    rows.insert(rows.end(), branches[path[n]].rows.begin(), branches[path[n]].rows.end());
    for (std::size_t i = first; i < rows.size(); ++i) rows[i].s += before;
    before += march.sliced().paths[path[n]].length;
    if (n == 0) continue;
    const Pressure cost = junction_loss(march, solution, n);
    rows[first].local += cost;
    rows[first].loss += cost;
  }
  return rows;
}

}  // namespace fluewright
