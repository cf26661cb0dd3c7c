// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The engine's one question and its answer: given a design and a library, does it draw?

#include "engine/flow/fan.hpp"
#include "engine/layout/finding.hpp"
#include "engine/layout/path.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

#include <array>
#include <optional>
#include <vector>

namespace fluewright {

/// How long the bench has been warming when the margin is taken.
enum class BenchAge { cold_bench, one_hour, charged };
inline constexpr std::array bench_ages{BenchAge::cold_bench, BenchAge::one_hour, BenchAge::charged};

/// The word for the whole. `unsafe`: it draws only while a fan runs.
enum class Verdict { draws, marginal, will_not_draw, unsafe };

/// The gas and its wall in one slice, in the order of the path. Pressures and losses add up along the rows: room gauge
/// at the inlet + sum of buoyancy + sum of fan - sum of loss = gauge pressure at the cap.
struct SliceState {
  std::size_t piece = 0;      ///< index in Design::pieces
  Length s{};                 ///< from the inlet to the slice's end, along the gas
  Length length{};
  Length z{};                 ///< height of the slice's end above the floor
  Pressure gauge{};           ///< static, against still outdoor air at the same height, at the slice's end
  Pressure room_gauge{};      ///< of the room at the same height
  bool beside_room = true;    ///< a crack here opens to the room, not to attic or sky
  Temperature gas;            ///< at the slice's end
  Temperature wall;           ///< inner face
  Temperature surface;        ///< outer face: seat, pipe skin
  Temperature dew_point;
  Velocity velocity{};
  Density density{};
  Ratio reynolds = 0.0;
  Ratio friction_factor = 0.0;
  Ratio nusselt = 0.0;
  FilmCoefficient film{};     ///< inner, convective + radiative
  FilmCoefficient overall{};  ///< U on the inner surface
  Power heat{};               ///< leaving the gas in this slice
  MassFlow condensing{};      ///< water wetting the wall in this slice
  Pressure friction{};        ///< part of loss
  Pressure local{};           ///< part of loss: fittings, steps in area, entry, exit
  Pressure acceleration{};    ///< part of loss: gas that is heated or cooled
  Pressure loss{};            ///< friction + local + acceleration
  Pressure buoyancy{};
  Pressure fan{};             ///< what a running fan adds
};

/// What a fan does in a state of the path.
struct FanState {
  std::size_t piece = 0;  ///< index in Design::pieces
  Ratio speed = 0.0;      ///< of its sheet's full speed
  VolumeFlow flow{};      ///< through it, positive the way it blows
  Density density{};      ///< of the gas that passes it
  Temperature gas;
  Temperature dew_point;  ///< of the gas, none of its water taken for condensed
  FanEffect effect;
};

/// Where the fire's heat goes.
struct HeatBalance {
  Power released{};        ///< net heating value x burn rate
  Power unburned{};
  Power to_room{};         ///< through walls that stand in the room
  Power into_mass{};       ///< through walls that lie in bench or ground
  Power to_outdoors{};     ///< through walls outdoors and in the attic
  Power stack_loss{};      ///< with the gas leaving the cap, above the inlet air's temperature
  Ratio closure = 0.0;     ///< |released - all the rest| / released
};

/// Wet walls along the path.
struct Condensation {
  std::optional<Length> starts_at;        ///< s of the first wet slice
  std::optional<std::size_t> piece;       ///< its piece, index in Design::pieces
  Length into_piece{};                    ///< from that piece's entry
  Temperature dew_point;                  ///< of the gas as it leaves the fire
  MassFlow rate{};                        ///< all slices together
  std::vector<MassFlow> by_piece;         ///< in the order of Design::pieces
};

/// The design-flow check at one bench age: is there draft to spare at the wanted burn rate and excess air?
struct DesignFlow {
  BenchAge age = BenchAge::charged;
  bool quick_estimate = false;  ///< true where a closed form stands in for the transient
  /// With every fan standing still: buoyancy + room gauge - safety x resistance - wind allowance - cap pressure.
  Pressure margin{};
  std::optional<Pressure> margin_with_fans;  ///< with every fan at its speed; nothing where none runs
  Pressure buoyancy{};
  Pressure resistance{};        ///< without the safety factor
  Pressure room_gauge{};        ///< at the inlet
  Pressure cap_gauge{};         ///< wind at the cap
  Pressure wind_allowance{};
  MassFlow flue_gas{};
  Temperature exit_temperature;
  Temperature fire_temperature; ///< leaving the burn tunnel's first slice: adiabatic
  std::vector<FanState> fans;   ///< standing still
  std::vector<MassFlow> branch_flows;  ///< a path that branches: by branch, signed, where the gas comes in; else empty
};

/// A flow at which buoyancy and losses balance.
struct OperatingPoint {
  bool forward = true;          ///< false: gas runs from the cap to the room, or the fire's own branch runs backward
  bool stable = true;
  MassFlow flue_gas{};          ///< signed: negative runs backwards
  Ratio excess_air_ratio = 0.0; ///< of the air that reaches the fire
  MassFlow burn_rate{};         ///< what the air allows, at most the wanted one
  bool short_of_air = false;    ///< burn rate limited by oxygen
  Temperature fire_temperature;
  Temperature exit_temperature; ///< at the cap (forward) or at the feed's mouth (backward)
  HeatBalance heat;
  Pressure residual{};          ///< what is left of the pressure balance
  std::vector<FanState> fans;   ///< in the order in which the gas passes them
  std::vector<MassFlow> branch_flows;  ///< a branched path: by branch, signed, where the gas comes in; else empty
  MassFlow smoke_to_room{};     ///< gas that has been through the fire and comes out into the room
};

/// What is left of a heater when the power fails: the same design, every fan standing still.
struct FansOff {
  std::vector<OperatingPoint> operating_points;  ///< as in Assessment
  std::optional<std::size_t> running;

  [[nodiscard]] const OperatingPoint* running_point() const { return running ? &operating_points[*running] : nullptr; }
};

/// A fan of the path and what it has to stand.
struct FanAnswer {
  FanState state;          ///< at the running point; where there is none, standing still at the design flow
  Power power{};           ///< electrical, in that state
  Temperature hottest_gas; ///< that passes it at the running point, after a power cut or at a design flow
  Temperature motor;       ///< with that gas
  bool wet = false;        ///< a motor in the stream below the dew point, at the running point or in a cold bench's gas
  Temperature dew_point;   ///< of the gas where it is wet
  Temperature wet_at;      ///< how warm wall or gas are there
};

struct AssessOptions {
  Length slice = 50.0 * millimetre;  ///< longest slice
  bool operating_points = true;      ///< look for them (the design-flow check alone is cheaper)
};

/// What a branch does in the state that the profile shows.
struct BranchState {
  std::size_t branch = 0;       ///< index in FlueNetwork::branches
  bool on_main_path = false;
  MassFlow flow{};              ///< signed, positive the way the branch is written, where the gas comes in
  Ratio share = 0.0;            ///< of the flow at the cap, without sign
  Temperature entering;
  Temperature leaving;
  Ratio flue_share = 0.0;       ///< of the gas that leaves it, what has been through the fire [kg/kg]
  std::optional<Ratio> flap;    ///< a regulator: how far its flap stands open
  std::vector<SliceState> profile;  ///< as the branch is written; none for an opening, and for the main path in the
                                    ///< assessment's own profile
};

/// What a place where branches meet is at in the state that the profile shows.
struct MeetingState {
  Pressure total{};         ///< gauge and velocity head, at its run_in
  Temperature temperature;  ///< of what has mixed
};

/// The whole answer. A plain value.
struct Assessment {
  TracedPath path;
  std::vector<Finding> findings;            ///< the drawing's and the physics', most serious first

  std::vector<DesignFlow> design_flow;      ///< three ages in the order of bench_ages; empty if the path is incomplete
  std::optional<BenchAge> worst_age;
  Pressure worst_margin{};                  ///< with every fan standing still
  std::optional<Pressure> worst_margin_with_fans;  ///< the least of the three with fans running; nothing where none runs
  Pressure standing_draft{};                ///< before anything burns; negative: left alone it starts backwards
  std::optional<Verdict> verdict;           ///< nothing while the path is incomplete

  /// Every stable one, forward before backward; with a fan whose head rises with the flow the unstable ones too.
  std::vector<OperatingPoint> operating_points;
  std::optional<std::size_t> running;            ///< the forward one of the largest flow, if any

  std::vector<FanAnswer> fans;                   ///< in the order of the path
  std::optional<FansOff> fans_off;             ///< where a fan runs

  /// One row a slice: at the running point; where there is none, at the design flow with a charged
  /// bench and every fan standing still.
  std::vector<SliceState> profile;
  bool profile_is_operating = false;
  /// A path that branches: every branch in the profile's state; empty for a path without branches.
  std::vector<BranchState> branches;
  std::vector<MeetingState> meetings;       ///< in the order of FlueNetwork::nodes
  std::optional<Condensation> condensation; ///< along the profile; by_piece has the side branches too
  std::optional<Temperature> exit_temperature;  ///< of the profile; of the open end while the path is incomplete
  Length path_length{};

  [[nodiscard]] const OperatingPoint* running_point() const {
    return running ? &operating_points[*running] : nullptr;
  }
};

/// Margin under which a path that draws is called marginal (common practice, no source).
inline constexpr Pressure marginal_below = 2.0 * pascal;

/// Pure function of its arguments; never throws on physics or on a faulty drawing.
[[nodiscard]] Assessment assess(const Design& design, const Library& library, const AssessOptions& options = {});

}  // namespace fluewright
