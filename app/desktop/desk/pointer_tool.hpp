// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/hit.hpp"
#include "app/desktop/desk/tool.hpp"

namespace fluewright {

/// The empty hand: points, selects, walks along the path by keys, and hands over to the other tools when the mouse
/// presses on something.
class PointerTool final : public Tool {
 public:
  using Tool::Tool;

  [[nodiscard]] QString sentence() const override;
  void press(const Pointer& pointer) override;
  void move(const Pointer& pointer) override;
  void release(const Pointer& pointer) override;
  void leave(DeskView& view) override;
  bool key(DeskView& view, QKeyEvent& event) override;
  bool step_back() override;

 private:
  void walk(int steps, bool along_with);  ///< `along_with`: the next piece is selected as well
  void turn_selected();
  bool nudge(const DeskView& view, const QKeyEvent& event);
  bool begin_key_growth(DeskView& view, QKeyEvent& event);
};

/// The piece names in the order in which the gas passes them, those off the path after them.
[[nodiscard]] std::vector<PieceId> walking_order(const Board& board);
/// The grid direction of an arrow or page key in a view.
[[nodiscard]] std::optional<Heading> direction_of_key(int key, const Projection& projection);

}  // namespace fluewright
