// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_plan.hpp"
#include "engine/burn/burn_record.hpp"
#include "engine/burn/burn_stepper.hpp"
#include "engine/burn/wall_nodes.hpp"

#include <functional>

namespace fluewright {

struct BurnOptions {
  BurnGrid grid;
  BurnAccuracy accuracy;
  Time cadence = 30.0 * second;   ///< rows are kept this far apart at least; steps may be longer
  Time longest_step = 5.0 * minute;
  bool keep_slices = true;        ///< temperatures by slice in every row (maps of starts need none)
  /// Asked after every step with the share of the run that is done; false ends the run there.
  std::function<bool(Ratio)> go_on;
  /// Shown the flue after every step; false says that enough has been seen and ends the run there.
  std::function<bool(const BurnRow&)> watch;
};

/// Runs a plan on a design, from walls at rest at their surroundings' temperature. Pure: a value in, a value out.
[[nodiscard]] BurnRecord run_burn(const Design& design, const Library& library, const BurnPlan& plan,
                                  const BurnOptions& options = {});

}  // namespace fluewright
