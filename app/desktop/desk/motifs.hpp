// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/drawing.hpp"

#include <QPen>

class QPainter;

namespace fluewright {

/// What makes a piece recognisable beyond its outline: a fan's wheel, a damper's blade, a cap's hat. Chosen by the
/// piece's shape; shapes without a motif show their outline only. Follows ISO 6412 and ISO 14617 where they have a
/// symbol (flow arrow, fan, blade), our own elsewhere.
void paint_motif(QPainter& painter, const Camera& camera, const DrawnPiece& piece, const QPen& pen);

/// Pixels around a piece with what its motif and its air arrows add.
[[nodiscard]] QRectF motif_bounds(const Camera& camera, const DrawnPiece& piece);

}  // namespace fluewright
