// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/projection.hpp"
#include "engine/layout/design.hpp"
#include "engine/pieces/shape.hpp"

#include <QString>

#include <optional>
#include <vector>

class QPainter;

namespace fluewright {

class DeskView;
class Document;

/// The ports of the design as it was when a gesture began: what a moving end may be brought in line with.
class Landmarks {
 public:
  Landmarks() = default;
  /// Of the design on the desk; those of `without` are left out.
  explicit Landmarks(const Document& document, const PieceId& without = {});

  /// The coordinate along `unit` of the landmark nearest to `coordinate`, within `reach`; nothing if there is none.
  [[nodiscard]] std::optional<double> in_line(const Metres& unit, double coordinate, double reach) const;

  struct Mark {
    Metres at;
    bool open = false;  ///< an open end: named first where several line up
  };
  struct Guide {
    Mark to;
    Metres corner;  ///< where the line to it bends; the mark itself where it is straight
  };
  /// Landmarks that a point lines up with. In a flat view they lie level with it, or plumb over or under it, as the view
  /// shows it: at most one for each of the sheet's axes, an open end before a joint, the nearest first. In the isometric
  /// view, where lines lie over one another that are not in line, they truly lie along one of the three axes; or they
  /// are open ends in a plane square to an axis, and the line goes along the other two.
  [[nodiscard]] std::vector<Guide> level_with(const Metres& point, const Projection& projection) const;

 private:
  [[nodiscard]] std::vector<Guide> along_the_axes(const Metres& point) const;

  std::vector<Mark> marks_;
};

/// The smart guides: dashed lines from a moving end to what it lines up with.
void paint_guides(QPainter& painter, const DeskView& view, const Landmarks& landmarks, const Position& end);

}  // namespace fluewright
