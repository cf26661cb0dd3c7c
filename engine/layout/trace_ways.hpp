// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/path.hpp"

namespace fluewright {

/// trace_path() without a look at what stands in whose place: for those who try out hundreds of values of a drawing that
/// has been looked at already.
[[nodiscard]] TracedPath trace_ways(const Design& design, const Library& library);

}  // namespace fluewright
