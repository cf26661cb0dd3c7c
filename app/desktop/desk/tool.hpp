// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QPointF>
#include <QString>
#include <Qt>

class QKeyEvent;
class QPainter;

namespace fluewright {

class Board;
class DeskView;

/// Where the mouse is and what it holds.
struct Pointer {
  DeskView& view;
  QPointF pixel;
  QPointF sheet;
  Qt::MouseButton button = Qt::NoButton;  ///< that was pressed or released; none while moving
  Qt::KeyboardModifiers modifiers;
};

/// What the hand holds: one gesture, one class. The board owns the tool in hand; a tool hands over to another by
/// Board::take_up() and is kept alive until its current handler has returned.
class Tool {
 public:
  explicit Tool(Board& board) : board_{board} {}
  Tool(const Tool&) = delete;
  Tool& operator=(const Tool&) = delete;
  virtual ~Tool() = default;

  /// One sentence for the status bar: what this tool does and which keys help.
  [[nodiscard]] virtual QString sentence() const = 0;

  virtual void press(const Pointer&) {}
  virtual void move(const Pointer&) {}
  virtual void release(const Pointer&) {}
  virtual void double_click(const Pointer&) {}
  /// The mouse left the view.
  virtual void leave(DeskView&) {}
  /// Whether the key was used.
  virtual bool key(DeskView&, QKeyEvent&) { return false; }
  /// Escape: one step back. Whether there was one; if not, the board puts the tool down.
  virtual bool step_back() { return false; }
  /// A length that was typed into the view's length entry.
  virtual void length_typed(DeskView&, const QString&) {}
  /// The tool is about to be put down by somebody else: leave nothing half done.
  virtual void put_down() {}

  /// What stands on the little card beside the mouse: a live length, the name of what is carried.
  [[nodiscard]] virtual QString card() const { return {}; }
  /// What the tool draws above the drawing.
  virtual void paint_over(QPainter&, const DeskView&) const {}

 protected:
  Board& board_;
};

}  // namespace fluewright
