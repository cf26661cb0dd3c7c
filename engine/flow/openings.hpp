// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/loss_table.hpp"
#include "engine/quantities/quantities.hpp"

namespace fluewright {

// Ends of a duct that stand partly covered: a feed with sticks in it, a door slot, a screened intake. On the duct's
// own velocity head; `free_share` is the open area over the duct's, above 0 and at most 1.
//
// All three cases (the third is sharp_restriction() inside a duct) are Idelchik's one expression for a sharp-edged
// hole F0 between two ducts F1 and F2, (1 + 0.707 sqrt(1 - F0/F1) - F0/F2)^2 on the hole's head.

namespace loss {
extern const LossFormula restricted_entry;
extern const LossFormula restricted_exit;
}  // namespace loss

/// From free air through the opening into the duct, F1 without end: (1.707 - phi)^2/phi^2. Wide open it is the
/// flush sharp entry, 0.5.
[[nodiscard]] Ratio restricted_entry(Ratio free_share);

/// Out of the duct through the opening into free air, F2 without end, beyond the velocity head of the duct that any
/// free exit loses: (1 + 0.707 sqrt(1-phi))^2/phi^2 - 1. Nothing when wide open.
[[nodiscard]] Ratio restricted_exit(Ratio free_share);

}  // namespace fluewright
