// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/pipe_drawing.hpp"

#include "app/desktop/desk/piece_painter.hpp"
#include "app/desktop/theme/theme.hpp"
#include "app/drawing/tr.hpp"

#include <QCoreApplication>
#include <QLineF>
#include <QLinearGradient>
#include <QPainter>

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright {

namespace {

constexpr double pipe_pixels = 3.2;
constexpr double symbol_pixels = 8.0;

QPointF unit(QPointF step) {
  const double length = std::hypot(step.x(), step.y());
  return length < 1e-9 ? QPointF(1.0, 0.0) : step / length;
}

PipeDrawing::Symbol symbol_of(const PieceType& type) {
  using Symbol = PipeDrawing::Symbol;
  struct Named {
    const char* shape;
    Symbol symbol;
  };
  static constexpr std::array named{Named{"taper", Symbol::reducer}, Named{"end_cap", Symbol::blank}, Named{"tee", Symbol::branch},
                                    Named{"damper", Symbol::damper}, Named{"regulator", Symbol::damper},
                                    Named{"fan", Symbol::fan},       Named{"fan_head", Symbol::fan},
                                    Named{"stack_head", Symbol::head}, Named{"feed", Symbol::inlet},
                                    Named{"door_slot", Symbol::inlet}, Named{"intake", Symbol::inlet}};
  const auto found = std::find_if(named.begin(), named.end(), [&type](const Named& n) { return type.shape == n.shape; });
  return found == named.end() ? Symbol::pipe : found->symbol;
}

const char* name_of(PipeDrawing::Symbol symbol) {
  switch (symbol) {
    case PipeDrawing::Symbol::pipe: return QT_TR_NOOP("pipe or channel");
    case PipeDrawing::Symbol::joint: return QT_TR_NOOP("joint");
    case PipeDrawing::Symbol::flow: return QT_TR_NOOP("way of the gas");
    case PipeDrawing::Symbol::reducer: return QT_TR_NOOP("reducer");
    case PipeDrawing::Symbol::blank: return QT_TR_NOOP("capped end");
    case PipeDrawing::Symbol::branch: return QT_TR_NOOP("branch");
    case PipeDrawing::Symbol::damper: return QT_TR_NOOP("damper");
    case PipeDrawing::Symbol::fan: return QT_TR_NOOP("fan");
    case PipeDrawing::Symbol::body: return QT_TR_NOOP("barrel, bell or box");
    case PipeDrawing::Symbol::head: return QT_TR_NOOP("stack head");
    case PipeDrawing::Symbol::inlet: return QT_TR_NOOP("air comes in");
  }
  return "";
}

}  // namespace

PipeDrawing::PipeDrawing(QPainter& painter, const Camera& camera, const Drawing& drawing, const Document& document,
                         const Projection& projection)
    : painter_{painter}, camera_{camera}, drawing_{drawing}, document_{document}, projection_{projection} {}

void PipeDrawing::use(Symbol kind) {
  if (std::find(used_.begin(), used_.end(), kind) == used_.end()) used_.push_back(kind);
}

void PipeDrawing::paint() {
  painter_.setRenderHint(QPainter::Antialiasing, true);
  for (const DrawnPiece& piece : drawing_.pieces()) paint_piece(piece);
  for (const DrawnPiece& piece : drawing_.pieces()) paint_joints(piece);
  paint_levels();
}

void PipeDrawing::paint_piece(const DrawnPiece& piece) {
  const bool selected = document_.is_selected(piece.id);
  if (piece.id == document_.pointed().piece || selected) {
    QColor glow = theme().inks.accent;
    glow.setAlphaF(selected ? 0.55F : 0.28F);
    painter_.setPen(QPen(glow, pipe_pixels + 7.0, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter_.setBrush(Qt::NoBrush);
    for (const DrawnLine& line : piece.lines) painter_.drawPolyline(to_screen(camera_, line.axis));
  }
  for (const DrawnLine& line : piece.lines) paint_line(piece, line);
  if (piece.type == nullptr || piece.lines.empty()) return;
  const Symbol kind = symbol_of(*piece.type);
  if (kind == Symbol::pipe) return;
  const QPolygonF axis = to_screen(camera_, piece.lines.front().axis);
  const QPointF forward = unit(axis.back() - axis.front());
  const bool at_end = kind == Symbol::blank || kind == Symbol::head;
  const QPointF at = at_end ? axis.back() : kind == Symbol::inlet ? axis.front() : 0.5 * (axis.front() + axis.back());
  symbol(kind, at, forward);
}

void PipeDrawing::paint_line(const DrawnPiece&, const DrawnLine& line) {
  const Inks& inks = theme().inks;
  if (line.body) {
    use(Symbol::body);
    painter_.setPen(QPen(inks.ink, 1.0));
    QColor wash = line.stops.isEmpty() ? inks.bare : fill_at(line, 0.5);
    wash.setAlphaF(0.25F);
    painter_.setBrush(wash);
    painter_.drawPolygon(to_screen(camera_, line.outline));
    return;
  }
  use(Symbol::pipe);
  const QPolygonF axis = to_screen(camera_, line.axis);
  QBrush brush(inks.ink);
  if (!line.stops.isEmpty()) {
    QLinearGradient gradient(axis.front(), axis.back());
    gradient.setStops(line.stops);
    brush = gradient;
  }
  painter_.setBrush(Qt::NoBrush);
  painter_.setPen(QPen(inks.ink, pipe_pixels + 1.4, Qt::SolidLine, Qt::RoundCap, Qt::MiterJoin));
  painter_.drawPolyline(axis);
  painter_.setPen(QPen(brush, pipe_pixels, Qt::SolidLine, Qt::RoundCap, Qt::MiterJoin));
  painter_.drawPolyline(axis);
  if (line.flow == 0 || axis.size() != 2 || QLineF(axis.front(), axis.back()).length() < 44.0) return;
  const QPointF way = line.flow > 0 ? axis.back() - axis.front() : axis.front() - axis.back();
  symbol(Symbol::flow, 0.5 * (axis.front() + axis.back()), unit(way));
}

void PipeDrawing::paint_joints(const DrawnPiece& piece) {
  for (const DrawnPort& port : piece.ports) {
    if (!port.joined || std::hypot(port.outward.x(), port.outward.y()) < 0.2) continue;
    symbol(Symbol::joint, camera_.to_screen(port.at), unit({port.outward.x(), -port.outward.y()}));
  }
}

void PipeDrawing::symbol(Symbol kind, QPointF at, QPointF forward) {
  use(kind);
  const Inks& inks = theme().inks;
  const QPointF aside(-forward.y(), forward.x());
  const double s = symbol_pixels;
  painter_.setPen(QPen(inks.ink, 1.5, Qt::SolidLine, Qt::FlatCap));
  painter_.setBrush(inks.paper);
  switch (kind) {
    case Symbol::pipe: painter_.drawLine(at - s * forward, at + s * forward); return;
    case Symbol::joint: painter_.drawLine(at - 0.55 * s * aside, at + 0.55 * s * aside); return;
    case Symbol::flow:
      painter_.setBrush(inks.ink);
      painter_.drawPolygon(QPolygonF{at + 0.8 * s * forward, at - 0.5 * s * forward + 0.5 * s * aside, at - 0.5 * s * forward - 0.5 * s * aside});
      return;
    case Symbol::reducer:
      painter_.drawPolygon(QPolygonF{at - 0.8 * s * forward + 0.75 * s * aside, at + 0.8 * s * forward + 0.3 * s * aside,
                                     at + 0.8 * s * forward - 0.3 * s * aside, at - 0.8 * s * forward - 0.75 * s * aside});
      return;
    case Symbol::blank:
      painter_.setPen(QPen(inks.ink, 2.4, Qt::SolidLine, Qt::FlatCap));
      painter_.drawLine(at - 0.8 * s * aside, at + 0.8 * s * aside);
      return;
    case Symbol::branch:
      painter_.setBrush(inks.ink);
      painter_.drawEllipse(at, 0.45 * s, 0.45 * s);
      return;
    case Symbol::damper:
      painter_.drawPolygon(QPolygonF{at, at - s * forward + 0.7 * s * aside, at - s * forward - 0.7 * s * aside});
      painter_.drawPolygon(QPolygonF{at, at + s * forward + 0.7 * s * aside, at + s * forward - 0.7 * s * aside});
      return;
    case Symbol::fan:
      painter_.drawEllipse(at, s, s);
      painter_.drawLine(at - 0.7 * s * forward - 0.7 * s * aside, at + s * forward);
      painter_.drawLine(at - 0.7 * s * forward + 0.7 * s * aside, at + s * forward);
      return;
    case Symbol::body: painter_.drawRect(QRectF(at - QPointF(0.6 * s, 0.8 * s), QSizeF(1.2 * s, 1.6 * s))); return;
    case Symbol::head:
      painter_.drawPolyline(QPolygonF{at + QPointF(-s, 0.2 * s), at + QPointF(0, -0.8 * s), at + QPointF(s, 0.2 * s)});
      return;
    case Symbol::inlet:
      painter_.drawPolyline(QPolygonF{at - 0.9 * s * forward + 0.9 * s * aside, at, at - 0.9 * s * forward - 0.9 * s * aside});
      return;
  }
}

// Heights of the ends of upright pipes, on a small open triangle that stands on its point.
void PipeDrawing::paint_levels() {
  const Inks& inks = theme().inks;
  painter_.setFont(type(TypeRole::caption));
  std::vector<QRectF> taken;
  for (const DrawnPiece& piece : drawing_.pieces()) {
    const PieceGeometry& geometry = document_.geometries()[piece.index];
    if (geometry.lines.empty() || geometry.lines.front().points.size() != 2 || geometry.lines.front().upright_body) continue;
    const auto& ends = geometry.lines.front().points;
    const bool upright = bu::abs(ends.back().z - ends.front().z) > 0.9 * distance(ends.front(), ends.back());
    if (!upright) continue;
    const Position& top = ends.back().z > ends.front().z ? ends.back() : ends.front();
    const QPointF at = camera_.to_screen(projection_.on_sheet(top)) + QPointF(14.0, 0.0);
    const QString words = QString::fromStdString(show(top.z, document_.units(), Meaning::height).text());
    const QRectF place(at + QPointF(6.0, -14.0), QSizeF(painter_.fontMetrics().horizontalAdvance(words) + 8.0, 14.0));
    if (std::any_of(taken.begin(), taken.end(), [&place](const QRectF& other) { return other.intersects(place); })) continue;
    taken.push_back(place);
    painter_.setPen(QPen(inks.faint_ink, 1.0));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawLine(at - QPointF(10.0, 0.0), at + QPointF(place.width() + 6.0, 0.0));
    painter_.drawPolygon(QPolygonF{at, at + QPointF(-4.0, -7.0), at + QPointF(4.0, -7.0)});
    painter_.drawText(place, Qt::AlignLeft | Qt::AlignVCenter, words);
  }
}

QRectF PipeDrawing::paint_legend(double bottom) {
  const std::vector<Symbol> shown = used_;
  painter_.setFont(type(TypeRole::caption));
  const double row = painter_.fontMetrics().height() + 5.0;
  double width = 0.0;
  for (const Symbol kind : shown) {
    width = std::max(width, 1.0 * painter_.fontMetrics().horizontalAdvance(tr(name_of(kind))));
  }
  const QRectF box(12.0, bottom - row * static_cast<double>(shown.size()) - 10.0, width + 50.0, row * static_cast<double>(shown.size()) + 6.0);
  painter_.setPen(QPen(theme().inks.hairline, 1.0));
  QColor ground = theme().inks.paper;
  ground.setAlphaF(0.88F);
  painter_.setBrush(ground);
  painter_.drawRect(box);
  double y = box.top() + 3.0;
  for (const Symbol kind : shown) {
    symbol(kind, QPointF(box.left() + 20.0, y + 0.5 * row), QPointF(1.0, 0.0));
    painter_.setPen(theme().inks.faint_ink);
    painter_.drawText(QRectF(box.left() + 40.0, y, width + 4.0, row), Qt::AlignLeft | Qt::AlignVCenter,
                      tr(name_of(kind)));
    y += row;
  }
  return box;
}

}  // namespace fluewright
