// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/pieces/parts.hpp"

#include <algorithm>
#include <array>

namespace fluewright::shapes {

namespace {

/// A box between two pipes, wider than either: the manifold under a barrel with its ash pit. Its loss is the widening
/// into it and the narrowing out of it, which the solver adds as steps.
class Chamber final : public Shape {
 public:
  std::string_view id() const override { return "chamber"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 6> keys{"length", "bore", "out_bore", "width", "height", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    PieceGeometry geometry = parts::straight(piece, {"in"}, {"out"});
    geometry.ports.back().section = parts::out_section_of(piece);
    geometry.lines[0].width = parts::outside_width(piece, box(piece));
    geometry.lines[0].upright_body = true;
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    const Position along = parts::straight_step(piece);
    return parts::entered_by({parts::stretch_of(piece, index, box(piece), distance({}, along), along.z)}, "in", entry);
  }

  std::vector<FieldClash> clashes(const PieceView& piece) const override {
    std::vector<FieldClash> found;
    for (const std::string_view bore : {"bore", "out_bore"}) {
      parts::want_below(found, piece, bore, std::min(piece.length("width"), piece.length("height")), Length{});
    }
    return found;
  }

 private:
  static Section box(const PieceView& piece) {
    return Section::rectangle(piece.length("width"), piece.length("height"));
  }
};

}  // namespace

const Shape& chamber() {
  static const Chamber shape;
  return shape;
}

}  // namespace fluewright::shapes
