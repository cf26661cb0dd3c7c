// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/paper/type.hpp"
#include "app/paper/view_figure.hpp"
#include "engine/advice/clearance.hpp"

#include <QPainterPathStroker>

#include <algorithm>
#include <cmath>
#include <map>

namespace fluewright::paper {

namespace {

QPainterPath grown(const QPainterPath& path, double by) {
  QPainterPathStroker stroker;
  stroker.setWidth(2.0 * by);
  stroker.setJoinStyle(Qt::RoundJoin);
  stroker.setCurveThreshold(0.05);
  return stroker.createStroke(path).united(path).simplified();
}

/// What must stay so far from everything that burns, by distance in tenths of a millimetre.
std::map<long, QPainterPath> by_distance(const Dossier& dossier, const std::vector<PieceOutline>& outlines,
                                         const QPainterPath& masses) {
  std::map<long, QPainterPath> paths;
  for (const PieceOutline& outline : outlines) {
    if (!dossier.sound(outline.piece)) continue;
    const auto clearance = clearance_of(dossier.view(outline.piece));
    if (!clearance) continue;
    QPainterPath& path = paths[std::lround(in(clearance->least.value, grid_count))];
    if (dossier.place(outline.piece) == Place::mass) {
      path = path.united(masses);
      continue;
    }
    for (const QPolygonF& area : outline.areas) {
      QPainterPath one;
      one.addPolygon(area);
      one.closeSubpath();
      path = path.united(one);
    }
  }
  return paths;
}

/// A place on the outline for what it keeps clear by: its top if that is free, else along it.
Words label_on(const QPainterPath& outline, const QString& label, const Taken& taken) {
  std::vector<QPointF> points;
  for (int i = 0; i < outline.elementCount(); ++i) points.push_back(outline.elementAt(i));
  std::stable_sort(points.begin(), points.end(), [](QPointF a, QPointF b) { return a.y() < b.y(); });
  Words words{{}, label, Type::note, Anchor::middle, 0.0, Layer::clearances, false};
  for (const QPointF& p : points) {
    words.at = p + QPointF(0.0, -1.0);
    if (taken.is_free(extent(words).adjusted(-0.6, -0.4, 0.6, 0.2))) return words;
  }
  return words;
}

void put_mark(Figure& figure, Taken& taken, QPointF anchor, const QString& letter, bool square) {
  constexpr double size = 2.9;
  for (const double reach : {7.0, 10.0, 14.0, 19.0}) {
    for (int step = 0; step < 16; ++step) {
      const double angle = 2.0 * 3.14159265358979 * (step + 2) / 16.0;
      const QPointF at = anchor + reach * QPointF(std::cos(angle), -std::sin(angle));
      const QRectF rect(at.x() - size, at.y() - size, 2.0 * size, 2.0 * size);
      if (!taken.is_free(rect.adjusted(-0.5, -0.5, 0.5, 0.5)) || taken.nuisance(rect, QLineF(anchor, at)) > 14.0)
        continue;
      figure.line(anchor, at, Stroke::thin, Layer::numbers);
      figure.circle(anchor, 0.6, Stroke::none, Fill::black, Layer::numbers);
      if (square) {
        figure.box(rect, Stroke::outline, Fill::white, Layer::numbers);
        figure.words(at + QPointF(0.0, 0.5 * cap_height(Type::note)), letter, Type::note, Anchor::middle, 0.0,
                     Layer::numbers);
      } else {
        put_balloon(figure, at, letter, size);
      }
      taken.take(rect);
      return;
    }
  }
}

Position middle_of(const Dossier& dossier, std::size_t piece) {
  const PieceGeometry& g = dossier.geometry(piece);
  if (g.lines.empty() || g.lines.front().points.empty()) return {};
  const auto& points = g.lines.front().points;
  return {0.5 * (points.front().x + points.back().x), 0.5 * (points.front().y + points.back().y), points.front().z};
}

/// Within 1 to 3 m of the feed's mouth, on the side the path does not go to.
void put_alarm(Figure& figure, const Dossier& dossier, const Board& board, Taken& taken) {
  if (dossier.corners().empty()) return;
  const Position& mouth = dossier.corners().front().at;
  double x = 0.0;
  double y = 0.0;
  for (const Corner& corner : dossier.corners()) {
    x += in(corner.at.x - mouth.x, metre);
    y += in(corner.at.y - mouth.y, metre);
  }
  const double length = std::hypot(x, y);
  const double ux = length < 1e-6 ? -1.0 : -x / length;
  const double uy = length < 1e-6 ? 0.0 : -y / length;
  const QPointF at = board.at({mouth.x + ux * 1.5 * metre, mouth.y + uy * 1.5 * metre, mouth.z});
  const QRectF sign(at.x() - 5.5, at.y() - 3.0, 11.0, 6.0);
  figure.line(board.at(mouth), at, Stroke::thin, Layer::notes);
  figure.box(sign, Stroke::bold, Fill::white, Layer::notes);
  figure.words(at + QPointF(0.0, 0.5 * cap_height(Type::table_head)), QStringLiteral("CO"), Type::table_head,
               Anchor::middle);
  taken.take(sign);
}

}  // namespace

void put_clearances(Figure& figure, const Dossier& dossier, const Board& board,
                    const std::vector<PieceOutline>& outlines, Taken& taken) {
  const QPainterPath masses = mass_outline(dossier, board);
  std::vector<std::pair<QPainterPath, QString>> all;
  for (const auto& [counts, path] : by_distance(dossier, outlines, masses)) {
    const Length distance = static_cast<double>(counts) * grid_count;
    const QPainterPath around = grown(path, board.on_paper(distance));
    for (const QPolygonF& ring : around.toSubpathPolygons()) {
      // Holes inside a ring of pieces are no place for anything that burns either.
      if (ring.size() > 2) figure.poly(ring, true, Stroke::clearance, Fill::none, Layer::clearances);
    }
    all.emplace_back(around, text(show(on_the_tape(distance, dossier.units()), dossier.units()).text()));
  }
  // Labels lie over all outlines; the widest outline is labelled first.
  std::reverse(all.begin(), all.end());
  for (const auto& [around, label] : all) {
    const Words words = label_on(around, label, taken);
    figure.box(extent(words).adjusted(-0.4, -0.2, 0.4, 0.0), Stroke::none, Fill::white, Layer::clearances);
    figure.marks.emplace_back(words);
    taken.take(extent(words));
  }
  put_alarm(figure, dossier, board, taken);
  char letter = 'A';
  for (const GaugePoint& gauge : dossier.upkeep().gauges) {
    put_mark(figure, taken, board.at(gauge.at), QString(QLatin1Char(letter++)), false);
  }
  int number = 1;
  for (const Access& access : dossier.upkeep().accesses) {
    put_mark(figure, taken, board.at(middle_of(dossier, access.piece)), QString::number(number++), true);
  }
}

}  // namespace fluewright::paper
