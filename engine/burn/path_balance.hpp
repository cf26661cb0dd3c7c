// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_equations.hpp"

namespace fluewright::kernel {

/// The pressures along the main path, from the inlet's air to that at the cap [Pa], signs as BranchNow has them.
struct PathBalance {
  double from = 0.0;
  double buoyancy = 0.0;
  double fan = 0.0;
  double resistance = 0.0;  ///< with what its junctions take
  double acceleration = 0.0;
  double to = 0.0;

  /// What is left with losses counted `safety` times; acceleration only where it is a loss, as check_design_flow() has it.
  [[nodiscard]] double margin(double safety) const {
    return from + buoyancy + fan - safety * resistance - (acceleration > 0.0 ? safety : 1.0) * acceleration - to;
  }
};

/// At the state that the equations were last asked about.
[[nodiscard]] PathBalance path_balance(const BurnEquations& equations);

}  // namespace fluewright::kernel
