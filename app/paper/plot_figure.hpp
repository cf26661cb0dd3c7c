// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/dossier.hpp"
#include "app/paper/length_curve.hpp"
#include "app/paper/mark.hpp"

namespace fluewright::paper {

/// Pressure in the flue and in the room along the path, crossed where smoke can leak.
[[nodiscard]] Figure pressure_plot(const Dossier& dossier, QSizeF size);

/// Draft to spare against the bench's length, with "yours" and "longest that draws".
[[nodiscard]] Figure length_plot(const LengthCurve& curve, UnitSystem units, QSizeF size);

}  // namespace fluewright::paper
