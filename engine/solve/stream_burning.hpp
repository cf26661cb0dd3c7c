// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/march.hpp"

namespace fluewright {

/// A fuel bed in a stream of any make: fresh air, or air that already carries flue gas. It burns at the wanted rate as
/// long as the oxygen that reaches it is `least_excess_air` times what that takes, else as much as the oxygen allows.
/// On fresh air it agrees with Burning to rounding.
class StreamBurning {
 public:
  StreamBurning(const WoodFuel& fuel, MassFlow wanted_rate);

  /// The fire in a stream > 0 of that composition. The excess-air ratio is oxygen brought over oxygen needed.
  [[nodiscard]] FireState at(MassFlow stream, const Composition& gas, bool forward) const;
  /// What leaves the fire.
  [[nodiscard]] Composition leaving(const Composition& gas, const FireState& fire) const;
  /// The stream whose fire lets `flue` > 0 go.
  [[nodiscard]] MassFlow stream_for(MassFlow flue, const Composition& gas) const;
  /// The stream that brings the wanted rate its excess-air ratio.
  [[nodiscard]] MassFlow stream_at(Ratio excess_air_ratio, const Composition& gas) const;

  [[nodiscard]] const Reaction& reaction() const { return reaction_; }
  [[nodiscard]] MassFlow wanted_rate() const { return wanted_; }

 private:
  MassFlow wanted_;
  Reaction reaction_;
  SpecificEnergy heat_;   ///< net heating value as fired
  Ratio unburned_share_;
};

}  // namespace fluewright
