// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/projection.hpp"
#include "engine/layout/house.hpp"

class QPainter;

namespace fluewright {

/// The house behind the drawing: on the plan its walls, in an elevation walls, ceiling and roof in section, in the
/// isometric view the room's edges. Not in the rolled-out elevation, where nothing of it would stand true.
void paint_house(QPainter& painter, const Camera& camera, const Projection& projection, const HouseOutline& house);

}  // namespace fluewright
