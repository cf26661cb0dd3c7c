// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

namespace fluewright {

/// Siegert's coefficient A2 of wood; its coefficient B is zero.
/// Source: fuel table of flue-gas analysers (Testo 330-1 manual, K.4.1: wood 0.765, 0, CO2max 20.3 %).
inline constexpr double siegert_wood_a2 = 0.765;

/// Share of the heat that leaves with the flue gas by Siegert's formula, as read from a flue-gas analyser:
/// (t_gas - t_air) A2/(21 - O2 %) %, oxygen by volume of the dry flue gas, 0 to below 0.21.
/// An independent check of the enthalpy balance; nothing in the engine is computed from it.
[[nodiscard]] Ratio siegert_stack_loss(Temperature gas, Temperature air, Ratio dry_oxygen);

}  // namespace fluewright
