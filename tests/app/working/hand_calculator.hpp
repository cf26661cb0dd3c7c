// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A person with a pocket calculator: reads the printed digits of a working, types the printed relations, compares.

#include "app/shared/working_value.hpp"

#include <gtest/gtest.h>
#include <muParser.h>

#include <algorithm>
#include <cmath>
#include <map>
#include <string>

namespace fluewright::test {

/// The value of a step as it stands on paper.
inline double printed(const WorkingStep& step) { return std::stod(working_value(step).number); }

/// What two units of the last digit that a step promises are worth: of its sixth, or of its last but one where it has
/// fewer than seven.
inline double promised(const WorkingStep& step) {
  const double size = std::abs(printed(step));
  if (size == 0.0) return 1e-9;
  // A temperature stands to nine digits so that differences keep six; the level itself promises no more than others.
  const int digits = std::min(step.digits - 1, 6);
  return 2.0 * std::pow(10.0, std::floor(std::log10(size)) - digits + 1);
}

class Calculator {
 public:
  Calculator() {
    parser_.DefineConst("pi", 3.14159265358979323846);
    parser_.DefineFun("acosh", [](double x) { return std::acosh(x); });
  }
  void know(const std::string& symbol, double value) {
    values_[symbol] = value;
    parser_.DefineVar(symbol, &values_[symbol]);
  }
  double evaluate(const std::string& relation) {
    parser_.SetExpr(relation);
    return parser_.Eval();
  }

 private:
  mu::Parser parser_;
  std::map<std::string, double> values_;
};

struct Followed {
  int relations = 0;
  int looked_up = 0;      ///< steps without a relation that depend on others
  double worst = 0.0;     ///< of what a step promises
  std::string worst_step;
};

/// Every relation with the printed digits of what it uses.
inline Followed follow_by_digits(const Working& working) {
  Followed followed;
  Calculator calculator;
  for (const WorkingStep& step : working.steps) {
    if (!step.relation.empty()) {
      ++followed.relations;
      double value = std::nan("");
      try {
        value = calculator.evaluate(step.relation);
      } catch (const mu::ParserError& error) {
        ADD_FAILURE() << step.symbol << " = " << step.relation << ": " << error.GetMsg();
      }
      const double off = std::abs(value - printed(step)) / promised(step);
      EXPECT_LE(off, 1.0) << step.part << ": " << step.symbol << " = " << step.relation << " gives " << value << ", printed "
                          << working_value(step).number << " to " << step.digits << " digits";
      if (!(off <= followed.worst)) {
        followed.worst = off;
        followed.worst_step = step.symbol;
      }
    } else if (!step.uses.empty()) {
      ++followed.looked_up;
    }
    calculator.know(step.symbol, printed(step));
  }
  return followed;
}

/// From the given and looked-up values alone, carrying what the calculator shows from step to step. Hands back the
/// largest relative difference from the engine's own values among `symbols`.
inline double follow_through(const Working& working, const std::vector<std::string>& symbols) {
  Calculator calculator;
  double worst = 0.0;
  for (const WorkingStep& step : working.steps) {
    const double value = step.relation.empty() ? printed(step) : calculator.evaluate(step.relation);
    calculator.know(step.symbol, value);
    if (std::find(symbols.begin(), symbols.end(), step.symbol) == symbols.end()) continue;
    worst = std::max(worst, std::abs(value - printed(step)) / std::max(std::abs(printed(step)), 1e-12));
  }
  return worst;
}

}  // namespace fluewright::test
