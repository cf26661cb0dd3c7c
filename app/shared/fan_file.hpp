// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A fan's data sheet in a design file.

#include "engine/library/library.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace fluewright {

/// From JSON that follows the schema. Entries that are not given are the library's fallbacks. What is wrong goes into
/// `faults`, a sentence each that names fan, entry, value and what is allowed; keys nobody knows go into `kept`.
[[nodiscard]] FanSheet read_fan_sheet(const nlohmann::ordered_json& json, const Library& library,
                                      std::vector<std::string>& faults, nlohmann::ordered_json& kept);

[[nodiscard]] nlohmann::ordered_json fan_sheet_json(const FanSheet& sheet, const Library& library,
                                                    const nlohmann::ordered_json& kept);

/// A point as "flow_m3_h" and "head_Pa".
[[nodiscard]] nlohmann::ordered_json fan_point_json(const FanPoint& point);

}  // namespace fluewright
