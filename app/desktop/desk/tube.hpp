// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/projection.hpp"

#include <QPolygonF>

namespace fluewright {

/// Outlines of round things on the sheet, in sheet metres.

/// The ring of a round pipe of `width` at `at`, across `axis` (a unit vector).
[[nodiscard]] QPolygonF ring(const Projection& projection, const Metres& at, const Metres& axis, double width);
/// The half of that ring that the viewer sees on a pipe's outside: a straight line where the pipe lies in the sheet.
[[nodiscard]] QPolygonF near_half_ring(const Projection& projection, const Metres& at, const Metres& axis, double width);
/// The outline of a straight round length between two points, of one width or widening to another.
[[nodiscard]] QPolygonF tube(const Projection& projection, const Metres& from, const Metres& to, double width, double width_to);
/// The outline of a box between two corners, as seen: a rectangle, or six corners in the isometric view.
[[nodiscard]] QPolygonF box(const Projection& projection, const Metres& low, const Metres& high);

/// Whether a line along `axis` points at the viewer.
[[nodiscard]] bool end_on(const Projection& projection, const Metres& axis);

}  // namespace fluewright
