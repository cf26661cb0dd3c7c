// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/remedy_search.hpp"
#include "app/shared/units.hpp"

#include <nlohmann/json.hpp>

#include <string>

namespace fluewright {

/// What was tried, best first, with what each brings; units in the keys.
[[nodiscard]] nlohmann::ordered_json remedies_json(const RemedyList& list, const Design& design, const Library& library,
                                                   const PriceList& prices);
/// The best `most` for reading.
[[nodiscard]] std::string remedies_text(const RemedyList& list, const Design& design, const Library& library,
                                        const PriceList& prices, UnitSystem units, std::size_t most);

}  // namespace fluewright
