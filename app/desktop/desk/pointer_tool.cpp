// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/pointer_tool.hpp"

#include "app/desktop/desk/desk_view.hpp"
#include "app/desktop/desk/grow_tool.hpp"
#include "app/desktop/desk/desk_verbs.hpp"
#include "app/desktop/desk/joint_tool.hpp"
#include "app/desktop/desk/key_growth.hpp"
#include "app/desktop/desk/set_tools.hpp"
#include "app/shared/words.hpp"

#include <QKeyEvent>

#include <algorithm>
#include <cmath>

namespace fluewright {

std::vector<PieceId> walking_order(const Board& board) {
  const Design& design = board.document().design();
  std::vector<PieceId> order;
  for (const Passage& passage : board.document().assessment().path.passages) {
    if (passage.piece < design.pieces.size()) order.push_back(design.pieces[passage.piece].id);
  }
  for (const Piece& piece : design.pieces) {
    if (std::find(order.begin(), order.end(), piece.id) == order.end()) order.push_back(piece.id);
  }
  return order;
}

std::optional<Heading> direction_of_key(int key, const Projection& projection) {
  if (key == Qt::Key_PageUp) return heading_up();
  if (key == Qt::Key_PageDown) return heading_down();
  // Right, up, left, down of the sheet; of the isometric view east, north, west, south.
  const auto directions = projection.directions();
  switch (key) {
    case Qt::Key_Right: return directions[0];
    case Qt::Key_Up: return directions[1];
    case Qt::Key_Left: return directions[2];
    case Qt::Key_Down: return directions[3];
    default: return std::nullopt;
  }
}

QString PointerTool::sentence() const {
  if (board_.document().design().pieces.empty()) {
    return Board::tr("Drag a feed from the rack onto the sheet, or choose it there and press Enter.");
  }
  if (board_.focused_end()) {
    return Board::tr("Arrow keys or a drag grow the path from this end; Enter goes to the rack; Tab goes to the next end.");
  }
  if (board_.document().selection().size() > 1) {
    return Board::tr("Drag them, or: Delete takes them out, R turns them, Ctrl+M mirrors them, Ctrl+C copies them.");
  }
  if (!board_.document().selected().empty()) {
    return Board::tr("Arrow keys walk along the path; Delete takes the piece out; R turns it; Alt and arrows move it.");
  }
  return Board::tr("Drag from a ring with a plus to grow the path. Click a piece to see it. Drag bare paper to move the sheet; with Shift to select.");
}

void PointerTool::move(const Pointer& pointer) {
  const Hit under = pointer.view.under(pointer.pixel);
  board_.hover_end(under.end);
  pointer.view.light_joint(under.joint);
  if (under.end) {
    board_.document().point_at({});
    pointer.view.setCursor(Qt::CrossCursor);
    return;
  }
  board_.document().point_at({under.piece, under.s});
  pointer.view.setCursor(under.joint ? Qt::SizeAllCursor : under.piece.empty() ? Qt::OpenHandCursor : Qt::PointingHandCursor);
}

void PointerTool::press(const Pointer& pointer) {
  if (pointer.button != Qt::LeftButton) return;
  const Hit under = pointer.view.under(pointer.pixel);
  if (under.end) {
    board_.focus_end(under.end);
    if (!board_.document().read_only()) board_.take_up(std::make_unique<GrowTool>(board_, *board_.ends().find(*under.end), pointer));
    return;
  }
  board_.focus_end(std::nullopt);
  if (under.on_paper() && pointer.modifiers.testFlag(Qt::ShiftModifier)) {
    board_.take_up(std::make_unique<BandTool>(board_, pointer));
    return;
  }
  if (pointer.modifiers.testFlag(Qt::ControlModifier)) {
    if (!under.piece.empty()) board_.document().toggle_selected(under.piece);
    return;
  }
  if (under.on_paper()) {
    board_.document().select({});
    pointer.view.begin_pan(pointer.pixel);
    return;
  }
  const bool of_several = board_.document().selection().size() > 1 && board_.document().is_selected(under.piece);
  if (of_several && !board_.document().read_only() && !under.joint) {
    board_.take_up(std::make_unique<SetTool>(board_, under.piece, pointer));
    return;
  }
  if (!under.piece.empty()) board_.document().select(under.piece);
  if (board_.document().read_only()) return;
  board_.take_up(std::make_unique<JointTool>(board_, under, pointer));
}

void PointerTool::release(const Pointer& pointer) { move(pointer); }

void PointerTool::leave(DeskView& view) {
  board_.hover_end(std::nullopt);
  board_.document().point_at({});
  view.light_joint(std::nullopt);
}

bool PointerTool::key(DeskView& view, QKeyEvent& event) {
  if (board_.focused_end() && begin_key_growth(view, event)) return true;
  if ((event.modifiers() & Qt::AltModifier) != 0 && nudge(view, event)) return true;
  switch (event.key()) {
    case Qt::Key_Right:
    case Qt::Key_Down: walk(1, event.modifiers().testFlag(Qt::ShiftModifier)); return true;
    case Qt::Key_Left:
    case Qt::Key_Up: walk(-1, event.modifiers().testFlag(Qt::ShiftModifier)); return true;
    case Qt::Key_Delete:
    case Qt::Key_Backspace: DeskVerbs(board_).remove(); return true;
    case Qt::Key_R:
      if (board_.document().selection().size() > 1) {
        DeskVerbs(board_).rotate(event.modifiers().testFlag(Qt::ShiftModifier) ? -1 : 1);
      } else {
        turn_selected();
      }
      return true;
    case Qt::Key_Return:
    case Qt::Key_Enter: emit board_.rack_wanted(); return true;
    default: return false;
  }
}

bool PointerTool::begin_key_growth(DeskView& view, QKeyEvent& event) {
  const OpenEnd* focused = board_.ends().find(*board_.focused_end());
  if (focused == nullptr) return false;
  const auto direction = direction_of_key(event.key(), view.projection_at(focused->ref, focused->port));
  const bool digit = !event.text().isEmpty() && event.text().front().isDigit();
  if ((!direction && !digit) || event.modifiers().testFlag(Qt::AltModifier) || board_.document().read_only()) return false;
  board_.take_up(std::make_unique<KeyGrowth>(board_, *focused, view));
  board_.tool().key(view, event);
  return true;
}

bool PointerTool::step_back() {
  if (board_.focused_end()) {
    board_.focus_end(std::nullopt);
    return true;
  }
  board_.document().select({});
  return true;
}

void PointerTool::walk(int steps, bool along_with) {
  const std::vector<PieceId> order = walking_order(board_);
  if (order.empty()) return;
  const auto here = std::find(order.begin(), order.end(), board_.document().selected());
  const auto last = static_cast<std::ptrdiff_t>(order.size()) - 1;
  std::ptrdiff_t next = here == order.end() ? (steps > 0 ? 0 : last) : (here - order.begin()) + steps;
  next = std::clamp<std::ptrdiff_t>(next, 0, last);
  const PieceId& there = order[static_cast<std::size_t>(next)];
  if (along_with) {
    std::vector<PieceId> more = board_.document().selection();
    std::erase(more, there);
    more.push_back(there);
    board_.document().select_set(std::move(more));
  } else {
    board_.document().select(there);
  }
  emit board_.sentence_changed(board_.sentence());
}

void PointerTool::turn_selected() {
  Document& document = board_.document();
  const Piece* piece = document.design().piece(document.selected());
  if (piece == nullptr || document.read_only()) return;
  // The next turn that the joints allow.
  EditResult result;
  for (int step = 1; step < 4 && !result.design; ++step) {
    const auto next = static_cast<Turn>((static_cast<int>(piece->turn) + step) % 4);
    result = set_turn(document.design(), document.library(), piece->id, next);
  }
  board_.commit(result, Board::tr("Turn %1").arg(QString::fromStdString(piece_name(document.design(), document.library(), piece->id))));
}

bool PointerTool::nudge(const DeskView& view, const QKeyEvent& event) {
  Document& document = board_.document();
  const auto direction = direction_of_key(event.key(), view.projection());
  if (!direction || document.selected().empty() || document.read_only()) return false;
  const Position step = step_along(*direction, document.grid_step());
  if (event.modifiers().testFlag(Qt::ShiftModifier)) {
    board_.commit(move_group(document.design(), document.library(), document.selected(), grid_point_near(step)),
                  Board::tr("Move the path"), QStringLiteral("nudge group"));
    return true;
  }
  board_.commit(moved_by_joint(board_, document.design(), document.selected(), step), Board::tr("Move a joint"),
                QStringLiteral("nudge ") + QString::fromStdString(document.selected()));
  return true;
}

}  // namespace fluewright
