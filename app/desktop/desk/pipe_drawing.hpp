// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/camera.hpp"
#include "app/desktop/desk/drawing.hpp"
#include "app/desktop/document.hpp"

#include <QRectF>

#include <vector>

class QPainter;

namespace fluewright {

/// The path as a pipe drawing: single lines along the axes in isometric projection with symbols on them, after
/// ISO 6412-2 and the line and symbol conventions of ISO 6412-1 as far as they have them (pipe as one thick line, bend
/// as a corner, reducer, blanked end, level marks); bodies, dampers, fans and heads have symbols of our own, named in
/// the legend.
class PipeDrawing {
 public:
  PipeDrawing(QPainter& painter, const Camera& camera, const Drawing& drawing, const Document& document,
              const Projection& projection);

  void paint();
  /// The symbols that occur, with their names, in the view's corner above `bottom`. Where it stands.
  QRectF paint_legend(double bottom);

  enum class Symbol { pipe, joint, flow, reducer, blank, branch, damper, fan, body, head, inlet };

 private:
  void paint_piece(const DrawnPiece& piece);
  void paint_line(const DrawnPiece& piece, const DrawnLine& line);
  void paint_joints(const DrawnPiece& piece);
  void paint_levels();
  void symbol(Symbol kind, QPointF at, QPointF forward);
  void use(Symbol kind);

  QPainter& painter_;
  const Camera& camera_;
  const Drawing& drawing_;
  const Document& document_;
  const Projection& projection_;
  std::vector<Symbol> used_;
};

}  // namespace fluewright
