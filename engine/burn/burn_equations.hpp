// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_cells.hpp"
#include "engine/solve/surround.hpp"

#include <array>
#include <cstddef>
#include <utility>
#include <vector>

namespace fluewright::kernel {

/// A stretch of time in which nothing is switched: what the equations are given from outside. Plain SI.
struct Interval {
  double begin = 0.0;
  double end = 0.0;
  double wanted_burn = 0.0;       ///< [kg/s] of wood as fired
  double outdoor_begin = 0.0;     ///< [K], linear in between
  double outdoor_end = 0.0;
  double depressurisation = 0.0;  ///< [Pa] of the house
  double priming = 0.0;           ///< [W] of the priming fire, its tee open
  bool powered = true;            ///< else every fan stands still
  std::vector<std::pair<std::size_t, double>> fan_speeds;  ///< by piece: 0 stands still, 1 runs at its curve's speed
  std::vector<std::pair<std::size_t, double>> openings;    ///< by piece: what was moved, 0 shut to 1 open
  /// Not left to itself: the flow is held (the design-flow check).
  bool flow_is_given = false;
  /// Nothing was switched at its beginning; only the outdoor course bends there.
  bool goes_on = false;

  /// Whether all that is switched is the same.
  [[nodiscard]] bool alike(const Interval& other) const {
    return wanted_burn == other.wanted_burn && depressurisation == other.depressurisation && priming == other.priming &&
           powered == other.powered && fan_speeds == other.fan_speeds && openings == other.openings && flow_is_given == other.flow_is_given;
  }
};

/// The air around the flue at one moment.
struct AirNow {
  double outdoor = 0.0;
  double room = 0.0;
  double attic = 0.0;
  double outdoor_density = 0.0;
  double room_density = 0.0;
};

/// What adds up over time, one line each: energies [J], then masses [kg].
enum Line : std::size_t {
  released, unburned, to_room, to_outdoors, out_of_cap, out_of_mouth, latent, burnt, scheduled, smoke, condensate, line_count
};
using Lines = std::array<double, line_count>;

/// What the gas does to one cell and the cell to the gas, beside the rates.
struct CellNow {
  double mean = 0.0;      ///< gas, over the cell [K]
  double density = 0.0;   ///< at that
  double entering = 0.0;
  double face = 0.0;      ///< inner face of the wall
  double surface = 0.0;   ///< outer face
  double through = 0.0;   ///< gas to wall [W]
  double film = 0.0;      ///< [W/m2K]
  double flow = 0.0;      ///< signed, at this cell
  double condensing = 0.0;///< [kg/s]
  double buoyancy = 0.0;  ///< [Pa], positive drives forward
  double loss = 0.0;      ///< [Pa], positive along the flow, fittings before and in it included
};

/// A branch's pressure balance at one moment [Pa].
struct BranchNow {
  double from = 0.0;          ///< gauge of the air it begins in
  double to = 0.0;            ///< gauge of what it ends in
  double buoyancy = 0.0;      ///< positive drives forward
  double resistance = 0.0;    ///< friction, fittings, entry and exit; positive along the flow
  double acceleration = 0.0;  ///< likewise
  double exit_head = 0.0;     ///< part of the resistance: the jet where the gas leaves
  double fan = 0.0;           ///< what fans add, positive forward
  bool forward = true;
  [[nodiscard]] double left_over() const {
    return from + buoyancy + fan - (forward ? 1.0 : -1.0) * (resistance + acceleration) - to;
  }
};

/// The fire at one moment.
struct FireNow {
  double burn = 0.0;      ///< [kg/s]
  double air = 0.0;       ///< [kg/s] that reaches it
  double excess = 0.0;    ///< excess-air ratio of that air's oxygen
  double temperature = 0.0;
  bool short_of_air = false;
};

/// How the rates answer to a small step of the state: what the implicit step needs, near enough for its method.
struct CellSlopes {
  double storage = 0.0;   ///< heat capacity of the gas [J/K]
  double renewal = 0.0;   ///< its mass over its flow, inverse [1/s]
  double by_entering = 0.0;
  double by_own = 0.0;    ///< negative of the slope
  double by_wall = 0.0;
  double wall_by_entering = 0.0;
  double wall_by_gas = 0.0;
  double by_flow = 0.0;
  double wall_by_flow = 0.0;
  double outer = 0.0;     ///< of the flux to the outside, by the last node
  double wet = 0.0;       ///< of the latent heat, by the first node
  double by_share = 0.0;          ///< of the gas's heat, by its share of flue gas
  double by_share_entering = 0.0;
  double wall_by_share = 0.0;
  double drive_by_entering = 0.0; ///< of the branch's pressure balance, by the temperature of the entering gas [Pa/K]
  double drive_by_own = 0.0;
};
struct BranchSlopes {
  double inertia = 0.0;            ///< sum of L/A [1/m]
  bool held = false;               ///< its flow does not follow the pressures: given, or shut
  double decay = 0.0;              ///< [1/s] of a flow that was shut off
  double by_flow = 0.0;            ///< of the pressure balance [Pa s/kg]
  double by_arriving_gas = 0.0;    ///< of an opening's balance [Pa/K]
  std::size_t fire_into = nowhere; ///< the cell that the fire's gas enters
  double fire_by_entering = 0.0;
  double fire_by_flow = 0.0;
  double fire_share_by_entering = 0.0;
  double fire_share_by_flow = 0.0;
  double burn_by_flow = 0.0;
  double leaving_by_flow = 0.0;    ///< of the heat that leaves or comes in with the gas [J/kg]
  double out_flow = 0.0;           ///< size of what leaves [kg/s]
  double out_heat = 0.0;           ///< that times cp [W/K]
  double out_flow_by_flow = 1.0;
  double node_heat_by_flow = 0.0;  ///< of the heat of the node it runs into [J/kg]
  double node_share_by_flow = 0.0;
};
struct NodeSlopes {
  double storage = 0.0;            ///< heat capacity of its gas [J/K]
  double mass = 0.0;
  double through_heat = 0.0;       ///< of what leaves, by its temperature [W/K]
  double through_flow = 0.0;       ///< [kg/s]
  std::array<std::array<double, 3>, 3> head_by_flow{};  ///< of each port's head, by the flow into each port [Pa s/kg]
};
struct Slopes {
  std::vector<CellSlopes> cells;
  std::vector<BranchSlopes> branches;
  std::vector<NodeSlopes> nodes;
  std::vector<double> links;       ///< a node's conductance to the next [W/K]
};

/// A junction's surplus of flow dies away with this time: what rounding and the fire's own mass leave over [s].
inline constexpr double node_settling = 0.5;
/// A flap follows the draft with this time [s] (chosen: a weighted flap swings in about a second).
inline constexpr double flap_time = 1.0;

/// The one semi-discrete system: state to rates. Gas temperature and share of flue gas in every cell, the nodes of its wall,
/// and the flow of every branch.
///
/// Gas:  C dT/dt = m (h(T_in) - h(T)) - q,  C = p V cp/(R T), upwind in whichever direction it moves;
///       q = U (T_m - T_1) with T_m = T + w (T_in - T), w = 1/n - 1/(e^n - 1), n = U/(m cp): the weight with which a
///       steady flow cools exactly exponentially within a cell (Scharfetter & Gummel 1969).
/// Share: (p V/(R T)) dY/dt = m (Y_in - Y).
/// Wall: C_j dT_j/dt = g_(j-1) (T_(j-1) - T_j) + g_j (T_(j+1) - T_j).
/// Flow: sum(L/A) dm/dt = gauge at one end + buoyancy - losses - gauge at the other, the losses as in the steady march.
/// Fire: burn = min(wanted, (m (1 - Y) + m_x)/(least excess air x air per wood)); m is the flow that reaches the fire,
///       m_x a small exchange at the feed's mouth that fades with flow.
/// Node: mixes what comes in by enthalpy and share; its pressure is such that nothing piles up. A priming fire burns in it.
/// Hole: C A sqrt(2 rho dp); a flap's opening follows the draft within a second.
/// What the gas holds by virtue of its pressure
///       and the change of its mass with temperature are left out: both are over within seconds.
class BurnEquations {
 public:
  BurnEquations(const BurnCells& cells, const GasPair& gas, const Surround& surround, Ratio outdoor_humidity);

  [[nodiscard]] std::size_t size() const { return cells_->unknowns; }
  [[nodiscard]] const BurnCells& cells() const { return *cells_; }
  [[nodiscard]] const GasPair& gas() const { return *gas_; }

  /// Everything at rest at its surroundings' temperature, full of air, still.
  [[nodiscard]] std::vector<double> at_rest(const Interval& interval) const;
  /// Of the room, at a height above the floor [Pa].
  [[nodiscard]] double room_gauge_at(double height, double depressurisation) const;
  [[nodiscard]] AirNow air_at(double time, const Interval& interval) const;

  /// `rate` receives the time derivative of every unknown; `lines` what adds up, where given; `slopes` likewise.
  void rates(double time, const Interval& interval, const double* state, double* rate, Lines* lines = nullptr,
             Slopes* slopes = nullptr);

  // What the last call of rates() saw.
  [[nodiscard]] const std::vector<CellNow>& cells_now() const { return now_; }
  [[nodiscard]] const FireNow& fire_now() const { return fire_; }
  /// Of a fan's gas and the air beside it: how warm its motor gets [K].
  [[nodiscard]] double motor_at(std::size_t cell) const;
  [[nodiscard]] const std::vector<BranchNow>& branches_now() const { return balance_; }

  /// Heat in the walls and in the gas above a temperature [J].
  [[nodiscard]] double wall_heat(const double* state, double above) const;
  [[nodiscard]] double gas_heat(const double* state, double above) const;

  /// Latent heat of what condenses warms the wall; off only to compare with the steady march, which leaves it out.
  bool latent_heat_counts = true;

 private:
  struct Gas {
    double temperature;
    double share;
  };
  struct Walk;
  void pass_opening(std::size_t index, Walk& walk);
  void leave_branch(Walk& walk, const BranchCells& branch, double arriving);
  void settle_nodes(Walk& walk);
  void settle_pressures(Walk& walk);
  void mix_node(Walk& walk, std::size_t index);
  void heat_flames(Walk& walk, double heat);
  [[nodiscard]] double area_of(const BranchCells& branch, const Walk& walk) const;
  void walk_branch(std::size_t index, Walk& walk);
  void pass_cell(Walk& walk, std::size_t index);
  void burn(Walk& walk, const Cell& cell);
  void pass_fan(Walk& walk, const Cell& cell);
  void local_loss(Walk& walk, const Cell& cell, double plain, double mitre);
  struct Film {
    double all;             ///< [W/m2K]
    double convective;      ///< without the gas's radiation
    double by_gas;          ///< dq/dTg
    double by_wall;         ///< -dq/dTw
    double by_share;        ///< of all, by the share of flue gas
    double flow_power;      ///< d ln of all/d ln of flow
    double friction;        ///< factor
    double friction_power;  ///< d ln f/d ln Re
  };
  [[nodiscard]] Film inside_film(const Cell& cell, double gas, double wall, double share, double flow) const;
  void conduct(Walk& walk, const Cell& cell, double into_wall);
  double condensing(Walk& walk, const Cell& cell, double convective, double face, double mean);
  void settle_jackets(Walk& walk, const BranchCells& branch);
  void refresh_links(const Cell& cell, const double* state);
  [[nodiscard]] double density(double t, double share) const {
    return surround_absolute_ / (gas_->gas_constant(share) * t);
  }
  [[nodiscard]] double gauge_of(const BranchCells& branch, const BranchEnd& end, double depressurisation) const;
  [[nodiscard]] double air_beside(const Cell& cell) const;

  const BurnCells* cells_;
  const GasPair* gas_;
  Surround surround_;
  Ratio outdoor_humidity_;
  double surround_absolute_;
  std::vector<CellNow> now_;
  std::vector<double> links_;         ///< node to next [W/K]; the last of a cell: to its outer face
  std::vector<double> inner_;         ///< a cell's first node: half its resistance [K/W]
  std::vector<BranchNow> balance_;
  struct NodeNow {
    double pressure = 0.0;   ///< total, at run_in [Pa]
    double inflow = 0.0;     ///< [kg/s] of all that comes in
    double fresh = 0.0;      ///< air in it
    double heat = 0.0;       ///< enthalpy brought [W]
    double surplus = 0.0;    ///< flow in less flow out
    double vapour_left = 1.0;
    std::array<double, 3> into{};   ///< flow into the junction by port
    std::array<double, 3> heads{};  ///< of each port above run_in
  };
  std::vector<NodeNow> nodes_;
  std::size_t priming_node_ = nowhere;
  FireNow fire_;
  AirNow air_;
};

}  // namespace fluewright::kernel
