// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/openings.hpp"

#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// A duct that brings outdoor air to the feed: its first port is open to the sky behind a screen of `free_share`.
class Intake final : public Shape {
 public:
  std::string_view id() const override { return "intake"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 4> keys{"length", "bore", "free_share", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    return parts::straight(piece, {"intake", PortKind::outdoor_air}, {"out"});
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    Stretch stretch = parts::straight_stretch(piece, index);
    const Ratio share = piece.ratio("free_share");
    stretch.at_start.push_back(parts::loss("screened intake", restricted_entry(share), restricted_exit(share),
                                           loss::restricted_entry.citation()));
    return parts::entered_by({stretch}, "intake", entry);
  }
};

}  // namespace

const Shape& intake() {
  static const Intake shape;
  return shape;
}

}  // namespace fluewright::shapes
