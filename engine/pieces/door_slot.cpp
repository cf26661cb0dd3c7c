// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/openings.hpp"

#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// A closed door with an air slot, in front of a batch box: `width` x `height` is the doorway, `free_share` the slot's
/// part of it, `length` the depth of the frame.
class DoorSlot final : public Shape {
 public:
  std::string_view id() const override { return "door_slot"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 5> keys{"length", "width", "height", "free_share", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    return parts::straight(piece, {"slot", PortKind::room_air}, {"out"});
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    Stretch stretch = parts::straight_stretch(piece, index);
    const Ratio share = piece.ratio("free_share");
    stretch.at_start.push_back(
        parts::loss("air slot", restricted_entry(share), restricted_exit(share), loss::restricted_entry.citation()));
    return parts::entered_by({stretch}, "slot", entry);
  }
};

}  // namespace

const Shape& door_slot() {
  static const DoorSlot shape;
  return shape;
}

}  // namespace fluewright::shapes
