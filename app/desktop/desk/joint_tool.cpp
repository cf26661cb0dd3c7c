// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/joint_tool.hpp"

#include "app/desktop/desk/desk_view.hpp"
#include "app/desktop/desk/grow_tool.hpp"
#include "app/desktop/desk/set_tools.hpp"
#include "engine/layout/edit_run.hpp"

#include <QLineF>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright {

namespace {

constexpr double drag_threshold = 5.0;

std::optional<Port> port_of(const Board& board, const Design& design, const PortRef& ref) {
  const Piece* piece = design.piece(ref.piece);
  const PieceType* type = piece == nullptr ? nullptr : board.document().library().piece_type(piece->type);
  const Shape* shape = type == nullptr ? nullptr : find_shape(type->shape);
  if (shape == nullptr) return std::nullopt;
  const PieceGeometry geometry = shape->geometry(PieceView(design, board.document().library(), *piece, *type));
  const Port* port = geometry.port(ref.port);
  return port == nullptr ? std::nullopt : std::optional(*port);
}

EditResult move_one_joint(const Board& board, const Design& base, const PortRef& ref, const Position& step) {
  const auto port = port_of(board, base, ref);
  if (!port) return {std::nullopt, Refusal::unknown_piece, {}};
  return move_joint(base, board.document().library(), ref, grid_point_near(port->at + step));
}

bool is_joined(const Design& design, const PieceId& piece) {
  return std::any_of(design.joints.begin(), design.joints.end(),
                     [&](const Joint& joint) { return joint.a.piece == piece || joint.b.piece == piece; });
}

}  // namespace

EditResult moved_by_joint(const Board& board, const Design& base, const PieceId& piece, const Position& step) {
  if (!is_joined(base, piece)) return move_group(base, board.document().library(), piece, grid_point_near(step));
  std::vector<PortRef> ports;
  for (const Joint& joint : base.joints) {
    if (joint.a.piece == piece) ports.push_back(joint.a);
    if (joint.b.piece == piece) ports.push_back(joint.b);
  }
  EditResult result{std::nullopt, Refusal::does_not_fit, {}};
  for (auto port = ports.rbegin(); port != ports.rend() && !result.design; ++port) {
    result = move_one_joint(board, base, *port, step);
  }
  return result;
}

JointTool::JointTool(Board& board, Hit under, const Pointer& pressed)
    : Tool(board),
      base_{board.document().design()},
      under_{std::move(under)},
      view_{pressed.view},
      projection_{projection_here()},
      pressed_pixel_{pressed.pixel},
      pressed_sheet_{pressed.sheet},
      pixel_{pressed.pixel},
      held_{held()},
      landmarks_{board.document(), under_.piece} {}

Position JointTool::held() const {
  if (under_.joint) {
    if (const auto port = port_of(board_, base_, *under_.joint)) return port->at;
  }
  const Piece* piece = base_.piece(under_.piece);
  return piece == nullptr ? Position{} : position_of(piece->at);
}

Projection JointTool::projection_here() const {
  PortRef ref = under_.joint.value_or(PortRef{under_.piece, {}});
  if (!under_.joint) {
    for (const Joint& joint : base_.joints) {
      if (joint.a.piece == under_.piece) ref = joint.a;
      if (joint.b.piece == under_.piece) ref = joint.b;
    }
  }
  const auto port = port_of(board_, base_, ref);
  return port ? view_.projection_at(ref, *port) : view_.projection();
}

QString JointTool::sentence() const {
  if (under_.joint) return Board::tr("Drag the joint: the runs beside it stretch; hold Ctrl to stretch the whole bench. Esc forgets it.");
  return Board::tr("Drag the piece: the runs beside it stretch. Shift moves the whole path, Ctrl stretches the whole bench. Esc forgets it.");
}

/// The run whose length the mouse pulls at: the dragged one, or one that ends where one drags; nothing across it.
std::optional<JointTool::Bench> JointTool::bench_along(const Position& step) const {
  const Library& library = board_.document().library();
  std::vector<PieceId> near{under_.piece};
  if (under_.joint) near.push_back(under_.joint->piece);
  for (const Joint& joint : base_.joints) {
    if (joint.a.piece == under_.piece) near.push_back(joint.b.piece);
    if (joint.b.piece == under_.piece) near.push_back(joint.a.piece);
  }
  for (const PieceId& id : near) {
    if (!board_.is_run(id)) continue;
    const std::vector<PieceId> runs = bench_runs(base_, library, id);
    if (runs.empty()) continue;
    const auto entry = port_of(board_, base_, {id, "in"});
    const auto exit = port_of(board_, base_, {id, "out"});
    if (!entry || !exit) continue;
    // Away from the end that the dragged place is not at.
    const Metres from = metres(entry->at);
    const Metres to = metres(exit->at);
    const Metres at = metres(held_);
    const auto away = [&at](const Metres& m) { return std::hypot(m.x - at.x, m.y - at.y); };
    const Metres way = unit_of(away(to) <= away(from) ? exit->outward : entry->outward);
    const double by = dot(metres(step), way);
    if (std::abs(by) > 1e-6) return Bench{id, by * metre};
  }
  return std::nullopt;
}

EditResult JointTool::moved(const Position& step, Qt::KeyboardModifiers keys) const {
  const Library& library = board_.document().library();
  const PieceId member = under_.piece.empty() && under_.joint ? under_.joint->piece : under_.piece;
  if (keys.testFlag(Qt::ShiftModifier)) return move_group(base_, library, member, grid_point_near(step));
  if (keys.testFlag(Qt::ControlModifier)) {
    const auto bench = bench_along(step);
    return bench ? stretch_bench(base_, library, bench->run, bench->by) : EditResult{base_, {}, member};
  }
  return under_.joint ? move_one_joint(board_, base_, *under_.joint, step) : moved_by_joint(board_, base_, member, step);
}

Position JointTool::in_line(const Position& step) const {
  // What lines up with another end has precedence over the grid.
  const double reach = 0.6 * in(board_.document().grid_step(), metre);
  Metres to = metres(held_ + step);
  const Metres from = metres(held_);
  const auto settle = [&](double Metres::*axis, const Metres& unit) {
    if (std::abs(to.*axis - from.*axis) < 1e-9) return;
    if (const auto there = landmarks_.in_line(unit, to.*axis, reach)) to.*axis = *there;
  };
  settle(&Metres::x, {1, 0, 0});
  settle(&Metres::y, {0, 1, 0});
  settle(&Metres::z, {0, 0, 1});
  return position({to.x - from.x, to.y - from.y, to.z - from.z});
}

void JointTool::move(const Pointer& pointer) {
  if (&pointer.view != &view_) return;
  pixel_ = pointer.pixel;
  if (!dragging_ && QLineF(pressed_pixel_, pixel_).length() < drag_threshold) return;
  dragging_ = true;
  const Position step = in_line(snapped_step(board_, projection_, held_, pressed_sheet_, pointer.sheet));
  const EditResult result = moved(step, pointer.modifiers);
  if (board_.preview(result)) step_ = step;
  emit board_.touch_up();
}

void JointTool::release(const Pointer& pointer) {
  if (pointer.button != Qt::LeftButton) return;
  const bool moved_something = dragging_;
  if (dragging_) board_.document().commit_preview(under_.joint ? Board::tr("Move a joint") : Board::tr("Move a piece"));
  DeskView& view = view_;
  board_.put_down();
  if (moved_something) view.keep_in_sight();
}

void JointTool::put_down() { board_.document().cancel_preview(); }

QString JointTool::card() const { return step_words(board_, step_); }

void JointTool::paint_over(QPainter& painter, const DeskView& view) const {
  if (&view != &view_ || !dragging_) return;
  if (projection_.kind() != ViewKind::unrolled) paint_guides(painter, view, landmarks_, held_ + step_);
  if (const QString words = card(); !words.isEmpty()) paint_card(painter, pixel_, words, view);
}

}  // namespace fluewright
