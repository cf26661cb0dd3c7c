// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_equations.hpp"

#include "engine/flow/crack.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {
namespace {

MassFlow& flow_at(JunctionFlows& flows, JunctionPort port) {
  return port == JunctionPort::run_in ? flows.run_in : port == JunctionPort::run_out ? flows.run_out : flows.branch;
}

double head_at(const JunctionHeads& heads, JunctionPort port) {
  return port == JunctionPort::run_in ? 0.0 : in(port == JunctionPort::run_out ? heads.run_out : heads.branch, pascal);
}

constexpr std::array ports{JunctionPort::run_in, JunctionPort::run_out, JunctionPort::branch};

/// Steps of the difference quotients of laws that cost nothing.
constexpr double relative_step = 1e-6;
constexpr double least_flow = 1e-4;        // kg/s
constexpr double least_difference = 1e-2;  // Pa

}  // namespace

NetworkEquations::NetworkEquations(const NetworkMarch& march, std::optional<HeldFlow> held)
    : march_{&march},
      held_{held},
      branches_{index_at(march.network().branches.size())},
      nodes_{index_at(march.network().nodes.size())} {}

JunctionFlows NetworkEquations::into(std::size_t node, const NetworkState& state) const {
  JunctionFlows flows;
  const auto& branches = march_->network().branches;
  for (std::size_t b = 0; b < branches.size(); ++b) {
    const auto& [from, to] = std::pair{branches[b].from, branches[b].to};
    if (from.kind == EndKind::node && from.node == node) flow_at(flows, from.port) -= state.branches[b].at_from;
    if (to.kind == EndKind::node && to.node == node) flow_at(flows, to.port) += state.branches[b].at_to;
  }
  return flows;
}

double NetworkEquations::pressure_at(const BranchEnd& end, const Eigen::VectorXd& x, const NetworkState& state) const {
  if (end.kind != EndKind::node) return in(march_->free_air(end), pascal);
  const JunctionHeads heads =
      junction_heads(march_->network().nodes[end.node].form, into(end.node, state), state.nodes[end.node].density);
  return x(branches_ + index_at(end.node)) + head_at(heads, end.port);
}

double NetworkEquations::opening_flow(std::size_t branch, double difference, const NetworkState& state) const {
  const Branch& written = march_->network().branches[branch];
  const Opening& o = *written.opening;
  const BranchEnd& source = difference >= 0.0 ? written.from : written.to;
  const Density gas = source.kind == EndKind::node ? state.nodes[source.node].density : march_->air_density(source);
  Area area = o.area;
  if (o.set_draft) {
    area = o.shut_area + flap_opening(difference * pascal, *o.set_draft, o.span) * (o.area - o.shut_area);
  }
  return in(crack_flow(area, gas, difference * pascal), kilogram_per_second);
}

double NetworkEquations::opening_slope(std::size_t branch, const Eigen::VectorXd& x, const NetworkState& state) const {
  const Branch& written = march_->network().branches[branch];
  const double dp = pressure_at(written.from, x, state) - pressure_at(written.to, x, state);
  const double step = relative_step * std::max(std::abs(dp), least_difference);
  return (opening_flow(branch, dp + step, state) - opening_flow(branch, dp - step, state)) / (2.0 * step);
}

double NetworkEquations::balance(std::size_t branch, const Eigen::VectorXd& x, const NetworkState& state) const {
  const Branch& written = march_->network().branches[branch];
  const double difference = pressure_at(written.from, x, state) - pressure_at(written.to, x, state);
  if (written.opening) return opening_weight * (x(index_at(branch)) - opening_flow(branch, difference, state));
  return difference + in(state.branches[branch].drive, pascal);
}

Pressure NetworkEquations::left_over(const Eigen::VectorXd& x, const NetworkState& state) const {
  return balance(held_ ? held_->branch : march_->sliced().stack, x, state) * pascal;
}

void NetworkEquations::set_branch_rows(const Eigen::VectorXd& x, const NetworkState& state, Eigen::VectorXd& values) const {
  for (Eigen::Index b = 0; b < branches_; ++b) values(b) = balance(static_cast<std::size_t>(b), x, state);
  if (held_) values(index_at(held_->branch)) = mass_weight * (x(index_at(held_->branch)) - in(held_->flow, kilogram_per_second));
}

Eigen::VectorXd NetworkEquations::values(Eigen::VectorXd& x, NetworkState& state, bool with_slopes) const {
  std::vector<MassFlow> flows(static_cast<std::size_t>(branches_));
  for (std::size_t b = 0; b < flows.size(); ++b) flows[b] = x(index_at(b)) * kilogram_per_second;
  for (std::size_t n = 0; n < state.nodes.size(); ++n) {
    state.nodes[n].temperature = kelvins(x(branches_ + nodes_ + index_at(n)));
  }
  march_->pass(flows, state, with_slopes);

  Eigen::VectorXd f(size());
  set_branch_rows(x, state, f);
  for (std::size_t n = 0; n < state.nodes.size(); ++n) {
    const JunctionFlows in_flow = into(n, state);
    f(branches_ + index_at(n)) = mass_weight * in(in_flow.run_in + in_flow.run_out + in_flow.branch, kilogram_per_second);
    const NodeState& node = state.nodes[n];
    f(branches_ + nodes_ + index_at(n)) = temperature_weight * in(node.temperature - node.mixed, kelvin);
    x(branches_ + nodes_ + index_at(n)) = in_kelvin(node.temperature);
  }
  return f;
}

void NetworkEquations::add_end(std::size_t branch, const BranchEnd& end, double sign, const NetworkState& state,
                               Eigen::MatrixXd& j) const {
  if (end.kind != EndKind::node) return;
  const auto& branches = march_->network().branches;
  const NodeState& node = state.nodes[end.node];
  const JunctionForm& form = march_->network().nodes[end.node].form;
  const Eigen::Index row = index_at(branch);
  j(row, branches_ + index_at(end.node)) += sign;
  const JunctionFlows here = into(end.node, state);
  const double head = head_at(junction_heads(form, here, node.density), end.port);
  j(row, branches_ + nodes_ + index_at(end.node)) += sign * head / in_kelvin(node.temperature);
  const double whole = std::max({std::abs(in(here.run_in, kilogram_per_second)), std::abs(in(here.run_out, kilogram_per_second)),
                                 std::abs(in(here.branch, kilogram_per_second)), least_flow});
  std::array<double, 3> by_port{};
  for (std::size_t p = 0; p < ports.size(); ++p) {
    const double step = relative_step * whole;
    JunctionFlows less = here;
    JunctionFlows more = here;
    flow_at(less, ports[p]) -= step * kilogram_per_second;
    flow_at(more, ports[p]) += step * kilogram_per_second;
    by_port[p] = (head_at(junction_heads(form, more, node.density), end.port) -
                  head_at(junction_heads(form, less, node.density), end.port)) /
                 (2.0 * step);
  }
  for (std::size_t b = 0; b < branches.size(); ++b) {
    const BranchFlow& f = state.branches[b];
    const auto meets = [&](const BranchEnd& e) { return e.kind == EndKind::node && e.node == end.node; };
    if (meets(branches[b].from)) {
      const double slope = f.forward ? 1.0 : f.slopes.leaving_by_flow;
      j(row, index_at(b)) -= sign * by_port[static_cast<std::size_t>(branches[b].from.port)] * slope;
    }
    if (meets(branches[b].to)) {
      const double slope = f.forward ? f.slopes.leaving_by_flow : 1.0;
      j(row, index_at(b)) += sign * by_port[static_cast<std::size_t>(branches[b].to.port)] * slope;
    }
  }
}

void NetworkEquations::add_branch_row(std::size_t branch, const Eigen::VectorXd& x, const NetworkState& state,
                                      Eigen::MatrixXd& j) const {
  const Branch& written = march_->network().branches[branch];
  const BranchFlow& f = state.branches[branch];
  const Eigen::Index row = index_at(branch);
  if (written.opening) {
    const double slope = -opening_weight * opening_slope(branch, x, state);
    add_end(branch, written.from, slope, state, j);
    add_end(branch, written.to, -slope, state, j);
    j(row, row) += opening_weight;
    return;
  }
  add_end(branch, written.from, 1.0, state, j);
  add_end(branch, written.to, -1.0, state, j);
  j(row, row) += f.slopes.drive_by_flow;
  const BranchEnd& source = f.forward ? written.from : written.to;
  if (source.kind == EndKind::node) j(row, branches_ + nodes_ + index_at(source.node)) += f.slopes.drive_by_temperature;
}

void NetworkEquations::add_node_rows(const NetworkState& state, Eigen::MatrixXd& j) const {
  const auto& branches = march_->network().branches;
  for (std::size_t n = 0; n < state.nodes.size(); ++n) j(branches_ + nodes_ + index_at(n), branches_ + nodes_ + index_at(n)) = temperature_weight;
  for (std::size_t b = 0; b < branches.size(); ++b) {
    const BranchFlow& f = state.branches[b];
    const BranchEnd& source = f.forward ? branches[b].from : branches[b].to;
    const BranchEnd& sink = f.forward ? branches[b].to : branches[b].from;
    const double way = f.forward ? 1.0 : -1.0;
    if (source.kind == EndKind::node) j(branches_ + index_at(source.node), index_at(b)) -= mass_weight * way;
    if (sink.kind != EndKind::node) continue;
    j(branches_ + index_at(sink.node), index_at(b)) += mass_weight * way * f.slopes.leaving_by_flow;

    // The mixed temperature by what this branch brings.
    const NodeState& node = state.nodes[sink.node];
    if (!(node.inflow > MassFlow{})) continue;
    const Eigen::Index row = branches_ + nodes_ + index_at(sink.node);
    const GasTable& gas = *node.gas;
    const auto heat = gas.specific_heat(node.mixed) * node.inflow;
    const MassFlow out = f.outflow();
    const double by_exit = in(out * gas.specific_heat(f.totals.exit) / heat, Ratio(1.0));
    const SpecificEnergy above = mixture_of(f.leaving).specific_enthalpy(f.totals.exit) - gas.specific_enthalpy(node.mixed);
    const double by_flow = in(above / heat * kilogram_per_second, kelvin);
    j(row, index_at(b)) -= temperature_weight * (way * by_flow * f.slopes.leaving_by_flow + by_exit * f.slopes.exit_by_flow);
    if (source.kind == EndKind::node) {
      j(row, branches_ + nodes_ + index_at(source.node)) -= temperature_weight * by_exit * f.slopes.exit_by_temperature;
    }
  }
}

Eigen::MatrixXd NetworkEquations::slopes(const Eigen::VectorXd& x, const NetworkState& state) const {
  Eigen::MatrixXd j = Eigen::MatrixXd::Zero(size(), size());
  for (std::size_t b = 0; b < march_->network().branches.size(); ++b) add_branch_row(b, x, state, j);
  add_node_rows(state, j);
  if (held_) {
    j.row(index_at(held_->branch)).setZero();
    j(index_at(held_->branch), index_at(held_->branch)) = mass_weight;
  }
  return j;
}

}  // namespace fluewright
