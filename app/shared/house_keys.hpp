// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"

#include <array>
#include <string>
#include <utility>

namespace fluewright {

/// The keys of a house outline in a design file, each with its member.
template <class House>
[[nodiscard]] auto house_lengths(House& house) {
  using Member = decltype(&house.west);
  return std::array<std::pair<const char*, Member>, 9>{{{"west_mm", &house.west},
                                                        {"east_mm", &house.east},
                                                        {"south_mm", &house.south},
                                                        {"north_mm", &house.north},
                                                        {"wall_mm", &house.wall},
                                                        {"ceiling_mm", &house.ceiling},
                                                        {"ceiling_thickness_mm", &house.ceiling_thickness},
                                                        {"eaves_mm", &house.eaves},
                                                        {"ridge_mm", &house.ridge}}};
}

}  // namespace fluewright
