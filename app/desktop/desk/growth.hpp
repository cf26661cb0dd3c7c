// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/projection.hpp"
#include "engine/layout/edit.hpp"

#include <QPointF>
#include <QString>

#include <optional>
#include <vector>

namespace fluewright {

class Board;
class Landmarks;

/// One straight step of a growing path.
struct Leg {
  Heading heading;
  Length length{};  ///< from the end it starts at, a bend's own leg included
};

/// Grows `legs` one after the other from an end of `base` with the board's run and bend.
[[nodiscard]] EditResult grow_legs(const Board& board, const Design& base, const PortRef& end, const std::vector<Leg>& legs);

/// The nearest coordinate on the snap grid.
[[nodiscard]] double snapped(double metres, Length step);

/// The legs that lead from an end to where the mouse is: straight on; across at once; or straight on and then across,
/// so that the corner lies level with the mouse. Their far ends lie on the snap grid, or in line with a landmark that
/// is nearer than that. Empty: the mouse is behind the
/// end or too near.
[[nodiscard]] std::vector<Leg> legs_towards(const Board& board, const Design& base, const OpenEnd& end,
                                            const Projection& projection, QPointF sheet, const Landmarks& landmarks);

/// "1200 mm" as a label and as what one would type.
[[nodiscard]] QString length_words(Length length, const Board& board);
/// "east", "up", ...
[[nodiscard]] QString direction_words(const Heading& heading);

}  // namespace fluewright
