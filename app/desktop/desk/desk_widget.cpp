// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/desk_widget.hpp"

#include "app/desktop/desk/desk_menu.hpp"
#include "app/desktop/desk/drop_tool.hpp"
#include "app/desktop/variants/variant_bar.hpp"

#include <QMenu>
#include <QSplitter>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace fluewright {

namespace {

QSplitter* splitter(Qt::Orientation orientation) {
  auto* made = new QSplitter(orientation);
  made->setChildrenCollapsible(true);
  made->setHandleWidth(1);
  return made;
}

}  // namespace

DeskWidget::DeskWidget(Document& document, QWidget* parent)
    : QWidget(parent),
      document_{document},
      board_{new Board(document, this)},
      plan_{new DeskView(*board_, ViewKind::plan)},
      elevation_{new DeskView(*board_, ViewKind::front)},
      isometric_{new DeskView(*board_, ViewKind::isometric)} {
  setAccessibleName(tr("Drawing desk"));
  setFocusProxy(plan_);
  upright_ = splitter(Qt::Vertical);
  upright_->addWidget(elevation_);
  upright_->addWidget(plan_);
  upright_->setSizes({500, 500});
  QSplitter* across = splitter(Qt::Horizontal);
  across->addWidget(upright_);
  across->addWidget(isometric_);
  across->setSizes({620, 380});
  auto* column = new QVBoxLayout(this);
  column->setContentsMargins(0, 0, 0, 0);
  column->setSpacing(0);
  column->addWidget(make_strip());
  column->addWidget(new VariantBar(document_));
  column->addWidget(across, 1);
  furnish_views();

  connect(board_, &Board::sentence_changed, this, &DeskWidget::sentence_changed);
  connect(board_, &Board::rack_wanted, this, &DeskWidget::rack_wanted);
  for (DeskView* view : {plan_, elevation_, isometric_}) {
    connect(view, &DeskView::camera_moved, this, [this, view] {
      fitted_by_itself_ = false;
      link(*view);
    });
    connect(view, &DeskView::fit_wanted, this, &DeskWidget::zoom_to_fit);
    connect(view, &DeskView::sight_wanted, this, &DeskWidget::keep_in_sight);
    connect(view, &DeskView::menu_wanted, this, [this](QPoint global, const Hit& under) {
      QMenu menu(this);
      fill_piece_menu(menu, DeskVerbs(*board_), under);
      menu.exec(global);
    });
    connect(&document_, &Document::piece_wanted, view, [this, view] { view->bring_into_sight(document_.selected()); });
    connect(view, &DeskView::took_focus, this, [this, view] { setFocusProxy(view); });
  }
  connect(upright_, &QSplitter::splitterMoved, this, [this] { shared_by_itself_ = false; });
  for (QSplitter* part : {upright_, across}) {
    connect(part, &QSplitter::splitterMoved, this, [this] {
      if (fitted_by_itself_) zoom_to_fit();
    });
  }
}

DeskWidget::~DeskWidget() = default;

void DeskWidget::share_height() {
  // Both have one scale, so a tall stack wants a tall elevation; either keeps room to draw in.
  const double high = std::max(1.0, elevation_->drawing().bounds().height());
  const double deep = std::max(1.0, plan_->drawing().bounds().height());
  const double share = std::clamp(high / (high + deep), 0.36, 0.68);
  const int whole = elevation_->height() + plan_->height();
  const int first = static_cast<int>(share * whole);
  upright_->setSizes({first, whole - first});
}

void DeskWidget::fit(double room) {
  if (shared_by_itself_) share_height();
  isometric_->fit(room);
  plan_->fit(room);
  elevation_->fit(room);
  // One scale for plan and elevation: the smaller one.
  if (elevation_->projection().kind() != ViewKind::unrolled) {
    const double scale = std::min(plan_->camera().scale(), elevation_->camera().scale());
    plan_->camera().set_scale(scale);
    elevation_->camera().set_scale(scale);
  }
  link(*plan_);
  fitted_by_itself_ = true;
}

void DeskWidget::link(const DeskView& moved) {
  if (&moved == isometric_) return;
  const bool rolled_out = elevation_->projection().kind() == ViewKind::unrolled;
  DeskView& other = &moved == plan_ ? *elevation_ : *plan_;
  const QPointF from = moved.camera().centre();
  QPointF to = other.camera().centre();
  // East-west is common to the plan and the elevation from the south; the one from the east shows north-south.
  const bool side = elevation_->projection().kind() == ViewKind::side;
  if (rolled_out) {
    return;  // its axis is the path's length: nothing in common with the plan
  }
  if (!side) {
    to.setX(from.x());
  } else if (&moved == plan_) {
    to.setX(from.y());
  } else {
    to.setY(from.x());
  }
  other.camera().set_scale(moved.camera().scale());
  other.camera().set_centre(to);
  other.update();
}

void DeskWidget::keep_in_sight() {
  // Some room beyond, or the paper would jump again at the next stroke.
  constexpr double room = 0.15;
  if (!isometric_->all_in_sight()) isometric_->fit(room);
  if (!plan_->all_in_sight() || !elevation_->all_in_sight()) fit(room);
}

void DeskWidget::look_from(ViewKind elevation) {
  elevation_->look_from(elevation);
  elevation_->fit();
  link(*plan_);
  show_choices();
}

void DeskWidget::resizeEvent(QResizeEvent* event) {
  QWidget::resizeEvent(event);
  word_captions();
  // The views have their new sizes only after the layout has run.
  QTimer::singleShot(0, this, [this] {
    // Not under a hand that draws: the paper would slip away from it.
    if (fitted_by_itself_ && !document_.in_preview()) zoom_to_fit();
  });
}

void DeskWidget::showEvent(QShowEvent* event) {
  QWidget::showEvent(event);
  emit sentence_changed(sentence());
}

DeskView* DeskWidget::view_at(QPoint global) const {
  for (DeskView* view : {plan_, elevation_, isometric_}) {
    if (view->isVisible() && view->rect().contains(view->mapFromGlobal(global))) return view;
  }
  return nullptr;
}

void DeskWidget::pick_up(const std::string& type) {
  if (document_.read_only()) return;
  board_->sweep();
  board_->take_up(std::make_unique<DropTool>(*board_, type));
  setFocus(Qt::OtherFocusReason);  // Esc and R are the tool's keys
}

void DeskWidget::carry(const std::string& type, QPoint global) {
  if (document_.read_only()) return;
  board_->sweep();
  if (!std::exchange(carrying_, true)) pick_up(type);
  if (dynamic_cast<DropTool*>(&board_->tool()) == nullptr) return;  // put back by Esc, the mouse still held down
  DeskView* over = view_at(global);
  if (carried_over_ != nullptr && carried_over_ != over) board_->tool().leave(*carried_over_);
  carried_over_ = over;
  if (over == nullptr) return;
  if (!over->hasFocus()) over->setFocus(Qt::OtherFocusReason);
  board_->tool().move(over->pointer_at(over->mapFromGlobal(global)));
}

void DeskWidget::drop_carried(QPoint global) {
  board_->sweep();
  carrying_ = false;
  carried_over_ = nullptr;
  auto* tool = dynamic_cast<DropTool*>(&board_->tool());
  if (tool == nullptr) return;
  DeskView* over = view_at(global);
  if (over == nullptr) {
    board_->put_down();
    return;
  }
  tool->move(over->pointer_at(over->mapFromGlobal(global)));
  tool->drop();
}

void DeskWidget::forget_carried() {
  board_->sweep();
  carrying_ = false;
  carried_over_ = nullptr;
  if (dynamic_cast<DropTool*>(&board_->tool()) != nullptr) board_->put_down();
}

void DeskWidget::put_by_key(const std::string& type) {
  if (document_.read_only()) return;
  forget_carried();  // a double click picks up first
  if (!fluewright::put_by_key(*board_, type)) return;
  keep_in_sight();
  setFocus(Qt::OtherFocusReason);
}

}  // namespace fluewright
