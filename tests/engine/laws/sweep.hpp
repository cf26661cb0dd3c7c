// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <rapidcheck.h>

#include <cmath>
#include <cstdint>

// What the sweeps over the laws draw and ask.

namespace fluewright {

/// A number between two others, evenly spread.
inline double between(double low, double high) {
  const auto n = *rc::gen::inRange<std::int64_t>(0, 1000000001);
  return low + (high - low) * static_cast<double>(n) / 1e9;
}

/// A number between two positive others, evenly spread over the decades.
inline double over_decades(double low, double high) { return low * std::pow(high / low, between(0.0, 1.0)); }

/// That a small step of the argument makes a small step of the value.
template <class Law>
void expect_no_jump(Law&& law, double x, double step, double allowed) {
  const double here = law(x);
  const double there = law(x + step);
  RC_ASSERT(std::isfinite(here));
  RC_ASSERT(std::isfinite(there));
  RC_ASSERT(std::abs(there - here) <= allowed);
}

}  // namespace fluewright
