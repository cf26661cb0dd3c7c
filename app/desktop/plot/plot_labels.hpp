// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/plot/plot_picture.hpp"

namespace fluewright {

/// Where a line's own name stands.
struct LabelPlace {
  double x = 0.0;
  double y = 0.0;
  bool over = true;  ///< above the line rather than below it
};

/// The place along a line where its name, `half_width` to either side, has the most room to the nearest other line and
/// to the edges `low` and `high`, beside a stretch as flat as may be. Nothing for a line without points.
[[nodiscard]] std::optional<LabelPlace> label_place(const PlotPicture& picture, std::size_t line, double half_width,
                                                    double low, double high);

}  // namespace fluewright
