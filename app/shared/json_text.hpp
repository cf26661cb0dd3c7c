// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>
#include <variant>

namespace fluewright {

/// Deepest nesting of a file: a design needs five levels, and a writer that recurses must not be led further.
inline constexpr int deepest_nesting = 64;

/// What is wrong with a text that is no JSON, with line and column.
struct JsonFault {
  std::string message;
};

/// Reads JSON. Refuses a key that stands twice in one object and nesting past deepest_nesting.
[[nodiscard]] std::variant<nlohmann::ordered_json, JsonFault> parse_json(std::string_view text);

/// JSON laid out for people and for line-by-line comparison: two spaces an indent, every entry of the top two levels on
/// lines of its own, small objects and lists of plain values below on one line. Ends with a line break.
[[nodiscard]] std::string lay_out_json(const nlohmann::ordered_json& json);

}  // namespace fluewright
