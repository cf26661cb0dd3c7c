// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/grow_tool.hpp"

#include "app/desktop/desk/board.hpp"
#include "app/desktop/desk/desk_view.hpp"
#include "app/desktop/desk/hit.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QKeyEvent>
#include <QLineF>
#include <QPainter>

#include <utility>

namespace fluewright {

namespace {
constexpr double drag_threshold = 6.0;  // pixels before a press becomes a drag
}

GrowTool::GrowTool(Board& board, OpenEnd end, const Pointer& pressed)
    : Tool(board),
      base_{board.document().design()},
      end_{std::move(end)},
      view_{pressed.view},
      projection_{pressed.view.projection_at(end_.ref, end_.port)},
      pressed_{pressed.pixel},
      pixel_{pressed.pixel},
      landmarks_{board.document(), end_.ref.piece} {}

QString GrowTool::sentence() const {
  if (view_.length_entry_open()) return Board::tr("Enter sets the length; Esc goes back to the mouse.");
  return Board::tr("Drag along the grid to grow, across it for an elbow; type a number for the exact length; Esc forgets it.");
}

void GrowTool::press(const Pointer& pointer) {
  // Only after a typed length was left standing: a click elsewhere forgets it.
  if (pointer.button == Qt::LeftButton) board_.put_down();
}

void GrowTool::move(const Pointer& pointer) {
  if (&pointer.view != &view_) return;
  pixel_ = pointer.pixel;
  if (view_.length_entry_open()) return;
  const double away = QLineF(pressed_, pixel_).length();
  if (dragging_ && away < handle_radius) {
    show({});  // back on the ring
    return;
  }
  if (!dragging_ && away < drag_threshold) return;
  dragging_ = true;
  show(legs_towards(board_, base_, end_, projection_, pointer.sheet, landmarks_));
}

void GrowTool::show(const std::vector<Leg>& legs) {
  if (legs.empty()) {
    legs_.clear();
    touched_.clear();
    board_.document().cancel_preview();
    emit board_.touch_up();
    return;
  }
  const EditResult result = grow_legs(board_, base_, end_.ref, legs);
  // A refusal leaves the last good length on the sheet and says why.
  if (!board_.preview(result)) return;
  legs_ = legs;
  touched_ = result.touched;
  emit board_.touch_up();
}

void GrowTool::release(const Pointer& pointer) {
  if (pointer.button != Qt::LeftButton || view_.length_entry_open()) return;
  finish();
}

void GrowTool::finish() {
  view_.close_length_entry();
  if (legs_.empty() || touched_.empty()) {
    board_.put_down();
    return;
  }
  const PieceId touched = touched_;
  board_.document().commit_preview(growth_text(board_, legs_));
  legs_.clear();
  Board& board = board_;
  DeskView& view = view_;
  board.put_down();
  go_on_from(board, touched);
  view.keep_in_sight();
}

bool GrowTool::key(DeskView&, QKeyEvent& event) {
  const QString text = event.text();
  if (text.isEmpty() || !(text.front().isDigit() || text.front() == u'.' || text.front() == u',')) return false;
  if (legs_.empty()) legs_ = {{end_.port.outward, 0.0 * metre}};
  view_.open_length_entry(pixel_, text);
  emit board_.sentence_changed(sentence());
  return true;
}

void GrowTool::length_typed(DeskView&, const QString& typed) {
  const auto parsed = parse_length(typed.toStdString(), board_.document().units(), Meaning::small_length);
  if (!parsed.value) {
    board_.remark(QString::fromStdString(parsed.failure.message));
    return;
  }
  std::vector<Leg> legs = legs_;
  if (legs.empty()) return;
  legs.back().length = *parsed.value;
  const EditResult result = grow_legs(board_, base_, end_.ref, legs);
  if (!board_.preview(result)) return;
  legs_ = legs;
  touched_ = result.touched;
  finish();
}

bool GrowTool::step_back() {
  if (!view_.length_entry_open()) return false;
  view_.close_length_entry();
  return true;
}

void GrowTool::put_down() {
  view_.close_length_entry();
  board_.document().cancel_preview();
}

QString GrowTool::card() const { return legs_.empty() ? QString() : length_words(legs_.back().length, board_); }

void GrowTool::paint_over(QPainter& painter, const DeskView& view) const {
  if (&view != &view_ || legs_.empty() || view_.length_entry_open()) return;
  const bool true_everywhere = projection_.kind() != ViewKind::unrolled;
  const auto far_end = true_everywhere ? board_.open_end_of(board_.document().design(), touched_) : std::nullopt;
  if (far_end) paint_guides(painter, view, landmarks_, far_end->port.at);
  paint_card(painter, pixel_, card(), view);
}

void paint_card(QPainter& painter, QPointF beside, const QString& words, const DeskView& view) {
  const Inks& inks = theme().inks;
  QFont font = type(TypeRole::body);
  font.setWeight(QFont::Medium);
  const QFontMetricsF metrics(font);
  const QSizeF size(metrics.horizontalAdvance(words) + 16.0, metrics.height() + 6.0);
  QPointF corner = beside + QPointF(16.0, -size.height() - 10.0);
  corner.setX(std::min(corner.x(), view.width() - size.width() - 4.0));
  corner.setY(std::max(corner.y(), 4.0));
  painter.setPen(QPen(inks.accent, 1.0));
  painter.setBrush(inks.field);
  painter.drawRoundedRect(QRectF(corner, size), 3.0, 3.0);
  painter.setFont(font);
  painter.setPen(inks.ink);
  painter.drawText(QRectF(corner, size), Qt::AlignCenter, words);
}

QString growth_text(const Board& board, const std::vector<Leg>& legs) {
  return Board::tr("Draw %1 %2").arg(length_words(legs.back().length, board), direction_words(legs.back().heading));
}

void go_on_from(Board& board, const PieceId& touched) {
  board.document().select(touched);
  const auto open = board.open_end_of(board.document().design(), touched);
  board.focus_end(open ? std::optional(open->ref) : std::nullopt);
}

}  // namespace fluewright
