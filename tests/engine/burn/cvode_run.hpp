// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The burn's equations handed to a general library for ordinary differential equations.

#include "engine/burn/burn_equations.hpp"

#include <vector>

namespace fluewright::test {

struct CvodeResult {
  bool done = false;
  std::vector<double> state;
  long steps = 0;
  long rates = 0;
};

/// Variable-order BDF of SUNDIALS CVODE with its own difference-quotient Jacobian: dense, or banded over the cells (the
/// flow's column and row, which reach everything, are then left out of it, as a band must). The flow is kept last.
/// `times` are reached exactly; the state at each is appended to `at`, where given.
[[nodiscard]] CvodeResult run_cvode(kernel::BurnEquations& equations, const kernel::Interval& interval,
                                    std::vector<double> state, double relative, bool banded,
                                    const std::vector<double>& times, std::vector<std::vector<double>>* at = nullptr);

}  // namespace fluewright::test
