// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/projection.hpp"
#include "app/desktop/desk/tool.hpp"
#include "engine/layout/design.hpp"

#include <QRectF>

#include <vector>

namespace fluewright {

/// Draws a frame on bare paper; the pieces whose axes lie wholly in it become selected.
class BandTool final : public Tool {
 public:
  BandTool(Board& board, const Pointer& pressed);

  [[nodiscard]] QString sentence() const override;
  void move(const Pointer& pointer) override;
  void release(const Pointer& pointer) override;
  void paint_over(QPainter& painter, const DeskView& view) const override;

 private:
  [[nodiscard]] QRectF frame() const;

  DeskView& view_;
  QPointF from_;
  QPointF to_;
  std::vector<PieceId> before_;  ///< selected already: the frame adds to it
};

/// Moves the selected pieces together.
class SetTool final : public Tool {
 public:
  SetTool(Board& board, const PieceId& held, const Pointer& pressed);

  [[nodiscard]] QString sentence() const override;
  void move(const Pointer& pointer) override;
  void release(const Pointer& pointer) override;
  void put_down() override;
  [[nodiscard]] QString card() const override;
  void paint_over(QPainter& painter, const DeskView& view) const override;

 private:
  Design base_;
  std::vector<PieceId> set_;
  PieceId held_;
  DeskView& view_;
  QPointF pressed_pixel_;
  QPointF pressed_sheet_;
  QPointF pixel_;
  Position step_;
  bool dragging_ = false;
};

/// A step of the mouse as a step of the drawing, with the held point on the snap grid: along the sheet's two axes, or
/// in the isometric view along the one axis that the mouse follows best.
[[nodiscard]] Position snapped_step(const Board& board, const Projection& projection, const Position& held, QPointF from_sheet,
                                    QPointF to_sheet);
/// "200 mm east, 50 mm up".
[[nodiscard]] QString step_words(const Board& board, const Position& step);

}  // namespace fluewright
