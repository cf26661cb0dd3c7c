// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

#include "app/shared/library_reader.hpp"

#include <cmath>
#include <set>

namespace fluewright::tests {

namespace {

const FieldValue& value_of(const Piece& piece, std::string_view key) {
  const auto given = piece.fields.find(key);
  return given != piece.fields.end() ? given->second : shipped().piece_type(piece.type)->field(key)->fallback;
}

}  // namespace

const Library& shipped() {
  static const std::shared_ptr<const Library> library = shipped_library();
  return *library;
}

Design taken(const EditResult& result) {
  if (!result.design) {
    ADD_FAILURE() << "the edit was refused, reason " << static_cast<int>(result.refusal);
    return {};
  }
  for (const std::string& gap : gaps(*result.design)) {
    ADD_FAILURE() << gap;
  }
  return *result.design;
}

::testing::AssertionResult refused_as(const EditResult& result, Refusal why) {
  if (result.design) {
    return ::testing::AssertionFailure() << "the edit was done";
  }
  if (result.refusal != why) {
    return ::testing::AssertionFailure() << "refused for reason " << static_cast<int>(result.refusal);
  }
  return ::testing::AssertionSuccess();
}

std::vector<std::string> gaps(const Design& design) {
  std::vector<std::string> found;
  const std::vector<PieceGeometry> geometry = geometries(design, shipped());
  const auto port = [&](const PortRef& ref) -> const Port* {
    const Piece* piece = design.piece(ref.piece);
    return piece != nullptr ? geometry[static_cast<std::size_t>(piece - design.pieces.data())].port(ref.port) : nullptr;
  };
  for (const Joint& joint : design.joints) {
    const std::string name = joint.a.piece + "." + joint.a.port + " - " + joint.b.piece + "." + joint.b.port;
    const Port* port_a = port(joint.a);
    const Port* port_b = port(joint.b);
    if (port_a == nullptr || port_b == nullptr) {
      found.push_back(name + ": no such port");
      continue;
    }
    const double apart = in(distance(port_a->at, port_b->at), millimetre);
    if (apart > 0.2) {
      found.push_back(name + ": " + std::to_string(apart) + " mm apart");
    } else if (!same_direction(port_a->outward, opposite(port_b->outward))) {
      found.push_back(name + ": not face to face");
    }
  }
  return found;
}

std::vector<std::string> disorder(const Design& design) {
  std::vector<std::string> found;
  std::set<std::string> seen;
  for (const Piece& piece : design.pieces) {
    if (!seen.insert(piece.id).second) {
      found.push_back(piece.id + ": twice");
    }
  }
  for (const Joint& joint : design.joints) {
    for (const PortRef* end : {&joint.a, &joint.b}) {
      if (!seen.insert(end->piece + "." + end->port).second) {
        found.push_back(end->piece + "." + end->port + ": in two joints");
      }
    }
  }
  for (const Finding& finding : check_values(design, shipped())) {
    found.push_back(finding.piece + "." + finding.field + ": bad value");
  }
  return found;
}

Port port_of(const Design& design, std::string_view piece, std::string_view port) {
  const Piece* found = design.piece(piece);
  const std::vector<PieceGeometry> all = geometries(design, shipped());
  const Port* at = found != nullptr ? all[static_cast<std::size_t>(found - design.pieces.data())].port(port) : nullptr;
  if (at == nullptr) {
    ADD_FAILURE() << "no port " << piece << "." << port;
    return {};
  }
  return *at;
}

double millimetres(const Design& design, std::string_view piece, std::string_view key) {
  return in(std::get<Length>(value_of(piece_of(design, piece), key)), millimetre);
}

const Piece& piece_of(const Design& design, std::string_view piece) {
  static const Piece none;
  const Piece* found = design.piece(piece);
  if (found == nullptr) {
    ADD_FAILURE() << "no piece " << piece;
    return none;
  }
  return *found;
}

double total_run(const Design& design, std::string_view type) {
  double sum = 0.0;
  for (const Piece& piece : design.pieces) {
    if (piece.type == type) {
      sum += millimetres(design, piece.id);
    }
  }
  return sum;
}

Design bench_pipe(Length length) {
  const Design placed = taken(place_piece({}, shipped(), "bench_pipe", {}, heading_east));
  return taken(set_field(placed, shipped(), "p1", "length", length));
}

GridPoint in_millimetres(double x, double y, double z) {
  return grid_point_near({x * millimetre, y * millimetre, z * millimetre});
}

Drawn grown(const Drawn& from, Heading heading, Length length, std::string_view port, std::string_view run,
            std::string_view bend) {
  const EditResult result = grow(from.design, shipped(), {from.last, std::string{port}}, heading, length, run, bend);
  return {taken(result), result.touched};
}

::testing::AssertionResult is_at(const Position& position, double x, double y, double z, double within) {
  const Position wanted{x * millimetre, y * millimetre, z * millimetre};
  if (in(distance(position, wanted), millimetre) <= within) {
    return ::testing::AssertionSuccess();
  }
  return ::testing::AssertionFailure() << "at " << in(position.x, millimetre) << ", " << in(position.y, millimetre)
                                       << ", " << in(position.z, millimetre);
}

}  // namespace fluewright::tests
