// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/tees.hpp"

#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// A weighted flap on the stack that lets room air in above its `set_draft`. In a series path the flue passes
/// straight by with the flap shut; the air it would let in needs a branch and is reported as left out.
class Regulator final : public Shape {
 public:
  std::string_view id() const override { return "regulator"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 4> keys{"length", "bore", "set_draft", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override { return parts::straight(piece, {"in"}, {"out"}); }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    Stretch stretch = parts::straight_stretch(piece, index);
    stretch.at_start.push_back(parts::loss("straight past the flap", straight_past_branch(), straight_past_branch(),
                                           loss::shut_branch.citation()));
    return parts::entered_by({stretch}, "in", entry);
  }

  std::string_view left_out() const override { return "set_draft"; }
};

}  // namespace

const Shape& regulator() {
  static const Regulator shape;
  return shape;
}

}  // namespace fluewright::shapes
