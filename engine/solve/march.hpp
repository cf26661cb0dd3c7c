// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/fuel/combustion.hpp"
#include "engine/solve/assessment.hpp"
#include "engine/solve/slice_heat.hpp"
#include "engine/solve/slice_visit.hpp"
#include "engine/solve/stream.hpp"

#include <vector>

namespace fluewright {

/// The fire as the march meets it: gas before and after, flows before and after, and the heat it adds.
struct FireState {
  MassFlow burn_rate{};
  Ratio excess_air_ratio = 0.0;
  bool short_of_air = false;
  MassFlow air{};   ///< reaching the fire
  MassFlow flue{};  ///< leaving it
  Power released{}; ///< net heating value x burn rate
  Power added{};    ///< released less the unburned share
  bool forward = true;  ///< gas runs from the inlet to the cap
};

/// What a march adds up to.
struct MarchTotals {
  Pressure buoyancy{};      ///< sum of (rho_out - rho) g rise, positive when it drives forward
  Pressure friction{};      ///< all losses positive along the flow, whichever way it runs
  Pressure local{};         ///< fittings, steps, entry, exit
  Pressure acceleration{};
  Pressure fan{};           ///< what fans add, positive when they drive forward
  Power to_room{};
  Power into_mass{};
  Power to_outdoors{};
  Power stack{};            ///< with the leaving gas, above the air that came in
  Temperature fire;
  Temperature exit;
  Ratio vapour_left = 1.0;  ///< of the water in the gas as it leaves; worked out with rows only

  std::vector<FanState> fans;  ///< in the order in which the gas passes them

  [[nodiscard]] Pressure loss() const { return friction + local + acceleration; }
};

/// Walks the gas through a sliced path, slice by slice, in either direction.
class March {
 public:
  March(const SlicedPath& path, const Surround& surround) : path_{&path}, surround_{&surround} {}

  /// `before`: the air that comes in; `after`: the flue gas. `rows`, where given, receives a row a slice in flow order
  /// (forward marches only) and `visits` what each slice was given, for the working.
  [[nodiscard]] MarchTotals run(const FireState& fire, const GasTable& before, const GasTable& after, WallAge age,
                                std::vector<SliceState>* rows = nullptr,
                                std::vector<SliceVisit>* visits = nullptr) const;

  /// The same from any stream. `fire.air` is the stream's flow; where the branch has no fire, so is `fire.flue`, and
  /// `after` is never met. `to_free_air`: the gas leaves the branch into the open and its velocity head is lost.
  /// Rows are in flow order, with the places and the signs of the branch as it is written: a row of a stream that runs
  /// against it has a velocity and losses below zero, so that pressures still add up along the branch.
  [[nodiscard]] MarchTotals run(const Stream& in, const FireState& fire, const GasTable& after, bool to_free_air,
                                WallAge age, std::vector<SliceState>* rows = nullptr,
                                std::vector<SliceVisit>* visits = nullptr) const;

 private:
  const SlicedPath* path_;
  const Surround* surround_;
};

}  // namespace fluewright
