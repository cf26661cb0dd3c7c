// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/openings.hpp"

#include <cmath>

namespace fluewright {

namespace loss {

namespace {
constexpr std::string_view idelchik = "Idelchik, Handbook of Hydraulic Resistance, sharp-edged hole between two ducts";
}

const LossFormula restricted_entry{"entry through a partly covered opening", "(1.707 - phi)^2 / phi^2", "of the duct",
                                   idelchik, Standing::from_memory};
const LossFormula restricted_exit{"exit through a partly covered opening, beyond the free exit",
                                  "(1 + 0.707 sqrt(1-phi))^2 / phi^2 - 1", "of the duct", idelchik,
                                  Standing::from_memory};

}  // namespace loss

Ratio restricted_entry(Ratio free_share) {
  const double phi = free_share;
  const double sum = (1.707 - phi) / phi;
  return sum * sum;
}

Ratio restricted_exit(Ratio free_share) {
  const double phi = free_share;
  const double sum = (1.0 + 0.707 * std::sqrt(1.0 - phi)) / phi;
  return sum * sum - 1.0;
}

}  // namespace fluewright
