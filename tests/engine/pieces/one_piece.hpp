// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/shared/library_reader.hpp"
#include "engine/pieces/shape.hpp"

#include <gtest/gtest.h>

#include <numbers>
#include <string>
#include <utility>
#include <vector>

namespace fluewright::test {

/// A piece of a shipped type, alone in the world at the origin.
class OnePiece {
 public:
  explicit OnePiece(std::string_view type, Heading heading = heading_east, Turn turn = Turn::left)
      : library_{shipped_library()}, type_{library_->piece_type(type)} {
    EXPECT_NE(type_, nullptr) << type;
    piece_.id = "p1";
    piece_.type = std::string(type);
    piece_.heading = heading;
    piece_.turn = turn;
  }

  OnePiece& with(std::string_view key, FieldValue value) {
    piece_.fields.insert_or_assign(std::string(key), std::move(value));
    return *this;
  }
  OnePiece& with_mm(std::string_view key, double mm) { return with(key, mm * millimetre); }

  [[nodiscard]] PieceView view() const { return {design_, *library_, piece_, *type_}; }
  [[nodiscard]] const Shape& shape() const { return *find_shape(type_->shape); }
  [[nodiscard]] PieceGeometry geometry() const { return shape().geometry(view()); }
  [[nodiscard]] Port port(std::string_view name) const {
    const PieceGeometry all = geometry();
    const Port* found = all.port(name);
    EXPECT_NE(found, nullptr) << name;
    return *found;
  }
  [[nodiscard]] std::vector<Stretch> way(std::string_view entry, std::string_view exit) const {
    return shape().passage(view(), 0, entry, exit);
  }
  [[nodiscard]] std::vector<FieldClash> clashes() const { return shape().clashes(view()); }

 private:
  std::shared_ptr<const Library> library_;
  const PieceType* type_;
  Design design_;
  Piece piece_;
};

/// All coefficients along a way, in flow direction.
[[nodiscard]] inline double zeta(const std::vector<Stretch>& way) {
  double sum = 0.0;
  for (const Stretch& s : way) {
    for (const auto* losses : {&s.at_start, &s.at_end}) {
      for (const LocalLoss& l : *losses) sum += l.forward;
    }
  }
  return sum;
}

inline void expect_at(const Position& p, double x, double y, double z) {
  EXPECT_NEAR(in(p.x, millimetre), x, 1e-6);
  EXPECT_NEAR(in(p.y, millimetre), y, 1e-6);
  EXPECT_NEAR(in(p.z, millimetre), z, 1e-6);
}

}  // namespace fluewright::test
