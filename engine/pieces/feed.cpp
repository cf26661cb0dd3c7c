// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/openings.hpp"

#include "engine/flow/local_loss.hpp"
#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// The feed tube of a J: air comes in past the sticks at its mouth. `free_share` is what the sticks leave open;
/// with `air_from` "duct" the mouth is lidded and joined to an outside-air duct instead of open to the room.
class Feed final : public Shape {
 public:
  std::string_view id() const override { return "feed"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 4> keys{"length", "free_share", "air_from", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    const PortKind mouth = is_lidded(piece) ? PortKind::joint : PortKind::room_air;
    return parts::straight(piece, {"mouth", mouth}, {"out"});
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    Stretch stretch = parts::straight_stretch(piece, index);
    stretch.at_start.push_back(mouth_loss(piece));
    return parts::entered_by({stretch}, "mouth", entry);
  }

 private:
  static bool is_lidded(const PieceView& piece) { return piece.choice("air_from") == "duct"; }

  static LocalLoss mouth_loss(const PieceView& piece) {
    const Ratio share = piece.ratio("free_share");
    if (is_lidded(piece)) {
      const Ratio zeta = sharp_restriction(share);
      return parts::loss("past the sticks", zeta, zeta, loss::restriction.citation());
    }
    return parts::loss("mouth, past the sticks", restricted_entry(share), restricted_exit(share),
                       loss::restricted_entry.citation());
  }
};

}  // namespace

const Shape& feed() {
  static const Feed shape;
  return shape;
}

}  // namespace fluewright::shapes
