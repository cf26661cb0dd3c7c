// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The border of the implicit step: how flows and nodes act on one another.

#include "engine/burn/implicit_step.hpp"

#include <utility>

namespace fluewright::kernel {

void ImplicitStep::fill_border() {
  border_.setZero();
  for (std::size_t b = 0; b < branches_; ++b) {
    add_flow_row(b);
    add_node_rows(b);
  }
  for (std::size_t n = 0; n < nodes_; ++n) {
    const NodeSlopes& node = slopes_->nodes[n];
    border_(gas_at(n), gas_at(n)) += node.storage * shift_ + node.through_heat;
    border_(share_at(n), share_at(n)) += node.mass * shift_ + node.through_flow;
  }
  if (branches_ > 1 || nodes_ > 0) factors_.compute(border_);
}

/// sum(L/A) (s u - r) = step of the balance: own answers, heads of the junctions, pressures of the nodes.
void ImplicitStep::add_flow_row(std::size_t index) {
  const BranchCells& branch = cells_->branches[index];
  const BranchSlopes& bs = slopes_->branches[index];
  const Eigen::Index row = flow_at(index);
  if (bs.held) {
    border_(row, row) = shift_ + bs.decay;
    return;
  }
  border_(row, row) += bs.inertia * shift_ - ends_[index][by_flow].drive;
  const BranchEnd& from = source(index);
  if (from.kind == EndKind::node) {
    border_(row, gas_at(from.node)) -= ends_[index][by_arriving_gas].drive;
    border_(row, share_at(from.node)) -= ends_[index][by_arriving_share].drive;
  }
  for (const auto& [end, sign] : {std::pair{&branch.from, 1.0}, std::pair{&branch.to, -1.0}}) {
    if (end->kind != EndKind::node) continue;
    border_(row, pressure_at(end->node)) -= sign;
    const NodeSlopes& node = slopes_->nodes[end->node];
    const auto port = static_cast<std::size_t>(end->port);
    for (std::size_t other = 0; other < branches_; ++other) {
      const BranchCells& met = cells_->branches[other];
      if (met.from.kind == EndKind::node && met.from.node == end->node) {
        border_(row, flow_at(other)) += sign * node.head_by_flow[port][static_cast<std::size_t>(met.from.port)];
      }
      if (met.to.kind == EndKind::node && met.to.node == end->node) {
        border_(row, flow_at(other)) -= sign * node.head_by_flow[port][static_cast<std::size_t>(met.to.port)];
      }
    }
  }
}

/// A node lets no gas pile up, and mixes what comes in.
void ImplicitStep::add_node_rows(std::size_t index) {
  const BranchCells& branch = cells_->branches[index];
  const BranchSlopes& bs = slopes_->branches[index];
  const Eigen::Index flow = flow_at(index);
  for (const auto& [end, sign] : {std::pair{&branch.from, -1.0}, std::pair{&branch.to, 1.0}}) {
    if (end->kind != EndKind::node) continue;
    const bool leaves_here = end == &sink(index);
    border_(pressure_at(end->node), flow) += sign * (shift_ + (leaves_here ? bs.out_flow_by_flow : 1.0) / node_settling);
  }
  const BranchEnd& into = sink(index);
  if (into.kind != EndKind::node) return;
  const BranchEnd& from = source(index);
  const Eigen::Index gas = gas_at(into.node);
  const Eigen::Index share = share_at(into.node);
  const bool empty = branch.first == branch.last;  // an opening hands on what arrives
  const Carried& flowing = ends_[index][by_flow];
  border_(gas, flow) -= bs.node_heat_by_flow + (empty ? 0.0 : bs.out_heat * flowing.gas);
  border_(share, flow) -= bs.node_share_by_flow + (empty ? 0.0 : bs.out_flow * flowing.share);
  if (from.kind != EndKind::node) return;
  const double gas_arrives = empty ? 1.0 : ends_[index][by_arriving_gas].gas;
  const double share_arrives = empty ? 1.0 : ends_[index][by_arriving_share].share;
  border_(gas, gas_at(from.node)) -= bs.out_heat * gas_arrives;
  if (!empty) border_(gas, share_at(from.node)) -= bs.out_heat * ends_[index][by_arriving_share].gas;
  border_(share, share_at(from.node)) -= bs.out_flow * share_arrives;
}

void ImplicitStep::add_lines(const std::vector<double>& u, const GasPair& gas, Lines& lines) const {
  for (std::size_t b = 0; b < branches_; ++b) {
    const BranchCells& branch = cells_->branches[b];
    const BranchSlopes& bs = slopes_->branches[b];
    for (std::size_t i = branch.first; i < branch.last; ++i) {
      const Cell& cell = cells_->cells[i];
      const CellSlopes& c = slopes_->cells[i];
      lines[latent] -= c.wet * u[cell.base + 2];
      if (cell.place == Place::jacket) continue;
      const bool outside = cell.place == Place::outdoors || cell.place == Place::attic || cell.under_sky;
      lines[outside ? to_outdoors : to_room] += c.outer * u[cell.base + 1 + cell.node_count];
    }
    const double burn = bs.burn_by_flow * u[branch.flow];
    lines[released] += burn * gas.heat_per_fuel();
    lines[unburned] += burn * (gas.heat_per_fuel() - gas.heat_to_gas());
    lines[burnt] += burn;
    const BranchEnd& into = sink(b);
    const Line line = into.kind == EndKind::room_air ? out_of_mouth : out_of_cap;
    lines[line] += bs.leaving_by_flow * u[branch.flow];
    if (into.kind == EndKind::node) continue;
    if (branch.first != branch.last) {
      lines[line] += bs.out_heat * u[cells_->cells[forward_[b] ? branch.last - 1 : branch.first].base];
    } else if (source(b).kind == EndKind::node) {
      lines[line] += bs.out_heat * u[cells_->junctions[source(b).node].base];
    }
  }
}

}  // namespace fluewright::kernel
