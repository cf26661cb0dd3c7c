// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/loss_table.hpp"
#include "engine/quantities/quantities.hpp"

namespace fluewright {

// Loss coefficients of what is neither bend nor tee. Each says on which velocity head it stands. Tables and
// relations carry their source as data; the functions below evaluate them.

namespace loss {
extern const LossFormula restriction;
extern const LossFormula expansion;
extern const LossFormula contraction;
extern const LossFormula flush_entry;
extern const LossTable pipe_end_entry;
extern const LossTable bellmouth;
extern const LossFormula exit;
extern const LossFormula diffuser;
extern const LossFormula reducer;
extern const LossTable blade;
extern const LossTable rain_cap_gap;
extern const LossFormula plain_cap;
extern const LossFormula low_resistance_cap;
extern const LossFormula screen;
extern const LossFormula firebox_throat;
}  // namespace loss

/// Sharp-edged restriction with the free share phi of the duct's area (sticks in the feed, a dirty screen, a slot):
/// (1 + 0.707 sqrt(1-phi) - phi)^2/phi^2 on the duct's own head; 0 < phi <= 1, edges thinner than 0.015 hydraulic
/// diameters. Source: Idelchik, Handbook of Hydraulic Resistance, 3rd ed., p. 221.
[[nodiscard]] Ratio sharp_restriction(Ratio free_share);

/// Sudden widening from `narrow` to `wide`, (1 - A1/A2)^2 on the narrow head. Source: Borda-Carnot.
[[nodiscard]] Ratio sudden_expansion(Area narrow, Area wide);

/// Sudden narrowing from `wide` to `narrow`, (1 - A2/A1)/2 on the narrow head. Source: Idelchik.
[[nodiscard]] Ratio sudden_contraction(Area wide, Area narrow);

/// Sharp-edged entry flush with a wall: 0.5 on the duct's head. Source: Crane TP-410, Idelchik.
[[nodiscard]] Ratio sharp_entry();

/// Entry into a pipe end that stands free of any wall, by wall thickness over diameter: 1.0 for a thin edge.
/// Source: Idelchik diagram 3-1 in SMACNA.
[[nodiscard]] Ratio thin_wall_entry(Ratio thickness_over_diameter);

/// Entry through a bellmouth without a wall, by radius of its lip over diameter. Source: ASHRAE.
[[nodiscard]] Ratio bellmouth_entry(Ratio radius_over_diameter);

/// Free exit: the whole velocity head is lost.
[[nodiscard]] Ratio free_exit();

/// Gradual widening with an included angle: min(1, 2.6 sin(a/2)) (1 - A1/A2)^2 on the narrow head.
/// Source: Crane TP-410.
[[nodiscard]] Ratio gradual_expansion(Area narrow, Area wide, Angle included);

/// Gradual narrowing with an included angle: min(0.8 sin(a/2), 0.5 sqrt(sin(a/2))) (1 - A2/A1) on the narrow head,
/// which hands over at 46 degrees without a jump (published as 45). Source: Crane TP-410.
[[nodiscard]] Ratio gradual_contraction(Area wide, Area narrow, Angle included);

/// Round blade damper turned by an angle out of the flow's direction (0 = open): 0-70 degrees, interpolated in the
/// logarithm of the coefficient. Nearer to shut the leak past the blade decides: use sharp_restriction of what is
/// left open.
[[nodiscard]] Ratio blade_damper(Angle from_open);

/// What a rain cap adds to the free exit, by its gap over the diameter. Source: ACGIH Industrial Ventilation.
[[nodiscard]] Ratio rain_cap(Ratio gap_over_diameter);

/// Spark screen over an outlet. Source: ASHRAE chimney chapter.
[[nodiscard]] Ratio spark_screen();

}  // namespace fluewright
