// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/price.hpp"

#include <algorithm>

namespace fluewright {

namespace {

constexpr Length priced_bore = 150.0 * millimetre;

}  // namespace

const Price* PriceList::price(std::string_view type) const {
  const auto found = std::find_if(prices.begin(), prices.end(), [type](const Price& p) { return p.type == type; });
  return found == prices.end() ? nullptr : &*found;
}

PartsCost parts_cost(const Design& design, const Library& library, const PriceList& prices) {
  PartsCost cost;
  for (const Piece& piece : design.pieces) {
    const Price* price = prices.price(piece.type);
    const PieceType* type = library.piece_type(piece.type);
    if (price == nullptr || type == nullptr) {
      ++cost.without_price;
      continue;
    }
    const PieceView view(design, library, piece, *type);
    const double metres = view.has("length") ? in(view.length("length"), metre) : 0.0;
    const double by_bore = view.has("bore") ? (view.length("bore") / priced_bore).value() : 1.0;
    cost.total = cost.total + by_bore * (price->each + metres * price->per_metre);
  }
  return cost;
}

}  // namespace fluewright
