// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/pieces/parts.hpp"

#include <algorithm>
#include <array>

namespace fluewright::shapes {

namespace {

/// A bell: a chamber that hot gas fills from the top. It comes in at the side (port `in`, or out of a riser that
/// stands inside when the heading is upright), rises freely to the ceiling, sinks as it cools and leaves low (port
/// `out`). `width` lies across the facing azimuth, `depth` along it.
///
/// Two stretches: the plume to the ceiling, without loss of heat, and the sinking layer through the whole section with
/// the ceiling as further surface. The plume's velocity head is lost in the widening, which is the solver's.
class Bell final : public Shape {
 public:
  std::string_view id() const override { return "bell"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 9> keys{"bore",      "out_bore",   "width",    "depth", "height",
                                                          "in_height", "out_height", "out_side", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    const Position in = position_of(piece.piece().at);
    const Box box = box_of(piece);
    const Position lift{{}, {}, piece.length("height")};
    const Outlet outlet = outlet_of(piece, box);
    PieceGeometry geometry;
    geometry.lines.push_back(
        {{box.floor, box.floor + lift}, piece.length("width") + 2.0 * parts::wall_thickness(piece), true});
    geometry.ports = {parts::joint_port("in", in, opposite(piece.piece().heading), parts::circle_of(piece, "bore")),
                      parts::joint_port("out", outlet.at, outlet.outward, parts::circle_of(piece, "out_bore"))};
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    const Length height = piece.length("height");
    const Length up = height - piece.length("in_height");
    const Length down = height - piece.length("out_height");
    const Stretch plume = parts::inner_stretch(piece, index, parts::circle_of(piece, "bore"), up, up);
    const Section whole = Section::rectangle(piece.length("width"), piece.length("depth"));
    Stretch sinking = parts::stretch_of(piece, index, whole, down, -down);
    sinking.chamber = true;
    sinking.lid = Lid{whole.area(), std::min(piece.length("width"), piece.length("depth")), {}, {}};
    return parts::entered_by({plume, sinking}, "in", entry);
  }

  std::vector<FieldClash> clashes(const PieceView& piece) const override {
    std::vector<FieldClash> found;
    parts::want_below(found, piece, "in_height", piece.length("height"), parts::least_room);
    parts::want_below(found, piece, "out_height", piece.length("height"), parts::least_room);
    for (const std::string_view bore : {"bore", "out_bore"}) {
      parts::want_below(found, piece, bore, std::min(piece.length("width"), piece.length("depth")), Length{});
    }
    return found;
  }

 private:
  struct Box {
    Heading facing;  ///< level
    Position floor;  ///< middle of the floor
  };
  struct Outlet {
    Position at;
    Heading outward;
  };

  static Box box_of(const PieceView& piece) {
    constexpr Angle steep = 45.0 * degree;
    const Heading& heading = piece.piece().heading;
    const Heading facing{heading.azimuth, {}};
    Position floor = position_of(piece.piece().at);
    floor.z -= piece.length("in_height");
    if (bu::abs(heading.elevation) < steep) floor = floor + step_along(facing, 0.5 * piece.length("depth"));
    return {facing, floor};
  }

  static Outlet outlet_of(const PieceView& piece, const Box& box) {
    const std::string& side = piece.choice("out_side");
    Heading outward = box.facing;
    Length reach = 0.5 * piece.length("depth");
    if (side == "entry") outward = opposite(box.facing);
    if (side == "left" || side == "right") {
      outward = turned(box.facing, side == "left" ? Turn::left : Turn::right, parts::right_angle);
      reach = 0.5 * piece.length("width");
    }
    Position at = box.floor + step_along(outward, reach);
    at.z += piece.length("out_height");
    return {at, outward};
  }
};

}  // namespace

const Shape& bell() {
  static const Bell shape;
  return shape;
}

}  // namespace fluewright::shapes
