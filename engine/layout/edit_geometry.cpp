// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_geometry.hpp"

#include "engine/layout/piece_check.hpp"
#include "engine/layout/value_range.hpp"
#include "engine/pieces/parts.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

namespace fluewright::edit {

namespace {

double rounded(double value, double per_unit) { return std::round(value * per_unit) / per_unit; }

std::optional<GridPoint> in_grid(std::int64_t x, std::int64_t y, std::int64_t z) {
  const auto fits = [](std::int64_t count) {
    return count >= std::numeric_limits<std::int32_t>::min() && count <= std::numeric_limits<std::int32_t>::max();
  };
  if (!fits(x) || !fits(y) || !fits(z)) {
    return std::nullopt;
  }
  return GridPoint{static_cast<std::int32_t>(x), static_cast<std::int32_t>(y), static_cast<std::int32_t>(z)};
}

}  // namespace

Direction direction_of(const Heading& heading) {
  const Frame frame = frame_of(heading);
  return {frame.forward[0], frame.forward[1], frame.forward[2]};
}

Ratio cosine_between(const Direction& a, const Direction& b) { return a.x * b.x + a.y * b.y + a.z * b.z; }

Length along(const Position& step, const Direction& direction) {
  return step.x * direction.x + step.y * direction.y + step.z * direction.z;
}

Position stepped(const Direction& direction, Length length) {
  return {length * direction.x, length * direction.y, length * direction.z};
}

Angle angle_between(const Heading& a, const Heading& b) {
  const Direction u = direction_of(a);
  const Direction v = direction_of(b);
  // From the cross product as well as the dot product: the arc cosine alone is blind near 0 and 180 degrees.
  const double x = u.y * v.z - u.z * v.y;
  const double y = u.z * v.x - u.x * v.z;
  const double z = u.x * v.y - u.y * v.x;
  return std::atan2(std::sqrt(x * x + y * y + z * z), static_cast<double>(cosine_between(u, v))) * radian;
}

bool is_vertical(const Heading& heading) {
  return same_direction(heading, heading_up()) || same_direction(heading, heading_down());
}

Heading drawn_heading(const Heading& heading) {
  const bool is_number = std::isfinite(in(heading.azimuth, radian)) && std::isfinite(in(heading.elevation, radian));
  return is_number ? heading : Heading{};
}

Heading tidy(const Heading& given) {
  const Heading heading = drawn_heading(given);
  double azimuth = rounded(std::fmod(in(heading.azimuth, degree), 360.0), 100.0);
  if (azimuth < 0.0) {
    azimuth += 360.0;
  }
  if (azimuth >= 360.0) {
    azimuth -= 360.0;
  }
  // Adding zero makes a plain zero of a negative one.
  return {(azimuth + 0.0) * degree, (rounded(in(heading.elevation, degree), 100.0) + 0.0) * degree};
}

Length tidy(Length length) { return rounded(in(length, millimetre), 1e6) * millimetre; }

Heading with_azimuth(const Heading& heading, Angle azimuth) { return tidy({azimuth, heading.elevation}); }

std::optional<GridPoint> sum(const GridPoint& a, const GridPoint& b) {
  return in_grid(std::int64_t{a.x} + b.x, std::int64_t{a.y} + b.y, std::int64_t{a.z} + b.z);
}

std::optional<GridPoint> difference(const GridPoint& a, const GridPoint& b) {
  return in_grid(std::int64_t{a.x} - b.x, std::int64_t{a.y} - b.y, std::int64_t{a.z} - b.z);
}

std::optional<GridPoint> grid_point_at(const Position& position) {
  constexpr double most = static_cast<double>(std::numeric_limits<std::int32_t>::max()) - 1.0;
  for (const Length& coordinate : {position.x, position.y, position.z}) {
    if (!(std::abs(in(coordinate, grid_count)) < most)) {
      return std::nullopt;
    }
  }
  return grid_point_near(position);
}

bool meet(const Port& a, const Port& b, Length within) {
  return distance(a.at, b.at) <= within && same_direction(a.outward, opposite(b.outward));
}

const PieceType* known_type(const Library& library, std::string_view type) {
  const PieceType* found = library.piece_type(type);
  return found != nullptr && find_shape(found->shape) != nullptr ? found : nullptr;
}

namespace {

/// Whether shapes may be asked about the piece as it is. Most pieces have few fields of their own, so this is quick.
bool is_sound(const PieceView& view, const Shape& shape) {
  const Piece& piece = view.piece();
  if (!std::isfinite(in(piece.heading.azimuth, radian)) || !std::isfinite(in(piece.heading.elevation, radian))) {
    return false;
  }
  for (const auto& [key, value] : piece.fields) {
    const FieldSpec* spec = view.type().field(key);
    if (spec != nullptr && check_range(*spec, value)) {
      return false;
    }
  }
  return shape.clashes(view).empty() && parts::embedding_clashes(view).empty();
}

}  // namespace

std::optional<PieceGeometry> geometry_of(const Design& design, const Library& library, const Piece& piece) {
  const PieceType* type = library.piece_type(piece.type);
  const Shape* shape = type != nullptr ? find_shape(type->shape) : nullptr;
  if (shape == nullptr) {
    return std::nullopt;
  }
  const PieceView view{design, library, piece, *type};
  if (is_sound(view, *shape)) {
    return shape->geometry(view);
  }
  // As the path check draws it: with the fallback in the place of what is wrong.
  const KnownPiece known{type, shape};
  const Piece sound = mended(design, library, piece, known, check_piece(design, library, piece, known));
  return shape->geometry(PieceView{design, library, sound, *type});
}

const FieldValue* value_of(const Piece& piece, const PieceType& type, std::string_view key) {
  const FieldSpec* spec = type.field(key);
  if (spec == nullptr) {
    return nullptr;
  }
  const auto own = piece.fields.find(key);
  return own != piece.fields.end() ? &own->second : &spec->fallback;
}

std::optional<StraightRun> straight_run(const Design& design, const Library& library, const Piece& piece) {
  const PieceType* type = known_type(library, piece.type);
  if (type == nullptr || type->shape != "run") {
    return std::nullopt;
  }
  const FieldValue* value = value_of(piece, *type, "length");
  const Length* length = value != nullptr ? std::get_if<Length>(value) : nullptr;
  if (length == nullptr || *length < length_tolerance) {
    return std::nullopt;
  }
  PieceGeometry geometry = *geometry_of(design, library, piece);
  if (geometry.ports.size() != 2) {
    return std::nullopt;
  }
  const Position reach = geometry.ports[1].at - geometry.ports[0].at;
  return StraightRun{type, std::move(geometry.ports[0]), std::move(geometry.ports[1]), *length,
                     {reach.x / *length, reach.y / *length, reach.z / *length}};
}

bool straight_on(const Port& a, const Port& b) {
  const Direction onwards = direction_of(a.outward);
  const Length length = along(b.at - a.at, onwards);
  Position aside = b.at - a.at - stepped(onwards, length);
  constexpr double steepest_slope = 0.5;  // of the catalogue
  if (std::abs(static_cast<double>(onwards.z)) < 1e-6 && bu::abs(aside.z) < steepest_slope * length + meeting_distance) {
    aside.z = Length{};
  }
  return length > -meeting_distance && distance({}, aside) < meeting_distance;
}

std::optional<Through> straight_through(const PieceGeometry& geometry) {
  const Port& entry = geometry.ports.front();
  Port onwards = entry;
  onwards.outward = opposite(entry.outward);
  for (const Port& exit : geometry.ports) {
    if (&exit != &entry && exit.kind == PortKind::joint && same_direction(exit.outward, onwards.outward) &&
        straight_on(onwards, exit)) {
      return entry.kind == PortKind::joint
                 ? std::optional{Through{entry, exit, tidy(along(exit.at - entry.at, direction_of(onwards.outward)))}}
                 : std::nullopt;
    }
  }
  return std::nullopt;
}

}  // namespace fluewright::edit
