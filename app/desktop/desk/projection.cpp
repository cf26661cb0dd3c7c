// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/desk/projection.hpp"

#include "app/drawing/tr.hpp"

#include <QCoreApplication>

#include <cmath>

namespace fluewright {

namespace {

constexpr double cos30 = 0.86602540378443864676;

constexpr std::array plan_directions{heading_east, heading_north, heading_west, heading_south};
constexpr std::array front_directions{heading_east, heading_up(), heading_west, heading_down()};
constexpr std::array side_directions{heading_north, heading_up(), heading_south, heading_down()};
constexpr std::array isometric_directions{heading_east, heading_north,  heading_west,
                                          heading_south, heading_up(), heading_down()};

}  // namespace

Metres metres(const Position& position) {
  return {in(position.x, metre), in(position.y, metre), in(position.z, metre)};
}

Position position(const Metres& m) { return {m.x * metre, m.y * metre, m.z * metre}; }

Metres unit_of(const Heading& heading) {
  const Frame frame = frame_of(heading);
  return {frame.forward[0], frame.forward[1], frame.forward[2]};
}

double dot(const Metres& a, const Metres& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

Projection::Projection(ViewKind kind) : kind_{kind} {
  switch (kind) {
    case ViewKind::plan:
      right_ = {1, 0, 0};
      up_ = {0, 1, 0};
      toward_viewer_ = {0, 0, 1};
      break;
    case ViewKind::front:
    case ViewKind::unrolled:
      own_directions_ = front_directions;
      right_ = {1, 0, 0};
      up_ = {0, 0, 1};
      toward_viewer_ = {0, -1, 0};
      break;
    case ViewKind::side:
      right_ = {0, 1, 0};
      up_ = {0, 0, 1};
      toward_viewer_ = {1, 0, 0};
      break;
    case ViewKind::isometric:
      right_ = {cos30, -cos30, 0};
      up_ = {0.5, 0.5, 1};
      toward_viewer_ = {-1.0 / std::sqrt(3.0), -1.0 / std::sqrt(3.0), 1.0 / std::sqrt(3.0)};
      widening_ = std::sqrt(1.5);
      break;
  }
}

Projection Projection::unrolled_at(const Position& world, const Heading& outward, double drawn_at) {
  Projection made(ViewKind::unrolled);
  const Heading along{outward.azimuth, {}};
  made.right_ = unit_of(along);
  made.toward_viewer_ = {made.right_.y, -made.right_.x, 0.0};
  made.shift_ = drawn_at - dot(metres(world), made.right_);
  made.own_directions_ = {along, heading_up(outward.azimuth), opposite(along), heading_down(outward.azimuth)};
  return made;
}

QPointF Projection::on_sheet(const Metres& world) const { return {dot(world, right_) + shift_, dot(world, up_)}; }

std::span<const Heading> Projection::directions() const {
  switch (kind_) {
    case ViewKind::plan: return plan_directions;
    case ViewKind::front: return front_directions;
    case ViewKind::side: return side_directions;
    case ViewKind::unrolled: return own_directions_;
    case ViewKind::isometric: break;
  }
  return isometric_directions;
}

Metres Projection::in_world(QPointF sheet, const Metres& like) const {
  switch (kind_) {
    case ViewKind::plan: return {sheet.x(), sheet.y(), like.z};
    case ViewKind::front: return {sheet.x(), like.y, sheet.y()};
    case ViewKind::side: return {like.x, sheet.x(), sheet.y()};
    case ViewKind::unrolled: {
      const double on = sheet.x() - shift_ - dot(like, right_);
      return {like.x + on * right_.x, like.y + on * right_.y, sheet.y()};
    }
    case ViewKind::isometric: break;
  }
  const double across = sheet.x() / cos30;               // x - y
  const double away = 2.0 * (sheet.y() - like.z);        // x + y
  return {0.5 * (away + across), 0.5 * (away - across), like.z};
}

std::optional<double> Projection::along(const Heading& heading, const Metres& from, QPointF sheet) const {
  const QPointF step = on_sheet(unit_of(heading)) - on_sheet(Metres{});  // a way, not a place: the plane's shift is none of it
  const double square = QPointF::dotProduct(step, step);
  if (square < 1e-6) return std::nullopt;
  return QPointF::dotProduct(sheet - on_sheet(from), step) / square;
}

QString title_of(ViewKind kind) {
  const char* title = "";
  switch (kind) {
    case ViewKind::plan: title = QT_TR_NOOP("Plan"); break;
    case ViewKind::front: title = QT_TR_NOOP("Elevation from the south"); break;
    case ViewKind::side: title = QT_TR_NOOP("Elevation from the east"); break;
    case ViewKind::unrolled: title = QT_TR_NOOP("Elevation along the path"); break;
    case ViewKind::isometric: title = QT_TR_NOOP("Isometric"); break;
  }
  return tr(title);
}

}  // namespace fluewright
