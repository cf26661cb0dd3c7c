// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The compositions at a network's nodes, by one linear system: amounts of each species that flow in equal those that
// flow out, however the branches run.

#include "engine/solve/network_march.hpp"

#include <Eigen/LU>

#include <algorithm>
#include <cmath>

namespace fluewright {
namespace {

/// Every node breathes this much of the room's air: one in which nothing arrives is then full of it, and its equation
/// has an answer.
constexpr double breath = 1e-12;  // kg/s

/// Rounds of the burn rate where flue gas comes back to the fire that made it.
constexpr int burn_rounds = 40;
constexpr double burn_settled = 1e-14;

constexpr auto species_columns = static_cast<Eigen::Index>(species_count);

void take_over(const Eigen::MatrixXd& shares, NetworkState& state) {
  for (std::size_t n = 0; n < state.nodes.size(); ++n) {
    const auto row = static_cast<Eigen::Index>(n);
    for (std::size_t i = 0; i < species_count; ++i) {
      state.nodes[n].composition[i] = std::max(shares(row, static_cast<Eigen::Index>(i)), 0.0) * mole_per_kilogram;
    }
    state.nodes[n].flue_share = std::clamp(shares(row, species_columns), 0.0, 1.0);
  }
}

}  // namespace

void NetworkMarch::mix_compositions(std::span<const MassFlow> flows, NetworkState& state) const {
  const auto& branches = network().branches;
  const auto count = static_cast<Eigen::Index>(state.nodes.size());
  if (count == 0) return;
  const auto end_of = [&](std::size_t b, bool source) -> const BranchEnd& {
    const bool forward = flows[b] >= MassFlow{};
    return forward == source ? branches[b].from : branches[b].to;
  };
  MassFlow burn_before{};
  for (int round = 0; round < burn_rounds; ++round) {
    // The first columns are species [mol/kg], the last the share that has been through the fire.
    Eigen::MatrixXd a = Eigen::MatrixXd::Identity(count, count) * breath;
    Eigen::MatrixXd right = Eigen::MatrixXd::Zero(count, species_columns + 1);
    const auto add = [&](Eigen::Index row, const Composition& c, double kilograms) {
      for (Eigen::Index i = 0; i < species_columns; ++i) {
        right(row, i) += kilograms * in(c[static_cast<std::size_t>(i)], mole_per_kilogram);
      }
    };
    for (Eigen::Index n = 0; n < count; ++n) add(n, room_composition_, breath);
    MassFlow burn{};
    for (std::size_t b = 0; b < branches.size(); ++b) {
      const BranchEnd& source = end_of(b, true);
      const BranchEnd& sink = end_of(b, false);
      const double in_flow = std::abs(in(flows[b], kilogram_per_second));
      double out_flow = in_flow;
      FireState fire;
      if (has_fire(b) && in_flow > 0.0) {
        fire = burning_.at(in_flow * kilogram_per_second, composition_at(source, state), true);
        burn = fire.burn_rate;
        out_flow = in(fire.flue, kilogram_per_second);
      }
      if (sink.kind != EndKind::node) continue;
      const auto row = static_cast<Eigen::Index>(sink.node);
      a(row, row) += out_flow;
      const bool from_node = source.kind == EndKind::node;
      if (from_node) {
        a(row, static_cast<Eigen::Index>(source.node)) -= in_flow;
      } else {
        add(row, composition_at(source, state), in_flow);
      }
      if (has_fire(b)) {
        add(row, burning_.reaction().added, in(fire.burn_rate, kilogram_per_second));
        // All that leaves the fire has been through it, whatever came: not what the matrix hands on.
        const double again = from_node ? state.nodes[source.node].flue_share.value() : 0.0;
        right(row, species_columns) += out_flow - in_flow * again;
      }
    }
    take_over(a.partialPivLu().solve(right), state);
    if (abs(burn - burn_before) <= burn_settled * burning_.wanted_rate()) break;
    burn_before = burn;
  }
  for (NodeState& node : state.nodes) node.gas.emplace(mixture_of(node.composition));
}

}  // namespace fluewright
