// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"
#include "engine/advice/limits.hpp"

#include <nlohmann/json.hpp>

#include <string>
#include <string_view>

namespace fluewright {

/// "longest_bench", and back.
[[nodiscard]] std::string_view limit_name(LimitKind kind);
[[nodiscard]] std::optional<LimitKind> limit_called(std::string_view name);
/// "Longest bench"
[[nodiscard]] std::string limit_title(LimitKind kind);
/// What the curve runs over: "Length of the bench".
[[nodiscard]] std::string limit_axis(LimitKind kind);
/// "quick estimate"
[[nodiscard]] std::string_view margin_by_words(MarginBy by);
/// A value of the scale: "9.85 m", "4 bends".
[[nodiscard]] std::string limit_value_text(LimitKind kind, const FieldValue& x, UnitSystem units);
/// The limit in a sentence or two, also where there is none.
[[nodiscard]] std::string limit_sentence(const LimitAnswer& answer, const Design& design, UnitSystem units);
/// Why a design has no such limit.
[[nodiscard]] std::string no_limit_sentence(LimitKind kind, bool has_answer);

[[nodiscard]] nlohmann::ordered_json limit_json(const LimitAnswer& answer, const Design& design);
/// Sentence and curve as a table.
[[nodiscard]] std::string limit_text(const LimitAnswer& answer, const Design& design, UnitSystem units);

}  // namespace fluewright
