// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/growth.hpp"
#include "app/desktop/desk/tool.hpp"

namespace fluewright {

/// Grows the path without a mouse: arrow keys choose the way and stretch the length, digits set it, Enter draws it.
class KeyGrowth final : public Tool {
 public:
  KeyGrowth(Board& board, OpenEnd end, DeskView& view);

  [[nodiscard]] QString sentence() const override;
  bool key(DeskView& view, QKeyEvent& event) override;
  bool step_back() override;
  void press(const Pointer& pointer) override;
  void length_typed(DeskView& view, const QString& typed) override;
  void put_down() override;
  [[nodiscard]] QString card() const override;
  void paint_over(QPainter& painter, const DeskView& view) const override;

 private:
  void steer(const Heading& heading, int steps);
  bool try_leg(const Leg& leg);
  void finish();
  [[nodiscard]] QPointF beside_end() const;

  Design base_;
  OpenEnd end_;
  DeskView& view_;
  std::optional<Leg> leg_;  ///< as shown
  PieceId touched_;
};

}  // namespace fluewright
