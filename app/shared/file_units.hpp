// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The units of files: one fixed unit a kind, named in the key ("bore_mm", "outdoor_temperature_C").

#include "engine/library/field.hpp"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <string_view>

namespace fluewright {

/// The word for a kind in data files: "length", "mass_flow".
[[nodiscard]] std::string_view word(FieldKind kind);
[[nodiscard]] std::optional<FieldKind> field_kind_of(std::string_view word);
/// Whether a value of that kind is a word or an id rather than a number.
[[nodiscard]] bool is_word_kind(FieldKind kind);

/// "mm", "C", "kg_h"; empty for ratios, counts and words. Altitudes are in m.
[[nodiscard]] std::string_view file_unit(FieldKind kind, std::string_view key);
/// The key in the file: "bore" -> "bore_mm", "moisture" -> "moisture_share".
[[nodiscard]] std::string file_key(FieldKind kind, std::string_view key);

/// A number in the file's unit as a value of that kind. Nothing for a fraction where a whole number is wanted.
[[nodiscard]] std::optional<FieldValue> from_file_number(double number, FieldKind kind, std::string_view key);
/// The value as it goes into a file: the shortest decimal that reads back to the same value, or the word.
[[nodiscard]] nlohmann::ordered_json to_file_value(const FieldValue& value, FieldKind kind, std::string_view key);

/// The shortest decimal that `enter` turns into the same value again.
[[nodiscard]] nlohmann::ordered_json shortest_number(double number, double same_as, double (*enter)(double));

}  // namespace fluewright
