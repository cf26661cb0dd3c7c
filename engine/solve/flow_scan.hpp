// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>

namespace fluewright {

// Where steady states are looked for, on a series path and on a branched one alike.

/// Flows tried at the cap either way, as shares of the flue gas at `widest_excess_air`; dense where cold paths have their
/// second state (chosen).
inline constexpr std::array scan_shares{0.002, 0.006, 0.015, 0.03, 0.055, 0.09, 0.13,
                                        0.18,  0.24,  0.31,  0.40, 0.52,  0.70, 1.0};
inline constexpr double widest_excess_air = 10.0;
/// The scan widens by this factor until friction has the last word, so many times at most.
inline constexpr double widening = 1.8;
inline constexpr int widenings = 12;

}  // namespace fluewright
