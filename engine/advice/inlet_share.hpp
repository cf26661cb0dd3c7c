// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/assessment.hpp"

#include <optional>

namespace fluewright {

/// The piece whose free share decides how much air the fire gets, and the share that gives it the wanted air.
struct InletShare {
  std::size_t piece = 0;      ///< index in Design::pieces
  Ratio now = 1.0;
  Ratio wanted = 1.0;         ///< within the field's range
  bool reaches = true;        ///< with it the fire settles at the wanted excess air; else it is the nearest the range allows
};

/// How far to choke or open the inlet so that the charged heater settles at the wanted burn rate and excess air: the
/// draft left over at that flow (safety 1, no allowance) must be lost at the mouth,
/// zeta' = zeta + left over / (rho w^2/2). Exact, since what is lost at the mouth changes no temperature behind it.
/// Nothing where a fan runs (its speed is what one would turn), where no piece on the path has a free share or where nothing keeps running.
[[nodiscard]] std::optional<InletShare> wanted_inlet_share(const Design& design, const Library& library,
                                                           const Assessment& assessment);

}  // namespace fluewright
