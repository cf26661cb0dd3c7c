// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/implicit_step.hpp"

namespace fluewright::kernel {

ImplicitStep::ImplicitStep(const BurnCells& cells)
    : cells_{&cells},
      branches_{cells.branches.size()},
      nodes_{cells.junctions.size()},
      forward_(cells.branches.size()),
      pivot_(cells.nodes.size()),
      gas_pivot_(cells.cells.size()),
      carry_(cells.cells.size()),
      ends_(cells.branches.size()) {
  for (auto& a : answers_) a.resize(cells.cells.size());
  const auto size = static_cast<Eigen::Index>(branches_ + 3 * nodes_);
  border_ = Eigen::MatrixXd::Zero(size, size);
  outer_ = Eigen::VectorXd::Zero(size);
}

const BranchEnd& ImplicitStep::source(std::size_t index) const {
  return forward_[index] ? cells_->branches[index].from : cells_->branches[index].to;
}
const BranchEnd& ImplicitStep::sink(std::size_t index) const {
  return forward_[index] ? cells_->branches[index].to : cells_->branches[index].from;
}

void ImplicitStep::prepare(const Slopes& slopes, const double* state, double shift) {
  slopes_ = &slopes;
  shift_ = shift;
  for (std::size_t b = 0; b < branches_; ++b) {
    forward_[b] = state[cells_->branches[b].flow] >= 0.0;
    eliminate_walls(b);
    ends_[b] = {};
    ends_[b][by_flow] = answer_to(b, by_flow);
    if (source(b).kind != EndKind::node) continue;
    ends_[b][by_arriving_gas] = answer_to(b, by_arriving_gas);
    ends_[b][by_arriving_share] = answer_to(b, by_arriving_share);
  }
  fill_border();
}

void ImplicitStep::eliminate_walls(std::size_t index) {
  const BranchCells& branch = cells_->branches[index];
  for (std::size_t i = branch.first; i < branch.last; ++i) {
    const Cell& cell = cells_->cells[i];
    const CellSlopes& c = slopes_->cells[i];
    const double* link = slopes_->links.data() + cell.first_node;
    double* pivot = pivot_.data() + cell.first_node;
    const WallNode* node = cells_->nodes.data() + cell.first_node;
    double behind = c.outer;
    for (std::size_t j = cell.node_count; j-- > 0;) {
      const double inward = j > 0 ? link[j - 1] : c.by_wall + c.wet;
      pivot[j] = node[j].capacity * shift_ + behind + inward;
      behind = inward - inward * inward / pivot[j];
    }
    const double through_wall = c.by_wall / pivot[0];
    gas_pivot_[i] = c.storage * shift_ + c.by_own - through_wall * c.wall_by_gas;
    carry_[i] = (c.by_entering + through_wall * c.wall_by_entering) / gas_pivot_[i];
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

ImplicitStep::Carried ImplicitStep::answer_to(std::size_t index, Cause cause) {
  const BranchCells& branch = cells_->branches[index];
  const BranchSlopes& bs = slopes_->branches[index];
  const double flow = cause == by_flow ? 1.0 : 0.0;
  Carried in;
  in.gas = cause == by_arriving_gas ? 1.0 : 0.0;
  in.share = cause == by_arriving_share ? 1.0 : 0.0;
  in.drive = flow * bs.by_flow + in.gas * bs.by_arriving_gas;
  for (std::size_t n = 0; n < branch.last - branch.first; ++n) {
    const std::size_t i = at(branch, index, n);
    const Cell& cell = cells_->cells[i];
    const CellSlopes& c = slopes_->cells[i];
    const double* pivot = pivot_.data() + cell.first_node;
    if (i == bs.fire_into) {
      in.gas = bs.fire_by_entering * in.gas + bs.fire_by_flow * flow;
      in.share = bs.fire_share_by_entering * in.share + bs.fire_share_by_flow * flow;
    }
    Answer& own = answers_[cause][i];
    own.share = c.renewal * in.share / (shift_ + c.renewal);
    const double into_wall = c.wall_by_flow * flow + c.wall_by_share * own.share;
    own.gas = carry_[i] * in.gas + (c.by_flow * flow + c.by_share * own.share + c.by_share_entering * in.share +
                                    c.by_wall / pivot[0] * into_wall + in.regained * given_around(branch, i)) /
                                       gas_pivot_[i];
    if (forward_[index] && in_riser(branch, i)) {
      const double first = (c.wall_by_entering * in.gas + c.wall_by_gas * own.gas + into_wall) / pivot[0];
      in.regained += c.outer * outermost(cell, first);
    }
    in.drive += c.drive_by_entering * in.gas + c.drive_by_own * own.gas;
    in.gas = own.gas;
    in.share = own.share;
  }
  return in;
}

ImplicitStep::Carried ImplicitStep::sweep(std::size_t index, std::vector<double>& u) {
  const BranchCells& branch = cells_->branches[index];
  const BranchSlopes& bs = slopes_->branches[index];
  Carried in;
  for (std::size_t n = 0; n < branch.last - branch.first; ++n) {
    const std::size_t i = at(branch, index, n);
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
    if (forward_[index] && in_riser(branch, i)) {
      double step = (wall[0] + c.wall_by_entering * in.gas + c.wall_by_gas * x[0]) / pivot[0];
      for (std::size_t j = 1; j < cell.node_count; ++j) step = (wall[j] + link[j - 1] * step) / pivot[j];
      in.regained += c.outer * step;
    }
    in.drive += c.drive_by_entering * in.gas + c.drive_by_own * x[0];
    in.gas = x[0];
    in.share = x[1];
  }
  return in;
}

/// What flow and arriving gas add; then the walls from the inside out.
void ImplicitStep::complete(std::size_t index, std::vector<double>& u) const {
  const BranchCells& branch = cells_->branches[index];
  const BranchSlopes& bs = slopes_->branches[index];
  const BranchEnd& from = source(index);
  const bool of_node = from.kind == EndKind::node;
  const double flow = outer_(flow_at(index));
  double entered = of_node ? outer_(gas_at(from.node)) : 0.0;
  const double arriving = entered;
  const double share = of_node ? outer_(share_at(from.node)) : 0.0;
  for (std::size_t n = 0; n < branch.last - branch.first; ++n) {
    const std::size_t i = at(branch, index, n);
    const Cell& cell = cells_->cells[i];
    const CellSlopes& c = slopes_->cells[i];
    if (i == bs.fire_into) entered = bs.fire_by_entering * entered + bs.fire_by_flow * flow;
    const double* link = slopes_->links.data() + cell.first_node;
    const double* pivot = pivot_.data() + cell.first_node;
    double* x = u.data() + cell.base;
    double* wall = x + 2;
    double added = answers_[by_flow][i].share * flow;
    x[0] += answers_[by_flow][i].gas * flow;
    if (of_node) {
      added += answers_[by_arriving_share][i].share * share;
      x[0] += answers_[by_arriving_gas][i].gas * arriving + answers_[by_arriving_share][i].gas * share;
    }
    x[1] += added;
    wall[0] = (wall[0] + c.wall_by_entering * entered + c.wall_by_gas * x[0] + c.wall_by_flow * flow + c.wall_by_share * added) /
              pivot[0];
    for (std::size_t j = 1; j < cell.node_count; ++j) wall[j] = (wall[j] + link[j - 1] * wall[j - 1]) / pivot[j];
    entered = x[0];
  }
}

void ImplicitStep::solve(std::vector<double>& u) {
  Eigen::VectorXd right = Eigen::VectorXd::Zero(outer_.size());
  std::vector<Carried> swept(branches_);
  for (std::size_t b = 0; b < branches_; ++b) {
    const BranchSlopes& bs = slopes_->branches[b];
    const double given = u[cells_->branches[b].flow];
    swept[b] = sweep(b, u);
    right(flow_at(b)) = bs.held ? given : bs.inertia * given + swept[b].drive;
    for (const auto& [end, sign] : {std::pair{&cells_->branches[b].from, -1.0}, std::pair{&cells_->branches[b].to, 1.0}}) {
      if (end->kind == EndKind::node) right(pressure_at(end->node)) += sign * given;
    }
    const BranchEnd& into = sink(b);
    if (into.kind != EndKind::node || cells_->branches[b].first == cells_->branches[b].last) continue;
    right(gas_at(into.node)) += bs.out_heat * swept[b].gas;
    right(share_at(into.node)) += bs.out_flow * swept[b].share;
  }
  for (std::size_t n = 0; n < nodes_; ++n) {
    const NodeSlopes& node = slopes_->nodes[n];
    right(gas_at(n)) += node.storage * u[cells_->junctions[n].base];
    right(share_at(n)) += node.mass * u[cells_->junctions[n].base + 1];
  }
  if (branches_ == 1 && nodes_ == 0) {
    outer_(0) = right(0) / border_(0, 0);
  } else {
    outer_ = factors_.solve(right);
  }
  for (std::size_t b = 0; b < branches_; ++b) {
    complete(b, u);
    u[cells_->branches[b].flow] = outer_(flow_at(b));
  }
  for (std::size_t n = 0; n < nodes_; ++n) {
    u[cells_->junctions[n].base] = outer_(gas_at(n));
    u[cells_->junctions[n].base + 1] = outer_(share_at(n));
  }
  for (const FlapCell& flap : cells_->flaps) u[flap.unknown] /= shift_ + 1.0 / flap_time;
}

}  // namespace fluewright::kernel
