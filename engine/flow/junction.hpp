// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/loss_table.hpp"
#include "engine/quantities/quantities.hpp"

namespace fluewright {

// Where three streams meet or part. tees.hpp has a coefficient for each role a port can play; this header decides the
// roles by the signs of the flows and joins the published expressions into one continuous function of the flows.

/// The three ports of a junction. A branch leans away from `run_in` and towards `run_out`: the turn between run_in and
/// the branch is the gentle one.
enum class JunctionPort : unsigned char { run_in, run_out, branch };

/// What a junction is made like.
struct JunctionForm {
  Area run{};                     ///< free area of both legs of the run
  Area branch{};                  ///< at most that of the run
  Angle angle = 90.0 * degree;    ///< between the branch and the run's onward direction, above 0 to 90 degrees
  bool side_opening = false;      ///< the branch is a hole or a flap in the run's wall: it feels the static pressure
};

/// Flow into the junction through each port, negative out of it. Where the three do not add up to nothing (on the way
/// to a solution) the difference is spread over them.
struct JunctionFlows {
  MassFlow run_in{};
  MassFlow run_out{};
  MassFlow branch{};
};

/// Total pressure just outside each port against the one at run_in.
struct JunctionHeads {
  Pressure run_out{};
  Pressure branch{};
};

namespace loss {
extern const LossFormula joining_into_branch;
extern const LossFormula dividing_from_branch;
}  // namespace loss

/// Both legs of the run join into the branch: from one leg that carries `share` of the flow, on the branch's head,
/// C [1 + b^2 + 3 b^2 (q^2 - q)], b = branch over run area, C as in converging_branch().
/// Source: Idelchik, diagram 7-29 (symmetric tee without a partition, 90 degrees); other angles are taken as 90.
[[nodiscard]] Ratio joining_into_branch(Ratio share, Ratio area_ratio);

/// The branch divides into both legs of the run: into one leg that takes `share` of the flow, on the branch's head,
/// 1 + k (q b)^2 with k = 0.3 for a welded tee. Source: Idelchik, diagram 7-29; k from memory (1.5 for a rough
/// threaded one).
[[nodiscard]] Ratio dividing_from_branch(Ratio share, Ratio area_ratio);

/// Total pressures around the junction for given flows, `gas` being the density of what has mixed in it. Crane's
/// coefficients where the whole flow is in a leg of the run, Idelchik's where it is in the branch.
///
/// Where a flow changes sign two expressions meet that do not agree there: within `role_blend` of the whole flow on
/// either side one gives way to the other (chosen), so that the result is continuous with its slope, zero at rest, and
/// grows with the square of the flows.
[[nodiscard]] JunctionHeads junction_heads(const JunctionForm& form, const JunctionFlows& flows, Density gas);

/// Share of the whole flow over which the roles of two ports change over (chosen).
inline constexpr double role_blend = 0.05;

}  // namespace fluewright
