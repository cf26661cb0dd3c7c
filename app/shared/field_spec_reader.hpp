// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/field.hpp"

#include <nlohmann/json.hpp>

#include <string>

namespace fluewright {

/// One field of a piece type or one condition, from shipped data. Throws std::runtime_error on a fault in the data:
/// a unit that is not the file's, a fallback outside its own range, a usual range outside the allowed one.
[[nodiscard]] FieldSpec read_field_spec(const nlohmann::ordered_json& json, const std::string& where);

}  // namespace fluewright
