// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/projection.hpp"
#include "app/desktop/document.hpp"

#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace fluewright {

/// What lies under the drawing: paper, grid, floor and levels; and what stands beside it: the view's title, the scale
/// bar and the axes. None of it depends on the pieces.
class SheetPainter {
 public:
  SheetPainter(QPainter& painter, const Camera& camera, const Projection& projection, const Document& document);

  void paint_ground();
  /// Title, scale bar and axis mark, above the drawing.
  void paint_furniture();
  /// Pixels that the furniture and what was written on the ground cover: no mark goes there.
  [[nodiscard]] std::vector<QRectF> covered() const;

  /// What stands in the view's corner (an elevation's chooser, right after it, says from where) and where it ends.
  [[nodiscard]] static QString title(ViewKind kind);
  [[nodiscard]] static double title_end(ViewKind kind);

  /// The grid's lines as drawn at this scale: fine ones are the snap step or a round multiple of it.
  [[nodiscard]] static double fine_step(double scale, UnitSystem units, Length grid_step);
  [[nodiscard]] static double strong_step(double scale, UnitSystem units);

 private:
  void paint_square_grid();
  void paint_isometric_grid();
  void paint_floor();
  void paint_levels();
  void paint_level(Length height, const QString& words);
  void paint_title();
  void paint_scale_bar();
  void paint_axes();
  void paint_compass(QPointF centre);
  void write(const QRectF& box, int alignment, const QString& words);

  QPainter& painter_;
  const Camera& camera_;
  const Projection& projection_;
  const Document& document_;
  std::vector<QRectF> written_;  ///< texts on the ground
};

}  // namespace fluewright
