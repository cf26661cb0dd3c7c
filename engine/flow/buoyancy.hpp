// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

namespace fluewright {

/// Pressure that gas gains against the outdoor air column over a rise (negative going down or where the gas is the
/// denser): (rho_out - rho_gas) g H. Source: hydrostatics; the handbooks' "theoretical draft".
[[nodiscard]] constexpr Pressure buoyancy(Density outdoors, Density gas, Length rise) {
  return (outdoors - gas) * standard_gravity * rise;
}

}  // namespace fluewright
