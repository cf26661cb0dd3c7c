// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/fuel/wood.hpp"
#include "engine/solve/assessment.hpp"
#include "engine/solve/network_march.hpp"

namespace fluewright {

/// The numbers of a complete path that branches: the design-flow check at three ages, every steady state that the scan
/// finds with its stability, the profile of the main path and what each branch does. Where the flows cannot be found a
/// finding says so and the number stays away. Returns the network cut up as it was for the profile; it points into the
/// assessment's path.
SlicedNetwork answer_network(Assessment& assessment, const Design& design, const Surround& surround,
                             const WoodFuel& fuel, const AssessOptions& options);

/// The forward state of the largest flow that comes back when disturbed.
[[nodiscard]] std::optional<std::size_t> running_of(const std::vector<OperatingPoint>& points);

/// Slices of the scan for operating points; its roots are polished on the real ones.
inline constexpr Length scan_slice = 500.0 * millimetre;

}  // namespace fluewright
