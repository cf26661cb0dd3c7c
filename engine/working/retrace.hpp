// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/assessment.hpp"
#include "engine/solve/burning.hpp"
#include "engine/solve/march.hpp"
#include "engine/solve/node_solver.hpp"

#include <deque>
#include <memory>
#include <optional>
#include <vector>

namespace fluewright {

/// What a row of a path that branches is worked from beside its slice.
struct RowSource {
  std::size_t branch = 0;          ///< index in FlueNetwork::branches
  const GasTable* before = nullptr;  ///< as it comes into the branch
  const GasTable* after = nullptr;   ///< behind the fire; the same where there is none
  bool mixed = false;              ///< the gas is known by its species only: it has mixed, or has not met the fire
  bool first = false;              ///< the branch begins with this slice
  bool last = false;               ///< the gas leaves into free air behind this slice
  Temperature entering;            ///< where `first`
};

/// A path that branches, solved once more.
struct RetracedNetwork {
  SlicedNetwork sliced;
  std::unique_ptr<NetworkMarch> march;
  NetworkSolution solution;
  std::deque<GasTable> gases;
  std::vector<RowSource> sources;  ///< one a row
};

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
  EndKind air_from = EndKind::room_air;  ///< where that air comes from; node: it has mixed
  std::unique_ptr<RetracedNetwork> network;  ///< nothing for a path without branches
  Branch joined;                ///< of a network: the branches walked, one after another
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

/// The march behind a piece: of a path that branches the main path or the side branch that the piece is in. At the
/// design flow of an age, or as in retrace_profile(). Nothing if the gas does not pass it or runs backwards there.
[[nodiscard]] std::unique_ptr<const Retrace> retrace_piece(const Design& design, const Library& library,
                                                           const Assessment& answer, std::size_t piece,
                                                           std::optional<BenchAge> age = {},
                                                           Length slice = AssessOptions{}.slice);

/// The march of the answer's profile: the running point, or the design flow with a charged bench where nothing runs.
/// Of a path that branches the main path. Nothing if the answer has no profile. The arguments must outlive the result and belong together; `slice` is the one
/// the answer was made with.
[[nodiscard]] std::unique_ptr<const Retrace> retrace_profile(const Design& design, const Library& library,
                                                             const Assessment& answer,
                                                             Length slice = AssessOptions{}.slice);

/// The march of the design-flow check at an age. Nothing if the answer has no profile.
[[nodiscard]] std::unique_ptr<const Retrace> retrace_design_flow(const Design& design, const Library& library,
                                                                 const Assessment& answer, BenchAge age,
                                                                 Length slice = AssessOptions{}.slice);

}  // namespace fluewright
