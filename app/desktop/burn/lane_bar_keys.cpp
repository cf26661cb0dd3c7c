// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The time line by keyboard.

#include "app/desktop/burn/lane_bar.hpp"

#include "app/desktop/burn/plan_rows.hpp"

#include <QKeyEvent>

#include <algorithm>
#include <cstddef>

namespace fluewright {

void LaneBar::next_event(int step) {
  const std::vector<PlanEvent> events = events_of(book_.plan());
  if (events.empty()) return;
  const auto now = std::find_if(events.begin(), events.end(), [this](const PlanEvent& e) { return book_.selected() == e.ref; });
  const auto count = static_cast<std::ptrdiff_t>(events.size());
  std::ptrdiff_t index = now == events.end() ? (step > 0 ? -1 : count) : now - events.begin();
  index = std::clamp<std::ptrdiff_t>(index + step, 0, count - 1);
  const PlanEvent& chosen = events[static_cast<std::size_t>(index)];
  lane_ = chosen.lane;
  book_.select(chosen.ref);
  sight_.keep_in_sight(chosen.begin);
}

bool LaneBar::move_by_key(const QKeyEvent& event) {
  const bool left = event.key() == Qt::Key_Left;
  if (!left && event.key() != Qt::Key_Right) return false;
  const bool moves = event.modifiers().testFlag(Qt::ControlModifier);
  const bool pulls = event.modifiers().testFlag(Qt::ShiftModifier);
  if (!moves && !pulls) return false;
  const auto picked = book_.selected() ? event_of(book_.plan(), *book_.selected()) : std::nullopt;
  if (!picked) {
    emit said(tr("Pick an event first: up and down go through them."));
    return true;
  }
  const Time step = (left ? -1.0 : 1.0) * (event.modifiers().testFlag(Qt::AltModifier) ? finest : std::max(sight_.snap(width()), Time(1.0 * minute)));
  const QString key = QStringLiteral("%1 %2 %3").arg(moves ? QStringLiteral("move") : QStringLiteral("pull")).arg(static_cast<int>(picked->lane)).arg(go_);
  if (moves) {
    take(move_event(book_.plan(), picked->ref, std::clamp(Time(picked->begin + step), Time{}, book_.plan().length)), tr("Move an event"), key);
  } else if (picked->end + step > picked->begin) {
    take(resize_event(book_.plan(), picked->ref, picked->end + step), tr("Change an event's length"), key);
  }
  return true;
}

void LaneBar::keyPressEvent(QKeyEvent* event) {
  if (move_by_key(*event)) return;
  const bool control = event->modifiers().testFlag(Qt::ControlModifier);
  switch (event->key()) {
    case Qt::Key_Left: book_.step_rows(-1); break;
    case Qt::Key_Right: book_.step_rows(1); break;
    case Qt::Key_PageUp: book_.go_to(book_.now() - 0.1 * (sight_.to() - sight_.from())); break;
    case Qt::Key_PageDown: book_.go_to(book_.now() + 0.1 * (sight_.to() - sight_.from())); break;
    case Qt::Key_Home: book_.go_to({}); break;
    case Qt::Key_End: book_.go_to(book_.plan().length); break;
    case Qt::Key_Up:
    case Qt::Key_Down: {
      const int step = event->key() == Qt::Key_Up ? -1 : 1;
      if (!control) {
        ++go_;
        next_event(step);
      } else {
        const int count = static_cast<int>(lanes.size());
        lane_ = lanes[static_cast<std::size_t>(std::clamp(static_cast<int>(lane_) + step, 0, count - 1))];
        emit said(tr("%1: Insert adds here.").arg(lane_words(lane_)));
      }
      break;
    }
    case Qt::Key_Insert: add_at(lane_, book_.now()); break;
    case Qt::Key_Delete:
    case Qt::Key_Backspace: remove_selected(); break;
    case Qt::Key_Space: book_.play(!book_.playing()); break;
    case Qt::Key_Plus:
    case Qt::Key_Equal: sight_.zoom(book_.now(), 1.25); break;
    case Qt::Key_Minus: sight_.zoom(book_.now(), 0.8); break;
    case Qt::Key_Escape:
      if (drag_ != Drag::none) {
        cancel_drag();
      } else {
        book_.select(std::nullopt);
      }
      break;
    default: QWidget::keyPressEvent(event); return;
  }
  sight_.keep_in_sight(book_.now());
  update();
}

}  // namespace fluewright
