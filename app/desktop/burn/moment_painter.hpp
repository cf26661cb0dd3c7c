// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/drawing.hpp"

class QPainter;

namespace fluewright {

/// What lies over the pieces while a moment of a burn is played: the time, the measure of the arrows, smoke that comes
/// into the room, and in words what has gone wrong. The document has a moment.
void paint_moment(QPainter& painter, const Camera& camera, const Drawing& drawing, const Document& document);

/// What is wrong at that moment, empty where nothing is: "The gas runs backwards. Smoke comes into the room, 12 g so far."
[[nodiscard]] QString trouble_at(const Moment& moment, UnitSystem units);

}  // namespace fluewright
