// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the plots over time show, in the units they show it in, without any plotting library.

#include "app/desktop/moment.hpp"
#include "app/shared/units.hpp"

#include <QString>

#include <optional>
#include <vector>

namespace fluewright {

/// Decides ink and stroke.
enum class CurveRole { first, second, third };

struct BurnCurve {
  CurveRole role{};
  QString label;
  std::vector<double> y;   ///< a row each; not a number where there is nothing to say
};

/// A stretch of time to mark: gas runs backwards, smoke comes into the room, the fire is short of air.
struct TroubleSpan {
  enum class Kind { smoke, backwards, starved } kind{};
  double from = 0.0;  ///< seconds
  double to = 0.0;
};

struct BurnChart {
  QString title;
  QString unit;
  int decimals = 0;
  std::vector<BurnCurve> curves;
  std::vector<TroubleSpan> troubles;
  bool from_zero = false;
  std::optional<double> highest;  ///< of the axis: what goes beyond runs out of the chart
};

struct BurnPicture {
  std::vector<double> seconds;  ///< a row each
  std::vector<BurnChart> charts;
};

[[nodiscard]] BurnPicture burn_picture(const BurnRecord& record, const Design& design, const Library& library,
                                       UnitSystem units);
[[nodiscard]] QString trouble_words(TroubleSpan::Kind kind);
/// The kept value of a curve at a time, straight between rows.
[[nodiscard]] double value_at(const BurnPicture& picture, const BurnCurve& curve, double seconds);

}  // namespace fluewright
