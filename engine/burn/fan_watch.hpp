// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/aids.hpp"

namespace fluewright {

/// The start of `aid`, a fan, with the fan never switched off: what gas and motor get to, how long the motor stands below
/// the dew point, and how hot the fire is at the end. Nothing where the run does not come to its end.
[[nodiscard]] std::optional<FanLeftOn> watch_fan_left_on(const Design& design, const Library& library, const StartAid& aid,
                                                         const StartRules& rules, const std::function<bool()>& go_on = {});

}  // namespace fluewright
