// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/pieces/parts.hpp"

#include <array>
#include <cassert>

namespace fluewright::shapes {

namespace {

/// A lid on an open port, to be taken off for cleaning. Nothing passes it.
class EndCap final : public Shape {
 public:
  std::string_view id() const override { return "end_cap"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 3> keys{"length", "bore", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    PieceGeometry geometry = parts::straight(piece, {"in"}, {"lid"});
    geometry.ports.pop_back();
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView&, std::size_t, std::string_view, std::string_view) const override {
    assert(false && "an end cap has one port only");
    return {};
  }
};

}  // namespace

const Shape& end_cap() {
  static const EndCap shape;
  return shape;
}

}  // namespace fluewright::shapes
