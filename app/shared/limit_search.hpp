// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/advice/limits.hpp"

#include <functional>
#include <stop_token>

namespace fluewright {

/// A limit with its curve, on all processors.
struct LimitSearch {
  LimitKind kind{};
  const Design& design;
  const Library& library;
  Pressure wanted = marginal_below;
  std::size_t points = 40;
  std::stop_token stop;
  std::function<void(std::size_t done, std::size_t of)> moved_on;  ///< from any thread, one call at a time
  MarginBy by = MarginBy::estimate;
};

/// The curve alone with slices of that length: quick_slice for a picture at once. Empty where there is no such limit.
[[nodiscard]] std::vector<LimitPoint> limit_curve(const LimitSearch& search, const LimitScale& scale, Length slice);

/// Curve on the usual slices and limit. Nothing where the design lacks what the limit is about or has no answer yet, or
/// where the search was stopped.
[[nodiscard]] std::optional<LimitAnswer> search_limit(const LimitSearch& search);

/// An answer by estimate worked out anew in steps in time: point after point, those nearest to the limit and to today
/// first, then the limit. `brought` gets every point as it comes, from any thread, one call at a time; its index is that in the
/// curve. A point without a margin where the steps do not converge. Nothing where the design has no steps in time or the
/// search was stopped.
[[nodiscard]] std::optional<LimitAnswer> refined_limit(
    const LimitSearch& search, const LimitAnswer& quick,
    const std::function<void(std::size_t index, const LimitPoint& point)>& brought);

}  // namespace fluewright
