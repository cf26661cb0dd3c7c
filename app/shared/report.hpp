// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// An answer on paper: as JSON for programs, as a table for people. Both come from the same assessment; the table's
// numbers go through the one formatter of units.hpp.

#include "app/shared/units.hpp"
#include "engine/solve/assessment.hpp"

#include <nlohmann/json.hpp>

#include <string>

namespace fluewright {

/// The whole answer, units in the keys. buoyancy_Pa, resistance_Pa and room_gauge_Pa are those of the design-flow check
/// at worst_age, with fans off. In the profile loss_Pa = friction_Pa + local_Pa + acceleration_Pa - fan_Pa: a fan that runs
/// takes off less than nothing. What an incomplete drawing leaves unknown is null.
[[nodiscard]] nlohmann::ordered_json assessment_json(const Design& design, const Library& library,
                                                     const Assessment& assessment);
/// The same for reading, a row a piece.
[[nodiscard]] std::string assessment_text(const Design& design, const Library& library, const Assessment& assessment,
                                          UnitSystem units);

/// The piece catalogue with the source of every value.
[[nodiscard]] nlohmann::ordered_json catalogue_json(const Library& library);
[[nodiscard]] std::string catalogue_text(const Library& library, UnitSystem units);

}  // namespace fluewright
