// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/burn_equations.hpp"
#include "engine/burn/burn_plan.hpp"
#include "engine/layout/path.hpp"

#include <memory>
#include <optional>
#include <vector>

namespace fluewright::kernel {

/// A tee that can be opened for a priming fire: a shut port of it on the main path.
struct PrimingTee {
  std::size_t piece = 0;
  Area mouth{};
};
/// The tee of that id, or with none the last on the way to the cap; nothing where there is no such tee.
[[nodiscard]] std::optional<PrimingTee> priming_tee(const Design& design, const Library& library, const TracedPath& traced,
                                                    const PieceId& wanted);

/// Cuts the flue behind that tee: a node there, and a hole from the room into it. Which branch the hole is.
[[nodiscard]] std::optional<std::size_t> open_tee(FlueNetwork& network, const PrimingTee& tee);

/// A design's flue with everything its equations point to. It stays where it is made.
struct BurningFlue {
  FlueNetwork network;
  std::vector<SlicedPath> paths;
  std::unique_ptr<BurnCells> cells;
  std::unique_ptr<BurnEquations> equations;

  BurningFlue(FlueNetwork made_of, std::optional<std::size_t> priming_hole, const GasPair& gas, const AirRange& air,
              const BurnGrid& grid, const Surround& surround, Ratio outdoor_humidity);
  BurningFlue(const BurningFlue&) = delete;
  BurningFlue& operator=(const BurningFlue&) = delete;
};

}  // namespace fluewright::kernel
