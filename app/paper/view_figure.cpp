// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/view_figure.hpp"

#include "app/drawing/tr.hpp"
#include "app/paper/documents.hpp"
#include "app/paper/type.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace fluewright::paper {

namespace {

void put_path(Figure& figure, const QPainterPath& path, Stroke stroke, Fill fill, Layer layer) {
  for (const QPolygonF& polygon : path.toSubpathPolygons()) {
    if (polygon.size() > 2) figure.poly(polygon, true, stroke, fill, layer);
  }
}

/// Gas enters and leaves along the axis: an arrow in the middle of what is long enough for one.
void put_arrow(Figure& figure, QPointF from, QPointF to) {
  const QPointF step = to - from;
  const double length = std::hypot(step.x(), step.y());
  if (length < 14.0) return;
  const QPointF forward = step / length;
  const QPointF aside(-forward.y(), forward.x());
  const QPointF tip = 0.5 * (from + to) + 1.4 * forward;
  figure.poly({tip, tip - 2.8 * forward + 0.75 * aside, tip - 2.8 * forward - 0.75 * aside}, true, Stroke::none,
              Fill::black, Layer::axis);
}

void put_arrows(Figure& figure, const Dossier& dossier, const Board& board) {
  for (const Passage& passage : dossier.answer().path.passages) {
    const PieceGeometry& g = dossier.geometry(passage.piece);
    const Port* entry = g.port(passage.entry);
    const Port* exit = g.port(passage.exit);
    if (entry == nullptr || exit == nullptr || g.lines.size() != 1 || g.lines[0].upright_body) continue;
    if (g.lines[0].points.size() == 2) put_arrow(figure, board.at(entry->at), board.at(exit->at));
  }
}

/// Riser and whatever else stands inside another piece: seen through it.
void put_hidden(Figure& figure, const Dossier& dossier, const std::vector<PieceOutline>& outlines) {
  for (const PieceOutline& outline : outlines) {
    if (dossier.place(outline.piece) != Place::jacket) continue;
    for (const QPolygonF& area : outline.areas) figure.poly(area, true, Stroke::hidden, Fill::none, Layer::hidden);
  }
}

void put_floor(Figure& figure, const Board& board, const QRectF& around) {
  if (board.view() != ViewKind::front && board.view() != ViewKind::side) return;
  const double y = board.at(Position{}).y();
  if (y < around.top() - 1.0 || y > around.bottom() + 30.0) return;
  figure.line({around.left() - 6.0, y}, {around.right() + 6.0, y}, Stroke::outline, Layer::frame);
  for (double x = around.left() - 6.0; x < around.right() + 6.0; x += 3.0) {
    figure.line({x, y + 1.4}, {x + 1.4, y}, Stroke::thin, Layer::frame);
  }
}

void put_north(Figure& figure, QPointF at) {
  figure.line(at + QPointF(0, 5), at + QPointF(0, -3), Stroke::outline);
  figure.poly({at + QPointF(0, -5), at + QPointF(1.2, -2), at + QPointF(-1.2, -2)}, true, Stroke::outline, Fill::black,
              Layer::frame);
  figure.words(at + QPointF(0, -6), QStringLiteral("N"), Type::note, Anchor::middle);
}

QString caption(ViewKind view, const Scale& scale, UnitSystem units, const ViewWish& wish) {
  QString words = view == ViewKind::plan && wish.clearances
                      ? tr("Plan: room to what burns, openings, gauges")
                      : title_of(view);
  words += QStringLiteral(", %1").arg(scale.name);
  if (view == ViewKind::isometric) words += tr(" along the three axes");
  if (wish.dimensions && view != ViewKind::isometric) {
    words += units == UnitSystem::metric ? tr(". Dimensions of the axis in\u00A0mm")
                                         : tr(". Dimensions of the axis in feet and inches");
    if (view != ViewKind::plan)
      words += units == UnitSystem::metric ? tr(", levels in\u00A0m") : tr(", levels too");
  }
  return words;
}

}  // namespace

bool Taken::is_free(const QRectF& rect) const {
  return std::none_of(rects_.begin(), rects_.end(), [&rect](const QRectF& r) { return r.intersects(rect); });
}

double Taken::nuisance(const QRectF& rect, const QLineF& leader) const {
  double sum = 0.0;
  for (const QPolygonF& area : areas_) {
    if (area.boundingRect().intersects(rect) && !area.intersected(QPolygonF(rect)).isEmpty()) sum += 12.0;
  }
  for (const QRectF& r : rects_) {
    const std::array<QLineF, 2> diagonals{QLineF(r.topLeft(), r.bottomRight()), QLineF(r.topRight(), r.bottomLeft())};
    QPointF where;
    for (const QLineF& line : diagonals) {
      if (leader.intersects(line, &where) == QLineF::BoundedIntersection) sum += 15.0;
    }
  }
  for (const QLineF& line : lines_) {
    QPointF where;
    if (leader.intersects(line, &where) == QLineF::BoundedIntersection) sum += 25.0;
  }
  return sum;
}

void put_balloon(Figure& figure, QPointF at, const QString& word, double radius) {
  figure.circle(at, radius, Stroke::thin, Fill::white, Layer::numbers);
  figure.words(at + QPointF(0.0, 0.5 * cap_height(Type::note)), word, Type::note, Anchor::middle, 0.0, Layer::numbers);
}

namespace {

/// Pieces seen at the same place, one behind the other: they share a leader.
struct Numbered {
  QPointF anchor;
  std::vector<std::size_t> pieces;
};

std::vector<Numbered> numbered(const Dossier& dossier, const std::vector<PieceOutline>& outlines) {
  std::vector<const PieceOutline*> in_order;
  for (const PieceOutline& outline : outlines) {
    if (!outline.areas.empty()) in_order.push_back(&outline);
  }
  std::stable_sort(in_order.begin(), in_order.end(), [&dossier](const PieceOutline* a, const PieceOutline* b) {
    return dossier.number(a->piece) < dossier.number(b->piece);
  });
  std::vector<Numbered> all;
  for (const PieceOutline* outline : in_order) {
    const QPointF anchor = outline->axes.empty() ? outline->areas.front().boundingRect().center()
                                                 : 0.5 * (outline->axes.front().front() + outline->axes.front().back());
    const auto same = std::find_if(all.begin(), all.end(), [&anchor](const Numbered& n) {
      return std::hypot(n.anchor.x() - anchor.x(), n.anchor.y() - anchor.y()) < 1.0;
    });
    (same != all.end() ? *same : all.emplace_back(Numbered{anchor, {}})).pieces.push_back(outline->piece);
  }
  return all;
}

/// Half of what a balloon with that word takes up.
QSizeF balloon_half(const QString& word) {
  constexpr double radius = 2.7;
  return {word.size() <= 2 ? radius : 0.5 * width_of(word, Type::note) + 1.2, radius};
}

struct Spot {
  QPointF at;
  double nuisance = 1e9;
};

Spot best_spot(QPointF anchor, QSizeF half, const Taken& taken) {
  Spot best{anchor, 1e9};
  constexpr int directions = 24;
  for (const double reach : {8.0, 11.0, 14.0, 18.0, 23.0, 29.0, 36.0}) {
    for (int step = 0; step < directions; ++step) {
      const double angle = 2.0 * std::numbers::pi * (step + 0.5) / directions;
      const QPointF at = anchor + (reach + half.width() - half.height()) * QPointF(std::cos(angle), std::sin(angle));
      const QRectF rect(at.x() - half.width() - 0.4, at.y() - half.height() - 0.4, 2.0 * half.width() + 0.8,
                        2.0 * half.height() + 0.8);
      if (!taken.is_free(rect)) continue;
      const double nuisance = taken.nuisance(rect, QLineF(anchor, at)) + 0.6 * reach;
      if (nuisance < best.nuisance) best = {at, nuisance};
    }
  }
  return best;
}

}  // namespace

void put_numbers(Figure& figure, const Dossier& dossier, const std::vector<PieceOutline>& outlines, Taken& taken) {
  for (const Numbered& group : numbered(dossier, outlines)) {
    QString word = number_list(dossier, group.pieces);
    // Seen end on, a winding flue has dozens one behind the other: the parts list has them all.
    constexpr double most = 34.0;
    if (width_of(word, Type::note) > most) {
      const auto at = [&](std::size_t piece) { return dossier.number(piece); };
      const auto by_number = [&](std::size_t a, std::size_t b) { return at(a) < at(b); };
      const auto [first, last] = std::minmax_element(group.pieces.begin(), group.pieces.end(), by_number);
      word = tr("%1 of %2 to %3").arg(group.pieces.size()).arg(at(*first)).arg(at(*last));
    }
    const QSizeF half = balloon_half(word);
    const QPointF at = best_spot(group.anchor, half, taken).at;
    if (at != group.anchor) {
      figure.line(group.anchor, at, Stroke::thin, Layer::numbers);
      figure.circle(group.anchor, 0.45, Stroke::none, Fill::black, Layer::numbers);
      taken.cross(QLineF(group.anchor, at));
    }
    const QRectF rect(at.x() - half.width(), at.y() - half.height(), 2.0 * half.width(), 2.0 * half.height());
    if (half.width() > half.height()) {
      figure.box(rect, Stroke::thin, Fill::white, Layer::numbers);
      figure.words(at + QPointF(0.0, 0.5 * cap_height(Type::note)), word, Type::note, Anchor::middle, 0.0,
                   Layer::numbers);
    } else {
      put_balloon(figure, at, word, half.height());
    }
    taken.take(rect);
  }
}

void put_scale_bar(DrawnView& drawn, UnitSystem units, QPointF at) {
  const Length unit = units == UnitSystem::metric ? metre : foot;
  const double one = in(unit, metre) * 1000.0 / drawn.scale.denominator;  // mm of paper
  constexpr double wanted = 45.0;
  const std::array<double, 10> steps{0.05, 0.1, 0.2, 0.5, 1.0, 2.0, 5.0, 10.0, 20.0, 50.0};
  double step = steps.front();
  for (const double s : steps) {
    if (s * one <= 0.5 * wanted) step = s;
  }
  constexpr int boxes = 4;
  constexpr double height = 1.6;
  Figure& figure = drawn.figure;
  for (int i = 0; i < boxes; ++i) {
    const double x = at.x() + 0.5 * i * step * one;
    figure.box(QRectF(x, at.y(), 0.5 * step * one, height), Stroke::thin, i % 2 == 0 ? Fill::black : Fill::white,
               Layer::frame);
  }
  const double total = 0.5 * boxes * step;
  const auto label = [&](double value) { return digits(value); };
  const double baseline = at.y() + height + 0.8 + cap_height(Type::note);
  figure.words({at.x(), baseline}, QStringLiteral("0"), Type::note, Anchor::middle);
  figure.words({at.x() + step * one, baseline}, label(step), Type::note, Anchor::middle);
  figure.words({at.x() + total * one, baseline},
               QStringLiteral("%1 %2").arg(label(total),
                                           units == UnitSystem::metric ? QStringLiteral("m") : QStringLiteral("ft")),
               Type::note, Anchor::middle);
  drawn.scale_bar = QRectF(at.x(), at.y(), total * one, height);
  drawn.scale_bar_stands_for = total * unit;
}

DrawnView draw_view(const Dossier& dossier, ViewKind view, const Scale& scale, const ViewWish& wish) {
  const Board board(view, scale.denominator);
  DrawnView drawn;
  drawn.scale = scale;
  Figure& figure = drawn.figure;
  const QPainterPath masses = mass_outline(dossier, board);
  put_path(figure, masses, Stroke::outline, Fill::slanted, Layer::mass);
  if (view == ViewKind::isometric) put_path(figure, mass_tops(dossier, board), Stroke::thin, Fill::none, Layer::mass);
  const std::vector<PieceOutline> outlines = piece_outlines(dossier, board);
  QRectF around = masses.boundingRect();
  Taken taken;
  for (const PieceOutline& outline : outlines) {
    const bool inside = dossier.place(outline.piece) == Place::jacket;
    for (const QPolygonF& area : outline.areas) {
      around |= area.boundingRect();
      taken.avoid(area);
      if (!inside) figure.poly(area, true, Stroke::outline, Fill::white, Layer::flue);
    }
    for (const QPolygonF& edge : outline.edges) {
      if (!inside) figure.poly(edge, true, Stroke::thin, Fill::none, Layer::flue);
    }
  }
  put_hidden(figure, dossier, outlines);
  for (const PieceOutline& outline : outlines) {
    for (const QPolygonF& axis : outline.axes) figure.poly(axis, false, Stroke::axis, Fill::none, Layer::axis);
  }
  put_arrows(figure, dossier, board);
  put_floor(figure, board, around);
  if (wish.clearances) {
    put_clearances(figure, dossier, board, outlines, taken);
  } else {
    if (wish.dimensions && view != ViewKind::isometric) put_dimensions(drawn, dossier, board, around, taken);
    if (wish.numbers) put_numbers(figure, dossier, outlines, taken);
  }
  const QRectF box = figure.bounds();
  if (view == ViewKind::plan) put_north(figure, {box.right() + 5.0, box.top() + 8.0});
  if (wish.title) {
    const double y = box.bottom() + 4.0;
    put_scale_bar(drawn, dossier.units(), {box.left() + 2.0, y});
    const double from = drawn.scale_bar.right() + 9.0;
    const double room = std::max(60.0, box.right() - from);
    double baseline = y + cap_height(Type::note);
    for (const QString& line : wrapped(caption(view, scale, dossier.units(), wish), Type::note, room)) {
      figure.words({from, baseline}, line, Type::note);
      baseline += line_height(Type::note);
    }
  }
  return drawn;
}

}  // namespace fluewright::paper
