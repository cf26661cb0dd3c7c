// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/drawing.hpp"

class QPainter;

namespace fluewright {

/// How a piece stands out.
struct Emphasis {
  bool selected = false;
  bool pointed = false;
};

/// Benches and trenches of all pieces in sight, under the pieces: one wash with one outline around touching runs.
void paint_masses(QPainter& painter, const Camera& camera, const Drawing& drawing);

/// One piece: its lines with outside width, ink outline and the colour of its gas, and what makes it recognisable.
void paint_piece(QPainter& painter, const Camera& camera, const DrawnPiece& piece, const Emphasis& emphasis);

/// The fill at a share of a line; the bare piece's colour where the gas is unknown.
[[nodiscard]] QColor fill_at(const DrawnLine& line, double part);
/// How long the arrow of gas at that speed is.
[[nodiscard]] double arrow_pixels(Velocity speed);
/// Ink that can be read on a fill.
[[nodiscard]] QColor ink_on(const QColor& fill);

[[nodiscard]] QPolygonF to_screen(const Camera& camera, const QPolygonF& sheet);

}  // namespace fluewright
