// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/lane_bar.hpp"

#include "app/desktop/burn/lane_painter.hpp"
#include "app/desktop/burn/plan_numbers.hpp"
#include "app/desktop/burn/plan_rows.hpp"
#include "app/desktop/language/language.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QContextMenuEvent>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMenu>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright {

namespace {

constexpr double end_grip = 5.0;     // pixels to either side of an end
constexpr double drag_starts = 4.0;  // pixels; less is a click

QString text_of(std::string_view sentence) { return QString::fromUtf8(sentence.data(), static_cast<qsizetype>(sentence.size())); }

}  // namespace

QString lane_words(Lane lane) {
  const std::string_view name = lane_name(lane);
  return QString::fromUtf8(name.data(), static_cast<qsizetype>(name.size()));
}

LaneBar::LaneBar(BurnBook& book, TimeSight& sight, QWidget* parent) : QWidget(parent), book_(book), sight_(sight) {
  setObjectName(QStringLiteral("lane_bar"));
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAccessibleName(tr("Time line"));
  setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
  const auto repaint = [this] {
    describe();
    update();
  };
  connect(&book_, &BurnBook::plan_changed, this, repaint);
  connect(&book_, &BurnBook::selection_changed, this, repaint);
  connect(&book_, &BurnBook::time_changed, this, repaint);
  connect(&book_, &BurnBook::run_changed, this, repaint);
  connect(&book_.document(), &Document::units_changed, this, repaint);
  connect(&sight_, &TimeSight::changed, this, repaint);
  describe();
}

QSize LaneBar::sizeHint() const {
  return {600, static_cast<int>(LaneMeasure::ruler + LaneMeasure::lane * static_cast<double>(lanes.size())) + 1};
}

double LaneBar::top_of(Lane lane) const { return LaneMeasure::ruler + LaneMeasure::lane * static_cast<double>(lane); }

QRectF LaneBar::place_of(const PlanRef& ref) const {
  const auto event = event_of(book_.plan(), ref);
  return event ? event_box(*event, sight_, width()) : QRectF();
}

QPoint LaneBar::place_of(Lane lane, Time at) const {
  return QPointF(sight_.x_of(at, width()), top_of(lane) + 0.5 * LaneMeasure::lane).toPoint();
}

QPoint LaneBar::ruler_place(Time at) const { return QPointF(sight_.x_of(at, width()), 0.5 * LaneMeasure::ruler).toPoint(); }

LaneBar::Under LaneBar::under(QPointF pixel) const {
  Under found;
  if (pixel.y() < LaneMeasure::ruler) return found;
  const auto index = static_cast<std::size_t>((pixel.y() - LaneMeasure::ruler) / LaneMeasure::lane);
  found.lane = lanes[std::min(index, lanes.size() - 1)];
  // The last drawn lies on top. Short events are as wide to the hand as they are drawn.
  for (const PlanEvent& event : events_of(book_.plan())) {
    if (event.lane != *found.lane) continue;
    const QRectF box = event_box(event, sight_, width());
    const bool at_end = event.resizable && std::abs(pixel.x() - box.right()) <= end_grip;
    if (pixel.x() >= box.left() - 1.0 && pixel.x() <= box.right() + (at_end ? end_grip : 1.0)) {
      found.event = event;
      // A short one is moved by its left half and pulled by its right.
      found.at_end = at_end && pixel.x() > box.center().x();
    }
  }
  return found;
}

Time LaneBar::snapped(Time at, Qt::KeyboardModifiers modifiers) const {
  const Time step = modifiers.testFlag(Qt::AltModifier) ? finest : sight_.snap(width());
  return std::clamp(Time(std::round(in(at, second) / in(step, second)) * step), Time{}, book_.plan().length);
}

bool LaneBar::take(PlanEdit edit, const QString& text, const QString& merge_key) {
  if (!edit.plan) {
    emit said(text_of(edit.refusal));
    return false;
  }
  book_.commit(std::move(*edit.plan), text, merge_key);
  book_.select(edit.touched);
  return true;
}

void LaneBar::add_at(Lane lane, Time at) {
  lane_ = lane;
  const Document& document = book_.document();
  if (take(add_event(book_.plan(), lane, at, std::nullopt, document.design(), document.library()),
           tr("Add to %1").arg(inside_sentence(lane_words(lane))))) {
    emit said({});
  }
  update();
}

void LaneBar::remove_selected() {
  if (!book_.selected()) return;
  PlanEdit edit = remove_event(book_.plan(), *book_.selected());
  if (!edit.plan) {
    emit said(text_of(edit.refusal));
    return;
  }
  book_.select(std::nullopt);
  book_.commit(std::move(*edit.plan), tr("Delete an event"));
}

void LaneBar::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  if (event->button() != Qt::LeftButton) return;
  const Under at = under(event->position());
  pressed_ = event->position();
  before_ = book_.plan();
  dragged_ = at.event;
  if (at.lane) lane_ = *at.lane;
  if (!at.lane) {
    drag_ = Drag::scrub;
    drag_to(event->position(), event->modifiers());
    return;
  }
  const Time hand = sight_.at(event->position().x(), width());
  if (at.event) {
    book_.select(at.event->ref);
    drag_ = at.at_end ? Drag::pull : Drag::move;
    grip_ = hand - (at.at_end ? at.event->end : at.event->begin);
  } else {
    book_.select(std::nullopt);
    drag_ = Drag::draw;
  }
  update();
}

void LaneBar::mouseMoveEvent(QMouseEvent* event) {
  if (drag_ != Drag::none) {
    drag_to(event->position(), event->modifiers());
    return;
  }
  const Under at = under(event->position());
  hovered_ = at.event ? std::optional(at.event->ref) : std::nullopt;
  setCursor(!at.lane ? Qt::PointingHandCursor : at.at_end ? Qt::SizeHorCursor : at.event ? Qt::OpenHandCursor : Qt::ArrowCursor);
  show_hint(at);
  update();
}

void LaneBar::drag_to(QPointF pixel, Qt::KeyboardModifiers modifiers) {
  const Time hand = sight_.at(pixel.x(), width());
  if (drag_ == Drag::scrub) {
    book_.go_to(std::clamp(hand, sight_.from(), sight_.to()));
    return;
  }
  const bool moved = std::abs(pixel.x() - pressed_.x()) >= drag_starts;
  if (!moved && !book_.in_preview()) return;
  const Document& document = book_.document();
  PlanEdit edit;
  if (drag_ == Drag::move && dragged_) {
    edit = move_event(before_, dragged_->ref, snapped(hand - grip_, modifiers));
  } else if (drag_ == Drag::pull && dragged_) {
    const Time least = modifiers.testFlag(Qt::AltModifier) ? finest : std::min(sight_.snap(width()), Time(1.0 * minute));
    edit = resize_event(before_, dragged_->ref, std::max(snapped(hand - grip_, modifiers), Time(dragged_->begin + least)));
  } else if (drag_ == Drag::draw) {
    const Time from = snapped(sight_.at(std::min(pressed_.x(), pixel.x()), width()), modifiers);
    const Time until = snapped(sight_.at(std::max(pressed_.x(), pixel.x()), width()), modifiers);
    if (!(until > from)) return;
    edit = add_event(before_, lane_, from, until, document.design(), document.library());
  }
  if (!edit.plan) {
    emit said(text_of(edit.refusal));
    return;
  }
  book_.preview(std::move(*edit.plan));
  book_.select(edit.touched);
  const auto now = event_of(book_.plan(), edit.touched);
  if (now) {
    emit said(tr("%1 to %2, %3").arg(QString::fromStdString(moment_text(now->begin)), QString::fromStdString(moment_text(now->end)),
                                     QString::fromStdString(event_words(book_.plan(), now->ref, document.design(), document.library(), document.units()))));
  }
}

void LaneBar::mouseReleaseEvent(QMouseEvent* event) {
  if (event->button() != Qt::LeftButton || drag_ == Drag::none) return;
  const bool clicked_empty = drag_ == Drag::draw && !book_.in_preview();
  if (clicked_empty) book_.go_to(std::clamp(sight_.at(event->position().x(), width()), sight_.from(), sight_.to()));
  end_drag();
}

void LaneBar::end_drag() {
  const Drag drag = std::exchange(drag_, Drag::none);
  if (!book_.in_preview()) return;
  book_.commit_preview(drag == Drag::move   ? tr("Move an event")
                       : drag == Drag::pull ? tr("Change an event's length")
                                            : tr("Add to %1").arg(inside_sentence(lane_words(lane_))));
  emit said({});
}

void LaneBar::cancel_drag() {
  drag_ = Drag::none;
  book_.cancel_preview();
  book_.select(dragged_ ? std::optional(dragged_->ref) : std::nullopt);
}

void LaneBar::mouseDoubleClickEvent(QMouseEvent* event) {
  const Under at = under(event->position());
  if (event->button() != Qt::LeftButton || !at.lane || at.event) {
    mousePressEvent(event);
    return;
  }
  add_at(*at.lane, snapped(sight_.at(event->position().x(), width()), event->modifiers()));
}

void LaneBar::contextMenuEvent(QContextMenuEvent* event) {
  const bool by_mouse = event->reason() == QContextMenuEvent::Mouse;
  const Under at = by_mouse ? under(event->pos()) : Under{};
  if (at.event) book_.select(at.event->ref);
  const Lane lane = at.lane.value_or(lane_);
  const Time when = by_mouse ? snapped(sight_.at(event->pos().x(), width()), {}) : book_.now();
  auto* menu = new QMenu(this);
  menu->setAttribute(Qt::WA_DeleteOnClose);
  menu->addAction(tr("Add to %1 at %2").arg(inside_sentence(lane_words(lane)), QString::fromStdString(moment_text(when))), this, [this, lane, when] { add_at(lane, when); });
  if (book_.selected()) menu->addAction(tr("Delete"), this, [this] { remove_selected(); });
  menu->addSeparator();
  menu->addAction(tr("Show the whole run"), this, [this] { sight_.show_all(); });
  menu->popup(event->globalPos());
}

void LaneBar::wheelEvent(QWheelEvent* event) {
  const double across = event->angleDelta().x() / 120.0;
  const double notches = event->angleDelta().y() / 120.0;
  if (event->modifiers().testFlag(Qt::ShiftModifier) || across != 0.0) {
    sight_.pan(-0.1 * (across != 0.0 ? across : notches) * (sight_.to() - sight_.from()));
  } else if (notches != 0.0) {
    sight_.zoom(sight_.at(event->position().x(), width()), std::pow(1.25, notches));
  }
  event->accept();
}

void LaneBar::show_hint(const Under& at) {
  if (!at.lane) {
    emit said(tr("Drag along the ruler to go through the run; the wheel looks closer."));
  } else if (at.event && at.at_end) {
    emit said(tr("Drag the end to make it longer or shorter."));
  } else if (at.event) {
    emit said(tr("Drag to move it, Del deletes it. Alt while dragging leaves the whole steps."));
  } else if (*at.lane == Lane::outdoors) {
    emit said(tr("The temperature outdoors: its kind is chosen beside the bar while no event is picked."));
  } else {
    emit said(tr("Double-click or drag here to add to: %1.").arg(inside_sentence(lane_words(*at.lane))));
  }
}

bool LaneBar::event(QEvent* event) {
  if (event->type() == QEvent::ToolTip) {
    const auto* help = static_cast<QHelpEvent*>(event);
    const Under at = under(help->pos());
    if (!at.event) {
      QToolTip::hideText();
      return true;
    }
    const Document& document = book_.document();
    QString words = tr("%1, %2 to %3: %4")
                        .arg(lane_words(at.event->lane), QString::fromStdString(moment_text(at.event->begin)), QString::fromStdString(moment_text(at.event->end)),
                             QString::fromStdString(event_words(book_.plan(), at.event->ref, document.design(), document.library(), document.units())));
    const QString fault = book_.fault_of(at.event->ref);
    if (!fault.isEmpty()) words += QStringLiteral("\n▲ ") + fault;
    QToolTip::showText(help->globalPos(), words, this);
    return true;
  }
  // These keys are the bar's own while it has the focus, whatever the menus do with them.
  if (event->type() == QEvent::ShortcutOverride) {
    const int key = static_cast<QKeyEvent*>(event)->key();
    if (key == Qt::Key_Space || key == Qt::Key_Delete || key == Qt::Key_Left || key == Qt::Key_Right || key == Qt::Key_Home || key == Qt::Key_End) {
      event->accept();
      return true;
    }
  }
  return QWidget::event(event);
}

void LaneBar::leaveEvent(QEvent*) {
  hovered_.reset();
  emit said({});
  update();
}

void LaneBar::focusInEvent(QFocusEvent* event) {
  ++go_;
  QWidget::focusInEvent(event);
  update();
}

void LaneBar::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  update();
}

// Ears get what eyes see: the time, the picked event and what is wrong with it.
void LaneBar::describe() {
  const Document& document = book_.document();
  QString words = tr("At %1.").arg(QString::fromStdString(moment_text(book_.now())));
  if (const auto picked = book_.selected() ? event_of(book_.plan(), *book_.selected()) : std::nullopt) {
    words += QLatin1Char(' ') + tr("Picked: %1, %2 to %3, %4.")
                                    .arg(lane_words(picked->lane), QString::fromStdString(moment_text(picked->begin)), QString::fromStdString(moment_text(picked->end)),
                                         QString::fromStdString(event_words(book_.plan(), picked->ref, document.design(), document.library(), document.units())));
    const QString fault = book_.fault_of(picked->ref);
    if (!fault.isEmpty()) words += QLatin1Char(' ') + fault;
  }
  if (words != accessibleDescription()) setAccessibleDescription(words);
}

void LaneBar::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  painter.setRenderHint(QPainter::Antialiasing);
  painter.fillRect(rect(), theme().inks.paper);
  LanePainter lane_painter(painter, book_, sight_, width());
  lane_painter.paint_ruler();
  lane_painter.paint_lanes(lane_, hasFocus());
  painter.save();
  painter.setClipRect(QRectF(TimeSight::gutter - 2.0, 0.0, width() - TimeSight::gutter, height()));
  lane_painter.paint_outdoors();
  for (const PlanEvent& event : events_of(book_.plan())) lane_painter.paint_event(event, hovered_ == event.ref);
  lane_painter.paint_cursor();
  painter.restore();
  if (hasFocus()) {
    painter.setPen(theme().inks.accent);
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
  }
}

}  // namespace fluewright
