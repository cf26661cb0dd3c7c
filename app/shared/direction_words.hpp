// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Headings, turns and standings as the files spell them.

#include "engine/layout/space.hpp"
#include "engine/library/citation.hpp"

#include <nlohmann/json.hpp>

#include <optional>
#include <string_view>

namespace fluewright {

[[nodiscard]] std::string_view file_word(Turn turn);
[[nodiscard]] std::optional<Turn> turn_of(std::string_view word);

[[nodiscard]] std::string_view file_word(Standing standing);
[[nodiscard]] std::optional<Standing> standing_of(std::string_view word);

/// Puts "heading" and, where it stands upright, "facing" or "facing_deg" into a piece's object.
void put_heading(nlohmann::ordered_json& piece, const Heading& heading);
/// Takes them out again. The object must have passed the schema.
[[nodiscard]] Heading heading_in(const nlohmann::ordered_json& piece);

}  // namespace fluewright
