// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/desk_view.hpp"

#include "app/desktop/burn/moment_painter.hpp"
#include "app/desktop/desk/house_painter.hpp"
#include "app/desktop/desk/mark_painter.hpp"
#include "app/desktop/desk/piece_painter.hpp"
#include "app/desktop/desk/pipe_drawing.hpp"
#include "app/desktop/desk/ruler_painter.hpp"
#include "app/desktop/desk/sheet_painter.hpp"
#include "app/desktop/desk/unrolled.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/shared/words.hpp"

#include <QHelpEvent>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {
constexpr double fit_margin = 40.0;
constexpr QRectF empty_sheet(-0.5, -0.3, 4.0, 2.6);  // metres
constexpr QSizeF least_sheet(1.6, 1.2);
}

DeskView::DeskView(Board& board, ViewKind kind, QWidget* parent) : QWidget(parent), board_{board}, projection_{kind} {
  setFocusPolicy(Qt::StrongFocus);
  setMouseTracking(true);
  setAttribute(Qt::WA_OpaquePaintEvent);
  connect(&board_, &Board::redraw, this, &DeskView::make_anew);
  connect(&board_, &Board::touch_up, this, [this] {
    describe();
    update();
  });
  look_from(kind);
}

DeskView::~DeskView() = default;

void DeskView::look_from(ViewKind kind) {
  projection_ = Projection(kind);
  setAccessibleName(title_of(kind));
  make_anew();
}

const Drawing& DeskView::drawing() const {
  if (stale_) {
    stale_ = false;
    if (projection_.kind() == ViewKind::unrolled) {
      const Document& document = board_.document();
      unrolled_ = PathMeasure(document.assessment(),
                              unrolled(document.design(), document.assessment().path, document.geometries()));
    }
    drawing_ = Drawing(board_.document(), measure(), board_.tint(), projection_);
  }
  return drawing_;
}

const PathMeasure& DeskView::measure() const {
  if (projection_.kind() != ViewKind::unrolled) return board_.measure();
  (void)drawing();  // rolls the path out where that has not been done
  return unrolled_;
}

Projection DeskView::projection_at(const PortRef& ref, const Port& port) const {
  if (projection_.kind() != ViewKind::unrolled) return projection_;
  const DrawnPort* drawn = drawing().port(ref);
  return Projection::unrolled_at(port.at, port.outward, drawn == nullptr ? 0.0 : drawn->at.x());
}

Hit DeskView::under(QPointF pixel) const { return hit(drawing(), camera_, board_.ends(), measure(), pixel); }

void DeskView::make_anew() {
  stale_ = true;
  describe();
  update();
}

void DeskView::describe() {
  const Document& document = board_.document();
  const Design& design = document.design();
  QString words = tr("%n piece(s).", nullptr, static_cast<int>(design.pieces.size()));
  if (document.selection().size() > 1) {
    words += QLatin1Char(' ') + tr("%n piece(s) selected.", nullptr, static_cast<int>(document.selection().size()));
  } else if (!document.selected().empty()) {
    words += QLatin1Char(' ') + tr("Selected: %1.").arg(QString::fromStdString(piece_name(design, document.library(), document.selected())));
  }
  if (const auto& end = board_.focused_end()) {
    words += QLatin1Char(' ') + tr("Open end of %1.").arg(QString::fromStdString(piece_name(design, document.library(), end->piece)));
  }
  if (words != accessibleDescription()) setAccessibleDescription(words);
}

void DeskView::fit(double room) {
  QRectF bounds = drawing().bounds();
  if (bounds.isEmpty()) {
    bounds = empty_sheet;
  } else {
    // A single piece is not blown up: a path wants to grow from it.
    const double wider = std::max(room * bounds.width(), 0.5 * (least_sheet.width() - bounds.width()));
    const double higher = std::max(room * bounds.height(), 0.5 * (least_sheet.height() - bounds.height()));
    bounds.adjust(-wider, -higher, wider, higher);
  }
  // The floor belongs to an elevation even where nothing stands on it.
  if (is_elevation()) {
    bounds.setTop(std::min(bounds.top(), -0.1));
  }
  camera_.fit(bounds, fit_margin);
  update();
}

bool DeskView::all_in_sight() const {
  const QRectF& bounds = drawing().bounds();
  return bounds.isEmpty() || camera_.in_sight().contains(bounds);
}

void DeskView::bring_into_sight(const PieceId& piece) {
  const DrawnPiece* drawn = drawing().piece(piece);
  if (drawn == nullptr || camera_.in_sight().contains(drawn->bounds)) return;
  camera_.set_centre(drawn->bounds.center());
  emit camera_moved();
  update();
}

void DeskView::contextMenuEvent(QContextMenuEvent* event) {
  board_.sweep();
  const bool by_mouse = event->reason() == QContextMenuEvent::Mouse;
  const Hit found = by_mouse ? under(event->pos()) : Hit{};
  if (by_mouse && !found.piece.empty() && !board_.document().is_selected(found.piece)) board_.document().select(found.piece);
  QPoint at = event->globalPos();
  if (const DrawnPiece* drawn = by_mouse ? nullptr : drawing().piece(board_.document().selected())) {
    at = mapToGlobal(camera_.to_screen(drawn->bounds.center()).toPoint());
  }
  emit menu_wanted(at, found);
  event->accept();
}

void DeskView::begin_pan(QPointF pixel) {
  pan_from_ = pixel;
  setCursor(Qt::ClosedHandCursor);
}

void DeskView::light_joint(const std::optional<PortRef>& joint) {
  if (joint == lit_joint_) return;
  lit_joint_ = joint;
  update();
}

Pointer DeskView::pointer_at(QPointF pixel, Qt::MouseButton button, Qt::KeyboardModifiers modifiers) {
  return {*this, pixel, camera_.to_sheet(pixel), button, modifiers};
}

void DeskView::paintEvent(QPaintEvent*) {
  QPainter painter(this);
  const Document& document = board_.document();
  SheetPainter sheet(painter, camera_, projection_, document);
  sheet.paint_ground();
  if (document.design().building) paint_house(painter, camera_, projection_, *document.design().building);
  const Drawing& shown = drawing();
  const bool as_pipes = projection_.kind() == ViewKind::isometric && board_.pipe_drawing();
  if (!as_pipes) paint_masses(painter, camera_, shown);
  PipeDrawing pipes(painter, camera_, shown, document, projection_);
  if (as_pipes) pipes.paint();
  const QRectF sight = camera_.in_sight();
  for (const DrawnPiece& piece : shown.pieces()) {
    if (as_pipes) break;
    if (!piece.bounds.intersects(sight)) continue;
    paint_piece(painter, camera_, piece, {document.is_selected(piece.id), piece.id == document.pointed().piece});
  }
  MarkPainter marks(painter, camera_, projection_, board_, measure(), shown);
  marks.keep_clear(sheet.covered());
  marks.keep_clear(under_widgets());
  marks.keep_rings_clear();
  marks.paint_faults();
  if (!document.moment()) marks.paint_condensation();
  marks.paint_lengths();
  marks.paint_pointed();
  if (lit_joint_) marks.paint_joint(*lit_joint_);
  marks.paint_ends(hasFocus());
  sheet.paint_furniture();
  if (as_pipes) pipes.paint_legend(height() - 52.0);
  if (document.design().pieces.empty()) marks.paint_invitation(is_elevation());
  if (projection_.kind() != ViewKind::isometric) paint_rulers(painter, camera_, document.units(), mouse_);
  if (document.moment()) paint_moment(painter, camera_, shown, document);
  board_.tool().paint_over(painter, *this);
  if (hasFocus()) {
    painter.setPen(QPen(theme().inks.accent, 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
  }
}

std::vector<QRectF> DeskView::under_widgets() const {
  std::vector<QRectF> areas;
  for (const auto* widget : findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly)) {
    if (widget->isVisible()) areas.emplace_back(widget->geometry());
  }
  return areas;
}

void DeskView::resizeEvent(QResizeEvent*) {
  camera_.set_size(size());
}

void DeskView::mousePressEvent(QMouseEvent* event) {
  setFocus(Qt::MouseFocusReason);
  board_.sweep();
  if (event->button() == Qt::MiddleButton || (event->button() == Qt::LeftButton && space_held_)) {
    begin_pan(event->position());
    return;
  }
  board_.tool().press(pointer_at(event->position(), event->button(), event->modifiers()));
}

void DeskView::mouseMoveEvent(QMouseEvent* event) {
  board_.sweep();
  if (pan_from_) {
    camera_.pan(event->position() - *pan_from_);
    pan_from_ = event->position();
    emit camera_moved();
    update();
    return;
  }
  mouse_ = event->position();
  update();
  board_.tool().move(pointer_at(event->position(), Qt::NoButton, event->modifiers()));
}

void DeskView::mouseReleaseEvent(QMouseEvent* event) {
  board_.sweep();
  if (pan_from_) {
    pan_from_.reset();
    unsetCursor();
    return;
  }
  board_.tool().release(pointer_at(event->position(), event->button(), event->modifiers()));
}

void DeskView::wheelEvent(QWheelEvent* event) {
  const double notches = event->angleDelta().y() / 120.0;
  if (notches == 0.0) return;
  camera_.zoom_at(event->position(), std::pow(1.2, notches));
  emit camera_moved();
  update();
  event->accept();
}

void DeskView::keyPressEvent(QKeyEvent* event) {
  board_.sweep();
  if (event->key() == Qt::Key_Space) {
    if (!event->isAutoRepeat()) {
      space_held_ = true;
      setCursor(Qt::OpenHandCursor);
    }
    return;
  }
  if (event->key() == Qt::Key_Escape) {
    board_.step_back();
    return;
  }
  if (board_.tool().key(*this, *event)) return;
  switch (event->key()) {
    case Qt::Key_F:
    case Qt::Key_Home: emit fit_wanted(); return;
    case Qt::Key_Plus:
    case Qt::Key_Equal: camera_.zoom_at(rect().center(), 1.2); break;
    case Qt::Key_Minus: camera_.zoom_at(rect().center(), 1.0 / 1.2); break;
    default: QWidget::keyPressEvent(event); return;
  }
  emit camera_moved();
  update();
}

void DeskView::keyReleaseEvent(QKeyEvent* event) {
  if (event->key() == Qt::Key_Space && !event->isAutoRepeat()) {
    space_held_ = false;
    unsetCursor();
    return;
  }
  QWidget::keyReleaseEvent(event);
}

void DeskView::leaveEvent(QEvent*) {
  mouse_.reset();
  update();
  board_.sweep();
  board_.tool().leave(*this);
}

void DeskView::focusInEvent(QFocusEvent* event) {
  QWidget::focusInEvent(event);
  emit took_focus();
  emit board_.sentence_changed(board_.sentence());
  update();
}

void DeskView::focusOutEvent(QFocusEvent* event) {
  QWidget::focusOutEvent(event);
  space_held_ = false;
  update();
}

}  // namespace fluewright
