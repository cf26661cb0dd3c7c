// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The unit and the digits of every meaning, in both systems: the one table behind showing and parsing.

#include "app/shared/units.hpp"

#include <string_view>

namespace fluewright {

/// How a number is cut off.
enum class Digits {
  fixed,    ///< always that many decimals: columns line up
  trimmed,  ///< at most that many; zeros at the end go
};

/// One unit on show. A value in SI base units is `si_per_unit * number + si_at_zero`.
struct UnitRow {
  std::string_view name;
  double si_per_unit = 1.0;
  int decimals = 0;
  Digits digits = Digits::fixed;
  double si_at_zero = 0.0;

  [[nodiscard]] double to_si(double number) const { return number * si_per_unit + si_at_zero; }
  [[nodiscard]] double from_si(double si) const { return (si - si_at_zero) / si_per_unit; }
};

[[nodiscard]] const UnitRow& unit_row(Meaning meaning, UnitSystem system);

}  // namespace fluewright
