// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/working/retrace.hpp"
#include "engine/working/sheet.hpp"

#include <vector>

namespace fluewright {

/// One piece along the path and what its slices add up to.
struct PieceSum {
  std::size_t piece = 0;
  std::size_t first = 0;  ///< rows [first, last)
  std::size_t last = 0;
  Pressure buoyancy{};
  Pressure resistance{};  ///< friction and local losses
  Pressure acceleration{};
  Pressure fan{};         ///< raised by a fan
  Power to_room{};
  Power into_mass{};
  Power lost{};           ///< by the gas, wherever it went
};

/// The pieces in the order in which the gas passes them.
[[nodiscard]] std::vector<PieceSum> piece_sums(const Retrace& run);

/// A term for each piece and their sum: "X_1 + X_2 + ...", X being `symbol`. Pieces whose term is nothing are left out.
/// `of` reads the term.
template <class Quantity>
void add_piece_terms(Sheet& sheet, const std::vector<PieceSum>& pieces, const std::string& symbol, const std::string& term,
                     const std::string& whole, Quantity PieceSum::*of) {
  std::string relation;
  Quantity sum{};
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Quantity value = pieces[i].*of;
    if (value == Quantity{}) continue;
    const std::string name = symbol + "_" + std::to_string(i + 1);
    sheet.given(name, term, value, from_the_walk()).remark("added over the piece's slices").piece(pieces[i].piece);
    relation += (relation.empty() ? "" : " + ") + name;
    sum += value;
  }
  if (relation.empty()) {
    sheet.given(symbol, whole, sum, from_the_walk()).remark("no piece has any");
  } else {
    sheet.step(symbol, whole, relation, sum, by_definition(), Carries::sum);
  }
}

}  // namespace fluewright
