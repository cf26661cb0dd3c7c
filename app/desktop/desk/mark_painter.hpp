// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/board.hpp"
#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/clearance.hpp"
#include "app/desktop/desk/drawing.hpp"

#include <QPointF>
#include <QPolygonF>
#include <QString>

#include <vector>

class QPainter;

namespace fluewright {

/// What lies above the pieces: open ends, lengths, faults, the drop where water begins, the marker of the plot.
class MarkPainter {
 public:
  MarkPainter(QPainter& painter, const Camera& camera, const Projection& projection, const Board& board,
              const PathMeasure& measure, const Drawing& drawing);

  /// Where no further mark goes.
  void keep_clear(const std::vector<QRectF>& areas);
  void keep_rings_clear();

  /// Rings with a plus on open ends; small quiet rings on capped ones under the mouse; the focused one filled.
  void paint_ends(bool view_has_focus);
  /// Lengths beside the straight runs that have room for them.
  void paint_lengths();
  /// A dashed line across each gap and a warning mark beside each piece with a fault or a warning.
  void paint_faults();
  /// A drop where the wall first gets wet.
  void paint_condensation();
  /// Where the mouse is on the plot, or on another view.
  void paint_pointed();
  void paint_joint(const PortRef& joint);
  /// How to begin, on an empty sheet: in full, or only that something goes here.
  void paint_invitation(bool in_full);

 private:
  void paint_handle(QPointF at, bool lit, bool filled);
  void paint_warning(QPointF at, bool fault);
  void paint_length(const DrawnPiece& piece);
  /// On a rim of paper, so that hatches and grid lines do not run through it.
  void paint_haloed(const QRectF& box, const QString& words);
  void paint_gap(const PortRef& port);
  [[nodiscard]] QPointF beside(const DrawnPiece& piece, const QRectF& mark);
  [[nodiscard]] QPointF at_s(Length s, bool& found) const;

  QPainter& painter_;
  const Camera& camera_;
  const Projection& projection_;
  const Board& board_;
  const PathMeasure& measure_;
  const Drawing& drawing_;
  Clearance room_;
};

}  // namespace fluewright
