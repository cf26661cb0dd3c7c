// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/burn/burn_book.hpp"
#include "app/desktop/burn/time_sight.hpp"

#include <QWidget>

#include <optional>
#include <vector>

namespace fluewright {

/// "Wood", "Fan", ...
[[nodiscard]] QString lane_words(Lane lane);
/// The smallest step of an event, with Alt held.
inline const Time finest = 1.0 * second;

/// The time line as a bar of lanes. The mouse adds (double click, or drag in an empty lane), moves, pulls the end, and
/// picks; the ruler on top is the scrubber. Keys: left and right go through time, up and down through the events, with
/// Ctrl they move the picked one, with Shift they pull its end; Insert adds, Delete deletes, Space plays.
class LaneBar : public QWidget {
  Q_OBJECT

 public:
  LaneBar(BurnBook& book, TimeSight& sight, QWidget* parent = nullptr);

  [[nodiscard]] QSize sizeHint() const override;
  [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }

  /// Where an event is drawn, and where a time of a lane is: for pointing at them.
  [[nodiscard]] QRectF place_of(const PlanRef& ref) const;
  [[nodiscard]] QPoint place_of(Lane lane, Time at) const;
  [[nodiscard]] QPoint ruler_place(Time at) const;
  /// The lane that keys add to.
  [[nodiscard]] Lane lane() const { return lane_; }

 signals:
  /// What the hand can do here, or why it could not: for the line beneath.
  void said(const QString& sentence);

 protected:
  void paintEvent(QPaintEvent* event) override;
  void mousePressEvent(QMouseEvent* event) override;
  void mouseMoveEvent(QMouseEvent* event) override;
  void mouseReleaseEvent(QMouseEvent* event) override;
  void mouseDoubleClickEvent(QMouseEvent* event) override;
  void contextMenuEvent(QContextMenuEvent* event) override;
  void wheelEvent(QWheelEvent* event) override;
  void keyPressEvent(QKeyEvent* event) override;
  void leaveEvent(QEvent* event) override;
  void focusInEvent(QFocusEvent* event) override;
  void focusOutEvent(QFocusEvent* event) override;
  bool event(QEvent* event) override;

 private:
  enum class Drag { none, scrub, move, pull, draw };
  struct Under {
    std::optional<PlanEvent> event;
    bool at_end = false;       ///< its end can be pulled here
    std::optional<Lane> lane;  ///< nothing: the ruler
  };
  [[nodiscard]] Under under(QPointF pixel) const;
  [[nodiscard]] Time snapped(Time at, Qt::KeyboardModifiers modifiers) const;
  [[nodiscard]] double top_of(Lane lane) const;
  void drag_to(QPointF pixel, Qt::KeyboardModifiers modifiers);
  void end_drag();
  void cancel_drag();
  bool take(PlanEdit edit, const QString& text, const QString& merge_key = {});
  void add_at(Lane lane, Time at);
  void remove_selected();
  void next_event(int step);
  bool move_by_key(const QKeyEvent& event);
  void show_hint(const Under& at);
  void describe();

  BurnBook& book_;
  TimeSight& sight_;
  Lane lane_ = Lane::wood;
  Drag drag_ = Drag::none;
  QPointF pressed_;
  Time grip_{};                        ///< from the dragged thing's beginning or end to the hand
  std::optional<PlanEvent> dragged_;   ///< as it was
  BurnPlan before_;
  std::optional<PlanRef> hovered_;
  int go_ = 0;                         ///< visits, so that each visit's steps are an undo step of their own
};

}  // namespace fluewright
