// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"
#include "engine/quantities/valid_range.hpp"

namespace fluewright {

/// Saturation pressure of water vapour: over water from the triple point (273.16 K) to the critical point,
/// over ice below it. At 273.16 K the two meet within 1e-6. Above the critical point nothing can condense at any
/// pressure: infinite.
/// Source: IAPWS-IF97 region 4; IAPWS R14-08(2011) sublimation pressure, 50-273.16 K.
[[nodiscard]] Pressure saturation_pressure(Temperature t);

/// The temperature at which a vapour of that partial pressure begins to condense (or to freeze, below the
/// triple point): the inverse of saturation_pressure, by region 4's own backward equation over water and by a
/// root over ice. At or below the vapour pressure of ice at 50 K (and for no vapour at all) it is 50 K.
[[nodiscard]] Temperature dew_point(Pressure vapour);

/// Published range of the saturation pressure.
[[nodiscard]] ValidRange<Temperature> saturation_range();

}  // namespace fluewright
