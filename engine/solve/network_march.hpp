// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/stream_burning.hpp"
#include "engine/solve/surround.hpp"

#include <optional>
#include <span>
#include <vector>

namespace fluewright {

/// A network cut up for the march, branch by branch. The network must outlive it.
struct SlicedNetwork {
  const FlueNetwork* network = nullptr;
  std::vector<SlicedPath> paths;  ///< one a branch; empty for an opening
  std::optional<std::size_t> fire_branch;
  std::size_t stack = 0;          ///< the branch that ends at the cap: the last of the main path
};
[[nodiscard]] SlicedNetwork slice_network(const FlueNetwork& network, Length longest);

/// How a branch answers to small changes: plain SI numbers for the Jacobian.
struct BranchSlopes {
  double drive_by_flow = 0.0;         ///< [Pa s/kg], at a fixed entering gas
  double drive_by_temperature = 0.0;  ///< [Pa/K] of the entering gas
  double leaving_by_flow = 1.0;       ///< flow out over flow in
  double exit_by_flow = 0.0;          ///< [K s/kg]
  double exit_by_temperature = 0.0;
};

/// A branch at a flow.
struct BranchFlow {
  bool forward = true;
  MassFlow at_from{};      ///< signed, positive the way the branch is written
  MassFlow at_to{};        ///< differs from at_from by what the fire adds
  Pressure drive{};        ///< total pressure gained along the branch as it is written: buoyancy and fans, less losses
                           ///< when the flow runs forward, plus losses when it runs backward
  MarchTotals totals;
  FireState fire;          ///< of the branch that has one
  Composition leaving{};
  Ratio flue_share = 0.0;  ///< of the leaving gas, what has been through the fire [kg/kg]
  BranchSlopes slopes;

  [[nodiscard]] MassFlow inflow() const { return forward ? at_from : MassFlow(-at_to); }
  [[nodiscard]] MassFlow outflow() const { return forward ? at_to : MassFlow(-at_from); }
};

/// What has mixed at a node.
struct NodeState {
  Temperature temperature;  ///< that leaving branches start from
  Temperature mixed;        ///< of what has come in: the same, but at a node where a cycle was cut
  bool cut = false;         ///< a cycle was cut here: `temperature` is of the round before
  Composition composition{};
  Ratio flue_share = 0.0;
  MassFlow inflow{};
  Density density{};
  std::optional<GasTable> gas;
};

struct NetworkState {
  std::vector<BranchFlow> branches;
  std::vector<NodeState> nodes;
};

/// Walks the gas through all branches of a network whose flows are given, in the order in which it flows. Streams mix
/// at the nodes by enthalpy and by composition; any branch may run backwards and then takes the other end's gas.
class NetworkMarch {
 public:
  NetworkMarch(const SlicedNetwork& network, const Surround& surround, const WoodFuel& fuel, MassFlow wanted_burn_rate,
               WallAge age);

  /// A state to start from: every node as warm as the room and full of its air.
  [[nodiscard]] NetworkState at_rest() const;

  /// Signed flows by branch, on the side where the gas comes in (what the fire adds comes on top). Compositions are
  /// solved for exactly, cycles included; temperatures follow the flow, and where it runs in a circle one node a circle
  /// takes the temperature it had in `state`.
  void pass(std::span<const MassFlow> flows, NetworkState& state, bool with_slopes) const;

  /// Rows of one branch of a state that pass() has filled, starting from a total pressure and with the share of the
  /// vapour that has not condensed before.
  [[nodiscard]] MarchTotals rows(const NetworkState& state, std::size_t branch, Pressure total, Ratio vapour_left,
                                 std::vector<SliceState>& rows, std::vector<SliceVisit>* visits = nullptr) const;

  /// Total pressure of the free air at an end that opens to it.
  [[nodiscard]] Pressure free_air(const BranchEnd& end) const;
  [[nodiscard]] Density air_density(const BranchEnd& end) const;
  /// Of the gas that comes in by that end of a branch.
  [[nodiscard]] const Composition& composition_at(const BranchEnd& end, const NetworkState& state) const;

  [[nodiscard]] const SlicedNetwork& sliced() const { return *sliced_; }
  [[nodiscard]] const FlueNetwork& network() const { return *sliced_->network; }
  [[nodiscard]] const Surround& surround() const { return *surround_; }
  [[nodiscard]] const StreamBurning& burning() const { return burning_; }

 private:
  void mix_compositions(std::span<const MassFlow> flows, NetworkState& state) const;
  void follow_flow(std::span<const MassFlow> flows, NetworkState& state, bool with_slopes) const;
  void mix_temperature(std::size_t node, NetworkState& state) const;
  [[nodiscard]] Stream stream_at(const BranchEnd& end, const NetworkState& state) const;
  [[nodiscard]] BranchFlow walk(std::size_t branch, MassFlow flow, const NetworkState& state,
                                TemperatureDifference warmer, std::vector<SliceState>* rows = nullptr) const;
  [[nodiscard]] bool filled_from_both_ends(std::size_t branch, MassFlow flow) const;
  [[nodiscard]] BranchFlow respond(std::size_t branch, MassFlow flow, const NetworkState& state,
                                   TemperatureDifference warmer) const;
  void set_slopes(std::size_t branch, MassFlow flow, NetworkState& state) const;
  [[nodiscard]] bool has_fire(std::size_t branch) const { return sliced_->fire_branch == branch; }

  const SlicedNetwork* sliced_;
  const Surround* surround_;
  StreamBurning burning_;
  WallAge age_;
  GasTable room_air_;
  GasTable outdoor_air_;
  Composition room_composition_;
  Composition outdoor_composition_;
};

}  // namespace fluewright
