// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/local_loss.hpp"
#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// A fan on top of the stack, blowing out. What it does, running or standing still, comes from its data sheet; the free
/// exit behind it is the solver's.
class FanHead final : public Shape {
 public:
  std::string_view id() const override { return "fan_head"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 5> keys{"length", "bore", "fan", "speed", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    return parts::straight(piece, {"in"}, {"top", PortKind::outdoor_air});
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    Stretch stretch = parts::straight_stretch(piece, index);
    stretch.fan = parts::fan_of(piece);
    stretch.fan->at_end = true;
    stretch.at_end.push_back(
        parts::loss("rim, when air comes down", 0.0, thin_wall_entry(0.0), loss::pipe_end_entry.citation()));
    return parts::entered_by({stretch}, "in", entry);
  }
};

}  // namespace

const Shape& fan_head() {
  static const FanHead shape;
  return shape;
}

}  // namespace fluewright::shapes
