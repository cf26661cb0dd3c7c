// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/loss_table.hpp"
#include "engine/quantities/quantities.hpp"

namespace fluewright {

// Tees and wyes. A straight run with a branch at an angle (90 degrees a tee, 30-60 a wye); the run's two legs have
// one bore. All coefficients are on the velocity head of the leg that carries the whole flow. q is the branch's share
// of that flow, 0-1; `area_ratio` the branch's free area over the run's, up to 1. Negative coefficients are real:
// one stream drags the other.
// Source: Crane Co., Flow of Fluids through Valves, Fittings and Pipe, TP-410 (2009).
// Between the angles it gives, 30, 45, 60 and 90 degrees, coefficients are interpolated; below 30 and above 90 the
// end holds. Where Crane changes expression at a share of flow with a small step, the two are joined without one.

namespace loss {
extern const LossFormula joining_branch;
extern const LossFormula joining_run;
extern const LossFormula dividing_branch;
extern const LossFormula dividing_run;
extern const LossFormula shut_branch;
}  // namespace loss

/// From the branch into the combined leg, the streams joining:
/// C [1 + (q/b)^2 - 2 (1-q)^2 - F q^2/b], b the area ratio.
[[nodiscard]] Ratio converging_branch(Ratio branch_share, Ratio area_ratio, Angle branch_angle);

/// From the run into the combined leg, the streams joining: 1.55 q - q^2 at 90 degrees;
/// 1 - (1-q)^2 - F q^2/b for a wye.
[[nodiscard]] Ratio converging_run(Ratio branch_share, Ratio area_ratio, Angle branch_angle);

/// From the combined leg into the branch, the stream dividing: G [1 + H (q/b)^2 - J (q/b) cos a].
[[nodiscard]] Ratio diverging_branch(Ratio branch_share, Ratio area_ratio, Angle branch_angle);

/// From the combined leg on into the run, the stream dividing: M q^2.
[[nodiscard]] Ratio diverging_run(Ratio branch_share, Ratio area_ratio);

/// Straight past a branch that is shut: 0.03, where Crane's relations have nothing at all.
/// Source: Rennels & Hudson, Pipe Flow (2012), dividing tee with the whole flow in the run.
[[nodiscard]] Ratio straight_past_branch();

}  // namespace fluewright
