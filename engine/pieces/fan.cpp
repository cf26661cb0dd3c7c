// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// A fan in a straight length of pipe. It blows from its port "in" to its port "out"; what it does, running or standing
/// still, comes from its data sheet.
class DuctFan final : public Shape {
 public:
  std::string_view id() const override { return "fan"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 5> keys{"length", "bore", "fan", "speed", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override { return parts::straight(piece, {"in"}, {"out"}); }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    Stretch stretch = parts::straight_stretch(piece, index);
    stretch.fan = parts::fan_of(piece);
    return parts::entered_by({stretch}, "in", entry);
  }
};

}  // namespace

const Shape& fan() {
  static const DuctFan shape;
  return shape;
}

}  // namespace fluewright::shapes
