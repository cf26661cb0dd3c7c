// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/solve/node_solver.hpp"

#include <optional>
#include <vector>

namespace fluewright {

/// A steady state of a branched heater left to itself.
struct NetworkPoint {
  OperatingPoint point;
  NetworkSolution solution;
};

/// FreeRun for any network: the flow at the cap is held, the rest of the network solved, and what is left over of the
/// stack's balance is the residual. On a series path that is FreeRun's own residual.
class NetworkRun {
 public:
  /// `fine` gives the answers, `coarse` finds where to look; both are of the same network.
  NetworkRun(const NetworkMarch& fine, const NetworkMarch& coarse) : fine_{&fine}, coarse_{&coarse} {}

  /// The network with the cap's flow held (> 0 out of it), from a guess.
  [[nodiscard]] NetworkSolution at_cap_flow(MassFlow flow, const NetworkSolution& guess, bool on_coarse = false) const;

  /// Every steady state found at which the residual falls with rising cap flow, with its stability. Signed cap flows are
  /// followed from wide open forward to wide open backward and back again, each sample starting from the one before:
  /// where the rest of the network has two answers to one cap flow the two ways find both. Falls through zero are
  /// closed in on the coarse network by TOMS 748 and settled on the fine one by the node solver. Forward before
  /// backward, larger cap flows first.
  [[nodiscard]] std::vector<NetworkPoint> points() const;

 private:
  struct Sample {
    MassFlow flow{};
    NetworkSolution solution;
  };
  using Samples = std::vector<Sample>;
  /// Two neighbouring samples between which the residual falls through zero.
  struct Fall {
    Sample low;
    Sample high;
  };
  [[nodiscard]] Samples follow_down() const;
  [[nodiscard]] std::vector<Fall> follow_up(const Samples& down) const;
  [[nodiscard]] std::optional<Sample> reach(MassFlow flow, const Sample& from, int halvings) const;
  [[nodiscard]] std::optional<NetworkSolution> settle(const Fall& fall, bool& stable) const;
  [[nodiscard]] std::optional<NetworkSolution> close_in(const NetworkMarch& march, const Fall& fall) const;

  const NetworkMarch* fine_;
  const NetworkMarch* coarse_;
};

/// What a steady state amounts to for the user.
[[nodiscard]] OperatingPoint operating_point_of(const NetworkMarch& march, const NetworkSolution& solution, bool stable);

}  // namespace fluewright
