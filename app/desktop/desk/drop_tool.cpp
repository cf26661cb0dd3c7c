// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/drop_tool.hpp"

#include "app/desktop/desk/desk_view.hpp"
#include "app/desktop/desk/grow_tool.hpp"

#include <QKeyEvent>

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace fluewright {

namespace {

constexpr double drop_reach = 34.0;  // pixels: an end draws the piece in from here

QString name_of(const Board& board, const std::string& type) {
  const PieceType* found = board.document().library().piece_type(type);
  return QString::fromStdString(found == nullptr ? type : found->name);
}

/// After a piece was put somewhere: it is selected, its open end focused, and a run becomes what the path grows with.
void settle_in(Board& board, const std::string& type, const PieceId& touched) {
  go_on_from(board, touched);
  const PieceType* found = board.document().library().piece_type(type);
  const Piece* piece = board.document().design().piece(touched);
  if (piece == nullptr || found == nullptr || found->shape != "run" || found->family == "fire") return;
  const bool upright = std::abs(unit_of(piece->heading).z) > 0.7;
  upright ? board.set_upright_type(type) : board.set_run_type(type);
}

/// Where a piece goes that nobody has given a place: the middle of an empty sheet, else south of what is there.
GridPoint free_place(const Board& board) {
  std::optional<double> south;
  for (const PieceGeometry& geometry : board.document().geometries()) {
    for (const CentreLine& line : geometry.lines) {
      for (const Position& point : line.points) {
        const double edge = in(point.y, metre) - 0.5 * in(line.width, metre);
        south = std::min(edge, south.value_or(edge));
      }
    }
  }
  if (!south) return GridPoint{};
  constexpr double clear = 0.5;
  return grid_point_near(position({0.0, snapped(*south - clear, board.document().grid_step()), 0.0}));
}

GridPoint on_grid(const Board& board, const Metres& m) {
  const Length step = board.document().grid_step();
  return grid_point_near(position({snapped(m.x, step), snapped(m.y, step), snapped(m.z, step)}));
}

}  // namespace

EditResult placed_on_floor(const Board& board, const Design& base, const std::string& type, GridPoint at) {
  const Library& library = board.document().library();
  const PieceType* found = library.piece_type(type);
  if (found == nullptr) return {std::nullopt, Refusal::unknown_type, {}};
  const Heading heading = usual_heading(*found);
  at.z = 0;
  const EditResult flat = place_piece(base, library, type, at, heading);
  const Shape* shape = find_shape(found->shape);
  const Piece* piece = flat.design ? flat.design->piece(flat.touched) : nullptr;
  if (piece == nullptr || shape == nullptr) return flat;
  double lowest = 0.0;
  for (const CentreLine& line : shape->geometry(PieceView(*flat.design, library, *piece, *found)).lines) {
    for (std::size_t i = 0; i < line.points.size(); ++i) {
      const Metres a = metres(line.points[i]);
      const Metres b = metres(line.points[i == 0 ? std::min<std::size_t>(1, line.points.size() - 1) : i - 1]);
      // A level line reaches half its width below its axis, a standing one does not; but under a feed there comes a tunnel.
      const bool level = std::hypot(a.x - b.x, a.y - b.y) > std::abs(a.z - b.z) || found->shape == "feed";
      lowest = std::min(lowest, a.z - (level ? 0.5 * in(line.width, metre) : 0.0));
    }
  }
  const double step = in(board.document().grid_step(), metre);
  const double raised = std::ceil(-lowest / step - 1e-6) * step;
  at.z = grid_point_near({{}, {}, raised * metre}).z;
  return place_piece(base, library, type, at, heading);
}

DropTool::DropTool(Board& board, std::string type) : Tool(board), base_{board.document().design()}, type_{std::move(type)} {}

QString DropTool::type_name() const { return name_of(board_, type_); }

QString DropTool::sentence() const {
  if (where_.isEmpty()) {
    return Board::tr("%1: bring it to a ring with a plus, onto a straight run, or onto bare paper; Esc puts it back.").arg(type_name());
  }
  return Board::tr("%1 %2: click or let go to leave it there; R turns it; Esc puts it back.").arg(type_name(), where_);
}

const DropTool::Before& DropTool::before(DeskView& view) {
  const auto known = before_.find(&view);
  if (known != before_.end()) return known->second;
  board_.document().cancel_preview();
  return before_.emplace(&view, Before{view.drawing(), board_.ends(), view.measure()}).first->second;
}

void DropTool::move(const Pointer& pointer) { show_at(pointer.view, pointer.pixel, pointer.sheet); }

Turn DropTool::turn_for(const Heading& into) const {
  return static_cast<Turn>((static_cast<int>(usual_turn(into)) + turned_) % 4);
}

void DropTool::show_at(DeskView& view, QPointF pixel, QPointF sheet) {
  view_ = &view;
  pixel_ = pixel;
  sheet_ = sheet;
  const Before& was = before(view);
  const Library& library = board_.document().library();
  EditResult result;
  if (const auto ref = end_near(was.drawing, view.camera(), was.ends, pixel, drop_reach)) {
    result = attach_piece(base_, library, *ref, type_, turn_for(was.ends.find(*ref)->port.outward));
    where_ = Board::tr("on this end");
  } else {
    const Hit under = hit(was.drawing, view.camera(), was.ends, was.measure, pixel);
    const Piece* run = board_.is_run(under.piece) ? base_.piece(under.piece) : nullptr;
    if (run != nullptr) {
      const Length along = snapped(in(under.into_run, metre), board_.document().grid_step()) * metre;
      result = insert_in_run(base_, library, run->id, along, type_, turn_for(run->heading));
      where_ = Board::tr("into this run");
    } else {
      result = placed_on_paper(view, sheet);
      where_ = Board::tr("here");
    }
  }
  touched_.clear();
  if (board_.preview(result)) {
    touched_ = result.touched;
  } else {
    board_.document().cancel_preview();
    where_.clear();
  }
  emit board_.touch_up();
  emit board_.sentence_changed(board_.sentence());
}

EditResult DropTool::placed_on_paper(const DeskView& view, QPointF sheet) const {
  const GridPoint at = on_grid(board_, view.projection().in_world(sheet, Metres{}));
  const ViewKind kind = view.projection().kind();
  if (kind == ViewKind::plan || kind == ViewKind::isometric) return placed_on_floor(board_, base_, type_, at);
  const PieceType* type = board_.document().library().piece_type(type_);
  if (type == nullptr) return {std::nullopt, Refusal::unknown_type, {}};
  return place_piece(base_, board_.document().library(), type_, at, usual_heading(*type));
}

void DropTool::release(const Pointer& pointer) {
  if (pointer.button != Qt::LeftButton) return;
  show_at(pointer.view, pointer.pixel, pointer.sheet);
  drop();
}

bool DropTool::drop() {
  if (touched_.empty()) {
    board_.put_down();
    return false;
  }
  const PieceId touched = touched_;
  const std::string type = type_;
  board_.document().commit_preview(Board::tr("Put %1").arg(type_name()));
  Board& board = board_;
  DeskView* view = view_;
  board.put_down();
  settle_in(board, type, touched);
  if (view != nullptr) view->keep_in_sight();
  return true;
}

void DropTool::leave(DeskView&) {
  view_ = nullptr;
  touched_.clear();
  where_.clear();
  board_.document().cancel_preview();
  emit board_.sentence_changed(board_.sentence());
}

bool DropTool::key(DeskView& view, QKeyEvent& event) {
  if (event.key() != Qt::Key_R) return false;
  turned_ = (turned_ + 1) % 4;
  if (view_ == &view) show_at(view, pixel_, sheet_);
  return true;
}

void DropTool::put_down() { board_.document().cancel_preview(); }

void DropTool::paint_over(QPainter& painter, const DeskView& view) const {
  if (&view == view_) paint_card(painter, pixel_, card(), view);
}

bool put_by_key(Board& board, const std::string& type) {
  Document& document = board.document();
  const Library& library = document.library();
  const Design& design = document.design();
  const OpenEnd* end = board.focused_end() ? board.ends().find(*board.focused_end()) : nullptr;
  const Piece* selected = design.piece(document.selected());
  EditResult result;
  if (end == nullptr && selected != nullptr && board.is_run(selected->id)) {
    const auto& geometries = document.geometries();
    const auto index = static_cast<std::size_t>(selected - design.pieces.data());
    const Length middle = 0.5 * length_of(geometries[index].lines.front());
    const Length along = snapped(in(middle, metre), document.grid_step()) * metre;
    result = insert_in_run(design, library, selected->id, along, type, usual_turn(selected->heading));
  } else {
    if (end == nullptr && !board.ends().open.empty()) end = &board.ends().open.front();
    result = end != nullptr ? attach_piece(design, library, end->ref, type, usual_turn(end->port.outward))
                            : placed_on_floor(board, design, type, free_place(board));
  }
  if (!board.commit(result, Board::tr("Put %1").arg(name_of(board, type)))) return false;
  settle_in(board, type, result.touched);
  return true;
}

}  // namespace fluewright
