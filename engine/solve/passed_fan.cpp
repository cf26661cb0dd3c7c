// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/moisture/saturation.hpp"
#include "engine/solve/fans.hpp"

namespace fluewright {

FanState passed_fan(const Stretch& stretch, MassFlow flow, const GasTable& gas, Temperature temperature,
                    Pressure absolute) {
  const Fan& fan = *stretch.fan;
  FanState state;
  state.piece = stretch.piece;
  state.speed = fan.speed;
  state.density = gas.density(temperature, absolute);
  state.flow = (fan.blows_along ? 1.0 : -1.0) * flow / state.density;
  state.gas = temperature;
  state.dew_point = dew_point(gas.mixture().mole_fraction(Species::water) * absolute);
  state.effect = fan_effect(fan, state.flow, state.density, stretch.section.area());
  return state;
}

}  // namespace fluewright
