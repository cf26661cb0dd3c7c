// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/units.hpp"
#include "engine/burn/start_map.hpp"

#include <QWidget>

#include <optional>

namespace fluewright {

/// A start map drawn: outdoors across, room upwards, a letter in every cell, today ringed. The arrow keys walk over the
/// cells as the mouse does; the cell under either is told in words.
class MapView : public QWidget {
  Q_OBJECT

 public:
  explicit MapView(QWidget* parent = nullptr);

  void show_map(const StartMap& map, Temperature outdoors_today, Temperature room_today, UnitSystem units);
  void clear();
  [[nodiscard]] const std::optional<StartMap>& map() const { return map_; }
  /// The cell under a point; nothing beside the map.
  [[nodiscard]] std::optional<std::size_t> cell_at(QPoint at) const;
  [[nodiscard]] QRectF rect_of(std::size_t cell) const;
  [[nodiscard]] QString words_of(std::size_t cell) const;

  [[nodiscard]] QSize sizeHint() const override { return {640, 560}; }
  [[nodiscard]] QSize minimumSizeHint() const override { return {320, 280}; }

 signals:
  void pointed(const QString& words);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;

 private:
  [[nodiscard]] QRectF field() const;
  void paint_cells(QPainter& painter) const;
  void paint_axes(QPainter& painter) const;
  void paint_today(QPainter& painter) const;
  void point_at(std::optional<std::size_t> cell);

  std::optional<StartMap> map_;
  Temperature outdoors_today_;
  Temperature room_today_;
  UnitSystem units_ = UnitSystem::metric;
  std::optional<std::size_t> pointed_;
};

}  // namespace fluewright
