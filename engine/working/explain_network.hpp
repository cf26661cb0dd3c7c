// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Headline numbers whose working is another one where branches meet.

#include "engine/working/retrace.hpp"
#include "engine/working/working.hpp"

namespace fluewright {

/// From the fire to the cap branch by branch, with what mixes where they meet.
[[nodiscard]] Working explain_network_exit(const Retrace& run);

/// Heat that gas carries out by every end that is open to the air, less what air brings in by them.
[[nodiscard]] Working explain_network_stack(const Retrace& run);

}  // namespace fluewright
