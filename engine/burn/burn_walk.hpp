// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_equations.hpp"

namespace fluewright::kernel {

/// One pass of the gas through a branch: what is carried from cell to cell.
struct BurnEquations::Walk {
  double time;
  const Interval* interval;
  const double* state;
  double* rate;
  Lines* lines;
  Slopes* slopes;

  std::size_t branch = 0;
  bool forward = true;
  double sign = 1.0;
  double reaching = 0.0;     ///< size of the flow that reaches the fire, at least `still`
  double flow = 0.0;         ///< size of the flow here
  double stirred = 0.0;      ///< flow plus what the fire's cell exchanges with the room
  double exchange = 0.0;     ///< kg/s that the cell being entered exchanges with the room: the fire's cell only
  double flow_per_reaching = 1.0;  ///< d flow / d reaching
  Gas gas{};                 ///< that enters the cell
  double vapour_left = 1.0;
  BranchNow now{};
  double pending_loss = 0.0; ///< fittings before the cell that is being entered
  double loss_by_flow = 0.0;
  double fan_by_flow = 0.0;
  double drive_slope = 0.0;  ///< of the fittings since the last cell, by the temperature of the gas that passes them
};

inline constexpr double gravity = 9.80665;  // [m/s2]

/// Still air is taken as this much flow: films and weights have their limits there.
inline constexpr double still = 1e-9;  // [kg/s]

/// What the feed's mouth exchanges with the room when nothing is drawn through it (chosen: about a hundredth of the air of
/// a full fire; it must be something, or still air would be a resting point for a fire). A priming fire's tee likewise.
inline constexpr double mouth_exchange = 1e-4;  // [kg/s]

}  // namespace fluewright::kernel
