// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What an answer says about its fans.

#include "engine/gas/gas_table.hpp"
#include "engine/solve/assessment.hpp"
#include "engine/solve/surround.hpp"

namespace fluewright {

/// What the fan of a stretch does to a flow (> 0 the way the stretch is written) of a gas.
[[nodiscard]] FanState passed_fan(const Stretch& stretch, MassFlow flow, const GasTable& gas, Temperature temperature,
                                  Pressure absolute);

/// Whether a fan of the network is at a speed above zero.
[[nodiscard]] bool has_running_fan(const FlueNetwork& network);

/// The same network with every fan standing still: what is left when the power fails.
[[nodiscard]] FlueNetwork with_fans_off(FlueNetwork network);

/// Fills Assessment::fans from design flows, operating points and profile.
void add_fan_answers(Assessment& assessment, const Surround& surround);

/// Whether the draft holds only while a fan runs: with the fans off the design flow falls short and with them on it does
/// not, or the gas finds a forward state only with them on.
[[nodiscard]] bool depends_on_fan(const Assessment& assessment);

/// A draft that depends on a fan, gas or motor over its rating, a wet motor, a curve that rises, a state beyond the
/// sheet's points, a fan drawn the wrong way round.
void add_fan_findings(Assessment& assessment, const Design& design);

}  // namespace fluewright
