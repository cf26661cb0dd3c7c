// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What a field says about itself: its ranges in words, its step, and whether a value lies within.

#include "app/shared/units.hpp"
#include "engine/library/field.hpp"

#include <QString>

#include <optional>

namespace fluewright {

/// The value in SI units, nothing for words. Only for comparing and stepping within one kind.
[[nodiscard]] std::optional<double> magnitude(const FieldValue& value);
/// The same kind of value with another magnitude.
[[nodiscard]] FieldValue with_magnitude(const FieldValue& like, double magnitude);
/// Whether two values are the same to the precision of typing (a billionth).
[[nodiscard]] bool same_value(const FieldValue& a, const FieldValue& b);

/// Whether the value lies within the allowed range. Words always do.
[[nodiscard]] bool is_allowed(const FieldSpec& spec, const FieldValue& value);

/// One step up (+1) or down (-1): to the next whole step of the scale that is shown, within the allowed range.
/// Nothing if the value already stands at the end of the range.
[[nodiscard]] std::optional<FieldValue> stepped(const FieldSpec& spec, const FieldValue& value, UnitSystem units,
                                                int steps);

/// "3.4 Pa"
[[nodiscard]] QString value_text(const FieldSpec& spec, const FieldValue& value, UnitSystem units);
/// "usual 2–3 kg/h", empty where nothing is usual.
[[nodiscard]] QString usual_words(const FieldSpec& spec, UnitSystem units);
/// "50 to 600 mm", "at least 0 Pa", empty where anything goes.
[[nodiscard]] QString allowed_words(const FieldSpec& spec, UnitSystem units);
/// A sentence with one full stop: "in w.c." brings its own along.
[[nodiscard]] QString full_stop(const QString& sentence);
/// Where the value comes from: "Common practice." or "Published: Incropera & DeWitt."
[[nodiscard]] QString source_words(const Citation& citation);

}  // namespace fluewright
