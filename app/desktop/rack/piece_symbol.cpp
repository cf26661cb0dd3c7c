// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/rack/piece_symbol.hpp"

#include "app/desktop/desk/piece_painter.hpp"
#include "engine/pieces/shape.hpp"

#include <QPainter>

#include <algorithm>

namespace fluewright {

QPixmap piece_symbol(const PieceType& type, const Library& library, QSize size, double pixel_ratio) {
  QPixmap pixmap(size * pixel_ratio);
  pixmap.setDevicePixelRatio(pixel_ratio);
  pixmap.fill(Qt::transparent);
  const Shape* shape = find_shape(type.shape);
  if (shape == nullptr) return pixmap;
  const Design nowhere;
  Piece piece;
  piece.type = type.id;
  piece.heading = usual_heading(type);
  piece.turn = usual_turn(piece.heading);
  const PieceGeometry geometry = shape->geometry(PieceView(nowhere, library, piece, type));
  const Drawing drawing = Drawing::of_one(geometry, type, Projection(ViewKind::front));
  Camera camera;
  camera.set_size(size);
  // A little room for a cap's hat and the sticks of a feed. A long run is not shrunk to a line: it may be cut off.
  const QRectF bounds = drawing.bounds();
  const double slim = std::min(bounds.width(), bounds.height());
  const double high = 1.3 * std::max(bounds.height(), 2.5 * slim);
  camera.set_scale(std::min(size.height() / high, size.width() / std::min(1.15 * bounds.width(), 4.0 * slim)));
  camera.set_centre(bounds.center());
  QPainter painter(&pixmap);
  painter.setRenderHint(QPainter::Antialiasing);
  for (const DrawnPiece& drawn : drawing.pieces()) paint_piece(painter, camera, drawn, {});
  return pixmap;
}

}  // namespace fluewright
