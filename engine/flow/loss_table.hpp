// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/citation.hpp"
#include "engine/quantities/quantities.hpp"

#include <span>
#include <string_view>

namespace fluewright {

/// One published point of a loss coefficient.
struct LossRow {
  double argument;
  double coefficient;
};

/// A published row of loss coefficients against one argument, with its source, for computing and for printing.
struct LossTable {
  std::string_view name;      ///< "smooth round bend, 90 degrees"
  std::string_view argument;  ///< "R/D"
  std::string_view head;      ///< the velocity head it multiplies, "of the bend"
  std::string_view source;
  Standing standing;
  std::span<const LossRow> rows;  ///< rising in the argument, at least one

  /// Linear between the rows; beyond the ends the end row holds (covers() tells).
  [[nodiscard]] Ratio at(Ratio argument_value) const;
  /// Whether the argument lies within the published rows.
  [[nodiscard]] bool covers(Ratio argument_value) const;
  [[nodiscard]] Citation citation() const;
};

/// A loss coefficient given by a relation or a single number rather than by a row, for printing.
struct LossFormula {
  std::string_view name;
  std::string_view relation;
  std::string_view head;
  std::string_view source;
  Standing standing;

  [[nodiscard]] Citation citation() const;
};

/// Every table and relation of this room, in the order of the headers: local_loss, bends, tees.
[[nodiscard]] std::span<const LossTable* const> loss_tables();
[[nodiscard]] std::span<const LossFormula* const> loss_formulas();

}  // namespace fluewright
