// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/board.hpp"
#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/drawing.hpp"

#include <QPointF>

#include <optional>

namespace fluewright {

/// Where an end's handle sits: a little outside the port, so that it does not hide the pipe.
[[nodiscard]] QPointF handle_of(const DrawnPort& port, const Camera& camera);

inline constexpr double handle_radius = 9.0;  ///< pixels

/// What lies under a pixel.
struct Hit {
  std::optional<PortRef> end;    ///< an open or capped end's handle
  std::optional<PortRef> joint;  ///< a joint between two pieces (one of its two ports)
  PieceId piece;                 ///< empty: bare paper
  std::size_t index = 0;         ///< of the piece
  std::optional<Length> s;       ///< along the path
  Length into_run{};             ///< along the piece's first centre line
  bool on_paper() const { return !end && !joint && piece.empty(); }
};

/// Handles before joints before pieces, the nearest piece first. A joint counts only between pieces long enough to be
/// pointed at beside it.
[[nodiscard]] Hit hit(const Drawing& drawing, const Camera& camera, const Ends& ends, const PathMeasure& measure,
                      QPointF pixel);

/// The end nearest to a pixel within reach of a piece that is being dropped.
[[nodiscard]] std::optional<PortRef> end_near(const Drawing& drawing, const Camera& camera, const Ends& ends,
                                              QPointF pixel, double reach_pixels);

}  // namespace fluewright
