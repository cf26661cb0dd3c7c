// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/slice_heat.hpp"

#include <cstddef>

namespace fluewright {

/// What a slice was given on a march and what it made of it: all that is needed to work it again by hand.
struct SliceVisit {
  std::size_t slice = 0;     ///< index in SlicedPath::slices
  SliceSetting setting;
  Temperature entering;      ///< of the gas, behind a fire that burns at the slice's start
  MassFlow flow{};
  Power gained{};            ///< put into the gas from elsewhere
  Ratio vapour_left = 1.0;   ///< share of the fire's vapour that has not condensed before
  Pressure total_before{};   ///< gauge and velocity head of the gas that enters
  SliceHeat heat;            ///< the result
};

}  // namespace fluewright
