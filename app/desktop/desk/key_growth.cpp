// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/key_growth.hpp"

#include "app/desktop/desk/desk_view.hpp"
#include "app/desktop/desk/grow_tool.hpp"
#include "app/desktop/desk/pointer_tool.hpp"

#include <QKeyEvent>

#include <utility>

namespace fluewright {

namespace {
constexpr int first_steps = 20;  // half a metre on the usual grid
constexpr int large_steps = 10;
}  // namespace

KeyGrowth::KeyGrowth(Board& board, OpenEnd end, DeskView& view)
    : Tool(board), base_{board.document().design()}, end_{std::move(end)}, view_{view} {}

QString KeyGrowth::sentence() const {
  if (view_.length_entry_open()) return Board::tr("Enter sets the length; Esc goes back to the arrow keys.");
  if (!leg_) return Board::tr("Arrow keys choose the way, Page Up and Page Down go up and down; type a number for the length.");
  return Board::tr("The same arrow again makes it longer, the opposite one shorter (Shift: ten steps); type a number for the "
                   "exact length; Enter draws it, Esc forgets it.");
}

bool KeyGrowth::key(DeskView& view, QKeyEvent& event) {
  if (event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter) {
    finish();
    return true;
  }
  const QString text = event.text();
  if (!text.isEmpty() && (text.front().isDigit() || text.front() == u'.' || text.front() == u',')) {
    view_.open_length_entry(beside_end(), text);
    emit board_.sentence_changed(sentence());
    return true;
  }
  if (const auto direction = direction_of_key(event.key(), view.projection_at(end_.ref, end_.port))) {
    steer(*direction, event.modifiers().testFlag(Qt::ShiftModifier) ? large_steps : 1);
    return true;
  }
  return false;
}

void KeyGrowth::steer(const Heading& direction, int steps) {
  const Length grid = board_.document().grid_step();
  const Metres way = unit_of(direction);
  if (leg_) {
    const double cosine = dot(way, unit_of(leg_->heading));
    if (std::abs(cosine) > 0.999) {
      const Length longer = leg_->length + (cosine > 0.0 ? 1.0 : -1.0) * static_cast<double>(steps) * grid;
      if (longer > 0.5 * grid) try_leg({leg_->heading, longer});
      return;
    }
  }
  if (dot(way, unit_of(end_.port.outward)) < -0.999) {
    board_.remark(Board::tr("That way lies the piece itself. Choose another direction."));
    return;
  }
  Heading heading = direction;
  if (std::abs(way.z) > 0.999) heading.azimuth = end_.port.outward.azimuth;
  // The far end lies on the grid; a bend that needs more room than the usual first length gets it.
  const double from = dot(metres(end_.port.at), way);
  for (int more = 0; more <= 3 * first_steps; ++more) {
    const double length = snapped(from + in(static_cast<double>(first_steps + more) * grid, metre), grid) - from;
    if (try_leg({heading, length * metre})) return;
  }
}

bool KeyGrowth::try_leg(const Leg& leg) {
  const EditResult result = grow_legs(board_, base_, end_.ref, {leg});
  if (!board_.preview(result)) return false;
  leg_ = leg;
  touched_ = result.touched;
  emit board_.touch_up();
  emit board_.sentence_changed(board_.sentence());
  return true;
}

void KeyGrowth::finish() {
  if (!leg_) {
    // Nothing was begun: Enter on an open end asks for the rack.
    Board& board = board_;
    board.put_down();
    emit board.rack_wanted();
    return;
  }
  const PieceId touched = touched_;
  board_.document().commit_preview(growth_text(board_, {*leg_}));
  Board& board = board_;
  DeskView& view = view_;
  board.put_down();
  go_on_from(board, touched);
  view.keep_in_sight();
}

void KeyGrowth::length_typed(DeskView&, const QString& typed) {
  const auto parsed = parse_length(typed.toStdString(), board_.document().units(), Meaning::small_length);
  if (!parsed.value) {
    board_.remark(QString::fromStdString(parsed.failure.message));
    return;
  }
  const Heading heading = leg_ ? leg_->heading : end_.port.outward;
  if (!try_leg({heading, *parsed.value})) return;
  view_.close_length_entry();
  finish();
}

bool KeyGrowth::step_back() {
  if (!view_.length_entry_open()) return false;
  view_.close_length_entry();
  return true;
}

void KeyGrowth::press(const Pointer& pointer) {
  // The mouse takes over: what the keys began is forgotten.
  Board& board = board_;
  board.put_down();
  board.tool().press(pointer);
}

void KeyGrowth::put_down() {
  view_.close_length_entry();
  board_.document().cancel_preview();
}

QPointF KeyGrowth::beside_end() const {
  return view_.camera().to_screen(view_.projection_at(end_.ref, end_.port).on_sheet(end_.port.at));
}

QString KeyGrowth::card() const { return leg_ ? length_words(leg_->length, board_) : QString(); }

void KeyGrowth::paint_over(QPainter& painter, const DeskView& view) const {
  if (&view != &view_ || !leg_ || view_.length_entry_open()) return;
  const Position far = end_.port.at + step_along(leg_->heading, leg_->length);
  paint_card(painter, view.camera().to_screen(view.projection_at(end_.ref, end_.port).on_sheet(far)), card(), view);
}

}  // namespace fluewright
