// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/document.hpp"
#include "app/desktop/theme/colour_scale.hpp"

#include <QColor>
#include <QString>

#include <optional>
#include <utility>
#include <vector>

namespace fluewright {

/// What colours the drawing: the gas temperature or the gauge pressure along the path, and the scale it is read on.
class Tint {
 public:
  Tint() = default;
  Tint(const Assessment& assessment, Document::Tint what);
  /// The gas at a moment of a burn, on one scale for the whole burn.
  explicit Tint(const Moment& moment);

  [[nodiscard]] Document::Tint what() const { return what_; }
  /// Whether there is anything to colour.
  [[nodiscard]] bool known() const { return !rows_.empty(); }
  /// The colour of the gas at `share` of its way through a piece; nothing off the path.
  [[nodiscard]] std::optional<QColor> at(std::size_t piece, Ratio share) const;
  /// How fast the gas moves there at a moment of a burn, below zero backwards; nothing off the path or without a moment.
  [[nodiscard]] std::optional<Velocity> speed(std::size_t piece, Ratio share) const;
  /// A temperature on the scale.
  [[nodiscard]] QColor colour_of(Temperature t) const { return scale().at(share_of(in_celsius(t))); }

  /// A mark of the legend: where along the scale, and what to write.
  struct Mark {
    double share = 0.0;
    QString text;
  };
  [[nodiscard]] std::vector<Mark> marks(UnitSystem units) const;
  [[nodiscard]] const ColourScale& scale() const;

 private:
  [[nodiscard]] double share_of(double value) const;
  void add_rows(const std::vector<SliceState>& profile);
  void choose_range();

  struct Row {
    std::size_t piece = 0;
    double from = 0.0;   ///< share of the piece's span at the slice's two ends
    double to = 0.0;
    double start = 0.0;  ///< value there: degC or Pa
    double end = 0.0;
    std::optional<Velocity> speed;
  };
  [[nodiscard]] const Row* row_at(std::size_t piece, double share) const;
  std::vector<Row> rows_;
  std::vector<std::pair<std::size_t, std::size_t>> rows_of_piece_;  ///< first row and row past the last
  Document::Tint what_ = Document::Tint::gas_temperature;
  double low_ = 0.0;
  double high_ = 1.0;
};

}  // namespace fluewright
