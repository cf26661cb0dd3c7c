// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/local_loss.hpp"

#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// The top of the stack: open, under a rain cap (`gap_ratio`, gap over bore) or a cap of known loss (`cap_loss`), with
/// or without a spark `screen`, of which `clogged_share` is dirty. The velocity head of the leaving gas is the
/// solver's; these coefficients come on top of it.
class StackHead final : public Shape {
 public:
  std::string_view id() const override { return "stack_head"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 4> keys{"length", "screen", "clogged_share", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    return parts::straight(piece, {"in"}, {"top", PortKind::outdoor_air});
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    Stretch stretch = parts::straight_stretch(piece, index);
    // When the stack runs backwards its rim is a free pipe end that air goes into.
    stretch.at_end.push_back(
        parts::loss("rim, when air comes down", 0.0, thin_wall_entry(0.0), loss::pipe_end_entry.citation()));
    if (piece.has("gap_ratio")) {
      const Ratio zeta = rain_cap(piece.ratio("gap_ratio"));
      stretch.at_end.push_back(parts::loss("rain cap", zeta, zeta, loss::rain_cap_gap.citation()));
    }
    if (piece.has("cap_loss")) {
      const Ratio zeta = piece.ratio("cap_loss");
      stretch.at_end.push_back(parts::loss("cap", zeta, zeta, piece.type().field("cap_loss")->citation));
    }
    add_screen(piece, stretch);
    return parts::entered_by({stretch}, "in", entry);
  }

 private:
  static void add_screen(const PieceView& piece, Stretch& stretch) {
    if (piece.choice("screen") != parts::yes) return;
    stretch.at_end.push_back(parts::loss("spark screen", spark_screen(), spark_screen(), loss::screen.citation()));
    const Ratio clogged = piece.ratio("clogged_share");
    if (clogged.value() > 0.0) {
      const Ratio zeta = sharp_restriction(1.0 - clogged);
      stretch.at_end.push_back(parts::loss("soot in the screen", zeta, zeta, loss::restriction.citation()));
    }
  }
};

}  // namespace

const Shape& stack_head() {
  static const StackHead shape;
  return shape;
}

}  // namespace fluewright::shapes
