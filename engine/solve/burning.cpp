// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/burning.hpp"

namespace fluewright {

Burning::Burning(const WoodFuel& fuel, MassFlow wanted_rate, Ratio air_water)
    : fuel_{fuel}, wanted_{wanted_rate}, air_water_{air_water}, heat_{net_heating_value(fuel)} {
  // Flue gas per fuel is a straight line in the excess-air ratio; two points make it.
  const FlueGas one = flue_gas(fuel, 1.0, air_water);
  air_per_fuel_ = one.air_per_fuel;
  solid_per_fuel_ = one.per_fuel - one.air_per_fuel;
}

MassFlow Burning::flue_flow(Ratio excess_air_ratio) const {
  return wanted_ * (solid_per_fuel_ + air_per_fuel_ * excess_air_ratio);
}

FireState Burning::state(MassFlow burn, Ratio excess_air_ratio, bool short_of_air, bool forward) const {
  FireState s;
  s.burn_rate = burn;
  s.excess_air_ratio = excess_air_ratio;
  s.short_of_air = short_of_air;
  s.air = burn * air_per_fuel_ * excess_air_ratio;
  s.flue = s.air + burn * solid_per_fuel_;
  s.released = burn * heat_;
  s.added = s.released * (1.0 - fuel_.unburned_share);
  s.forward = forward;
  return s;
}

FireState Burning::at_excess_air(Ratio excess_air_ratio) const {
  return state(wanted_, excess_air_ratio, false, true);
}

FireState Burning::from_flue_flow(MassFlow flue) const {
  const Ratio excess = (flue / wanted_ - solid_per_fuel_) / air_per_fuel_;
  if (excess >= least_excess_air) {
    return state(wanted_, excess, false, true);
  }
  return state(flue / (solid_per_fuel_ + air_per_fuel_ * least_excess_air), least_excess_air, true, true);
}

FireState Burning::from_air_flow(MassFlow air) const {
  const Ratio excess = air / (wanted_ * air_per_fuel_);
  if (excess >= least_excess_air) {
    return state(wanted_, excess, false, false);
  }
  return state(air / (air_per_fuel_ * least_excess_air), least_excess_air, true, false);
}

GasTable Burning::gas(const FireState& fire) const {
  return GasTable{flue_gas(fuel_, fire.excess_air_ratio, air_water_).mixture};
}

}  // namespace fluewright
