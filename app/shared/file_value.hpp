// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/field.hpp"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>
#include <vector>

namespace fluewright {

/// A number or word of a file as the catalogue's field wants it; else nothing, and a fault that names subject, value and
/// allowed range is added.
[[nodiscard]] std::optional<FieldValue> value_in_file(const nlohmann::ordered_json& json, const FieldSpec& spec,
                                                      const std::string& subject, std::vector<std::string>& faults);
/// The text under a key; empty where there is none.
[[nodiscard]] std::string text_in(const nlohmann::ordered_json& object, const char* key);

}  // namespace fluewright
