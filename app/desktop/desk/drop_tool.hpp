// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/desktop/desk/hit.hpp"
#include "app/desktop/desk/tool.hpp"

#include <map>
#include <string>

namespace fluewright {

/// Carries a piece from the rack: shows where it would go (onto an open end, into a run, onto bare paper) with its
/// numbers, and leaves it there at the click or when the dragging mouse is let go.
class DropTool final : public Tool {
 public:
  DropTool(Board& board, std::string type);

  [[nodiscard]] QString sentence() const override;
  void move(const Pointer& pointer) override;
  void release(const Pointer& pointer) override;
  void leave(DeskView& view) override;
  bool key(DeskView& view, QKeyEvent& event) override;
  void put_down() override;
  [[nodiscard]] QString card() const override { return type_name(); }
  void paint_over(QPainter& painter, const DeskView& view) const override;

  /// Leaves the piece where it is shown. Whether it was anywhere.
  bool drop();

 private:
  /// What lay on the desk before the piece in hand was shown there.
  struct Before {
    Drawing drawing;
    Ends ends;
    PathMeasure measure;
  };
  const Before& before(DeskView& view);
  void show_at(DeskView& view, QPointF pixel, QPointF sheet);
  [[nodiscard]] EditResult placed_on_paper(const DeskView& view, QPointF sheet) const;
  [[nodiscard]] Turn turn_for(const Heading& into) const;
  [[nodiscard]] QString type_name() const;

  Design base_;
  std::string type_;
  int turned_ = 0;  ///< times R was pressed
  std::map<const DeskView*, Before> before_;
  PieceId touched_;
  QString where_;
  DeskView* view_ = nullptr;  ///< over which the piece is
  QPointF pixel_;
  QPointF sheet_;
};

/// What a piece from the rack does without a mouse: it goes onto the focused end, else into the selected run, else onto
/// the first open end, else onto the bare desk.
bool put_by_key(Board& board, const std::string& type);

/// A piece of a type on the floor (its lowest outside at or just above z = 0), its first port over `at`'s x and y.
[[nodiscard]] EditResult placed_on_floor(const Board& board, const Design& base, const std::string& type, GridPoint at);

}  // namespace fluewright
