// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/burn/burn_book.hpp"
#include "app/desktop/burn/time_sight.hpp"

#include <QRectF>

class QPainter;

namespace fluewright {

/// Heights of the bar, in pixels.
struct LaneMeasure {
  static constexpr double ruler = 22.0;
  static constexpr double lane = 20.0;
  static constexpr double least_event = 5.0;  ///< a moment only is so wide
};

/// Where an event is drawn in a bar of that width.
[[nodiscard]] QRectF event_box(const PlanEvent& event, const TimeSight& sight, int width);

/// Paints the bar: ruler, lanes, events, the outdoor course and the cursor.
class LanePainter {
 public:
  LanePainter(QPainter& painter, const BurnBook& book, const TimeSight& sight, int width);

  void paint_ruler();
  void paint_lanes(Lane active, bool focus);
  void paint_outdoors();
  void paint_event(const PlanEvent& event, bool hovered);
  void paint_cursor();

 private:
  QPainter& painter_;
  const BurnBook& book_;
  const TimeSight& sight_;
  int width_;
};

}  // namespace fluewright
