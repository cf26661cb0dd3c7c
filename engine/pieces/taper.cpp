// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/local_loss.hpp"
#include "engine/pieces/parts.hpp"

#include <array>
#include <cmath>

namespace fluewright::shapes {

namespace {

/// A gradual change of section over `length`: reducer, expander, round to rectangular. Half of it counts with the
/// first section and half with the second; the step between them is eased, the loss of the cone stands on the
/// narrower half.
class Taper final : public Shape {
 public:
  std::string_view id() const override { return "taper"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 2> keys{"length", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    PieceGeometry geometry = parts::straight(piece, {"in"}, {"out"});
    geometry.ports.back().section = parts::out_section_of(piece);
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    const Position along = parts::straight_step(piece);
    const Length half = 0.5 * distance({}, along);
    Stretch first = parts::stretch_of(piece, index, parts::section_of(piece), half, 0.5 * along.z);
    Stretch second = parts::stretch_of(piece, index, parts::out_section_of(piece), half, 0.5 * along.z);
    second.eased_step_at_start = true;
    if (first.section.area() > second.section.area()) {
      second.at_start.push_back(cone_loss(second.section, first.section, 2.0 * half, true));
    } else {
      first.at_end.push_back(cone_loss(first.section, second.section, 2.0 * half, false));
    }
    return parts::entered_by({first, second}, "in", entry);
  }

 private:
  static LocalLoss cone_loss(const Section& narrow, const Section& wide, Length length, bool narrows) {
    const Length widening = wide.equal_area_diameter() - narrow.equal_area_diameter();
    const Angle included = 2.0 * std::atan(0.5 * (widening / length).value()) * radian;
    const Ratio narrowing = gradual_contraction(wide.area(), narrow.area(), included);
    const Ratio expanding = gradual_expansion(narrow.area(), wide.area(), included);
    if (narrows) return parts::loss("gradual narrowing", narrowing, expanding, loss::reducer.citation());
    return parts::loss("gradual widening", expanding, narrowing, loss::diffuser.citation());
  }
};

}  // namespace

const Shape& taper() {
  static const Taper shape;
  return shape;
}

}  // namespace fluewright::shapes
