// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"
#include "engine/advice/remedy.hpp"

#include <string>
#include <string_view>

namespace fluewright {

/// "shorten_bench"
[[nodiscard]] std::string_view change_name(ChangeKind kind);
/// What is done to this design, in a sentence without a full stop: "Shorten the bench from 26.00 m to 19.50 m".
[[nodiscard]] std::string remedy_sentence(const Remedy& remedy, const Design& design, const Library& library, UnitSystem units);
/// A finding in two or three words: "will not draw".
[[nodiscard]] std::string finding_title(FindingCode code);
/// "+120 EUR", "−45 EUR", "0 EUR"
[[nodiscard]] std::string money_text(Money difference, const std::string& currency);

}  // namespace fluewright
