// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>

#include <string>
#include <vector>

namespace fluewright {

/// Checks a design file against the shipped schema. One sentence a fault, naming piece, field, value and what is
/// allowed; none when all is well.
[[nodiscard]] std::vector<std::string> check_against_schema(const nlohmann::ordered_json& file);

/// A JSON value as a message quotes it: short, and cut off where it is not.
[[nodiscard]] std::string quoted(const nlohmann::ordered_json& value);

}  // namespace fluewright
