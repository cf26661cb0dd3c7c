// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/growth.hpp"
#include "app/desktop/desk/landmarks.hpp"
#include "app/desktop/desk/tool.hpp"

namespace fluewright {

/// Draws the path on from an open end while the mouse is down: straight lengths and the elbows between them.
class GrowTool final : public Tool {
 public:
  GrowTool(Board& board, OpenEnd end, const Pointer& pressed);

  [[nodiscard]] QString sentence() const override;
  void press(const Pointer& pointer) override;
  void move(const Pointer& pointer) override;
  void release(const Pointer& pointer) override;
  bool key(DeskView& view, QKeyEvent& event) override;
  bool step_back() override;
  void length_typed(DeskView& view, const QString& typed) override;
  void put_down() override;
  [[nodiscard]] QString card() const override;
  void paint_over(QPainter& painter, const DeskView& view) const override;

 private:
  void show(const std::vector<Leg>& legs);
  void finish();

  Design base_;
  OpenEnd end_;
  DeskView& view_;
  Projection projection_;  ///< true at the end that grows
  QPointF pressed_;
  QPointF pixel_;
  std::vector<Leg> legs_;  ///< as shown; empty: nothing yet
  PieceId touched_;
  Landmarks landmarks_;
  bool dragging_ = false;  ///< the mouse has left the handle
};

/// Where the tools write a length: a small card beside a pixel.
void paint_card(QPainter& painter, QPointF beside, const QString& words, const DeskView& view);
/// What a finished growth is called in the undo list.
[[nodiscard]] QString growth_text(const Board& board, const std::vector<Leg>& legs);
/// Selects what has grown and puts the focus on its open end, so that the path can be drawn on.
void go_on_from(Board& board, const PieceId& touched);

}  // namespace fluewright
