// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/paper/mark.hpp"

#include <string>

namespace fluewright::paper {

/// A figure as an ASCII drawing exchange file of release 12: polylines and text on named layers. `full_size` is how
/// many millimetres of the thing a millimetre of the figure stands for; the second axis is turned upwards, and `origin`
/// of the figure becomes the drawing's zero.
[[nodiscard]] std::string to_dxf(const Figure& figure, double full_size, QPointF origin);

/// "FLUE", "MASS", ...
[[nodiscard]] const char* layer_name(Layer layer);

}  // namespace fluewright::paper
