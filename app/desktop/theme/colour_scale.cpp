// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/theme/colour_scale.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstddef>

namespace fluewright {

namespace {

constexpr std::size_t arm_steps = 32;

}  // namespace

ColourScale::ColourScale(std::span<const Lab> through) { walk(through, 2 * arm_steps + 1); }

ColourScale::ColourScale(std::span<const Lab> below, std::span<const Lab> above) {
  walk(below, arm_steps + 1);
  steps_.pop_back();
  walk(above, arm_steps + 1);
}

/// `count` colours at equal differences from the first point to the last.
void ColourScale::walk(std::span<const Lab> through, std::size_t count) {
  double whole = 0.0;
  for (std::size_t i = 1; i < through.size(); ++i) whole += difference(through[i - 1], through[i]);
  std::size_t leg = 1;
  double before = 0.0;  // difference passed up to the leg's start
  for (std::size_t step = 0; step < count; ++step) {
    const double wanted = whole * static_cast<double>(step) / static_cast<double>(count - 1);
    double length = difference(through[leg - 1], through[leg]);
    while (wanted > before + length && leg + 1 < through.size()) {
      before += length;
      ++leg;
      length = difference(through[leg - 1], through[leg]);
    }
    const double part = length > 0.0 ? std::min(1.0, (wanted - before) / length) : 0.0;
    steps_.push_back(to_screen_colour(mixed(through[leg - 1], through[leg], part)));
  }
}

QColor ColourScale::at(double share) const {
  const double last = static_cast<double>(steps_.size() - 1);
  const double place = std::clamp(std::isnan(share) ? 0.0 : share, 0.0, 1.0) * last;
  const auto below = static_cast<std::size_t>(std::min(std::floor(place), last - 1.0));
  const double part = place - static_cast<double>(below);
  const QColor& a = steps_[below];
  const QColor& b = steps_[below + 1];
  const auto mix = [part](int from, int to) { return static_cast<int>(std::lround(from + part * (to - from))); };
  return {mix(a.red(), b.red()), mix(a.green(), b.green()), mix(a.blue(), b.blue())};
}

const ColourScale& sequential_scale(Sheet sheet) {
  static const std::array on_paper{Lab::of_hue(92.0, 6.0, 240.0), Lab::of_hue(85.0, 26.0, 88.0),
                                   Lab::of_hue(71.0, 52.0, 70.0), Lab::of_hue(55.0, 66.0, 52.0),
                                   Lab::of_hue(40.0, 57.0, 40.0), Lab::of_hue(24.0, 34.0, 30.0)};
  static const std::array at_night{Lab::of_hue(26.0, 14.0, 265.0), Lab::of_hue(36.0, 24.0, 20.0),
                                   Lab::of_hue(48.0, 52.0, 42.0), Lab::of_hue(62.0, 64.0, 58.0),
                                   Lab::of_hue(76.0, 58.0, 76.0), Lab::of_hue(92.0, 36.0, 95.0)};
  static const ColourScale day{on_paper};
  static const ColourScale night{at_night};
  return is_dark(sheet) ? night : day;
}

const ColourScale& diverging_scale(Sheet sheet) {
  static const std::array below_on_paper{Lab::of_hue(28.0, 30.0, 262.0), Lab::of_hue(52.0, 32.0, 255.0),
                                         Lab::of_hue(76.0, 20.0, 248.0), Lab::of_hue(96.0, 2.0, 90.0)};
  static const std::array above_on_paper{Lab::of_hue(96.0, 2.0, 90.0), Lab::of_hue(77.0, 36.0, 66.0),
                                         Lab::of_hue(54.0, 58.0, 52.0), Lab::of_hue(30.0, 42.0, 36.0)};
  static const std::array below_at_night{Lab::of_hue(86.0, 20.0, 245.0), Lab::of_hue(64.0, 34.0, 255.0),
                                         Lab::of_hue(42.0, 28.0, 262.0), Lab::of_hue(20.0, 2.0, 80.0)};
  static const std::array above_at_night{Lab::of_hue(20.0, 2.0, 80.0), Lab::of_hue(42.0, 40.0, 40.0),
                                         Lab::of_hue(64.0, 60.0, 58.0), Lab::of_hue(86.0, 40.0, 84.0)};
  static const ColourScale day{below_on_paper, above_on_paper};
  static const ColourScale night{below_at_night, above_at_night};
  return is_dark(sheet) ? night : day;
}

}  // namespace fluewright
