// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/plot/plot_labels.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright {

namespace {

/// Places tried for a name: as many as make a difference to the eye, however many points the line has.
constexpr std::size_t places_tried = 100;

/// Lowest and highest of a line between two points of the axis. Its points go along the axis.
std::pair<double, double> extent(const PlotLine& line, double from, double to) {
  std::pair<double, double> found{HUGE_VAL, -HUGE_VAL};
  const auto first = static_cast<std::size_t>(std::lower_bound(line.x.begin(), line.x.end(), from) - line.x.begin());
  for (std::size_t k = first; k < line.x.size() && k < line.y.size() && line.x[k] <= to; ++k) {
    found = {std::min(found.first, line.y[k]), std::max(found.second, line.y[k])};
  }
  return found;
}

}  // namespace

std::optional<LabelPlace> label_place(const PlotPicture& picture, std::size_t which, double half_width, double low,
                                      double high) {
  const PlotLine& line = picture.lines[which];
  if (line.x.empty()) return std::nullopt;
  const double end = line.x.back();
  LabelPlace best{line.x[line.x.size() / 2], line.y[line.y.size() / 2], true};
  double most_room = -HUGE_VAL;
  const std::size_t stride = std::max<std::size_t>(1, line.x.size() / places_tried);
  for (std::size_t place = 0; place < line.x.size(); place += stride) {
    const double x = line.x[place];
    if (x < half_width || x > end - half_width) continue;
    const auto [own_low, own_high] = extent(line, x - half_width, x + half_width);
    double above = high - own_high;
    double below = own_low - low;
    for (std::size_t j = 0; j < picture.lines.size(); ++j) {
      if (j == which) continue;
      const auto [other_low, other_high] = extent(picture.lines[j], x - half_width, x + half_width);
      // A line that runs over or under this one all along the name narrows that side; one that crosses spoils both.
      if (other_high > own_low) above = std::min(above, other_low - own_high);
      if (other_low < own_high) below = std::min(below, own_low - other_high);
    }
    // Next to a flat stretch a name sits closer to its line.
    const double room = std::max(above, below) - 2.0 * (own_high - own_low);
    if (room > most_room) {
      most_room = room;
      best = {x, above >= below ? own_high : own_low, above >= below};
    }
  }
  return best;
}

}  // namespace fluewright
