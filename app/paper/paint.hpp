// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/mark.hpp"

class QPainter;

namespace fluewright::paper {

/// Paints marks. The painter's own unit must be a hundredth of a millimetre (see font_units).
void paint(QPainter& painter, const Figure& figure);

/// Width of a stroke and its dashes [mm].
[[nodiscard]] double width_of(Stroke stroke);
[[nodiscard]] QList<double> dashes_of(Stroke stroke);

}  // namespace fluewright::paper
