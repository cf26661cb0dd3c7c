// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

namespace fluewright {

/// Pressure of the room against still outdoor air at the same height z:
/// (rho_out - rho_room) g (z - z_np) - depressurisation. Warm house: negative below the neutral plane.
/// Source: hydrostatics; ASHRAE Handbook of Fundamentals, stack effect.
[[nodiscard]] Pressure room_gauge(Length z, Length neutral_plane, Density outdoors, Density room,
                                  Pressure depressurisation);

/// How far exhaust fans pull a house below outdoors: the envelope leaks C dp^0.65, with C from the air changes
/// per hour that a blower door finds at 50 Pa, so dp = 50 Pa (Q / Q50)^(1/0.65). Exhaust and leakage need to
/// be >= 0 and > 0. Source: power law of blower-door standards (ISO 9972), exponent 0.65 as customary there.
[[nodiscard]] Pressure exhaust_depressurisation(VolumeFlow exhaust, Volume house, Ratio air_changes_at_50_Pa);

/// Exponent of the leakage power law.
inline constexpr double leakage_exponent = 0.65;

/// Height of the neutral plane above the lower of two openings, the height between them given:
/// H / (1 + (A_low/A_high)^2 rho_out/rho_room) for a house warmer than outdoors; in a colder house the flow is the
/// other way round and the densities change places.
/// Source: ASHRAE Handbook of Fundamentals, ch. Ventilation and Infiltration, neutral pressure level.
[[nodiscard]] Length neutral_level(Length height_between, Area lower, Area upper, Density outdoors, Density room);

/// Pressure of wind on a surface or at a cap, C rho v^2/2; C from -1 (suction) to 1 (blowing straight in).
/// Source: definition of the wind pressure coefficient.
[[nodiscard]] Pressure wind_pressure(Ratio coefficient, Velocity wind, Density outdoors);

}  // namespace fluewright
