// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/gas/gas_table.hpp"
#include "engine/solve/march.hpp"

namespace fluewright {

/// Excess-air ratio below which a stick fire cannot use the oxygen that passes it: the burn rate falls instead
/// (chosen; wood appliances are rarely measured burning under 1.2).
inline constexpr double least_excess_air = 1.2;

/// A fuel bed that is fed at a wanted rate: what it makes of the air it gets.
class Burning {
 public:
  /// `air_water` is the mole fraction of vapour in the air that feeds the fire.
  Burning(const WoodFuel& fuel, MassFlow wanted_rate, Ratio air_water);

  /// At a wanted rate and excess air: the design flow.
  [[nodiscard]] FireState at_excess_air(Ratio excess_air_ratio) const;
  /// Forward, from the flow that leaves the cap.
  [[nodiscard]] FireState from_flue_flow(MassFlow flue) const;
  /// Backward, from the air that comes down the stack.
  [[nodiscard]] FireState from_air_flow(MassFlow air) const;
  /// The flue gas of that fire.
  [[nodiscard]] GasTable gas(const FireState& fire) const;
  [[nodiscard]] MassFlow wanted_rate() const { return wanted_; }
  [[nodiscard]] MassFlow flue_flow(Ratio excess_air_ratio) const;

 private:
  [[nodiscard]] FireState state(MassFlow burn, Ratio excess_air_ratio, bool short_of_air, bool forward) const;

  WoodFuel fuel_;
  MassFlow wanted_;
  Ratio air_water_;
  Ratio solid_per_fuel_;  ///< kg of flue gas per kg of wood that is not air
  Ratio air_per_fuel_;    ///< kg of moist air per kg of wood and unit of excess-air ratio
  SpecificEnergy heat_;   ///< net heating value as fired
};

}  // namespace fluewright
