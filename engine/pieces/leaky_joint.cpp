// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// A joint that is not tight: a short pipe with a crack in its side, `crack_width` by `crack_length`.
class LeakyJoint final : public Shape {
 public:
  std::string_view id() const override { return "leaky_joint"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 5> keys{"length", "bore", "crack_width", "crack_length", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override { return parts::straight(piece, {"in"}, {"out"}); }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    return parts::entered_by({parts::straight_stretch(piece, index)}, "in", entry);
  }

  bool has_side_opening() const override { return true; }

  std::optional<Meeting> meeting(const PieceView& piece, std::size_t index) const override {
    Opening crack;
    crack.piece = index;
    crack.area = piece.length("crack_width") * piece.length("crack_length");
    return parts::side_opening(piece, crack);
  }

  std::vector<Stretch> leg(const PieceView& piece, std::size_t index, std::string_view port,
                           bool inwards) const override {
    return parts::half_leg(piece, index, port, inwards);
  }

  /// A crack runs round the joint once at most.
  std::vector<FieldClash> clashes(const PieceView& piece) const override {
    std::vector<FieldClash> found;
    const Length round = parts::circle_of(piece, "bore").wetted_perimeter();
    parts::want_below(found, piece, "crack_length", round, Length{});
    return found;
  }
};

}  // namespace

const Shape& leaky_joint() {
  static const LeakyJoint shape;
  return shape;
}

}  // namespace fluewright::shapes
