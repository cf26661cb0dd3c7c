// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Weights, heaps, floors and what stands on them, as builders read them.

#include "app/shared/units.hpp"

namespace fluewright {

/// [kg/m2]
using MassPerArea = detail::quotient<Mass, Area>;

/// kg | lb, whole.
[[nodiscard]] Shown show_weight(Mass, UnitSystem);
/// L, whole | ft³ to a tenth.
[[nodiscard]] Shown show_heap(Volume, UnitSystem);
/// m² to a hundredth | ft² to a tenth.
[[nodiscard]] Shown show_area(Area, UnitSystem);
/// kg/m² | lb/ft², whole.
[[nodiscard]] Shown show_load(MassPerArea, UnitSystem);

}  // namespace fluewright
