// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/camera.hpp"
#include "app/shared/units.hpp"

#include <QPointF>

#include <optional>

class QPainter;

namespace fluewright {

/// The rulers along a view's lower and right edge, in pixels deep.
inline constexpr double ruler_depth = 15.0;

/// Ticks and figures at round lengths of both axes of the sheet, and where the mouse is, if it is on the view.
void paint_rulers(QPainter& painter, const Camera& camera, UnitSystem units, std::optional<QPointF> mouse);

}  // namespace fluewright
