// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/rack/piece_symbol.hpp"

#include "app/desktop/desk/piece_painter.hpp"
#include "engine/pieces/shape.hpp"

#include <QImage>
#include <QPainter>

#include <algorithm>
#include <variant>

namespace fluewright {

namespace {

/// A long run as a short piece of it: a symbol shows what a piece is, not how long.
void shorten(Piece& piece, const PieceType& type) {
  constexpr double slimmest = 2.0;  // length over width
  const auto* length = type.field("length");
  if (length == nullptr || !std::holds_alternative<Length>(length->fallback)) return;
  for (const char* key : {"half_barrel", "bore", "height"}) {
    const auto* across = type.field(key);
    if (across == nullptr || !std::holds_alternative<Length>(across->fallback)) continue;
    const Length longest = slimmest * (std::get<Length>(across->fallback) + 50.0 * millimetre);
    if (std::get<Length>(length->fallback) > longest) piece.fields["length"] = longest;
    return;
  }
}

void paint(QPainter& painter, const Camera& camera, const Drawing& drawing) {
  painter.setRenderHint(QPainter::Antialiasing);
  for (const DrawnPiece& drawn : drawing.pieces()) paint_piece(painter, camera, drawn, {});
}

/// What is not bare of a picture.
QRect inked(const QImage& image) {
  QRect found;
  for (int y = 0; y < image.height(); ++y) {
    for (int x = 0; x < image.width(); ++x) {
      if (qAlpha(image.pixel(x, y)) > 40) found |= QRect(x, y, 1, 1);
    }
  }
  return found;
}

/// A camera under which the piece, hat and sticks included, fills the box. What is drawn around a piece does not grow
/// in step with it, so the fit is found by looking at it.
Camera fitted(const Drawing& drawing, QSize box) {
  const QSize canvas = 3 * box;
  Camera camera;
  camera.set_size(canvas);
  camera.set_centre(drawing.bounds().center());
  camera.set_scale(std::min(box.width() / drawing.bounds().width(), box.height() / drawing.bounds().height()));
  for (int look = 0; look < 3; ++look) {
    QImage image(canvas, QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    paint(painter, camera, drawing);
    painter.end();
    const QRect ink = inked(image);
    if (ink.isEmpty()) break;
    camera.set_centre(camera.to_sheet(QRectF(ink).center()));
    camera.set_scale(camera.scale() * std::min(static_cast<double>(box.width()) / ink.width(), static_cast<double>(box.height()) / ink.height()));
  }
  camera.set_size(box);
  return camera;
}

}  // namespace

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
  shorten(piece, type);
  const PieceGeometry geometry = shape->geometry(PieceView(nowhere, library, piece, type));
  const Drawing drawing = Drawing::of_one(geometry, type, Projection(ViewKind::front));
  QPainter painter(&pixmap);
  paint(painter, fitted(drawing, size), drawing);
  return pixmap;
}

}  // namespace fluewright
