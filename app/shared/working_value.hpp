// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The numbers of a working. They stand in SI base units, since the relations take them so, and can be typed into a
// calculator as they are (a plain minus, "1.8e-05").

#include "app/shared/units.hpp"
#include "engine/working/working.hpp"

#include <string>

namespace fluewright {

/// A step's value to its own digits, in the unit its relation counts in: {"423.456123", "K"}.
[[nodiscard]] Shown working_value(const WorkingStep& step);
/// The plain number of the unit that working_value() names, not rounded.
[[nodiscard]] double working_number(const WorkingStep& step);
/// The same as people read it, where they read it in another unit: "150.3 °C", "302.6 °F"; else empty.
[[nodiscard]] std::string working_aside(const WorkingStep& step, UnitSystem units);
/// The value and the aside in one cell: "423.456123 K (150.3 °C)".
[[nodiscard]] std::string working_cell(const WorkingStep& step, UnitSystem units);
}  // namespace fluewright
