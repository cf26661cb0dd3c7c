// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What parts cost. Prices are the user's own data; the engine only adds them up.

#include "engine/layout/design.hpp"
#include "engine/library/citation.hpp"

#include <string>
#include <vector>

namespace fluewright {

/// An amount in the currency of the price list. Amounts add up; they are no physical quantity.
struct Money {
  double amount = 0.0;
  friend Money operator+(Money a, Money b) { return {a.amount + b.amount}; }
  friend Money operator-(Money a, Money b) { return {a.amount - b.amount}; }
  friend Money operator*(double factor, Money m) { return {factor * m.amount}; }
  friend auto operator<=>(const Money&, const Money&) = default;
};

/// What a type of piece costs: each, and by the metre. Both are for a bore of 150 mm and grow with the bore.
struct Price {
  std::string type;
  Money each;
  Money per_metre;
  friend bool operator==(const Price&, const Price&) = default;
};

/// A price list.
struct PriceList {
  std::string currency;
  std::vector<Price> prices;
  Citation citation;

  [[nodiscard]] const Price* price(std::string_view type) const;
  friend bool operator==(const PriceList&, const PriceList&) = default;
};

/// All parts of a design together.
struct PartsCost {
  Money total;
  std::size_t without_price = 0;  ///< pieces whose type is not on the list
};

/// Pipes, fittings and chambers; neither the mass around them nor anybody's work.
[[nodiscard]] PartsCost parts_cost(const Design& design, const Library& library, const PriceList& prices);

}  // namespace fluewright
