// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The engine speaks in codes; here they become sentences. One place, so that desk and command line say the same.

#include "app/shared/units.hpp"
#include "engine/solve/assessment.hpp"

#include <string>
#include <string_view>

namespace fluewright {

[[nodiscard]] std::string_view word(Verdict);   ///< "draws" | "marginal" | "will not draw" | "unsafe: the draft depends on a fan"
[[nodiscard]] std::string_view word(BenchAge);  ///< "cold bench" | "one hour" | "charged"
[[nodiscard]] std::string_view word(Severity);
[[nodiscard]] std::string_view word(Standing);
[[nodiscard]] std::string_view word(FanRange);  ///< "within" | "beyond" | "backward" | "standing"
/// The user's label, else the type's name with its number along the path ("Elbow 2"), for any piece.
[[nodiscard]] std::string piece_name(const Design&, const Library&, std::size_t piece);
[[nodiscard]] std::string piece_name(const Design&, const Library&, std::string_view id);
/// One sentence naming piece, field, value and allowed range.
[[nodiscard]] std::string sentence(const Finding&, const Design&, const Library&, UnitSystem);
/// Why it matters, in one sentence.
[[nodiscard]] std::string why_it_matters(FindingCode);
/// "NFPA 211, single-wall connector (from memory)", "common practice, no source".
[[nodiscard]] std::string finding_source_words(const Finding&);
/// "none" or "in Chimney length 2, 7.4 m along".
[[nodiscard]] std::string condensation_sentence(const Assessment&, const Design&, const Library&, UnitSystem);
/// The usual cautions: CO alarm, clearances, floor load, permit and local code, licensed practice.
[[nodiscard]] std::vector<std::string> cautions();

}  // namespace fluewright
