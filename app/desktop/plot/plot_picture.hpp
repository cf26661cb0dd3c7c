// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the plots show, in the units they show it in, without any plotting library.

#include "app/shared/units.hpp"
#include "engine/solve/assessment.hpp"

#include <QString>

#include <optional>
#include <vector>

namespace fluewright {

/// What a line stands for; decides its ink and its stroke.
enum class LineRole { flue_pressure, room_pressure, gas, wall, dew_point, other_variant };

/// A line along the path. The label stands beside the line itself.
struct PlotLine {
  LineRole role{};
  QString label;
  std::vector<double> x;
  std::vector<double> y;
};

/// Where one line is above another: filled, hatched and labelled.
struct PlotBand {
  LineRole above{};  ///< leak: flue over room; wet: dew point over wall
  QString label;
  std::vector<double> x;
  std::vector<double> top;
  std::vector<double> bottom;
};

/// The stretch of the axis that belongs to a piece.
struct PlotPiece {
  PieceId id;
  QString name;
  double from = 0.0;
  double to = 0.0;
};

struct PlotPicture {
  QString x_title;
  QString y_title;
  std::vector<PlotLine> lines;
  std::vector<PlotBand> bands;  ///< one for each separate stretch
  std::vector<PlotPiece> pieces;
  bool from_zero = false;  ///< zero is always in view

  [[nodiscard]] const PlotPiece* piece_at(double x) const;
  [[nodiscard]] const PlotPiece* piece(const PieceId& id) const;
};

/// Distance along the path as the plots' axis shows it, and back.
[[nodiscard]] double plotted(Length s, UnitSystem units);
[[nodiscard]] Length from_plotted(double x, UnitSystem units);

/// Gauge pressure along the path and the room's at the same height; the band between them where smoke can leak.
[[nodiscard]] PlotPicture pressure_picture(const Assessment& assessment, const Design& design, const Library& library,
                                           UnitSystem units);
/// Gas, inner wall and dew point along the path; the band where the wall is wet.
[[nodiscard]] PlotPicture temperature_picture(const Assessment& assessment, const Design& design,
                                              const Library& library, UnitSystem units);

/// The slice at a distance along the path: the one that holds it.
[[nodiscard]] const SliceState* slice_at(const Assessment& assessment, Length s);

}  // namespace fluewright
