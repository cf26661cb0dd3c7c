// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/view_geometry.hpp"

#include "app/desktop/desk/tube.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright::paper {

namespace {

double across(QPointF o, QPointF a, QPointF b) {
  return (a.x() - o.x()) * (b.y() - o.y()) - (a.y() - o.y()) * (b.x() - o.x());
}

/// Andrew's monotone chain.
QPolygonF hull(std::vector<QPointF> points) {
  std::sort(points.begin(), points.end(),
            [](QPointF a, QPointF b) { return a.x() != b.x() ? a.x() < b.x() : a.y() < b.y(); });
  QPolygonF ring;
  for (int pass = 0; pass < 2; ++pass) {
    const qsizetype base = ring.size();
    for (const QPointF& p : points) {
      while (ring.size() >= base + 2 && across(ring[ring.size() - 2], ring.back(), p) <= 0.0) ring.pop_back();
      ring << p;
    }
    ring.pop_back();
    std::reverse(points.begin(), points.end());
  }
  return ring;
}

/// A bent pipe's outline: its axis shifted to either side.
QPolygonF band(const QPolygonF& axis, double half) {
  QPolygonF left;
  QPolygonF right;
  for (qsizetype i = 0; i < axis.size(); ++i) {
    const QPointF along = axis[std::min(i + 1, axis.size() - 1)] - axis[std::max<qsizetype>(i - 1, 0)];
    const double length = std::hypot(along.x(), along.y());
    if (length < 1e-9) continue;
    const QPointF aside(-along.y() / length * half, along.x() / length * half);
    left << axis[i] + aside;
    right << axis[i] - aside;
  }
  std::reverse(right.begin(), right.end());
  return left + right;
}

bool is_flat(const QPolygonF& polygon) {
  const QRectF box = polygon.boundingRect();
  return box.width() < 0.05 || box.height() < 0.05;
}

/// A taper's two ports differ; every other straight piece is as wide at its end as at its start.
double widening(const PieceGeometry& geometry, const PieceType& type) {
  if (type.shape != "taper" || geometry.ports.size() != 2) return 1.0;
  return geometry.ports[1].section.equal_area_diameter() / geometry.ports[0].section.equal_area_diameter();
}

Metres unit_between(const Metres& from, const Metres& to) {
  const Metres step{to.x - from.x, to.y - from.y, to.z - from.z};
  const double length = std::sqrt(dot(step, step));
  return length < 1e-9 ? Metres{0, 0, 1} : Metres{step.x / length, step.y / length, step.z / length};
}

void outline_straight(PieceOutline& outline, const CentreLine& line, double widening, const Board& board) {
  const Metres from = metres(line.points.front());
  const Metres to = metres(line.points.back());
  const Metres axis = unit_between(from, to);
  const double width = in(line.width, metre);
  outline.areas.push_back(board.on_paper(tube(board.projection(), from, to, width, width * widening)));
  const bool to_is_near = board.projection().nearness(to) >= board.projection().nearness(from);
  if (end_on(board.projection(), axis)) return;
  const QPolygonF rim =
      board.on_paper(ring(board.projection(), to_is_near ? to : from, axis, to_is_near ? width * widening : width));
  if (!is_flat(rim)) outline.edges.push_back(rim);
  if (!line.upright_body) {
    outline.axes.push_back({board.at(line.points.front()), board.at(line.points.back())});
  }
}

void outline_bent(PieceOutline& outline, const CentreLine& line, const Board& board) {
  QPolygonF axis;
  for (const Position& p : line.points) axis << board.at(p);
  const double half = 0.5 * board.on_paper(line.width) * board.projection().widening();
  if (is_flat(axis)) {
    // Seen from its side: as wide as the pipe, as long as it looks.
    std::vector<QPointF> points;
    const QRectF box = axis.boundingRect().adjusted(-0.01, -0.01, 0.01, 0.01);
    const bool level = box.width() >= box.height();
    const QRectF grown = level ? box.adjusted(0, -half, 0, half) : box.adjusted(-half, 0, half, 0);
    outline.areas.push_back({grown.topLeft(), grown.topRight(), grown.bottomRight(), grown.bottomLeft()});
    return;
  }
  outline.areas.push_back(band(axis, half));
  outline.axes.push_back(axis);
}

PieceOutline outline_of(const Dossier& dossier, std::size_t piece, const Board& board) {
  PieceOutline outline;
  outline.piece = piece;
  const PieceGeometry& geometry = dossier.geometry(piece);
  const PieceView view = dossier.view(piece);
  double nearest = -1e9;
  double farthest = 1e9;
  // A standing body hides its own outlet's root.
  std::vector<CentreLine> lines = geometry.lines;
  std::stable_partition(lines.begin(), lines.end(), [](const CentreLine& line) { return !line.upright_body; });
  for (const CentreLine& line : lines) {
    if (line.points.size() < 2) continue;
    const bool square_body = line.upright_body && view.has("width") && view.has("depth");
    if (square_body) {
      for (const Prism& prism : standing_on(view, geometry)) outline.areas.push_back(seen(prism, board));
    } else if (line.points.size() == 2) {
      outline_straight(outline, line, widening(geometry, view.type()), board);
    } else {
      outline_bent(outline, line, board);
    }
    for (const Position& p : line.points) {
      nearest = std::max(nearest, board.projection().nearness(metres(p)));
      farthest = std::min(farthest, board.projection().nearness(metres(p)));
    }
  }
  outline.nearness = 0.5 * (nearest + farthest);
  return outline;
}

/// All outlines wind the same way, so that what overlaps fills once.
template <class Shape>
QPainterPath united(const Dossier& dossier, const Shape& shape) {
  QPainterPath all;
  all.setFillRule(Qt::WindingFill);
  for (std::size_t i = 0; i < dossier.design().pieces.size(); ++i) {
    for (const Prism& prism : dossier.mass(i)) {
      all.addPolygon(shape(prism));
      all.closeSubpath();
    }
  }
  return all.simplified();
}

}  // namespace

QPolygonF Board::on_paper(const QPolygonF& sheet) const {
  QPolygonF paper;
  paper.reserve(sheet.size());
  for (const QPointF& p : sheet) paper << on_paper(p);
  return paper;
}

Scale fitting_scale(QSizeF metres, QSizeF millimetres, UnitSystem units) {
  static const std::vector<Scale> metric{
      {5, QStringLiteral("1:5")},     {10, QStringLiteral("1:10")},   {20, QStringLiteral("1:20")},
      {25, QStringLiteral("1:25")},   {50, QStringLiteral("1:50")},   {100, QStringLiteral("1:100")},
      {200, QStringLiteral("1:200")}, {500, QStringLiteral("1:500")}, {1000, QStringLiteral("1:1000")}};
  static const std::vector<Scale> inches{
      {8, QStringLiteral("1 1/2 in = 1 ft (1:8)")},  {12, QStringLiteral("1 in = 1 ft (1:12)")},
      {16, QStringLiteral("3/4 in = 1 ft (1:16)")},  {24, QStringLiteral("1/2 in = 1 ft (1:24)")},
      {32, QStringLiteral("3/8 in = 1 ft (1:32)")},  {48, QStringLiteral("1/4 in = 1 ft (1:48)")},
      {96, QStringLiteral("1/8 in = 1 ft (1:96)")},  {192, QStringLiteral("1/16 in = 1 ft (1:192)")},
      {480, QStringLiteral("1 in = 40 ft (1:480)")}, {1200, QStringLiteral("1 in = 100 ft (1:1200)")}};
  const auto& scales = units == UnitSystem::metric ? metric : inches;
  for (const Scale& scale : scales) {
    const double factor = 1000.0 / scale.denominator;
    if (metres.width() * factor <= millimetres.width() && metres.height() * factor <= millimetres.height())
      return scale;
  }
  return scales.back();
}

QPolygonF seen(const Prism& prism, const Board& board) {
  std::vector<QPointF> points;
  for (const Length& level : {prism.bottom, prism.top}) {
    for (const Position& p : prism.outline) points.push_back(board.at({p.x, p.y, level}));
  }
  return hull(std::move(points));
}

std::vector<PieceOutline> piece_outlines(const Dossier& dossier, const Board& board) {
  std::vector<PieceOutline> outlines;
  for (std::size_t i = 0; i < dossier.design().pieces.size(); ++i) {
    if (dossier.can_be_drawn(i)) outlines.push_back(outline_of(dossier, i, board));
  }
  std::stable_sort(outlines.begin(), outlines.end(),
                   [](const PieceOutline& a, const PieceOutline& b) { return a.nearness < b.nearness; });
  return outlines;
}

QPainterPath mass_outline(const Dossier& dossier, const Board& board) {
  return united(dossier, [&board](const Prism& prism) { return seen(prism, board); });
}

QPainterPath mass_tops(const Dossier& dossier, const Board& board) {
  return united(dossier, [&board](const Prism& prism) {
    QPolygonF top;
    for (const Position& p : prism.outline) top << board.at({p.x, p.y, prism.top});
    return top;
  });
}

QSizeF view_size(const Dossier& dossier, ViewKind view) {
  const Board board(view, 1000.0);  // a millimetre of paper for a metre
  QRectF all = mass_outline(dossier, board).boundingRect();
  for (const PieceOutline& outline : piece_outlines(dossier, board)) {
    for (const QPolygonF& area : outline.areas) all |= area.boundingRect();
  }
  return all.size();
}

}  // namespace fluewright::paper
