// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/hit.hpp"
#include "app/desktop/desk/landmarks.hpp"
#include "app/desktop/desk/tool.hpp"

namespace fluewright {

/// Drags a joint, or a piece by its joints: the runs beside it stretch and the path stays connected. With Shift, or on
/// a piece that is joined to nothing, the whole group moves. A press without a drag is a click.
class JointTool final : public Tool {
 public:
  JointTool(Board& board, Hit under, const Pointer& pressed);

  [[nodiscard]] QString sentence() const override;
  void move(const Pointer& pointer) override;
  void release(const Pointer& pointer) override;
  void put_down() override;
  [[nodiscard]] QString card() const override;
  void paint_over(QPainter& painter, const DeskView& view) const override;

 private:
  [[nodiscard]] Position held() const;
  [[nodiscard]] Projection projection_here() const;
  struct Bench {
    PieceId run;
    Length by{};
  };
  [[nodiscard]] std::optional<Bench> bench_along(const Position& step) const;
  [[nodiscard]] EditResult moved(const Position& step, Qt::KeyboardModifiers keys) const;
  [[nodiscard]] Position in_line(const Position& step) const;

  Design base_;
  Hit under_;
  DeskView& view_;
  Projection projection_;  ///< true at the held place
  QPointF pressed_pixel_;
  QPointF pressed_sheet_;
  QPointF pixel_;
  Position held_;      ///< what is brought onto the grid: the joint, or the piece's first port
  Position step_;
  Landmarks landmarks_;
  bool dragging_ = false;
};

/// Moves a piece by one of its joints, the later one along the path first; a piece joined to nothing simply moves.
[[nodiscard]] EditResult moved_by_joint(const Board& board, const Design& base, const PieceId& piece, const Position& step);

}  // namespace fluewright
