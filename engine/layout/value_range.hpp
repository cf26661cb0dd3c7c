// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/finding.hpp"
#include "engine/library/field.hpp"

#include <optional>

namespace fluewright {

/// Holds a value against its field's kind and allowed range (inclusive, but for rounding). A choice must be one of its
/// words; for one that is not, Finding::text lists them. Not-a-number is out of every range. Nothing if all is well;
/// Finding::field is the spec's key, Finding::piece is left to the caller.
[[nodiscard]] std::optional<Finding> check_range(const FieldSpec& spec, const FieldValue& value);

}  // namespace fluewright
