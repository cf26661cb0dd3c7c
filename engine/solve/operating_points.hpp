// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/burning.hpp"
#include "engine/solve/march.hpp"

#include <optional>
#include <vector>

namespace fluewright {

/// The pressure balance of a heater left to itself, as a function of the signed flow at its cap.
class FreeRun {
 public:
  /// `fine` gives the answers, `coarse` finds where to look; both are the same branch.
  FreeRun(const SlicedPath& fine, const SlicedPath& coarse, const Surround& surround, const WoodFuel& fuel,
          MassFlow wanted_burn_rate);

  /// Drive left over at a flow (> 0 out of the cap, < 0 down the stack), S_E = 1:
  /// inlet gauge + buoyancy + fans - cap gauge - losses for forward flow, + losses for backward flow.
  [[nodiscard]] Pressure residual(MassFlow flow, bool on_coarse = false) const;

  /// Every stable state: a root of the residual where it falls with rising flow. Signed flows are scanned for falls
  /// through zero, each is bracketed by TOMS 748 on the coarse path
  /// and closed in on by the secant rule on the fine one. With a running fan whose head rises somewhere with the flow the scan is
  /// denser, and roots where the residual rises are states too, not stable ones. Forward before backward, larger flows
  /// first.
  [[nodiscard]] std::vector<OperatingPoint> points() const;

  /// The march at a flow, with a row a slice if wanted (forward only).
  [[nodiscard]] MarchTotals march(MassFlow flow, std::vector<SliceState>* rows = nullptr, bool on_coarse = false) const;

 private:
  struct Sample {
    MassFlow flow{};
    Pressure residual{};
  };
  struct Bracket {
    MassFlow low{};
    MassFlow high{};
    bool rises = false;  ///< the residual goes up through zero
  };
  [[nodiscard]] FireState fire_at(MassFlow flow) const;
  [[nodiscard]] Pressure balance(const MarchTotals& totals, bool forward) const;
  [[nodiscard]] std::vector<Sample> scan() const;
  [[nodiscard]] std::vector<MassFlow> flows_of_rising_fans() const;
  [[nodiscard]] OperatingPoint point_at(MassFlow flow, const MarchTotals& totals) const;
  /// The state near a root of the coarse path: by the secant rule, or, where that does not come to rest, by enclosing it.
  [[nodiscard]] std::optional<OperatingPoint> settled(const Bracket& rough) const;
  [[nodiscard]] std::optional<OperatingPoint> enclosed(const Bracket& rough) const;
  [[nodiscard]] std::optional<Bracket> narrowed(Bracket bracket, bool on_coarse, int bits) const;

  const SlicedPath* fine_;
  const SlicedPath* coarse_;
  const Surround* surround_;
  Burning forward_;
  Burning backward_;
  GasTable room_air_;
  GasTable outdoor_air_;
};

}  // namespace fluewright
