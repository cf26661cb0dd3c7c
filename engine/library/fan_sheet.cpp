// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/library/fan_sheet.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

bool makes_a_curve(std::span<const FanPoint> points) {
  if (points.size() < 2 || points.front().flow != VolumeFlow{}) return false;
  const auto finite = [](const FanPoint& p) {
    return std::isfinite(p.flow.value()) && std::isfinite(p.head.value()) && p.head >= Pressure{};
  };
  if (!std::all_of(points.begin(), points.end(), finite)) return false;
  const auto not_rising = [](const FanPoint& a, const FanPoint& b) { return !(a.flow < b.flow); };
  if (std::adjacent_find(points.begin(), points.end(), not_rising) != points.end()) return false;
  return std::any_of(points.begin(), points.end(), [](const FanPoint& p) { return p.head > Pressure{}; });
}

}  // namespace fluewright
