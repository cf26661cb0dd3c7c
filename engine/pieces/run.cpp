// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// A straight length of one section: bench pipe, brick channel, floor tunnel, riser, stovepipe, stack.
class Run final : public Shape {
 public:
  std::string_view id() const override { return "run"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 2> keys{"length", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override { return parts::straight(piece, {"in"}, {"out"}); }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    return parts::entered_by({parts::straight_stretch(piece, index)}, "in", entry);
  }
};

}  // namespace

const Shape& run() {
  static const Run shape;
  return shape;
}

}  // namespace fluewright::shapes
