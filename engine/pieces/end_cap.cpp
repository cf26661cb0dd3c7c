// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/pieces/parts.hpp"

#include <array>
#include <utility>

namespace fluewright::shapes {

namespace {

/// A lid on an open port, to be taken off for cleaning. Nothing passes it; with `cover` "off" the end stands open.
class EndCap final : public Shape {
 public:
  std::string_view id() const override { return "end_cap"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 4> keys{"length", "bore", "cover", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    PieceGeometry geometry = parts::straight(piece, {"in"}, {"lid", parts::air_beside(piece)});
    if (piece.choice("cover") == "off") {
      geometry.ports.back().beside_the_way = true;
    } else {
      geometry.ports.pop_back();
    }
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    Stretch stretch = parts::straight_stretch(piece, index);
    LocalLoss entering = parts::open_end_loss(piece);
    std::swap(entering.forward, entering.backward);
    stretch.at_end.push_back(std::move(entering));
    return parts::entered_by({stretch}, "in", entry);
  }
};

}  // namespace

const Shape& end_cap() {
  static const EndCap shape;
  return shape;
}

}  // namespace fluewright::shapes
