// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/mark_painter.hpp"

#include "app/desktop/desk/growth.hpp"
#include "app/desktop/desk/hit.hpp"
#include "app/desktop/desk/piece_painter.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace fluewright {

MarkPainter::MarkPainter(QPainter& painter, const Camera& camera, const Projection& projection, const Board& board,
                         const Drawing& drawing)
    : painter_{painter}, camera_{camera}, projection_{projection}, board_{board}, drawing_{drawing} {}

void MarkPainter::paint_handle(QPointF at, bool lit, bool filled) {
  const Inks& inks = theme().inks;
  const double radius = lit || filled ? handle_radius + 1.5 : handle_radius;
  painter_.setPen(QPen(inks.accent, lit || filled ? 2.2 : 1.7));
  painter_.setBrush(filled ? inks.accent : inks.paper);
  painter_.drawEllipse(at, radius, radius);
  painter_.setPen(QPen(filled ? inks.on_accent : inks.accent, 1.8, Qt::SolidLine, Qt::FlatCap));
  painter_.drawLine(at - QPointF(radius - 4.5, 0.0), at + QPointF(radius - 4.5, 0.0));
  painter_.drawLine(at - QPointF(0.0, radius - 4.5), at + QPointF(0.0, radius - 4.5));
}

void MarkPainter::paint_ends(bool view_has_focus) {
  const auto& hovered = board_.hovered_end();
  const auto& focused = board_.focused_end();
  for (const OpenEnd& end : board_.ends().open) {
    if (const DrawnPort* port = drawing_.port(end.ref)) {
      const bool is_focused = focused == end.ref;
      paint_handle(handle_of(*port, camera_), hovered == end.ref || (is_focused && view_has_focus), is_focused);
    }
  }
  for (const OpenEnd& end : board_.ends().capped) {
    const DrawnPort* port = drawing_.port(end.ref);
    if (port == nullptr) continue;
    if (hovered == end.ref || focused == end.ref) {
      paint_handle(handle_of(*port, camera_), true, focused == end.ref);
    }
  }
}

void MarkPainter::paint_lengths() {
  painter_.setFont(type(TypeRole::caption));
  std::vector<QPolygonF> taken;
  // The nearest pieces first: theirs is the room where two lie one behind the other.
  const auto& pieces = drawing_.pieces();
  for (auto piece = pieces.rbegin(); piece != pieces.rend(); ++piece) {
    if (piece->run_length && piece->bounds.intersects(camera_.in_sight())) paint_length(*piece, taken);
  }
}

void MarkPainter::paint_length(const DrawnPiece& piece, std::vector<QPolygonF>& taken) {
  const DrawnLine& line = piece.lines.front();
  if (line.seen_end_on) return;
  const QPointF from = camera_.to_screen(line.axis.front());
  const QPointF to = camera_.to_screen(line.axis.back());
  const QString words = length_words(*piece.run_length, board_);
  const QSizeF size(painter_.fontMetrics().horizontalAdvance(words) + 6.0, 14.0);
  if (std::hypot(to.x() - from.x(), to.y() - from.y()) < size.width() + 12.0) return;
  // Read from below or from the right (ISO 129-1); beside the pipe on the side that has room, or not at all.
  double angle = -QLineF(from, to).angle();
  while (angle > 90.0 - 1e-6) angle -= 180.0;
  while (angle < -90.0 - 1e-6) angle += 180.0;
  const double half = 0.5 * line.width * camera_.scale() + 4.0;
  QTransform turn;
  turn.translate(0.5 * (from.x() + to.x()), 0.5 * (from.y() + to.y()));
  turn.rotate(angle);
  for (const double top : {-half - size.height(), half}) {
    const QRectF flat(QPointF(-0.5 * size.width(), top), size);
    const QPolygonF place = turn.map(QPolygonF(flat));
    if (!is_clear(place, piece, taken)) continue;
    taken.push_back(place);
    painter_.save();
    painter_.setTransform(turn, true);
    painter_.setPen(theme().inks.faint_ink);
    painter_.drawText(flat, Qt::AlignCenter, words);
    painter_.restore();
    return;
  }
}

bool MarkPainter::is_clear(const QPolygonF& place, const DrawnPiece& own, const std::vector<QPolygonF>& taken) const {
  for (const QPolygonF& other : taken) {
    if (other.intersects(place)) return false;
  }
  const QRectF around = place.boundingRect();
  for (const DrawnPiece& piece : drawing_.pieces()) {
    if (piece.id == own.id) continue;
    for (const DrawnLine& line : piece.lines) {
      const QPolygonF outline = to_screen(camera_, line.outline.isEmpty() ? line.axis : line.outline);
      if (outline.boundingRect().intersects(around) && outline.intersects(place)) return false;
    }
  }
  return true;
}

void MarkPainter::paint_warning(QPointF at, bool fault) {
  const Inks& inks = theme().inks;
  painter_.setPen(QPen(inks.paper, 1.0));
  painter_.setBrush(fault ? inks.accent : inks.caution);
  painter_.drawPolygon(QPolygonF{at + QPointF(0.0, -9.5), at + QPointF(9.5, 7.5), at + QPointF(-9.5, 7.5)});
  QFont font = type(TypeRole::caption);
  font.setBold(true);
  painter_.setFont(font);
  painter_.setPen(inks.on_accent);
  painter_.drawText(QRectF(at + QPointF(-8.0, -7.5), QSizeF(16.0, 15.0)), Qt::AlignCenter, QStringLiteral("!"));
}

void MarkPainter::paint_faults() {
  const Design& design = board_.document().design();
  for (const Finding& finding : board_.document().assessment().findings) {
    const DrawnPiece* piece = finding.piece.empty() ? nullptr : drawing_.piece(finding.piece);
    if (piece == nullptr || finding.code == FindingCode::open_end || finding.severity == Severity::note) continue;
    QPointF at = camera_.to_screen(piece->bounds.center()) + QPointF(0.0, -0.5 * piece->bounds.height() * camera_.scale() - 14.0);
    const DrawnPort* port = finding.field.empty() ? nullptr : drawing_.port({finding.piece, finding.field});
    if (finding.code == FindingCode::gap && port != nullptr) {
      const auto other = design.joined_to(port->ref);
      const DrawnPort* far = other ? drawing_.port(*other) : nullptr;
      if (far != nullptr) {
        painter_.setPen(QPen(theme().inks.accent, 1.8, Qt::DashLine));
        painter_.drawLine(camera_.to_screen(port->at), camera_.to_screen(far->at));
        at = 0.5 * (camera_.to_screen(port->at) + camera_.to_screen(far->at));
      }
    }
    // Wet walls have their drop, and what concerns the whole path is said in the answer.
    if (finding.code == FindingCode::wet_wall) continue;
    paint_warning(at, finding.severity == Severity::fault);
  }
}

QPointF MarkPainter::at_s(Length s, bool& found) const {
  const auto place = board_.measure().place_at(s);
  found = place.has_value();
  return place ? camera_.to_screen(projection_.on_sheet(place->at)) : QPointF();
}

void MarkPainter::paint_condensation() {
  const auto& condensation = board_.document().assessment().condensation;
  if (!condensation || !condensation->starts_at) return;
  bool found = false;
  const QPointF begins = at_s(*condensation->starts_at, found);
  if (!found) return;
  const Inks& inks = theme().inks;
  // The drop hangs beside the pipe on a fine leader.
  const QPointF tip = begins + QPointF(17.0, 13.0);
  painter_.setPen(QPen(inks.water, 1.2));
  painter_.drawLine(begins, tip);
  painter_.setBrush(inks.water);
  painter_.drawEllipse(begins, 2.2, 2.2);
  QPainterPath drop(tip);
  drop.cubicTo(tip + QPointF(2.0, 5.0), tip + QPointF(6.5, 9.0), tip + QPointF(6.5, 13.5));
  drop.arcTo(QRectF(tip + QPointF(-6.5, 7.0), QSizeF(13.0, 13.0)), 0.0, -180.0);
  drop.cubicTo(tip + QPointF(-6.5, 9.0), tip + QPointF(-2.0, 5.0), tip);
  painter_.setPen(QPen(inks.paper, 1.0));
  painter_.drawPath(drop);
}

void MarkPainter::paint_pointed() {
  const Document::Pointed& pointed = board_.document().pointed();
  if (pointed.piece.empty() || !pointed.s) return;
  bool found = false;
  const QPointF at = at_s(*pointed.s, found);
  if (!found) return;
  const Inks& inks = theme().inks;
  painter_.setPen(QPen(inks.paper, 3.5));
  painter_.setBrush(Qt::NoBrush);
  painter_.drawEllipse(at, 6.0, 6.0);
  painter_.setPen(QPen(inks.accent, 2.0));
  painter_.drawEllipse(at, 6.0, 6.0);
}

void MarkPainter::paint_joint(const PortRef& joint) {
  const DrawnPort* port = drawing_.port(joint);
  if (port == nullptr) return;
  const Inks& inks = theme().inks;
  const QPointF at = camera_.to_screen(port->at);
  painter_.setPen(QPen(inks.accent, 1.6));
  painter_.setBrush(inks.paper);
  painter_.drawPolygon(QPolygonF{at + QPointF(0, -6.5), at + QPointF(6.5, 0), at + QPointF(0, 6.5), at + QPointF(-6.5, 0)});
}

void MarkPainter::paint_invitation() {
  const QSizeF size = camera_.size();
  painter_.setFont(type(TypeRole::body));
  painter_.setPen(theme().inks.faint_ink);
  painter_.drawText(QRectF(QPointF(20.0, 0.5 * size.height() - 30.0), QSizeF(size.width() - 40.0, 60.0)),
                    Qt::AlignCenter | Qt::TextWordWrap, Board::tr("Bring a feed here from the rack, then draw the path on from its ring."));
}

}  // namespace fluewright
