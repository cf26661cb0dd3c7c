// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QRectF>
#include <QSize>
#include <QTransform>

namespace fluewright {

/// Sheet metres to pixels of one view: a centre and a scale; the sheet's second axis points up.
class Camera {
 public:
  static constexpr double smallest_scale = 4.0;     ///< pixels a metre
  static constexpr double largest_scale = 4000.0;

  void set_size(QSize size) { size_ = size; }
  [[nodiscard]] QSize size() const { return size_; }
  [[nodiscard]] double scale() const { return scale_; }
  [[nodiscard]] QPointF centre() const { return centre_; }
  void set_scale(double scale);
  void set_centre(QPointF centre) { centre_ = centre; }

  [[nodiscard]] QPointF to_screen(QPointF sheet) const;
  [[nodiscard]] QPointF to_sheet(QPointF pixel) const;
  [[nodiscard]] QTransform transform() const;
  /// What of the sheet is in sight.
  [[nodiscard]] QRectF in_sight() const;

  /// The sheet point under `pixel` stays under it.
  void zoom_at(QPointF pixel, double factor);
  void pan(QPointF pixels);
  void fit(const QRectF& sheet, double margin_pixels);

 private:
  QSize size_{400, 300};
  QPointF centre_{1.5, 1.0};
  double scale_ = 110.0;
};

}  // namespace fluewright
