// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/site/house.hpp"

#include <cmath>

namespace fluewright {

Pressure room_gauge(Length z, Length neutral_plane, Density outdoors, Density room, Pressure depressurisation) {
  return (outdoors - room) * standard_gravity * (z - neutral_plane) - depressurisation;
}

Pressure exhaust_depressurisation(VolumeFlow exhaust, Volume house, Ratio air_changes_at_50_Pa) {
  const VolumeFlow at_50_pascal = air_changes_at_50_Pa * house / hour;
  const Ratio share = exhaust / at_50_pascal;
  return 50.0 * std::pow(share.value(), 1.0 / leakage_exponent) * pascal;
}

Length neutral_level(Length height_between, Area lower, Area upper, Density outdoors, Density room) {
  const Ratio areas = lower / upper;
  // The inflow has the density of the outer air and the outflow that of the room. In a house colder than outdoors
  // they change openings, so that the ratio is always that of the denser air to the lighter.
  const Ratio densities = room < outdoors ? outdoors / room : room / outdoors;
  const Ratio below = areas * areas * densities;
  return height_between / (1.0 + below);
}

Pressure wind_pressure(Ratio coefficient, Velocity wind, Density outdoors) {
  return coefficient * (0.5 * outdoors * wind * wind);
}

}  // namespace fluewright
