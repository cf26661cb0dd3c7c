// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What is kept of a burn: enough to play it and to plot it without computing it again. A plain value.

#include "engine/flow/mouth.hpp"
#include "engine/flow/stretch.hpp"
#include "engine/layout/design.hpp"

#include <cstddef>
#include <optional>
#include <utility>
#include <vector>

namespace fluewright {

/// A slice of the path, as the rows count them.
struct BurnSlice {
  std::size_t piece = 0;   ///< index in Design::pieces
  std::size_t branch = 0;
  Length from_s{};         ///< along its branch
  Length to_s{};
  Length height{};         ///< of its end above the floor
  Place place = Place::room;
  std::size_t first_node = 0;  ///< its wall's nodes in BurnRecord::nodes; kept for bench and ground only
  std::size_t node_count = 0;
};

/// A node of a bench's cross-section, from the gas outwards.
struct BurnNode {
  Area section{};          ///< of the cross-section that is this node
  bool embedding = false;  ///< of bench or ground, not of the flue's own wall
};

/// The flue at one moment.
struct BurnRow {
  Time at{};
  MassFlow wanted{};            ///< wood that would burn if there were air enough
  MassFlow burning{};
  MassFlow air{};               ///< reaching the fire, whichever way
  Ratio excess_air_ratio = 0.0; ///< of it; 0 where nothing burns
  bool short_of_air = false;    ///< the oxygen limits the fire
  bool forward = true;          ///< gas runs from the feed to the cap
  MassFlow flue_gas{};          ///< at the stack's end, signed: out of the cap > 0
  Pressure margin{};            ///< draft to spare if the design flow passed now, as the design-flow check counts it: fans off
  Pressure foot_draft{};        ///< room against flue at the stack's foot: > 0 holds smoke in
  Pressure feed_draft{};        ///< the same just inside the feed's mouth
  Ratio mouth_froude = 0.0;     ///< of the air drawn in from the room; 0 where nothing burns or nothing is drawn in
  Temperature outdoors;
  Temperature fire;             ///< of the gas as it leaves the fire
  Temperature exit;             ///< at the cap, or at the mouth when it runs backwards
  Energy stored{};              ///< in walls, mass and ground above the beginning
  Mass burnt{};                 ///< so far
  Mass smoke{};                 ///< let into the room so far: gas that has burnt, undiluted
  Mass condensate{};            ///< so far
  MassFlow condensing{};
  std::vector<MassFlow> flows;  ///< by branch of the network, where the gas comes in
  std::vector<Temperature> gas;      ///< by slice, mean
  std::vector<Temperature> wall;     ///< by slice, inner face
  std::vector<Temperature> surface;  ///< by slice, outer face: seat, pipe, lid
  std::vector<Velocity> speeds;      ///< by slice, of the gas; < 0 runs backwards
  std::vector<Temperature> nodes;    ///< as BurnRecord::nodes
  std::vector<std::pair<std::size_t, Temperature>> motors;  ///< by fan: piece, and how warm its motor gets

  /// The air comes in so slowly that smoke can pass it, although the gas runs forward.
  [[nodiscard]] bool counterflow() const { return mouth_froude > Ratio(0.0) && mouth_froude < counterflow_below; }
};

/// Where the heat went.
struct BurnHeat {
  Energy released{};     ///< net heating value of what burnt
  Energy unburned{};
  Energy to_room{};      ///< through walls and seat
  Energy to_outdoors{};  ///< through walls
  Energy out_of_cap{};   ///< with the gas
  Energy out_of_mouth{}; ///< with smoke, into the room
  Energy stored{};       ///< in walls, mass and ground
  Energy in_gas{};       ///< in the gas within the flue
  Energy latent{};       ///< given to the walls by condensing water, which the net heating value does not count
  Ratio closure = 0.0;   ///< |released + latent - all the rest| / released
};

struct BurnSummary {
  Time ran{};
  std::optional<Time> holds_from;   ///< from then on the gas runs forward by itself as long as anything burns
  Pressure least_margin{};          ///< while it burns, from five minutes after lighting
  Time least_margin_at{};
  Time reversed{};                  ///< while something burns
  Time starved{};                   ///< it burns with less than 1.5 times the air it needs (common practice)
  Time smoke_time{};                ///< burnt gas runs into the room
  Time counterflow{};               ///< forward, yet so slow at the mouth that smoke can pass the air that comes in
  Mass smoke{};
  Mass wanted{};
  Mass burnt{};
  Mass condensate{};
  Temperature hottest_motor;        ///< absolute zero where there is none
  Temperature hottest_gas;          ///< in any slice, of the rows that are kept
  BurnHeat heat;
};

/// How a run came out.
enum class BurnEnd {
  done,
  cancelled,
  faulty_plan,   ///< check_plan() has the reasons
  no_path,       ///< the drawing has no complete path with a fire
  no_open_tee,   ///< a priming fire wants a tee with a shut port on the way up the stack
  diverged       ///< the steps would not converge; what there is until then is kept
};

struct BurnRecord {
  BurnEnd end = BurnEnd::no_path;
  std::vector<BurnSlice> slices;
  std::vector<BurnNode> nodes;
  std::vector<BurnRow> rows;        ///< rising in time; the first at the beginning, the last at the end
  BurnSummary summary;
  std::size_t steps = 0;            ///< what it cost
  std::size_t rejected_steps = 0;

  /// The row nearest before a moment, and how far the next one has come (0 to 1); for drawing in between.
  [[nodiscard]] std::pair<std::size_t, Ratio> row_at(Time at) const;
};

}  // namespace fluewright
