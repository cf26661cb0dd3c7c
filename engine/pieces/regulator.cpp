// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/tees.hpp"

#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// A weighted flap in the side of the stack that lets room air in above its `set_draft`: it stands wide open, with
/// `flap_bore`, where the draft is `span` above that. Shut, it leaks by `leak_share` of its area.
class Regulator final : public Shape {
 public:
  std::string_view id() const override { return "regulator"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 7> keys{"length",     "bore", "set_draft", "flap_bore",
                                                        "leak_share", "span", "wall"};
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

  bool has_side_opening() const override { return true; }

  std::optional<Meeting> meeting(const PieceView& piece, std::size_t index) const override {
    Opening flap;
    flap.piece = index;
    flap.area = parts::circle_of(piece, "flap_bore").area();
    flap.shut_area = piece.ratio("leak_share") * flap.area;
    flap.set_draft = piece.pressure("set_draft");
    flap.span = piece.pressure("span");
    return parts::side_opening(piece, flap);
  }

  std::vector<Stretch> leg(const PieceView& piece, std::size_t index, std::string_view port,
                           bool inwards) const override {
    std::vector<Stretch> half = parts::half_leg(piece, index, port, inwards);
    if (port == "in") {
      auto& losses = inwards ? half.front().at_start : half.front().at_end;
      losses.push_back(parts::loss("straight past the flap", straight_past_branch(), straight_past_branch(),
                                   loss::shut_branch.citation()));
    }
    return half;
  }

  std::vector<FieldClash> clashes(const PieceView& piece) const override {
    std::vector<FieldClash> found;
    parts::want_below(found, piece, "flap_bore", piece.length("bore"), Length{});
    return found;
  }
};

}  // namespace

const Shape& regulator() {
  static const Regulator shape;
  return shape;
}

}  // namespace fluewright::shapes
