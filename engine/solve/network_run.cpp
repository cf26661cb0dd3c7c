// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_run.hpp"

#include "engine/solve/flow_scan.hpp"

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

namespace fluewright {
namespace {

/// A sample that cannot be reached in one step is reached in halves, so often at most.
constexpr int reach_halvings = 4;
/// While looking a hundredth of a pascal will do.
constexpr NodeTolerance while_looking{1e-2 * pascal, 12};
constexpr NodeTolerance while_starting{1e-2 * pascal, 60};
constexpr NodeTolerance while_closing_in{1e-7 * pascal, 40};
constexpr unsigned close_bits = 16;
constexpr std::uintmax_t close_evaluations = 40;
/// Two states are one where every branch's flow agrees to this share of the largest.
constexpr double strictly_same = 1e-6;
constexpr double loosely_same = 1e-2;
/// How far beyond its bracket, in its widths, a root of the other slicing may lie.
constexpr double beside = 1.0;

MassFlow largest(const std::vector<MassFlow>& flows) {
  MassFlow most{};
  for (const MassFlow& f : flows) most = std::max(most, MassFlow(abs(f)));
  return most;
}

bool same(const NetworkSolution& a, const NetworkSolution& b, double share) {
  const MassFlow scale = share * std::max(largest(a.flows), largest(b.flows));
  for (std::size_t i = 0; i < a.flows.size(); ++i) {
    if (abs(a.flows[i] - b.flows[i]) > scale) return false;
  }
  return true;
}

/// The branch's own flow that lets the cap have `flow`.
HeldFlow held_at_cap(const NetworkMarch& march, MassFlow flow, const NetworkState& state) {
  const std::size_t stack = march.sliced().stack;
  if (flow > MassFlow{} && march.sliced().fire_branch == stack) {
    const Composition& gas = march.composition_at(march.network().branches[stack].from, state);
    return {stack, march.burning().stream_for(flow, gas)};
  }
  return {stack, flow};
}

NetworkSolution solve_held(const NetworkMarch& march, MassFlow flow, const NetworkSolution& guess,
                           const NodeTolerance& tolerance) {
  return NodeSolver{march}.solve(guess, held_at_cap(march, flow, guess.state), tolerance);
}

MassFlow cap_flow(const NetworkMarch& march, const NetworkSolution& solution) {
  return solution.state.branches[march.sliced().stack].at_to;
}

/// Whether every branch runs the same way.
bool alike(const NetworkSolution& a, const NetworkSolution& b) {
  for (std::size_t i = 0; i < a.flows.size(); ++i) {
    if ((a.flows[i] >= MassFlow{}) != (b.flows[i] >= MassFlow{})) return false;
  }
  return true;
}

/// Drive to spare below, none above: a state that comes back by itself when disturbed.
bool falls(const NetworkSolution& low, const NetworkSolution& high) {
  return low.left_over > Pressure{} && high.left_over <= Pressure{};
}

}  // namespace

NetworkSolution NetworkRun::at_cap_flow(MassFlow flow, const NetworkSolution& guess, bool on_coarse) const {
  return solve_held(on_coarse ? *coarse_ : *fine_, flow, guess, {});
}

std::optional<NetworkRun::Sample> NetworkRun::reach(MassFlow flow, const Sample& from, int halvings) const {
  NetworkSolution there = solve_held(*coarse_, flow, from.solution, while_looking);
  if (there.converged) return Sample{flow, std::move(there)};
  if (halvings == 0) return std::nullopt;
  const std::optional<Sample> half = reach(0.5 * (flow + from.flow), from, halvings - 1);
  return half ? reach(flow, *half, halvings - 1) : std::nullopt;
}

NetworkRun::Samples NetworkRun::follow_down() const {
  const StreamBurning& burning = coarse_->burning();
  const Composition air = coarse_->composition_at(coarse_->network().branches[coarse_->network().main_path.front()].from,
                                                  coarse_->at_rest());
  const MassFlow widest =
      burning.stream_at(widest_excess_air, air) + burning.wanted_rate() * burning.reaction().mass;
  std::vector<MassFlow> flows;
  for (auto share = scan_shares.rbegin(); share != scan_shares.rend(); ++share) flows.push_back(*share * widest);
  for (const double share : scan_shares) flows.push_back(-share * widest);

  Samples samples;
  const NodeSolver solver{*coarse_};
  for (const MassFlow& flow : flows) {
    std::optional<Sample> next;
    if (!samples.empty()) next = reach(flow, samples.back(), reach_halvings);
    if (!next) {
      NetworkSolution start = solver.solve_afresh(flow, held_at_cap(*coarse_, flow, coarse_->at_rest()), while_starting);
      if (start.converged) next = Sample{flow, std::move(start)};
    }
    if (next) samples.push_back(std::move(*next));
  }
  if (samples.empty()) return samples;
  // Far out losses win: the residual must be negative forward, positive backward.
  for (int i = 0; i < widenings && samples.front().solution.left_over > Pressure{}; ++i) {
    auto next = reach(widening * samples.front().flow, samples.front(), reach_halvings);
    if (!next) break;
    samples.insert(samples.begin(), std::move(*next));
  }
  for (int i = 0; i < widenings && samples.back().solution.left_over < Pressure{}; ++i) {
    auto next = reach(widening * samples.back().flow, samples.back(), reach_halvings);
    if (!next) break;
    samples.push_back(std::move(*next));
  }
  return samples;
}

std::vector<NetworkRun::Fall> NetworkRun::follow_up(const Samples& down) const {
  std::vector<Fall> found;
  std::optional<Sample> other;  // where the way up differs from the way down
  for (std::size_t i = down.size(); i-- > 1;) {
    const Sample& here = down[i];
    const Sample& next = down[i - 1];
    if (!other && alike(here.solution, next.solution)) continue;
    const Sample& from = other ? *other : here;
    std::optional<Sample> there = reach(next.flow, from, 0);
    if (there && same(there->solution, next.solution, loosely_same)) there.reset();
    if (there && falls(from.solution, there->solution)) found.push_back({from, *there});
    other = std::move(there);
  }
  return found;
}

std::optional<NetworkSolution> NetworkRun::close_in(const NetworkMarch& march, const Fall& fall) const {
  NetworkSolution last = fall.low.solution;
  bool lost = false;
  const auto residual = [&](double m) {
    NetworkSolution next = solve_held(march, m * kilogram_per_second, last, while_closing_in);
    lost = lost || !next.converged;
    last = std::move(next);
    return in(last.left_over, pascal);
  };
  const double low = in(fall.low.flow, kilogram_per_second);
  const double high = in(fall.high.flow, kilogram_per_second);
  const double at_low = residual(low);
  const double at_high = residual(high);
  if (lost || !(at_low > 0.0 && at_high <= 0.0)) return std::nullopt;
  std::uintmax_t evaluations = close_evaluations;
  const boost::math::tools::eps_tolerance<double> close_enough(close_bits);
  (void)boost::math::tools::toms748_solve(residual, low, high, at_low, at_high, close_enough, evaluations);
  if (lost) return std::nullopt;
  return last;
}

std::optional<NetworkSolution> NetworkRun::settle(const Fall& fall, bool& stable) const {
  const NetworkSolution& low = fall.low.solution;
  const NetworkSolution& high = fall.high.solution;
  const auto between = [&](const NetworkSolution& s, const NetworkMarch& march) {
    const MassFlow flow = cap_flow(march, s);
    const MassFlow room = beside * (fall.high.flow - fall.low.flow);
    return s.converged && flow > fall.low.flow - room && flow < fall.high.flow + room;
  };
  // Newton from where a straight line between the two samples crosses zero, held to the bracket.
  const double share = in(low.left_over / (low.left_over - high.left_over), Ratio(1.0));
  NetworkSolution guess = share < 0.5 ? low : high;
  guess.x = (1.0 - share) * low.x + share * high.x;
  guess.walked = nullptr;
  guess.slopes.resize(0, 0);
  NetworkSolution rough = NodeSolver{*coarse_}.solve(guess, std::nullopt, while_closing_in);
  if (!between(rough, *coarse_)) {
    std::optional<NetworkSolution> closed = close_in(*coarse_, fall);
    if (!closed) return std::nullopt;
    closed->slopes.resize(0, 0);
    rough = std::move(*closed);
  }
  stable = NodeSolver{*coarse_}.is_stable(rough);
  NetworkSolution fine = NodeSolver{*fine_}.solve(rough, std::nullopt, {});
  if (between(fine, *fine_)) return fine;
  std::optional<NetworkSolution> closed = close_in(*fine_, fall);
  if (!closed) return std::nullopt;
  closed->slopes.resize(0, 0);
  fine = NodeSolver{*fine_}.solve(*closed, std::nullopt, {});
  return between(fine, *fine_) ? std::optional{std::move(fine)} : std::nullopt;
}

std::vector<NetworkPoint> NetworkRun::points() const {
  const Samples down = follow_down();
  std::vector<Fall> candidates;
  for (std::size_t i = down.size(); i-- > 1;) {
    if (falls(down[i].solution, down[i - 1].solution)) candidates.push_back({down[i], down[i - 1]});
  }
  for (Fall& fall : follow_up(down)) candidates.push_back(std::move(fall));

  std::vector<NetworkPoint> found;
  for (const Fall& fall : candidates) {
    bool stable = false;
    std::optional<NetworkSolution> state = settle(fall, stable);
    if (!state) continue;
    const bool known = std::any_of(found.begin(), found.end(), [&](const NetworkPoint& p) {
      return same(p.solution, *state, strictly_same);
    });
    if (known) continue;
    found.push_back({operating_point_of(*fine_, *state, stable), std::move(*state)});
  }
  std::sort(found.begin(), found.end(), [](const NetworkPoint& a, const NetworkPoint& b) {
    if (a.point.forward != b.point.forward) return a.point.forward;
    return a.point.flue_gas > b.point.flue_gas;
  });
  return found;
}

OperatingPoint operating_point_of(const NetworkMarch& march, const NetworkSolution& solution, bool stable) {
  const NetworkState& state = solution.state;
  const FlueNetwork& network = march.network();
  const BranchFlow& stack = state.branches[march.sliced().stack];
  OperatingPoint p;
  p.stable = stable;
  p.flue_gas = stack.at_to;
  p.forward = stack.at_to > MassFlow{};
  p.residual = solution.worst_pressure;
  HeatBalance& h = p.heat;
  if (const auto fire = march.sliced().fire_branch) {
    const BranchFlow& f = state.branches[*fire];
    p.forward = p.forward && f.forward;
    p.excess_air_ratio = f.fire.excess_air_ratio;
    p.burn_rate = f.fire.burn_rate;
    p.short_of_air = f.fire.short_of_air;
    p.fire_temperature = f.totals.fire;
    h.released = f.fire.released;
    h.unburned = f.fire.released - f.fire.added;
  }
  const BranchFlow& inlet = state.branches[network.main_path.front()];
  p.exit_temperature = stack.forward ? stack.totals.exit : inlet.totals.exit;
  for (std::size_t b = 0; b < state.branches.size(); ++b) {
    const BranchFlow& f = state.branches[b];
    p.fans.insert(p.fans.end(), f.totals.fans.begin(), f.totals.fans.end());
    p.branch_flows.push_back(f.forward ? f.at_from : f.at_to);
    p.fans.insert(p.fans.end(), f.totals.fans.begin(), f.totals.fans.end());
    h.to_room += f.totals.to_room;
    h.into_mass += f.totals.into_mass;
    h.to_outdoors += f.totals.to_outdoors;
    h.stack_loss += f.totals.stack;
    const BranchEnd& sink = f.forward ? network.branches[b].to : network.branches[b].from;
    if (sink.kind == EndKind::room_air) p.smoke_to_room += f.flue_share * f.outflow();
  }
  const Power accounted = h.unburned + h.to_room + h.into_mass + h.to_outdoors + h.stack_loss;
  if (h.released > Power{}) h.closure = std::abs(((h.released - accounted) / h.released).value());
  return p;
}

}  // namespace fluewright
