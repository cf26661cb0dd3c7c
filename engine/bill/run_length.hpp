// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/assessment.hpp"

#include <optional>
#include <vector>

namespace fluewright {

struct LengthPoint {
  Length bench{};     ///< of all bench runs together
  Pressure margin{};  ///< draft to spare at the worst bench age
};

/// How the draft to spare falls as the bench gets longer.
struct LengthCurve {
  LengthPoint yours;
  std::vector<LengthPoint> points;  ///< rising in length
  /// The longest that draws: where the margin goes through zero, above yours if yours draws and below it if not.
  std::optional<Length> longest;
};

struct LengthCurveOptions {
  std::size_t points = 17;
  Length at_most = 40.0 * metre;  ///< longest bench tried
};

/// The design's level bench runs on the main path made shorter and longer, all in the same proportion, everything
/// behind them moving along; the rest stays. Nothing where the path is not complete or has no such run.
[[nodiscard]] std::optional<LengthCurve> margin_against_length(const Design& design, const Library& library,
                                                               const LengthCurveOptions& options = {});

}  // namespace fluewright
