// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What a fan does to the gas that passes it.

#include "engine/library/fan_sheet.hpp"
#include "engine/quantities/quantities.hpp"

#include <memory>
#include <optional>

namespace fluewright {

/// A range of flows.
struct FlowRange {
  VolumeFlow low{};
  VolumeFlow high{};
};

/// Head over flow of a data sheet, at full speed in gas of the sheet's density [Pa over m3/s].
///
/// Between the points a piecewise cubic that rises and falls only where the points do (Fritsch & Carlson 1980, slopes by
/// Fritsch & Butland 1984; boost::math pchip), so that a dip of the sheet is kept and none is added. Its slope at either
/// end is that of the last two points. A sheet whose points make no curve gives no head at any flow.
class FanCurve {
 public:
  explicit FanCurve(const FanSheet& sheet);

  /// Within the points; at either end of them outside.
  [[nodiscard]] Pressure head(VolumeFlow flow) const;
  /// Beyond the last point the head falls on in a straight line: with the slope of the last two points or, where those
  /// do not fall, by the largest head over the last flow. Below zero it brakes.
  [[nodiscard]] Pressure head_beyond(VolumeFlow flow) const;
  [[nodiscard]] VolumeFlow last_flow() const { return last_flow_; }
  [[nodiscard]] Pressure largest_head() const { return largest_head_; }
  /// The flows between which the head rises with the flow, first to last; nothing for a curve that only falls.
  [[nodiscard]] std::optional<FlowRange> rising() const { return rising_; }
  [[nodiscard]] const FanSheet& sheet() const { return *sheet_; }

 private:
  struct Spline;
  std::shared_ptr<const FanSheet> sheet_;
  std::shared_ptr<const Spline> spline_;
  VolumeFlow last_flow_{};
  Pressure largest_head_{};
  std::optional<FlowRange> rising_;
};

/// A fan in a stretch of flue.
struct Fan {
  FanCurve curve;
  Ratio speed = 1.0;          ///< of the sheet's full speed; zero stands still
  bool blows_along = true;    ///< the way the stretch is written
  bool at_end = false;        ///< at the stretch's end rather than at its start
};

/// Where on its curve a fan stands.
enum class FanRange {
  within,     ///< between the sheet's points
  beyond,     ///< past the last of them
  backward,   ///< the gas runs against the way it blows
  standing    ///< it is off
};

/// What a fan does at a flow.
struct FanEffect {
  Pressure head{};  ///< added the way the fan blows; below zero where it brakes
  Pressure loss{};  ///< of blades and motor in the way, never below zero, against the flow whichever way that runs
  FanRange range = FanRange::within;
};

/// `flow` is positive the way the fan blows. At speed n in gas of density rho (fan laws, AMCA 210 / ISO 5801 annex:
/// Q ~ n, dp ~ rho n^2; the sheet is p(Q) at rho_0):
///
///   0 <= Q <= n Q_last   head n^2 rho/rho_0 p(Q/n)
///   Q > n Q_last         head n^2 rho/rho_0 p_beyond(Q/n), loss zeta rho/2 (Q^2 - (n Q_last)^2)/A^2
///   Q < 0                head n^2 rho/rho_0 p(0), loss zeta rho/2 Q^2/A^2
///
/// zeta is the sheet's loss standing still, A the free area of the stretch. Outside the points this is our own choice: it
/// joins the curve without a jump and goes over into the fan standing still as n goes to zero.
[[nodiscard]] FanEffect fan_effect(const Fan& fan, VolumeFlow flow, Density gas, Area area);

/// Electrical power at a speed in gas of a density: P ~ rho n^3 (fan laws), motor losses taken to follow.
[[nodiscard]] Power fan_power(const Fan& fan, Density gas);

/// Share of the gas's excess over its surroundings that a motor outside the stream is warmed by, through shaft and
/// housing (chosen: no published value; a quarter).
inline constexpr double motor_outside_share = 0.25;

/// How warm the motor gets: as the gas in the stream, else between surroundings and gas.
[[nodiscard]] Temperature motor_temperature(const FanSheet& sheet, Temperature gas, Temperature surroundings);

}  // namespace fluewright
