// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/rough_path.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {
namespace {

/// Rise a length along by which two stretches still count as equally steep.
constexpr double same_slope = 0.02;

bool same_wall(const Stretch& a, const Stretch& b) {
  return std::equal(a.wall.begin(), a.wall.end(), b.wall.begin(), b.wall.end(), [](const WallLayerView& x, const WallLayerView& y) {
    return x.material == y.material && x.thickness == y.thickness;
  });
}

bool same_surroundings(const Stretch& a, const Stretch& b) {
  if (a.place != b.place || a.chamber != b.chamber || a.stands_upright != b.stands_upright) return false;
  if (a.place != Place::mass && a.place != Place::ground) return true;
  const Embedding& x = a.embedding;
  const Embedding& y = b.embedding;
  return x.material == y.material && x.width == y.width && x.height == y.height && x.depth == y.depth &&
         x.exposed_share == y.exposed_share && x.under_open_sky == y.under_open_sky;
}

/// Whether the gas meets nothing new where `after` begins but fittings.
bool goes_on(const Stretch& before, const Stretch& after) {
  return before.section == after.section && before.roughness == after.roughness && same_wall(before, after) &&
         same_surroundings(before, after) && !after.fire && !after.lid && !before.fan && !after.fan &&
         std::abs(in(before.rise, before.length) - in(after.rise, after.length)) < same_slope;
}

}  // namespace

RoughPath::RoughPath(const Branch& branch, Length longest_slice) : branch_{branch} {
  branch_.stretches.clear();
  std::vector<Length> upright_heights;
  for (const Stretch& stretch : branch.stretches) {
    if (branch_.stretches.empty() || !goes_on(branch_.stretches.back(), stretch)) {
      branch_.stretches.push_back(stretch);
      upright_heights.push_back(stretch.length);
      continue;
    }
    Stretch& joined = branch_.stretches.back();
    joined.length += stretch.length;
    joined.rise += stretch.rise;
    joined.at_end.insert(joined.at_end.end(), stretch.at_start.begin(), stretch.at_start.end());
    joined.at_end.insert(joined.at_end.end(), stretch.at_end.begin(), stretch.at_end.end());
  }
  path_ = slice_branch(branch_, longest_slice);
  // The air rises along each piece for itself.
  for (std::size_t i = 0; i < upright_heights.size(); ++i) {
    path_.walls[i].upright_height = std::max(upright_heights[i], 100.0 * millimetre);
  }
}

}  // namespace fluewright
