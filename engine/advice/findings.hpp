// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Everything worth saying of a design: the faults of its drawing, what the physics says, and what practice says.

#include "engine/solve/assessment.hpp"

namespace fluewright {

/// The assessment's own findings and those of practice, most serious first. A drawing with faults gets its faults and
/// whatever can be seen on it without numbers.
[[nodiscard]] std::vector<Finding> all_findings(const Design& design, const Library& library, const Assessment& assessment);

/// What an acknowledgement calls it: its code's name; with a point and the field behind it where one piece may have two
/// of a kind, as an outlet that is low over the roof and low over what stands near it.
[[nodiscard]] std::string acknowledged_as(const Finding& finding);

/// The reason for which someone lets the finding stand; nullptr if nobody does.
[[nodiscard]] const Acknowledgement* acknowledgement_of(const Finding& finding, const Design& design);

/// The design with the finding acknowledged for that reason, in the place of an earlier one; without a reason it is
/// open again.
[[nodiscard]] Design acknowledged(const Design& design, const Finding& finding, const std::string& reason);

/// One sentence would say the same of both: same code, piece and field.
[[nodiscard]] bool same_matter(const Finding& a, const Finding& b);

}  // namespace fluewright
