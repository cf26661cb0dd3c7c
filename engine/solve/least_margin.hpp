// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/assessment.hpp"

namespace fluewright {

/// Assessment::worst_margin and nothing else: the same number as assess() gives with these slices, without findings,
/// states and places. Nothing where assess() would give no verdict.
[[nodiscard]] std::optional<Pressure> least_margin(const Design& design, const Library& library,
                                                   Length slice = AssessOptions{}.slice);

}  // namespace fluewright
