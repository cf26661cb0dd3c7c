// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

namespace fluewright {

/// How well air drawn in through an opening holds back the hot gas behind it: w / sqrt(g H (T - T_air)/T), H the opening's
/// height. Nothing behind it that is warmer than the air: without end.
[[nodiscard]] Ratio mouth_froude(Velocity inflow, Length height, Temperature hot, Temperature air);

/// Below this the hot gas comes out along the opening's upper edge although air goes in: opposed airflow of smoke control,
/// w = 0.64 sqrt(g H (T - T_air)/T) (NFPA 92, after Heskestad; from memory). Found for doors; for a feed it is a caution,
/// not a measurement.
inline constexpr Ratio counterflow_below = 0.64;

}  // namespace fluewright
