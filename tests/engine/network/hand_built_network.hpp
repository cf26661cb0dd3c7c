// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Networks written down branch by branch, on the hand-built heater of the series tests.

#include "engine/solve/network_march.hpp"
#include "tests/engine/solve/hand_built_heater.hpp"

#include <utility>

namespace fluewright::test {

/// A heater and what has been cut into it. Owns the materials its stretches point to.
struct HandBuiltNetwork {
  HandBuiltHeater heater;
  FlueNetwork network;

  explicit HandBuiltNetwork(HandBuiltHeater h = {}) : heater{std::move(h)} { network.branches = {heater.branch()}; }
  HandBuiltNetwork(const HandBuiltNetwork&) = delete;
  HandBuiltNetwork& operator=(const HandBuiltNetwork&) = delete;

  /// Index of the first stretch of the stack's foot in the series heater.
  [[nodiscard]] std::size_t foot() const { return heater.with_riser_in_barrel ? 5 : 4; }

  [[nodiscard]] Stretch pipe(Length length, Length rise, Length start) const {
    Stretch s;
    s.length = length;
    s.rise = rise;
    s.start_height = start;
    s.section = Section::circle(heater.bore);
    s.roughness = 1.0 * millimetre;
    s.wall = {{&heater.get("steel"), 0.7 * millimetre}};
    s.stands_upright = rise != Length{};
    return s;
  }

  /// Cuts a branch of the main path before one of its stretches; a node of the given form stands there.
  std::size_t cut(std::size_t branch, std::size_t before, JunctionForm form) {
    const std::size_t node = network.nodes.size();
    const auto split = static_cast<std::ptrdiff_t>(before);
    Branch rest;
    rest.to = network.branches[branch].to;
    auto& first = network.branches[branch].stretches;
    rest.stretches.assign(first.begin() + split, first.end());
    first.erase(first.begin() + split, first.end());
    const Length height = rest.stretches.front().start_height;
    network.branches[branch].to = {EndKind::node, node, height, JunctionPort::run_in, false};
    rest.from = {EndKind::node, node, height, JunctionPort::run_out, false};
    network.nodes.push_back({0, height, form});
    network.branches.push_back(std::move(rest));
    auto& path = network.main_path;
    for (std::size_t i = 0; i < path.size(); ++i) {
      if (path[i] == branch) {
        path.insert(path.begin() + static_cast<std::ptrdiff_t>(i) + 1, network.branches.size() - 1);
        break;
      }
    }
    return node;
  }

  [[nodiscard]] JunctionForm tee() const {
    const Area area = Section::circle(heater.bore).area();
    return {area, area, 90.0 * degree, false};
  }
  /// An end at a node's branch.
  [[nodiscard]] BranchEnd at_branch(std::size_t node) const {
    return {EndKind::node, node, network.nodes[node].height, JunctionPort::branch, false};
  }

  /// The tee at the stack's foot stands open to the room. Gives the branch from there.
  std::size_t open_tee_at_foot(Length pipe_length = 0.3 * metre) {
    const std::size_t node = cut(0, foot(), tee());
    network.branches[1].stretches.front().at_start.clear();  // the capped tee's own loss
    Branch open;
    open.from = {EndKind::room_air, 0, network.nodes[node].height, JunctionPort::run_in, false};
    open.to = at_branch(node);
    open.stretches = {pipe(pipe_length, {}, network.nodes[node].height)};
    open.stretches.front().at_start = {{1.0, 0.0, LocalLoss::Reynolds::none, "free pipe end", {}}};
    network.branches.push_back(std::move(open));
    return network.branches.size() - 1;
  }

  /// A crack or a flap in the stack's foot.
  std::size_t opening_at_foot(const Opening& opening) {
    JunctionForm form = tee();
    form.branch = opening.area;
    form.side_opening = true;
    const std::size_t node = cut(0, foot(), form);
    Branch side;
    side.from = {EndKind::room_air, 0, network.nodes[node].height, JunctionPort::run_in, false};
    side.to = at_branch(node);
    side.opening = opening;
    network.branches.push_back(std::move(side));
    return network.branches.size() - 1;
  }

  /// A pipe from before the bench to behind it with a damper of that loss coefficient.
  std::size_t bypass_around_bench(Ratio damper) {
    const std::size_t before = cut(0, foot() - 1, tee());
    const std::size_t behind = cut(1, 1, tee());
    Branch way;
    way.from = at_branch(before);
    way.to = at_branch(behind);
    way.stretches = {pipe(0.8 * metre, {}, network.nodes[before].height)};
    way.stretches.front().at_start = {{damper, damper, LocalLoss::Reynolds::none, "damper", {}}};
    network.branches.push_back(std::move(way));
    return network.branches.size() - 1;
  }

  /// An outside-air duct that joins the feed above the fire.
  std::size_t outside_air_duct(Length length) {
    const std::size_t node = cut(0, 1, tee());
    Branch duct;
    const Length height = network.nodes[node].height;
    duct.from = {EndKind::outdoor_air, 0, height, JunctionPort::run_in, false};
    duct.to = at_branch(node);
    duct.stretches = {pipe(length, {}, height)};
    duct.stretches.front().at_start = {{0.5, 0.0, LocalLoss::Reynolds::none, "intake", {}}};
    network.branches.push_back(std::move(duct));
    return network.branches.size() - 1;
  }
};

[[nodiscard]] inline double kg_s(MassFlow flow) { return in(flow, kilogram_per_second); }

/// A network on a day, ready to be marched and solved.
struct MarchedNetwork {
  Surround surround;
  SlicedNetwork sliced;
  NetworkMarch march;

  MarchedNetwork(const FlueNetwork& network, const Design& day, Length slice = 50.0 * millimetre,
                 MassFlow burn_rate = 3.0 * kilogram_per_hour, WallAge age = {})
      : surround{surround_of(day)},
        sliced{slice_network(network, slice)},
        march{sliced, surround, usual_wood(), burn_rate, age} {}
  MarchedNetwork(const MarchedNetwork&) = delete;
  MarchedNetwork& operator=(const MarchedNetwork&) = delete;
};

}  // namespace fluewright::test
