// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/pieces/shape.hpp"
#include "engine/solve/assessment.hpp"

#include <optional>
#include <vector>

namespace fluewright {

/// How far along the gas's way each centre line of the drawing is: the link between the desk and the plot.
class PathMeasure {
 public:
  PathMeasure() = default;
  PathMeasure(const Assessment& assessment, const std::vector<PieceGeometry>& geometries);

  /// Where the gas enters and leaves a piece, along the path; nothing for a piece off the path.
  struct Span {
    Length from{};
    Length to{};
  };
  [[nodiscard]] std::optional<Span> span(std::size_t piece) const;

  /// A centre line's two ends as shares of its piece's span. Equal where the gas does not pass along the line (the
  /// shut branch of a tee).
  struct LineShares {
    Ratio first = 0.0;
    Ratio last = 0.0;
  };
  [[nodiscard]] LineShares shares(std::size_t piece, std::size_t line) const;
  /// Along the path, at `part` (0 to 1) of a centre line's length.
  [[nodiscard]] std::optional<Length> s_at(std::size_t piece, std::size_t line, Ratio part) const;

  /// A place on the drawing.
  struct Place {
    std::size_t piece = 0;
    Position at;
  };
  [[nodiscard]] std::optional<Place> place_at(Length s) const;

  [[nodiscard]] const std::vector<PieceGeometry>& geometries() const { return geometries_; }

 private:
  void take_lines(const Passage& passage);

  struct Measured {
    std::optional<Span> span;
    std::vector<LineShares> lines;
  };
  std::vector<Measured> pieces_;
  std::vector<PieceGeometry> geometries_;
};

/// Length of a centre line, and the point at a share of it.
[[nodiscard]] Length length_of(const CentreLine& line);
[[nodiscard]] Position point_at(const CentreLine& line, Ratio part);

}  // namespace fluewright
