// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/plot/plot_picture.hpp"

#include <QBrush>
#include <QPen>

namespace fluewright {

/// Every line has an ink and a stroke of its own, so that the plot can be read without colour.
[[nodiscard]] QPen pen_of(LineRole role);
/// The hatching of a band, by the line above it.
[[nodiscard]] QBrush brush_of(LineRole above);

}  // namespace fluewright
