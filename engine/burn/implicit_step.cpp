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

void ImplicitStep::eliminate_wall(const Cell& cell, const CellSlopes& c) {
  const double* link = slopes_->links.data() + cell.first_node;
  double* pivot = pivot_.data() + cell.first_node;
  const WallNode* node = cells_->nodes.data() + cell.first_node;
  double behind = c.outer;
  for (std::size_t j = cell.node_count; j-- > 0;) {
    const double inward = j > 0 ? link[j - 1] : c.by_wall + c.wet;
    pivot[j] = node[j].capacity * shift_ + behind + inward;
    behind = inward - inward * inward / pivot[j];
  }
}

/// The outermost node's step when the first one's is known and nothing else moves.
double ImplicitStep::outermost(const Cell& cell, double first) const {
  const double* link = slopes_->links.data() + cell.first_node;
  const double* pivot = pivot_.data() + cell.first_node;
  for (std::size_t j = 1; j < cell.node_count; ++j) first *= link[j - 1] / pivot[j];
  return first;
}

bool ImplicitStep::in_riser(const BranchCells& branch, std::size_t cell) const {
  for (const CellJacket& j : branch.jackets) {
    if (cell >= j.first && cell < j.chamber) return true;
  }
  return false;
}

/// Share of a riser's heat that this cell's gas takes up.
double ImplicitStep::given_around(const BranchCells& branch, std::size_t cell) const {
  for (const CellJacket& j : branch.jackets) {
    if (cell >= j.chamber && cell < j.last) return cells_->cells[cell].surface / j.chamber_surface;
  }
  return 0.0;
}

void ImplicitStep::prepare_branch(std::size_t index) {
  const BranchCells& branch = cells_->branches[index];
  const BranchSlopes& bs = slopes_->branches[index];
  const bool forward = forward_[index];
  const std::size_t count = branch.last - branch.first;
  Carried in;
  for (std::size_t n = 0; n < count; ++n) {
    const std::size_t i = forward ? branch.first + n : branch.last - 1 - n;
    const Cell& cell = cells_->cells[i];
    const CellSlopes& c = slopes_->cells[i];
    eliminate_wall(cell, c);
    const double* pivot = pivot_.data() + cell.first_node;
    const double through_wall = c.by_wall / pivot[0];
    gas_pivot_[i] = c.storage * shift_ + c.by_own - through_wall * c.wall_by_gas;
    carry_[i] = (c.by_entering + through_wall * c.wall_by_entering) / gas_pivot_[i];
    if (i == bs.fire_into) {
      in.gas = bs.fire_by_entering * in.gas + bs.fire_by_flow;
      in.share = bs.fire_share_by_entering * in.share + bs.fire_share_by_flow;
    }
    ByFlow& own = by_flow_[i];
    own.share = c.renewal * in.share / (shift_ + c.renewal);
    own.gas = carry_[i] * in.gas +
              (c.by_flow + c.by_share * own.share + c.by_share_entering * in.share +
               through_wall * (c.wall_by_flow + c.wall_by_share * own.share) + in.regained * given_around(branch, i)) /
                  gas_pivot_[i];
    if (forward && in_riser(branch, i)) {
      const double first = (c.wall_by_entering * in.gas + c.wall_by_gas * own.gas + c.wall_by_flow + c.wall_by_share * own.share) /
                           pivot[0];
      in.regained += c.outer * outermost(cell, first);
    }
    in.drive += c.drive_by_entering * in.gas + c.drive_by_own * own.gas;
    in.gas = own.gas;
    in.share = own.share;
  }
  flow_pivot_[index] = branch.inertia * shift_ - bs.by_flow - in.drive;
}

void ImplicitStep::solve(std::vector<double>& u) {
  for (std::size_t b = 0; b < cells_->branches.size(); ++b) solve_branch(b, u);
}

void ImplicitStep::solve_branch(std::size_t index, std::vector<double>& u) {
  const BranchCells& branch = cells_->branches[index];
  const BranchSlopes& bs = slopes_->branches[index];
  const bool forward = forward_[index];
  const std::size_t count = branch.last - branch.first;
  const auto at = [&](std::size_t n) { return forward ? branch.first + n : branch.last - 1 - n; };

  // Walls from the outside in, gas along the flow, with the flow as it is.
  Carried in;
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
      in.gas *= bs.fire_by_entering;
      in.share *= bs.fire_share_by_entering;
    }
    x[1] = (x[1] + c.renewal * in.share) / (shift_ + c.renewal);
    wall[0] += c.wall_by_share * x[1];
    x[0] = (c.storage * x[0] + c.by_share * x[1] + c.by_share_entering * in.share + c.by_wall * wall[0] / pivot[0] +
            in.regained * given_around(branch, i)) /
               gas_pivot_[i] +
           carry_[i] * in.gas;
    if (forward && in_riser(branch, i)) {
      double node_step = (wall[0] + c.wall_by_entering * in.gas + c.wall_by_gas * x[0]) / pivot[0];
      for (std::size_t j = 1; j < cell.node_count; ++j) node_step = (wall[j] + link[j - 1] * node_step) / pivot[j];
      in.regained += c.outer * node_step;
    }
    in.drive += c.drive_by_entering * in.gas + c.drive_by_own * x[0];
    in.gas = x[0];
    in.share = x[1];
  }
  double& flow = u[branch.flow];
  flow = flow_is_given_ ? 0.0 : (branch.inertia * flow + in.drive) / flow_pivot_[index];

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
    x[0] += by_flow_[i].gas * flow;
    x[1] += by_flow_[i].share * flow;
    wall[0] = (wall[0] + c.wall_by_entering * entered + c.wall_by_gas * x[0] +
               (c.wall_by_flow + c.wall_by_share * by_flow_[i].share) * flow) /
              pivot[0];
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
