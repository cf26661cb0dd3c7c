// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/camera.hpp"

#include <algorithm>

namespace fluewright {

void Camera::set_scale(double scale) { scale_ = std::clamp(scale, smallest_scale, largest_scale); }

QPointF Camera::to_screen(QPointF sheet) const {
  return {0.5 * size_.width() + (sheet.x() - centre_.x()) * scale_,
          0.5 * size_.height() - (sheet.y() - centre_.y()) * scale_};
}

QPointF Camera::to_sheet(QPointF pixel) const {
  return {centre_.x() + (pixel.x() - 0.5 * size_.width()) / scale_,
          centre_.y() - (pixel.y() - 0.5 * size_.height()) / scale_};
}

QTransform Camera::transform() const {
  return {scale_, 0.0, 0.0, -scale_, 0.5 * size_.width() - centre_.x() * scale_,
          0.5 * size_.height() + centre_.y() * scale_};
}

QRectF Camera::in_sight() const {
  const QSizeF size{size_.width() / scale_, size_.height() / scale_};
  return {{centre_.x() - 0.5 * size.width(), centre_.y() - 0.5 * size.height()}, size};
}

void Camera::zoom_at(QPointF pixel, double factor) {
  const QPointF held = to_sheet(pixel);
  set_scale(scale_ * factor);
  centre_ += held - to_sheet(pixel);
}

void Camera::pan(QPointF pixels) { centre_ += QPointF(-pixels.x() / scale_, pixels.y() / scale_); }

void Camera::fit(const QRectF& sheet, double margin_pixels) {
  const double width = std::max(40.0, size_.width() - 2.0 * margin_pixels);
  const double height = std::max(40.0, size_.height() - 2.0 * margin_pixels);
  // A small drawing is not blown up to fill the sheet: half a metre in sight at the least.
  set_scale(std::min(width / std::max(sheet.width(), 0.5), height / std::max(sheet.height(), 0.5)));
  centre_ = sheet.center();
}

}  // namespace fluewright
