// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Where branches end and meet.

#include "engine/burn/burn_equations.hpp"
#include "engine/burn/burn_walk.hpp"
#include "engine/flow/crack.hpp"
#include "engine/solve/burning.hpp"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright::kernel {
namespace {

std::size_t port_of(const BranchEnd& end) { return static_cast<std::size_t>(end.port); }

std::array<double, 3> heads_at(const JunctionForm& form, const std::array<double, 3>& into, double density) {
  const JunctionFlows flows{into[0] * kilogram_per_second, into[1] * kilogram_per_second, into[2] * kilogram_per_second};
  const JunctionHeads heads = junction_heads(form, flows, density * kilogram_per_cubic_metre);
  return {0.0, in(heads.run_out, pascal), in(heads.branch, pascal)};
}

}  // namespace

double BurnEquations::area_of(const BranchCells& branch, const Walk& w) const {
  const HoleCell& hole = *branch.hole;
  if (hole.priming_tee) return w.interval->priming > 0.0 ? hole.area : 0.0;
  if (hole.flap == nowhere) return hole.area;
  const double open = std::clamp(w.state[cells_->flaps[hole.flap].unknown], 0.0, 1.0);
  return hole.shut_area + open * (hole.area - hole.shut_area);
}

/// A fan as it is switched: its head, and what its blades are in the way.
void BurnEquations::pass_fan(Walk& w, const Cell& cell) {
  Fan fan = *cell.fan;
  for (const auto& [piece, speed] : w.interval->fan_speeds) {
    if (piece == cell.piece) fan.speed = speed;
  }
  if (!w.interval->powered) fan.speed = 0.0;
  const double blows = fan.blows_along ? 1.0 : -1.0;
  const double rho = density(w.gas.temperature, w.gas.share);
  const auto effect_at = [&](double flow) {
    return fan_effect(fan, w.sign * blows * flow / rho * cubic_metre / second, rho * kilogram_per_cubic_metre,
                      cell.area * square_metre);
  };
  const FanEffect effect = effect_at(w.flow);
  const double head = blows * in(effect.head, pascal);
  const double loss = in(effect.loss, pascal);
  w.now.fan += head;
  w.now.resistance += loss;
  w.pending_loss += loss - w.sign * head;
  w.loss_by_flow += 2.0 * loss / w.flow * w.flow_per_reaching;
  if (w.slopes == nullptr) return;
  const double step = 1e-4 * w.flow + 1e-7;
  const double more = blows * in(effect_at(w.flow + step).head, pascal);
  w.fan_by_flow += w.sign * (more - head) / step * w.flow_per_reaching;
  w.drive_slope += (head - w.sign * loss) / w.gas.temperature * -1.0;
}

double BurnEquations::motor_at(std::size_t cell) const {
  const Cell& c = cells_->cells[cell];
  return in_kelvin(motor_temperature(c.fan->curve.sheet(), kelvins(now_[cell].mean), kelvins(air_beside(c))));
}

/// Gas that goes straight through a hole.
void BurnEquations::pass_opening(std::size_t index, Walk& w) {
  const BranchCells& branch = cells_->branches[index];
  const double area = area_of(branch, w);
  const double arriving = gas_->enthalpy(w.gas.temperature, w.gas.share);
  if (area > 0.0) {
    const double open = discharge_coefficient * area;
    const double loss = 0.5 * w.flow * w.flow / (density(w.gas.temperature, w.gas.share) * open * open);
    w.now.resistance += loss;
    w.loss_by_flow += 2.0 * loss / w.flow;
    if (w.slopes != nullptr) w.slopes->branches[index].by_arriving_gas = -w.sign * loss / w.gas.temperature;
  }
  leave_branch(w, branch, arriving);
}

/// The gas has come to the branch's end.
void BurnEquations::leave_branch(Walk& w, const BranchCells& branch, double arriving) {
  const BranchEnd& sink = w.forward ? branch.to : branch.from;
  const BranchEnd& source = w.forward ? branch.from : branch.to;
  const double leaving = gas_->enthalpy(w.gas.temperature, w.gas.share);
  balance_[w.branch] = w.now;
  if (source.kind == EndKind::node) {
    nodes_[source.node].surplus -= w.reaching;
    nodes_[source.node].into[port_of(source)] -= w.reaching;
  }
  double by_flow = -arriving;
  if (sink.kind == EndKind::node) {
    NodeNow& node = nodes_[sink.node];
    node.surplus += w.flow;
    node.into[port_of(sink)] += w.flow;
    node.inflow += w.flow;
    node.fresh += w.flow * (1.0 - w.gas.share);
    node.heat += w.flow * leaving;
    node.vapour_left = std::min(node.vapour_left, w.vapour_left);
  } else {
    by_flow += w.flow_per_reaching * leaving;
  }
  if (source.kind == EndKind::node) by_flow += arriving;
  if (w.slopes != nullptr) {
    BranchSlopes& b = w.slopes->branches[w.branch];
    b.inertia = branch.inertia;
    b.by_flow = -w.loss_by_flow + w.fan_by_flow;
    b.leaving_by_flow = w.sign * by_flow;
    b.out_flow = w.flow;
    b.out_heat = w.flow * gas_->specific_heat(w.gas.temperature, w.gas.share);
    b.out_flow_by_flow = w.flow_per_reaching;
    if (sink.kind == EndKind::node) {
      const double* node = w.state + cells_->junctions[sink.node].base;
      b.node_heat_by_flow = w.sign * w.flow_per_reaching * (leaving - gas_->enthalpy(node[0], w.gas.share));
      b.node_share_by_flow = w.sign * w.flow_per_reaching * (w.gas.share - node[1]);
    }
  }
  if (w.lines == nullptr) return;
  Lines& lines = *w.lines;
  Line line = sink.kind == EndKind::room_air ? out_of_mouth : out_of_cap;
  if (sink.kind != EndKind::node) lines[line] += w.flow * leaving;
  if (source.kind != EndKind::node) lines[line] -= w.reaching * arriving;
  if (sink.kind == EndKind::room_air) lines[smoke] += w.flow * w.gas.share;
}

void BurnEquations::settle_nodes(Walk& w) {
  for (std::size_t n = 0; n < nodes_.size(); ++n) mix_node(w, n);
  settle_pressures(w);
  for (const BranchCells& branch : cells_->branches) {
    if (!branch.hole || branch.hole->flap == nowhere) continue;
    const FlapCell& flap = cells_->flaps[branch.hole->flap];
    const BranchNow& now = balance_[static_cast<std::size_t>(&branch - cells_->branches.data())];
    const double wanted = flap_opening((now.from - now.to) * pascal, flap.set_draft * pascal, flap.span * pascal);
    w.rate[flap.unknown] = (wanted - w.state[flap.unknown]) / flap_time;
  }
}

/// A priming fire's flames stand in the stack above the open tee: its heat goes into the gas along them, whichever way that
/// moves. Their height 0.235 Q^0.4 - 1.02 D (kW, m), at least a tenth of a metre: Heskestad, Fire Safety J. 5 (1983) 103, from memory.
void BurnEquations::heat_flames(Walk& w, double heat) {
  const BranchCells* stack = nullptr;
  for (const BranchCells& b : cells_->branches) {
    if (b.from.kind == EndKind::node && b.from.node == priming_node_ && b.last > b.first) stack = &b;
  }
  if (stack == nullptr) return;
  const double height = std::max(0.235 * std::pow(1e-3 * w.interval->priming, 0.4) - 1.02 * cells_->cells[stack->first].diameter, 0.1);
  double reached = 0.0;
  double lengths = 0.0;
  for (std::size_t i = stack->first; i < stack->last && lengths < height; ++i) lengths += cells_->cells[i].length;
  for (std::size_t i = stack->first; i < stack->last && reached < height; ++i) {
    const Cell& cell = cells_->cells[i];
    reached += cell.length;
    const double* s = w.state + cell.base;
    const double storage = now_[i].density * cell.volume * gas_->specific_heat(s[0], s[1]);
    w.rate[cell.base] += heat * cell.length / lengths / storage;
  }
  if (w.lines != nullptr) (*w.lines)[released] += heat;
}

/// What comes in mixes; a priming fire turns part of its air into flue gas.
void BurnEquations::mix_node(Walk& w, std::size_t index) {
  const JunctionCell& junction = cells_->junctions[index];
  NodeNow& node = nodes_[index];
  const GasPair& gas = *gas_;
  const double t = w.state[junction.base];
  const double share = w.state[junction.base + 1];
  double burn = 0.0;
  if (index == priming_node_ && w.interval->priming > 0.0) {
    const double wanted = w.interval->priming / gas.heat_to_gas();  // as if it were wood
    burn = std::min(wanted, (node.fresh + mouth_exchange) / (least_excess_air * gas.air_per_fuel()));
    burn = std::min(burn, node.fresh / gas.air_per_fuel());
    heat_flames(w, burn * gas.heat_to_gas());
  }
  const double air = node.fresh - burn * gas.air_per_fuel();
  const double spent = node.inflow - node.fresh + burn * (gas.air_per_fuel() + gas.solid_per_fuel());
  const double rho = density(t, share);
  const double mass = rho * junction.volume;
  const double storage = mass * gas.specific_heat(t, share);
  const double left = air * gas.air_enthalpy(t) + spent * gas.burnt_enthalpy(t);
  w.rate[junction.base] = (node.heat - left) / storage;
  w.rate[junction.base + 1] = (spent - (air + spent) * share) / mass;
  node.surplus += burn * gas.solid_per_fuel();
  if (junction.form) node.heads = heads_at(*junction.form, node.into, rho);
  if (w.slopes == nullptr) return;
  NodeSlopes& slopes = w.slopes->nodes[index];
  slopes.storage = storage;
  slopes.mass = mass;
  slopes.through_flow = air + spent;
  slopes.through_heat = air * gas.specific_heat(t, 0.0) + spent * gas.specific_heat(t, 1.0);
  if (!junction.form) return;
  double whole = 1e-4;
  for (const double flow : node.into) whole = std::max(whole, std::abs(flow));
  const double step = 1e-5 * whole;
  for (std::size_t port = 0; port < 3; ++port) {
    std::array<double, 3> less = node.into;
    std::array<double, 3> more = node.into;
    less[port] -= step;
    more[port] += step;
    const auto low = heads_at(*junction.form, less, rho);
    const auto high = heads_at(*junction.form, more, rho);
    for (std::size_t k = 0; k < 3; ++k) slopes.head_by_flow[k][port] = (high[k] - low[k]) / (2.0 * step);
  }
}

/// Node pressures such that what piles up dies away; with them the flows' rates.
void BurnEquations::settle_pressures(Walk& w) {
  const std::size_t count = nodes_.size();
  const auto held = [&](const BranchCells& b) {
    if (b.hole) return !(area_of(b, w) > 0.0);
    return w.interval->flow_is_given && &b == &cells_->branches[cells_->fire_branch];
  };
  const auto head = [&](const BranchEnd& end) { return end.kind == EndKind::node ? nodes_[end.node].heads[port_of(end)] : 0.0; };
  if (count > 0) {
    const auto size = static_cast<Eigen::Index>(count);
    Eigen::MatrixXd matrix = Eigen::MatrixXd::Zero(size, size);
    Eigen::VectorXd right(size);
    for (std::size_t n = 0; n < count; ++n) right(static_cast<Eigen::Index>(n)) = nodes_[n].surplus / node_settling;
    for (std::size_t b = 0; b < balance_.size(); ++b) {
      const BranchCells& branch = cells_->branches[b];
      const bool still_branch = held(branch);
      BranchNow free = balance_[b];
      free.from += head(branch.from);
      free.to += head(branch.to);
      const double rate = still_branch ? w.rate[branch.flow] : free.left_over() / branch.inertia;
      for (const auto& [end, sign] : {std::pair{&branch.from, -1.0}, std::pair{&branch.to, 1.0}}) {
        if (end->kind != EndKind::node) continue;
        const auto row = static_cast<Eigen::Index>(end->node);
        right(row) += sign * rate;
        if (still_branch) continue;
        for (const auto& [other, other_sign] : {std::pair{&branch.from, -1.0}, std::pair{&branch.to, 1.0}}) {
          if (other->kind == EndKind::node) {
            matrix(row, static_cast<Eigen::Index>(other->node)) += sign * other_sign / branch.inertia;
          }
        }
      }
    }
    const Eigen::VectorXd pressure = matrix.partialPivLu().solve(right);
    for (std::size_t n = 0; n < count; ++n) nodes_[n].pressure = pressure(static_cast<Eigen::Index>(n));
  }
  for (std::size_t b = 0; b < balance_.size(); ++b) {
    const BranchCells& branch = cells_->branches[b];
    BranchNow& now = balance_[b];
    if (branch.from.kind == EndKind::node) now.from = nodes_[branch.from.node].pressure + head(branch.from);
    if (branch.to.kind == EndKind::node) now.to = nodes_[branch.to.node].pressure + head(branch.to);
    const bool still_branch = held(branch);
    if (!still_branch) w.rate[branch.flow] = now.left_over() / branch.inertia;
    if (w.slopes == nullptr) continue;
    w.slopes->branches[b].held = still_branch;
    w.slopes->branches[b].decay = still_branch && branch.hole ? 1.0 / node_settling : 0.0;
  }
}

}  // namespace fluewright::kernel
