// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/implicit_step.hpp"

namespace fluewright::kernel {

ImplicitStep::ImplicitStep(const BurnCells& cells)
    : cells_{&cells},
      forward_(cells.branches.size()),
      pivot_(cells.nodes.size()),
      gas_pivot_(cells.cells.size()),
      carry_(cells.cells.size()),
      by_flow_(cells.cells.size()),
      flow_pivot_(cells.branches.size()) {}

void ImplicitStep::prepare(const Slopes& slopes, const double* state, double shift, bool flow_is_given) {
  slopes_ = &slopes;
  shift_ = shift;
  flow_is_given_ = flow_is_given;
  for (std::size_t b = 0; b < cells_->branches.size(); ++b) {
    forward_[b] = state[cells_->branches[b].flow] >= 0.0;
    prepare_branch(b);
  }
}

void ImplicitStep::prepare_branch(std::size_t index) {
  const BranchCells& branch = cells_->branches[index];
  const BranchSlopes& bs = slopes_->branches[index];
  const std::size_t count = branch.last - branch.first;
  double entering = 0.0;  // answer of the entering gas to a unit step of the flow
  double drive = 0.0;
  for (std::size_t n = 0; n < count; ++n) {
    const std::size_t i = forward_[index] ? branch.first + n : branch.last - 1 - n;
    const Cell& cell = cells_->cells[i];
    const CellSlopes& c = slopes_->cells[i];
    const double* link = slopes_->links.data() + cell.first_node;
    double* pivot = pivot_.data() + cell.first_node;
    const WallNode* node = cells_->nodes.data() + cell.first_node;
    double behind = c.outer;
    for (std::size_t j = cell.node_count; j-- > 0;) {
      double diagonal = node[j].capacity * shift_ + behind;
      const double inward = j > 0 ? link[j - 1] : c.by_wall + c.wet;
      diagonal += inward;
      pivot[j] = diagonal;
      if (j > 0) behind = inward - inward * inward / diagonal;
    }
    const double through_wall = c.by_wall / pivot[0];
    gas_pivot_[i] = c.storage * shift_ + c.by_own - through_wall * c.wall_by_gas;
    carry_[i] = (c.by_entering + through_wall * c.wall_by_entering) / gas_pivot_[i];
    if (i == bs.fire_into) entering = bs.fire_by_entering * entering + bs.fire_by_flow;
    by_flow_[i] = carry_[i] * entering + c.by_flow / gas_pivot_[i];
    drive += c.drive * (c.mean_by_entering * entering + (1.0 - c.mean_by_entering) * by_flow_[i]);
    entering = by_flow_[i];
  }
  flow_pivot_[index] = branch.inertia * shift_ - bs.by_flow - drive;
}

void ImplicitStep::solve(std::vector<double>& u) {
  for (std::size_t b = 0; b < cells_->branches.size(); ++b) solve_branch(b, u);
}

void ImplicitStep::solve_branch(std::size_t index, std::vector<double>& u) {
  const BranchCells& branch = cells_->branches[index];
  const BranchSlopes& bs = slopes_->branches[index];
  const std::size_t count = branch.last - branch.first;
  const auto at = [&](std::size_t n) { return forward_[index] ? branch.first + n : branch.last - 1 - n; };

  // Walls from the outside in, gas along the flow, with the flow as it is.
  double entering = 0.0;
  double share = 0.0;
  double drive = 0.0;
  for (std::size_t n = 0; n < count; ++n) {
    const std::size_t i = at(n);
    const Cell& cell = cells_->cells[i];
    const CellSlopes& c = slopes_->cells[i];
    const double* link = slopes_->links.data() + cell.first_node;
    const double* pivot = pivot_.data() + cell.first_node;
    const WallNode* node = cells_->nodes.data() + cell.first_node;
    double* x = u.data() + cell.base;
    double* wall = x + 2;
    const std::size_t last = cell.node_count - 1;
    wall[last] *= node[last].capacity;
    for (std::size_t j = last; j-- > 0;) wall[j] = node[j].capacity * wall[j] + link[j] * wall[j + 1] / pivot[j + 1];
    if (i == bs.fire_into) {
      entering *= bs.fire_by_entering;
      share *= bs.fire_share_by_entering;
    }
    const double own = (c.storage * x[0] + c.by_wall * wall[0] / pivot[0]) / gas_pivot_[i] + carry_[i] * entering;
    drive += c.drive * (c.mean_by_entering * entering + (1.0 - c.mean_by_entering) * own);
    entering = x[0] = own;
    share = x[1] = (x[1] + c.renewal * share) / (shift_ + c.renewal);
  }
  double& flow = u[branch.flow];
  flow = flow_is_given_ ? 0.0 : (branch.inertia * flow + drive) / flow_pivot_[index];

  // What the flow's step adds; then the walls from the inside out.
  double entered = 0.0;
  for (std::size_t n = 0; n < count; ++n) {
    const std::size_t i = at(n);
    const Cell& cell = cells_->cells[i];
    const CellSlopes& c = slopes_->cells[i];
    if (i == bs.fire_into) entered = bs.fire_by_entering * entered + bs.fire_by_flow * flow;
    const double* link = slopes_->links.data() + cell.first_node;
    const double* pivot = pivot_.data() + cell.first_node;
    double* x = u.data() + cell.base;
    double* wall = x + 2;
    x[0] += by_flow_[i] * flow;
    wall[0] = (wall[0] + c.wall_by_entering * entered + c.wall_by_gas * x[0]) / pivot[0];
    for (std::size_t j = 1; j < cell.node_count; ++j) wall[j] = (wall[j] + link[j - 1] * wall[j - 1]) / pivot[j];
    entered = x[0];
  }
}

void ImplicitStep::add_lines(const std::vector<double>& u, const GasPair& gas, Lines& lines) const {
  for (std::size_t b = 0; b < cells_->branches.size(); ++b) {
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
    const std::size_t last = forward_[b] ? branch.last - 1 : branch.first;
    const BranchEnd& sink = forward_[b] ? branch.to : branch.from;
    lines[sink.kind == EndKind::room_air ? out_of_mouth : out_of_cap] +=
        slopes_->cells[last].out_heat * u[cells_->cells[last].base] + bs.leaving_by_flow * u[branch.flow];
  }
}

}  // namespace fluewright::kernel
