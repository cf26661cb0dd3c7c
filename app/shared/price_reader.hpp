// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/advice/price.hpp"

#include <filesystem>
#include <string>
#include <variant>

namespace fluewright {

/// The price list that ships with the program: round figures, common practice. A fault in it is a broken build.
[[nodiscard]] const PriceList& shipped_prices();

/// The user's own list over the shipped one: types it does not name keep their shipped price. Why not, in words that name
/// entry and key, where the text is no price list.
[[nodiscard]] std::variant<PriceList, std::string> read_price_text(std::string_view text);
[[nodiscard]] std::variant<PriceList, std::string> read_price_file(const std::filesystem::path& path);

}  // namespace fluewright
