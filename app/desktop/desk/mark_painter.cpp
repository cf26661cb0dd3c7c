// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/mark_painter.hpp"

#include "app/desktop/desk/growth.hpp"
#include "app/desktop/desk/hit.hpp"
#include "app/desktop/desk/motifs.hpp"
#include "app/desktop/desk/piece_painter.hpp"
#include "app/desktop/theme/theme.hpp"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace fluewright {

MarkPainter::MarkPainter(QPainter& painter, const Camera& camera, const Projection& projection, const Board& board,
                         const PathMeasure& measure, const Drawing& drawing)
    : painter_{painter}, camera_{camera}, projection_{projection}, board_{board}, measure_{measure}, drawing_{drawing}, room_{camera, drawing} {}

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

void MarkPainter::keep_clear(const std::vector<QRectF>& areas) {
  for (const QRectF& area : areas) room_.take(QPolygonF(area));
}

void MarkPainter::keep_rings_clear() {
  constexpr double ring = handle_radius + 3.0;
  for (const OpenEnd& end : board_.ends().open) {
    if (const DrawnPort* port = drawing_.port(end.ref)) {
      room_.take(QPolygonF(QRectF(handle_of(*port, camera_) - QPointF(ring, ring), QSizeF(2.0 * ring, 2.0 * ring))));
    }
  }
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
  // The nearest pieces first: theirs is the room where two lie one behind the other.
  const auto& pieces = drawing_.pieces();
  for (auto piece = pieces.rbegin(); piece != pieces.rend(); ++piece) {
    if (piece->run_length && piece->bounds.intersects(camera_.in_sight())) paint_length(*piece);
  }
}

void MarkPainter::paint_length(const DrawnPiece& piece) {
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
    if (!room_.is_clear(place, piece.id)) continue;
    room_.take(place);
    painter_.save();
    painter_.setTransform(turn, true);
    paint_haloed(flat, words);
    painter_.restore();
    return;
  }
}

void MarkPainter::paint_haloed(const QRectF& box, const QString& words) {
  const QFontMetricsF metrics(painter_.font());
  QPainterPath letters;
  letters.addText(QPointF(box.center().x() - 0.5 * metrics.horizontalAdvance(words),
                          box.center().y() + 0.5 * (metrics.ascent() - metrics.descent())),
                  painter_.font(), words);
  painter_.setBrush(Qt::NoBrush);
  painter_.setPen(QPen(theme().inks.paper, 3.5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
  painter_.drawPath(letters);
  painter_.setPen(theme().inks.faint_ink);
  painter_.drawText(box, Qt::AlignCenter, words);
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
  // A mark a piece, that of the worst finding; what concerns the whole path is said in the answer.
  std::map<PieceId, Severity> marked;
  for (const Finding& finding : board_.document().assessment().findings) {
    if (finding.piece.empty() || finding.severity == Severity::note) continue;
    // A ring says that an end is open, a drop that walls get wet.
    if (finding.code == FindingCode::open_end || finding.code == FindingCode::wet_wall) continue;
    if (finding.code == FindingCode::gap && !finding.field.empty()) paint_gap({finding.piece, finding.field});
    Severity& worst = marked.try_emplace(finding.piece, finding.severity).first->second;
    worst = std::max(worst, finding.severity);
  }
  for (const auto& [id, severity] : marked) {
    const DrawnPiece* piece = drawing_.piece(id);
    if (piece == nullptr) continue;
    const QRectF mark(-11.0, -11.0, 22.0, 21.0);
    const QPointF at = beside(*piece, mark);
    room_.take(QPolygonF(mark.translated(at)));
    paint_warning(at, severity >= Severity::fault);
  }
}

void MarkPainter::paint_gap(const PortRef& ref) {
  const DrawnPort* port = drawing_.port(ref);
  const auto other = board_.document().design().joined_to(ref);
  const DrawnPort* far = other ? drawing_.port(*other) : nullptr;
  if (port == nullptr || far == nullptr) return;
  painter_.setPen(QPen(theme().inks.accent, 1.8, Qt::DashLine));
  painter_.drawLine(camera_.to_screen(port->at), camera_.to_screen(far->at));
}

QPointF MarkPainter::beside(const DrawnPiece& piece, const QRectF& mark) {
  const QRectF box = motif_bounds(camera_, piece);
  const double x = 0.5 * mark.width() + 3.0;
  const double y = 0.5 * mark.height() + 3.0;
  const QPointF above(box.center().x(), box.top() - y);
  const QPointF right(box.right() + x, box.center().y());
  const QPointF left(box.left() - x, box.center().y());
  const QPointF below(box.center().x(), box.bottom() + y);
  const bool stands = box.height() > box.width();
  const std::array<QPointF, 8> lying_order{above, below, right, left, {right.x(), above.y()}, {left.x(), above.y()},
                                           {right.x(), below.y()}, {left.x(), below.y()}};
  const std::array<QPointF, 8> standing_order{right, left, above, below, {right.x(), above.y()}, {left.x(), above.y()},
                                              {right.x(), below.y()}, {left.x(), below.y()}};
  for (const QPointF& at : stands ? standing_order : lying_order) {
    const QRectF place = mark.translated(at);
    if (QRectF(QPointF(), camera_.size()).contains(place) && room_.is_clear(QPolygonF(place), piece.id)) return at;
  }
  return stands ? right : above;
}

QPointF MarkPainter::at_s(Length s, bool& found) const {
  const auto place = measure_.place_at(s);
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
  room_.take(QPolygonF(QRectF(begins, tip + QPointF(8.0, 22.0))));
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

void MarkPainter::paint_invitation(bool in_full) {
  const QSizeF size = camera_.size();
  painter_.setFont(type(TypeRole::body));
  painter_.setPen(theme().inks.faint_ink);
  QStringList lines{Board::tr("Take a feed from the rack and bring it here.")};
  if (in_full) {
    lines << Board::tr("Then pull the path on from its ring, or bring the next piece to the ring.")
          << Board::tr("It ends with a cap; the answer beside the sheet says what is still missing.");
  }
  painter_.drawText(QRectF(QPointF(20.0, 36.0), QSizeF(size.width() - 40.0, size.height() - 72.0)),
                    Qt::AlignCenter | Qt::TextWordWrap, lines.join(QLatin1Char('\n')));
}

}  // namespace fluewright
