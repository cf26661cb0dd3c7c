// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"
#include "engine/library/field.hpp"

#include <string>

namespace fluewright {

/// Whether a value of the right kind lies within the field's allowed range or is one of its words.
[[nodiscard]] bool is_allowed(const FieldValue& value, const FieldSpec& spec);

/// What is allowed, in the file's own units: "a number from 50 to 500 (mm)", "one of left, right".
[[nodiscard]] std::string allowed_in_file(const FieldSpec& spec);

/// What is allowed, in the user's units: "50 mm to 500 mm".
[[nodiscard]] std::string allowed_text(const FieldSpec& spec, UnitSystem units);

}  // namespace fluewright
