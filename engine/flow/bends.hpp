// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/flow/loss_table.hpp"
#include "engine/quantities/quantities.hpp"

namespace fluewright {

// Loss coefficients of turns, on the velocity head of the bend.

namespace loss {
extern const LossTable mitre;           ///< round, by degrees
extern const LossTable mitre_reynolds;  ///< factor by Reynolds number
extern const LossTable smooth;          ///< 90 degrees by R/D
extern const LossTable bend_angle;      ///< factor by degrees for other than 90
extern const LossTable five_piece;
extern const LossTable four_piece;
extern const LossTable three_piece;
extern const LossTable stamped_90;  ///< by bore in mm, r/D = 1.5
extern const LossTable stamped_45;
extern const LossTable pleated_90;
extern const LossTable pleated_45;
extern const LossTable five_gore_90;
extern const LossTable three_gore_45;
extern const LossTable rectangular_mitre_90;  ///< by H/W
extern const LossTable rectangular_mitre_75;
extern const LossTable rectangular_mitre_60;
extern const LossTable rectangular_mitre_45;
extern const LossTable rectangular_mitre_30;
extern const LossTable rectangular_mitre_20;
}  // namespace loss

/// Sharp turn of a round flue, 0-90 degrees (nothing at 0). Multiply by mitre_reynolds_factor at stove flows.
/// Source: SMACNA HVAC Systems Duct Design, 4th ed., Table A-7C.
[[nodiscard]] Ratio mitre_bend(Angle turn);

/// How much worse a sharp turn is at a low Reynolds number: 1.40 at 1e4 and below, 1.0 at 1.4e5 and above.
/// Source: SMACNA Table A-7, note 2.
[[nodiscard]] Ratio mitre_reynolds_factor(Ratio reynolds);

/// Smooth (die-stamped, drawn) round bend, by radius of the centre line over diameter (0.5-2.5) and angle (0-180).
/// Source: SMACNA Table A-7A with its note 1.
[[nodiscard]] Ratio smooth_bend(Ratio radius_over_diameter, Angle turn);

/// Round bend made of 3, 4 or 5 pieces, by centre-line radius over diameter (0.75-2.0; 0.5 too for three) and angle.
/// More pieces than 5 count as 5, fewer than 3 as a mitre. Source: SMACNA Table A-7B; angles by A-7A's note 1.
[[nodiscard]] Ratio gored_bend(int pieces, Ratio radius_over_diameter, Angle turn);

/// The factor by which a 90 degree bend's coefficient is multiplied for another angle (0 at 0 degrees).
[[nodiscard]] Ratio bend_angle_factor(Angle turn);

/// Die-stamped 90 degree elbow with r/D = 1.5 by bore (75-250 mm). Source: ASHRAE CD3-1; 45 degrees CD3-3.
[[nodiscard]] Ratio stamped_elbow_90(Length bore);
[[nodiscard]] Ratio stamped_elbow_45(Length bore);
/// Pleated 90 degree elbow with r/D = 1.5 by bore (100-400 mm). Source: ASHRAE CD3-5; 45 degrees CD3-7.
[[nodiscard]] Ratio pleated_elbow_90(Length bore);
[[nodiscard]] Ratio pleated_elbow_45(Length bore);

/// Sharp turn of a rectangular channel: H is the side along the axis about which the flow turns, W the one in the
/// plane of the turn; H/W 0.25-8 and 0-90 degrees. Multiply by mitre_reynolds_factor at stove flows.
/// Source: SMACNA Table A-7D.
[[nodiscard]] Ratio rectangular_mitre_bend(Ratio height_over_width, Angle turn);

}  // namespace fluewright
