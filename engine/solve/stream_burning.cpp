// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/stream_burning.hpp"

#include "engine/solve/burning.hpp"

namespace fluewright {
namespace {

SpecificAmount oxygen_in(const Composition& gas) { return gas[index_of(Species::oxygen)]; }

}  // namespace

StreamBurning::StreamBurning(const WoodFuel& fuel, MassFlow wanted_rate)
    : wanted_{wanted_rate},
      reaction_{reaction_of(fuel)},
      heat_{net_heating_value(fuel)},
      unburned_share_{fuel.unburned_share} {}

FireState StreamBurning::at(MassFlow stream, const Composition& gas, bool forward) const {
  FireState s;
  s.forward = forward;
  s.air = stream;
  const Ratio excess = stream * oxygen_in(gas) / (wanted_ * reaction_.oxygen_needed);
  s.short_of_air = excess < least_excess_air;
  s.burn_rate = s.short_of_air ? MassFlow(wanted_ * excess / least_excess_air) : wanted_;
  s.excess_air_ratio = s.short_of_air ? Ratio(least_excess_air) : excess;
  s.flue = stream + s.burn_rate * reaction_.mass;
  s.released = s.burn_rate * heat_;
  s.added = s.released * (1.0 - unburned_share_);
  return s;
}

Composition StreamBurning::leaving(const Composition& gas, const FireState& fire) const {
  Composition c = gas;
  for (std::size_t i = 0; i < species_count; ++i) {
    c[i] = (fire.air * gas[i] + fire.burn_rate * reaction_.added[i]) / fire.flue;
  }
  return c;
}

MassFlow StreamBurning::stream_for(MassFlow flue, const Composition& gas) const {
  const MassFlow with_all = flue - wanted_ * reaction_.mass;
  if (with_all >= stream_at(least_excess_air, gas)) return with_all;
  const Ratio burnt_per_stream = oxygen_in(gas) / (reaction_.oxygen_needed * least_excess_air);
  return flue / (1.0 + reaction_.mass * burnt_per_stream);
}

MassFlow StreamBurning::stream_at(Ratio excess_air_ratio, const Composition& gas) const {
  return excess_air_ratio * wanted_ * reaction_.oxygen_needed / oxygen_in(gas);
}

}  // namespace fluewright
