// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/set_tools.hpp"

#include "app/desktop/desk/board.hpp"
#include "app/desktop/desk/desk_view.hpp"
#include "app/desktop/desk/grow_tool.hpp"
#include "app/desktop/theme/theme.hpp"
#include "engine/layout/edit_set.hpp"

#include <QLineF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {
constexpr double drag_threshold = 5.0;  // pixels before a press becomes a drag
}

Position snapped_step(const Board& board, const Projection& projection, const Position& held, QPointF from_sheet,
                      QPointF to_sheet) {
  const Length grid = board.document().grid_step();
  const Metres at = metres(held);
  const auto to_grid = [&](double from, double by) {
    return std::abs(by) < 0.5 * in(grid, metre) ? 0.0 : snapped(from + by, grid) - from;
  };
  if (projection.kind() == ViewKind::isometric) {
    Metres best;
    double most = 0.0;
    for (const Heading& direction : {heading_east, heading_north, heading_up()}) {
      const double reach = projection.along(direction, metres(Position{}), to_sheet - from_sheet).value_or(0.0);
      if (std::abs(reach) <= std::abs(most)) continue;
      most = reach;
      best = unit_of(direction);
    }
    return position({to_grid(at.x, most * best.x), to_grid(at.y, most * best.y), to_grid(at.z, most * best.z)});
  }
  const Metres from = projection.in_world(from_sheet, at);
  const Metres to = projection.in_world(to_sheet, at);
  return position({to_grid(at.x, to.x - from.x), to_grid(at.y, to.y - from.y), to_grid(at.z, to.z - from.z)});
}

QString step_words(const Board& board, const Position& by) {
  const Metres step = metres(by);
  QStringList parts;
  const auto add = [&](double length, const Heading& there, const Heading& back) {
    if (std::abs(length) < 1e-6) return;
    parts << QStringLiteral("%1 %2").arg(length_words(std::abs(length) * metre, board), direction_words(length > 0.0 ? there : back));
  };
  add(step.x, heading_east, heading_west);
  add(step.y, heading_north, heading_south);
  add(step.z, heading_up(), heading_down());
  return parts.join(QStringLiteral(", "));
}

BandTool::BandTool(Board& board, const Pointer& pressed)
    : Tool(board), view_{pressed.view}, from_{pressed.sheet}, to_{pressed.sheet}, before_{board.document().selection()} {}

QString BandTool::sentence() const { return Board::tr("Draw a frame around the pieces to select; Esc forgets it."); }

QRectF BandTool::frame() const { return QRectF(from_, to_).normalized(); }

void BandTool::move(const Pointer& pointer) {
  if (&pointer.view != &view_) return;
  to_ = pointer.sheet;
  std::vector<PieceId> caught = before_;
  for (const DrawnPiece& piece : view_.drawing().pieces()) {
    // By their axes: the mass around a run reaches farther than one aims.
    const bool inside = !piece.lines.empty() && std::all_of(piece.lines.begin(), piece.lines.end(), [this](const DrawnLine& line) {
      return std::all_of(line.axis.begin(), line.axis.end(), [this](const QPointF& point) { return frame().contains(point); });
    });
    if (!inside) continue;
    if (std::find(caught.begin(), caught.end(), piece.id) == caught.end()) caught.push_back(piece.id);
  }
  board_.document().select_set(std::move(caught));
  emit board_.touch_up();
}

void BandTool::release(const Pointer& pointer) {
  if (pointer.button == Qt::LeftButton) board_.put_down();
}

void BandTool::paint_over(QPainter& painter, const DeskView& view) const {
  if (&view != &view_) return;
  const Inks& inks = theme().inks;
  QColor wash = inks.accent;
  wash.setAlphaF(0.12F);
  painter.setPen(QPen(inks.accent, 1.0, Qt::DashLine));
  painter.setBrush(wash);
  painter.drawRect(QRectF(view.camera().to_screen(from_), view.camera().to_screen(to_)).normalized());
}

SetTool::SetTool(Board& board, const PieceId& held, const Pointer& pressed)
    : Tool(board),
      base_{board.document().design()},
      set_{board.document().selection()},
      held_{held},
      view_{pressed.view},
      pressed_pixel_{pressed.pixel},
      pressed_sheet_{pressed.sheet},
      pixel_{pressed.pixel} {}

QString SetTool::sentence() const {
  return Board::tr("Drag the selected pieces: runs along the way stretch, other joints come apart. Esc forgets it.");
}

void SetTool::move(const Pointer& pointer) {
  if (&pointer.view != &view_) return;
  pixel_ = pointer.pixel;
  if (!dragging_ && QLineF(pressed_pixel_, pixel_).length() < drag_threshold) return;
  dragging_ = true;
  const Piece* piece = base_.piece(held_);
  const Position held = piece == nullptr ? Position{} : position_of(piece->at);
  const Position step = snapped_step(board_, view_.projection(), held, pressed_sheet_, pointer.sheet);
  if (board_.preview(move_pieces(base_, board_.document().library(), set_, grid_point_near(step)).edit)) step_ = step;
  emit board_.touch_up();
}

void SetTool::release(const Pointer& pointer) {
  if (pointer.button != Qt::LeftButton) return;
  if (dragging_) {
    board_.document().commit_preview(Board::tr("Move %n piece(s)", nullptr, static_cast<int>(set_.size())));
  } else {
    // A click on one of them without a drag means that one.
    board_.document().select(held_);
  }
  board_.put_down();
}

void SetTool::put_down() { board_.document().cancel_preview(); }

QString SetTool::card() const { return step_words(board_, step_); }

void SetTool::paint_over(QPainter& painter, const DeskView& view) const {
  if (&view != &view_ || !dragging_) return;
  if (const QString words = card(); !words.isEmpty()) paint_card(painter, pixel_, words, view);
}

}  // namespace fluewright
