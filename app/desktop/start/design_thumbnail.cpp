// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/start/design_thumbnail.hpp"

#include "app/desktop/desk/drawing.hpp"
#include "app/desktop/desk/piece_painter.hpp"

#include <QPainter>

namespace fluewright {

QImage design_thumbnail(const Demo& demo, std::shared_ptr<const Library> library, QSize size, double pixel_ratio) {
  Document document(library);
  ReadResult read = read_design_text(demo.text, *library);
  if (auto* file = std::get_if<DesignDocument>(&read)) document.adopt(std::move(*file), {});
  return design_picture(document, size, pixel_ratio);
}

QImage design_picture(const Document& document, QSize size, double pixel_ratio) {
  QImage image(size * pixel_ratio, QImage::Format_ARGB32_Premultiplied);
  image.setDevicePixelRatio(pixel_ratio);
  image.fill(Qt::transparent);
  const PathMeasure measure(document.assessment(), document.geometries());
  const Tint tint(document.assessment(), Document::Tint::gas_temperature);
  const Drawing drawing(document, measure, tint, Projection(ViewKind::isometric));
  Camera camera;
  camera.set_size(size);
  constexpr double margin_pixels = 20.0;  // room for the arrows of the air
  camera.fit(drawing.bounds(), margin_pixels);
  QPainter painter(&image);
  painter.setRenderHint(QPainter::Antialiasing);
  paint_masses(painter, camera, drawing);
  for (const DrawnPiece& piece : drawing.pieces()) paint_piece(painter, camera, piece, {});
  return image;
}

}  // namespace fluewright
