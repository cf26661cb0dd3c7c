// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/assessment.hpp"
#include "engine/solve/burning.hpp"
#include "engine/solve/march.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace fluewright {

/// A march behind an answer, walked once more with everything kept that the working needs.
struct Retrace {
  const Design* design = nullptr;
  const Library* library = nullptr;
  const Assessment* answer = nullptr;
  std::optional<BenchAge> age;  ///< the design flow at that age of the bench; nothing: the running point
  Surround surround;
  WoodFuel fuel;
  Citation wood_citation;
  Ratio air_water = 0.0;        ///< mole fraction of vapour in the air that feeds the fire
  FlueNetwork still;            ///< of a design flow: every fan standing still; the path is of this one
  SlicedPath path;
  FireState fire;
  std::optional<GasTable> air;
  std::optional<GasTable> gas;
  MarchTotals totals;
  std::vector<SliceState> rows;
  std::vector<SliceVisit> visits;  ///< one a row

  Retrace() = default;
  Retrace(const Retrace&) = delete;  // the visits point into the path
  Retrace& operator=(const Retrace&) = delete;
};

/// The march of the answer's profile: the running point, or the design flow with a charged bench where nothing runs.
/// Nothing if the answer has no profile. The arguments must outlive the result and belong together; `slice` is the one
/// the answer was made with.
[[nodiscard]] std::unique_ptr<const Retrace> retrace_profile(const Design& design, const Library& library,
                                                             const Assessment& answer,
                                                             Length slice = AssessOptions{}.slice);

/// The march of the design-flow check at an age. Nothing if the answer has no profile.
[[nodiscard]] std::unique_ptr<const Retrace> retrace_design_flow(const Design& design, const Library& library,
                                                                 const Assessment& answer, BenchAge age,
                                                                 Length slice = AssessOptions{}.slice);

}  // namespace fluewright
