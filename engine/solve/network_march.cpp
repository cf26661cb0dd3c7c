// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/network_march.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {
namespace {

/// A branch with hardly any flow is filled from both ends: within this flow of rest the two gases that its ends offer
/// give way to one another (chosen: about half a millimetre a second in a 150 mm pipe), so that pressure has no step
/// where the flow turns round.
constexpr MassFlow both_ends = 1e-5 * kilogram_per_second;

/// How much of such a branch holds the gas of the end that it runs from: half at rest, all of it at `both_ends`.
Ratio share_of_own(MassFlow flow) {
  const Ratio x = 0.5 * (1.0 + abs(flow) / both_ends);
  return x * x * (3.0 - 2.0 * x);
}

/// The slices of a branch that is filled from both ends, from those of its own stream (in the order it runs) and those
/// the gas of the other end would make (in the order of the first).
void mix_rows(std::span<SliceState> rows, std::span<const SliceState> other, Ratio own, bool forward) {
  const auto mixed = [own](auto a, auto b) { return decltype(a)(own * a + (1.0 - own) * b); };
  const auto mixed_level = [own](Temperature a, Temperature b) { return b + own * (a - b); };
  Pressure gained{};
  for (std::size_t i = 0; i < rows.size(); ++i) {
    SliceState& row = rows[i];
    const SliceState& there = other[i];
    const Pressure before = row.buoyancy + row.fan - row.loss;
    for (Pressure SliceState::*part : {&SliceState::friction, &SliceState::local, &SliceState::acceleration,
                                       &SliceState::loss, &SliceState::buoyancy, &SliceState::fan}) {
      row.*part = mixed(row.*part, there.*part);
    }
    for (Temperature SliceState::*level : {&SliceState::gas, &SliceState::wall, &SliceState::surface}) {
      row.*level = mixed_level(row.*level, there.*level);
    }
    row.density = mixed(row.density, there.density);
    const Pressure more = row.buoyancy + row.fan - row.loss - before;
    if (forward) gained += more;
    row.gauge += gained;
    if (!forward) gained -= more;
  }
}

/// Steps of the difference quotients.
constexpr double flow_step = 1e-5;
constexpr MassFlow least_flow_step_of = 1e-4 * kilogram_per_second;
constexpr TemperatureDifference temperature_step = 1e-2 * kelvin;

const BranchEnd& source_of(const Branch& branch, bool forward) { return forward ? branch.from : branch.to; }

}  // namespace

SlicedNetwork slice_network(const FlueNetwork& network, Length longest) {
  SlicedNetwork sliced;
  sliced.network = &network;
  sliced.stack = network.main_path.back();
  for (std::size_t b = 0; b < network.branches.size(); ++b) {
    const auto& stretches = network.branches[b].stretches;
    sliced.paths.push_back(slice_branch(network.branches[b], longest));
    if (std::any_of(stretches.begin(), stretches.end(), [](const Stretch& s) { return s.fire; })) sliced.fire_branch = b;
  }
  return sliced;
}

NetworkMarch::NetworkMarch(const SlicedNetwork& network, const Surround& surround, const WoodFuel& fuel,
                           MassFlow wanted_burn_rate, WallAge age)
    : sliced_{&network},
      surround_{&surround},
      burning_{fuel, wanted_burn_rate},
      age_{age},
      room_air_{moist_air(surround.room_water)},
      outdoor_air_{moist_air(surround.outdoor_water)},
      room_composition_{composition_of(room_air_.mixture())},
      outdoor_composition_{composition_of(outdoor_air_.mixture())} {}

NetworkState NetworkMarch::at_rest() const {
  NetworkState state;
  state.branches.resize(network().branches.size());
  state.nodes.resize(network().nodes.size());
  for (NodeState& node : state.nodes) {
    node.temperature = node.mixed = surround_->room;
    node.composition = room_composition_;
    node.gas = room_air_;
    node.density = surround_->room_air;
  }
  return state;
}

Pressure NetworkMarch::free_air(const BranchEnd& end) const {
  if (end.kind == EndKind::room_air) return surround_->room_gauge(end.height);
  return end.cap ? surround_->cap_gauge : Pressure{};
}

Density NetworkMarch::air_density(const BranchEnd& end) const {
  return end.kind == EndKind::room_air ? surround_->room_air : surround_->outdoor_air;
}

const Composition& NetworkMarch::composition_at(const BranchEnd& end, const NetworkState& state) const {
  if (end.kind == EndKind::node) return state.nodes[end.node].composition;
  return end.kind == EndKind::room_air ? room_composition_ : outdoor_composition_;
}

Stream NetworkMarch::stream_at(const BranchEnd& end, const NetworkState& state) const {
  Stream s;
  if (end.kind != EndKind::node) {
    const bool room = end.kind == EndKind::room_air;
    s.gas = room ? &room_air_ : &outdoor_air_;
    s.temperature = room ? surround_->room : surround_->outdoor;
    s.total = free_air(end);
    return s;
  }
  const NodeState& node = state.nodes[end.node];
  s.gas = &*node.gas;
  s.temperature = node.temperature;
  s.flue_gas = node.flue_share > Ratio(0.0);
  // What the air among it would have had anyway does not count as the fire's.
  const Ratio air = 1.0 - node.flue_share;
  const auto beyond_air = [&](Species species) {
    const Ratio y = s.gas->mixture().mole_fraction(species) - air * room_air_.mixture().mole_fraction(species);
    return std::max(y, Ratio(0.0)) * surround_->absolute;
  };
  s.co2 = beyond_air(Species::carbon_dioxide);
  s.h2o = beyond_air(Species::water);
  return s;
}

BranchFlow NetworkMarch::walk(std::size_t branch, MassFlow flow, const NetworkState& state,
                              TemperatureDifference warmer, std::vector<SliceState>* rows) const {
  const Branch& written = network().branches[branch];
  BranchFlow f;
  f.forward = flow >= MassFlow{};
  const double way = f.forward ? 1.0 : -1.0;
  const BranchEnd& source = source_of(written, f.forward);
  const BranchEnd& sink = source_of(written, !f.forward);
  f.at_from = f.at_to = flow;
  f.leaving = composition_at(source, state);
  f.flue_share = source.kind == EndKind::node ? state.nodes[source.node].flue_share : Ratio(0.0);
  Stream in = stream_at(source, state);
  in.temperature += warmer;
  in.forward = f.forward;
  in.flow = std::max(MassFlow(way * flow), still_air);
  if (written.opening) {
    f.totals.exit = in.temperature;
    return f;
  }
  f.fire.air = f.fire.flue = in.flow;
  f.fire.forward = f.forward;
  std::optional<GasTable> after;
  if (has_fire(branch)) {
    f.fire = burning_.at(in.flow, f.leaving, f.forward);
    f.leaving = burning_.leaving(f.leaving, f.fire);
    f.flue_share = 1.0;
    after.emplace(mixture_of(f.leaving));
    (f.forward ? f.at_to : f.at_from) += way * (f.fire.flue - f.fire.air);
  }
  const March march{sliced_->paths[branch], *surround_};
  f.totals = march.run(in, f.fire, after ? *after : *in.gas, sink.kind != EndKind::node, age_, rows);
  // Slower than still the losses go on to nothing in a straight line.
  const Ratio slower = std::min(1.0, std::abs((flow / still_air).value()));
  f.drive = f.totals.buoyancy + f.totals.fan - way * slower * f.totals.loss();
  return f;
}

bool NetworkMarch::filled_from_both_ends(std::size_t branch, MassFlow flow) const {
  return !network().nodes.empty() && !network().branches[branch].opening && abs(flow) < both_ends;
}

BranchFlow NetworkMarch::respond(std::size_t branch, MassFlow flow, const NetworkState& state,
                                 TemperatureDifference warmer) const {
  BranchFlow f = walk(branch, flow, state, warmer);
  if (!filled_from_both_ends(branch, flow)) return f;
  const BranchFlow other = walk(branch, f.forward ? MassFlow(-still_air) : still_air, state, warmer);
  const Ratio own = share_of_own(flow);
  f.drive = own * f.drive + (1.0 - own) * other.drive;
  return f;
}

void NetworkMarch::set_slopes(std::size_t branch, MassFlow flow, NetworkState& state) const {
  BranchFlow& here = state.branches[branch];
  const Branch& written = network().branches[branch];
  const BranchEnd& source = source_of(written, here.forward);
  BranchSlopes s;
  if (written.opening) {
    s.exit_by_temperature = source.kind == EndKind::node ? 1.0 : 0.0;
    here.slopes = s;
    return;
  }
  // Away from rest, so that the step does not turn the flow round.
  const MassFlow step = (here.forward ? 1.0 : -1.0) * flow_step * std::max(MassFlow(abs(flow)), least_flow_step_of);
  const BranchFlow more = respond(branch, flow + step, state, {});
  const double dm = in(step, kilogram_per_second);
  s.drive_by_flow = in(more.drive - here.drive, pascal) / dm;
  s.exit_by_flow = in(more.totals.exit - here.totals.exit, kelvin) / dm;
  const MassFlow leaving = more.outflow() - here.outflow();
  s.leaving_by_flow = here.forward ? in(leaving / step, Ratio(1.0)) : in(-leaving / step, Ratio(1.0));
  if (source.kind == EndKind::node) {
    const BranchFlow warmer = respond(branch, flow, state, temperature_step);
    const double dt = in(temperature_step, kelvin);
    s.drive_by_temperature = in(warmer.drive - here.drive, pascal) / dt;
    s.exit_by_temperature = in(warmer.totals.exit - here.totals.exit, kelvin) / dt;
  }
  here.slopes = s;
}

void NetworkMarch::mix_temperature(std::size_t index, NetworkState& state) const {
  NodeState& node = state.nodes[index];
  Power brought{};
  MassFlow inflow{};
  for (std::size_t b = 0; b < state.branches.size(); ++b) {
    const BranchFlow& f = state.branches[b];
    const BranchEnd& sink = source_of(network().branches[b], !f.forward);
    if (sink.kind != EndKind::node || sink.node != index || !(f.outflow() > MassFlow{})) continue;
    const GasMixture gas = mixture_of(f.leaving);
    brought += f.outflow() * gas.specific_enthalpy(f.totals.exit);
    inflow += f.outflow();
  }
  node.inflow = inflow;
  if (inflow > MassFlow{}) node.mixed = node.gas->temperature_at(brought / inflow, node.temperature);
}

void NetworkMarch::follow_flow(std::span<const MassFlow> flows, NetworkState& state, bool with_slopes) const {
  const auto& branches = network().branches;
  std::vector<bool> walked(branches.size());
  std::vector<bool> known(state.nodes.size());
  const auto settle = [&](std::size_t n) {
    NodeState& node = state.nodes[n];
    node.density = node.gas->density(node.temperature, surround_->absolute);
    known[n] = true;
  };
  const auto waits = [&](std::size_t n) {
    for (std::size_t b = 0; b < branches.size(); ++b) {
      const BranchEnd& sink = source_of(branches[b], !(flows[b] >= MassFlow{}));
      if (!walked[b] && sink.kind == EndKind::node && sink.node == n) return true;
    }
    return false;
  };
  for (std::size_t left = branches.size(); left > 0;) {
    const std::size_t before = left;
    for (std::size_t b = 0; b < branches.size(); ++b) {
      const BranchEnd& source = source_of(branches[b], flows[b] >= MassFlow{});
      if (walked[b] || (source.kind == EndKind::node && !known[source.node])) continue;
      state.branches[b] = respond(b, flows[b], state, {});
      if (with_slopes) set_slopes(b, flows[b], state);
      walked[b] = true;
      --left;
    }
    bool moved = left < before;
    for (std::size_t n = 0; n < known.size(); ++n) {
      if (known[n] || waits(n)) continue;
      mix_temperature(n, state);
      state.nodes[n].temperature = state.nodes[n].mixed;
      state.nodes[n].cut = false;
      settle(n);
      moved = true;
    }
    if (moved) continue;
    // A circle: its first node keeps the temperature of the round before.
    const auto cut = static_cast<std::size_t>(std::find(known.begin(), known.end(), false) - known.begin());
    state.nodes[cut].cut = true;
    settle(cut);
  }
  for (std::size_t n = 0; n < known.size(); ++n) {
    if (!known[n]) settle(n);
    if (state.nodes[n].cut || state.nodes[n].inflow == MassFlow{}) mix_temperature(n, state);
  }
}

void NetworkMarch::pass(std::span<const MassFlow> flows, NetworkState& state, bool with_slopes) const {
  mix_compositions(flows, state);
  follow_flow(flows, state, with_slopes);
}

MarchTotals NetworkMarch::rows(const NetworkState& state, std::size_t branch, Pressure total, Ratio vapour_left,
                               std::vector<SliceState>& rows, std::vector<SliceVisit>* visits) const {
  const BranchFlow& f = state.branches[branch];
  const Branch& written = network().branches[branch];
  Stream in = stream_at(source_of(written, f.forward), state);
  in.forward = f.forward;
  in.flow = std::max(f.inflow(), still_air);
  in.total = total;
  in.vapour_left = vapour_left;
  const GasTable after{mixture_of(f.leaving)};
  const bool to_free_air = source_of(written, !f.forward).kind != EndKind::node;
  const MarchTotals totals =
      March{sliced_->paths[branch], *surround_}.run(in, f.fire, after, to_free_air, age_, &rows, visits);
  if (filled_from_both_ends(branch, f.inflow())) {
    std::vector<SliceState> other;
    static_cast<void>(walk(branch, f.forward ? MassFlow(-still_air) : still_air, state, {}, &other));
    std::reverse(other.begin(), other.end());
    mix_rows(rows, other, share_of_own(f.inflow()), f.forward);
  }
  return totals;
}

}  // namespace fluewright
