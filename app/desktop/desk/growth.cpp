// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/growth.hpp"

#include "app/desktop/desk/board.hpp"
#include "app/desktop/desk/landmarks.hpp"
#include "app/drawing/tr.hpp"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

/// How far from `end` along `heading` the snap grid's point nearest to the mouse is; negative behind.
double snapped_reach(const Board& board, const Metres& from, const Heading& heading, double reach,
                     const Landmarks& landmarks) {
  const Metres unit = unit_of(heading);
  const double start = dot(from, unit);
  // Along a grid axis the far coordinate is put on the grid; along a slanted one the length itself.
  const bool on_axis = std::max({std::abs(unit.x), std::abs(unit.y), std::abs(unit.z)}) > 0.999;
  if (!on_axis) return snapped(reach, board.document().grid_step());
  const double near = 0.6 * in(board.document().grid_step(), metre);
  const auto in_line = landmarks.in_line(unit, start + reach, near);
  if (in_line && std::abs(*in_line - start) > near) return *in_line - start;
  return snapped(start + reach, board.document().grid_step()) - start;
}

/// A vertical heading keeps the azimuth of the path that leads there.
Heading facing(const Heading& heading, const Heading& like) {
  if (std::abs(unit_of(heading).z) > 0.999) return {like.azimuth, heading.elevation};
  return heading;
}

}  // namespace

double snapped(double metres, Length step) {
  const double s = in(step, metre);
  return std::round(metres / s) * s;
}

EditResult grow_legs(const Board& board, const Design& base, const PortRef& end, const std::vector<Leg>& legs) {
  EditResult result{base, {}, {}};
  PortRef from = end;
  for (std::size_t i = 0; i < legs.size(); ++i) {
    EditResult grown = grow(*result.design, board.document().library(), from, legs[i].heading, legs[i].length,
                            board.type_towards(legs[i].heading), board.bend_type());
    if (!grown.design) return grown;
    result = std::move(grown);
    if (i + 1 == legs.size()) break;
    const auto next = board.open_end_of(*result.design, result.touched);
    if (!next) return {std::nullopt, Refusal::not_an_open_end, {}};
    from = next->ref;
  }
  return result;
}

namespace {

/// The way across that the mouse pulls at most.
struct Pull {
  Heading heading;
  double reach = 0.0;
  bool square = false;
};

Pull strongest_pull(const OpenEnd& end, const Projection& projection, QPointF sheet) {
  const Metres from = metres(end.port.at);
  const Metres outward = unit_of(end.port.outward);
  Pull strongest;
  for (const Heading& direction : projection.directions()) {
    const auto reach = projection.along(direction, from, sheet);
    const double cosine = dot(unit_of(direction), outward);
    if (!reach || *reach <= 0.0 || std::abs(cosine) > 0.95 || cosine < -0.1) continue;
    const bool square = std::abs(cosine) < 0.001;
    // After a slanted length there may be no grid direction square to it; where there is one it has precedence.
    if ((square && !strongest.square) || (square == strongest.square && *reach > strongest.reach)) {
      strongest = {facing(direction, end.port.outward), *reach, square};
    }
  }
  return strongest;
}

/// Straight on and then across, the corner level with the mouse: the bend takes its part of the way straight on.
std::vector<Leg> around_the_corner(const Board& board, const Design& base, const OpenEnd& end, const Leg& turn,
                                   double straight_length) {
  const double least = 0.5 * in(board.document().grid_step(), metre);
  const EditResult bent = grow_legs(board, base, end.ref, {turn});
  if (!bent.design) {
    // Too near for the bend: straight on as long as that makes sense.
    if (straight_length >= least) return {{end.port.outward, straight_length * metre}};
    return {turn};
  }
  const auto far_end = board.open_end_of(*bent.design, bent.touched);
  const Metres outward = unit_of(end.port.outward);
  const double bend_leg = far_end ? dot(metres(far_end->port.at), outward) - dot(metres(end.port.at), outward) : 0.0;
  const double first = straight_length - bend_leg;
  if (first < least) return {turn};
  return {{end.port.outward, first * metre}, turn};
}

}  // namespace

std::vector<Leg> legs_towards(const Board& board, const Design& base, const OpenEnd& end, const Projection& projection,
                              QPointF sheet, const Landmarks& landmarks) {
  const Metres from = metres(end.port.at);
  const double least = 0.5 * in(board.document().grid_step(), metre);
  const double along = projection.along(end.port.outward, from, sheet).value_or(0.0);
  const Pull pull = strongest_pull(end, projection, sheet);

  // In the isometric view every screen direction has parts along several axes: only the stronger one counts.
  const bool isometric = projection.kind() == ViewKind::isometric;
  const double bore = in(end.port.section.equal_area_diameter(), metre);
  const bool straight_only = isometric || !pull.square ? along >= pull.reach : pull.reach < 0.75 * bore && along > 0.0;
  const double straight_length = snapped_reach(board, from, end.port.outward, along, landmarks);
  if (straight_only) {
    if (straight_length < least) return {};
    return {{end.port.outward, straight_length * metre}};
  }
  const double across_length = snapped_reach(board, from, pull.heading, pull.reach, landmarks);
  if (across_length < least) return {};
  const Leg turn{pull.heading, across_length * metre};
  if (isometric || !pull.square || straight_length < least) return {turn};
  return around_the_corner(board, base, end, turn, straight_length);
}

QString length_words(Length length, const Board& board) {
  return QString::fromStdString(show(length, board.document().units(), Meaning::small_length).text());
}

QString direction_words(const Heading& heading) {
  const Metres unit = unit_of(heading);
  const char* said = QT_TR_NOOP("at a slant");
  if (unit.z > 0.999) said = QT_TR_NOOP("up");
  if (unit.z < -0.999) said = QT_TR_NOOP("down");
  if (unit.x > 0.999) said = QT_TR_NOOP("east");
  if (unit.x < -0.999) said = QT_TR_NOOP("west");
  if (unit.y > 0.999) said = QT_TR_NOOP("north");
  if (unit.y < -0.999) said = QT_TR_NOOP("south");
  return tr(said);
}

}  // namespace fluewright
