// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/joint_tool.hpp"

#include "app/desktop/desk/desk_view.hpp"
#include "app/desktop/desk/grow_tool.hpp"

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
      pressed_pixel_{pressed.pixel},
      pressed_sheet_{pressed.sheet},
      pixel_{pressed.pixel},
      held_{held()} {}

Position JointTool::held() const {
  if (under_.joint) {
    if (const auto port = port_of(board_, base_, *under_.joint)) return port->at;
  }
  const Piece* piece = base_.piece(under_.piece);
  return piece == nullptr ? Position{} : position_of(piece->at);
}

QString JointTool::sentence() const {
  if (under_.joint) return Board::tr("Drag the joint: the runs beside it stretch. Esc forgets it.");
  return Board::tr("Drag the piece: the runs beside it stretch. Hold Shift to move the whole path. Esc forgets it.");
}

Position JointTool::snapped_step(const Pointer& pointer) const {
  const Projection& projection = view_.projection();
  const Length grid = board_.document().grid_step();
  const Metres at = metres(held_);
  const auto to_grid = [&](double from, double by) {
    return std::abs(by) < 0.5 * in(grid, metre) ? 0.0 : snapped(from + by, grid) - from;
  };
  if (projection.kind() == ViewKind::isometric) {
    // One axis at a time: the one the mouse follows best.
    Metres best;
    double most = 0.0;
    for (const Heading& direction : {heading_east, heading_north, heading_up()}) {
      const double reach = projection.along(direction, metres(Position{}), pointer.sheet - pressed_sheet_).value_or(0.0);
      if (std::abs(reach) <= std::abs(most)) continue;
      most = reach;
      best = unit_of(direction);
    }
    return position({to_grid(at.x, most * best.x), to_grid(at.y, most * best.y), to_grid(at.z, most * best.z)});
  }
  const Metres from = projection.in_world(pressed_sheet_, at);
  const Metres to = projection.in_world(pointer.sheet, at);
  return position({to_grid(at.x, to.x - from.x), to_grid(at.y, to.y - from.y), to_grid(at.z, to.z - from.z)});
}

void JointTool::move(const Pointer& pointer) {
  if (&pointer.view != &view_) return;
  pixel_ = pointer.pixel;
  if (!dragging_ && QLineF(pressed_pixel_, pixel_).length() < drag_threshold) return;
  dragging_ = true;
  const Position step = snapped_step(pointer);
  const bool whole = pointer.modifiers.testFlag(Qt::ShiftModifier);
  const PieceId member = under_.piece.empty() && under_.joint ? under_.joint->piece : under_.piece;
  EditResult result;
  if (whole) {
    result = move_group(base_, board_.document().library(), member, grid_point_near(step));
  } else if (under_.joint) {
    result = move_one_joint(board_, base_, *under_.joint, step);
  } else {
    result = moved_by_joint(board_, base_, member, step);
  }
  if (board_.preview(result)) step_ = step;
  emit board_.touch_up();
}

void JointTool::release(const Pointer& pointer) {
  if (pointer.button != Qt::LeftButton) return;
  if (dragging_) board_.document().commit_preview(under_.joint ? Board::tr("Move a joint") : Board::tr("Move a piece"));
  board_.put_down();
}

void JointTool::put_down() { board_.document().cancel_preview(); }

QString JointTool::card() const {
  const Metres step = metres(step_);
  QStringList parts;
  const auto add = [&](double by, const Heading& there, const Heading& back) {
    if (std::abs(by) < 1e-6) return;
    parts << QStringLiteral("%1 %2").arg(length_words(std::abs(by) * metre, board_), direction_words(by > 0.0 ? there : back));
  };
  add(step.x, heading_east, heading_west);
  add(step.y, heading_north, heading_south);
  add(step.z, heading_up(), heading_down());
  return parts.join(QStringLiteral(", "));
}

void JointTool::paint_over(QPainter& painter, const DeskView& view) const {
  if (&view != &view_ || !dragging_) return;
  if (const QString words = card(); !words.isEmpty()) paint_card(painter, pixel_, words, view);
}

}  // namespace fluewright
