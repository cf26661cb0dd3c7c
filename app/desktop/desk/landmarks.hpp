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
  /// Landmarks that lie level with, or plumb over or under, a point as a view shows it: at most one for each of the
  /// sheet's axes, an open end before a joint, the nearest first.
  [[nodiscard]] std::vector<Mark> level_with(const Metres& point, const Projection& projection) const;

 private:
  std::vector<Mark> marks_;
};

/// The smart guides: dashed lines from a moving end to what it lines up with.
void paint_guides(QPainter& painter, const DeskView& view, const Landmarks& landmarks, const Position& end);

}  // namespace fluewright
