// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The findings on paper: as JSON for programs, as a list for people.

#include "app/shared/units.hpp"
#include "engine/advice/findings.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace fluewright {

/// Code, severity, piece, sentence, why, source and, where it is acknowledged, the reason.
[[nodiscard]] nlohmann::ordered_json finding_json(const Finding& finding, const Design& design, const Library& library);
/// The same for reading, most serious first; acknowledged ones stand at the end with their reasons.
[[nodiscard]] std::string findings_text(const std::vector<Finding>& findings, const Design& design, const Library& library,
                                        UnitSystem units);

}  // namespace fluewright
