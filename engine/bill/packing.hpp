// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

namespace fluewright {

/// How parts are sawn from bars of one length.
struct BarPacking {
  std::vector<std::vector<std::size_t>> bars;  ///< the parts of each bar, indices into what was asked
  std::size_t at_least = 0;                    ///< no way of sawing takes fewer bars than this
  bool proven = false;                         ///< nor than there are: otherwise it is the best that was found
};

struct PackingEffort {
  std::size_t steps = 400'000;  ///< choices looked at before the search is given up
};

/// The fewest bars of length `bar` from which all parts can be sawn with a saw that turns `kerf` of every cut to dust.
/// Lengths are counted in tenths of a millimetre, parts rounded up and bars down.
///
/// First-fit decreasing, then branch and bound by completing one bar after another (Korf 2002), the fullest first and
/// few detours before many (Harvey & Ginsberg 1995), pruned by dominance and by the waste that a better packing could
/// still afford; lower bound L2 (Martello & Toth 1990). Nothing if a part is longer than a bar or a length is no
/// positive number.
[[nodiscard]] std::optional<BarPacking> pack_bars(std::span<const Length> parts, Length bar, Length kerf,
                                                  const PackingEffort& effort = {});

}  // namespace fluewright
