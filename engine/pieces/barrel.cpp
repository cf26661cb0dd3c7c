// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/bends.hpp"
#include "engine/pieces/parts.hpp"

#include <array>
#include <numbers>

namespace fluewright::shapes {

namespace {

/// A barrel turned over the riser: the gas leaves the riser's top (port `in`), turns under the lid, goes down between
/// riser and barrel and out at the side near the foot (port `out`, towards Piece::turn).
///
/// Two stretches: outwards under the lid through a ring as high as `gap`, with a sharp turn at either end; then down
/// the annulus, where the riser's own loss comes back, with the lid and the wall above the rim as further surface.
/// A barrel stands upright whatever its heading says.
class Barrel final : public Shape {
 public:
  std::string_view id() const override { return "barrel"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 8> keys{"bore",        "diameter", "height",     "gap",
                                                          "riser_outer", "out_bore", "out_height", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    const Position rim = position_of(piece.piece().at);
    const Heading up = heading_up(piece.piece().heading.azimuth);
    const Heading aside = turned(up, piece.piece().turn, parts::right_angle);
    const Length half = 0.5 * piece.length("diameter");
    const Position lid = rim + step_along(up, piece.length("gap"));
    const Position foot = lid - step_along(up, piece.length("height"));
    const Position outlet_axis = rim - step_along(up, fall(piece));
    const Position outlet = outlet_axis + step_along(aside, half);
    PieceGeometry geometry;
    geometry.lines.push_back({{foot, lid}, piece.length("diameter") + 2.0 * parts::wall_thickness(piece), true});
    geometry.lines.push_back({{outlet_axis, outlet}, piece.length("out_bore"), false});
    geometry.ports = {parts::joint_port("in", rim, opposite(up), parts::circle_of(piece, "bore")),
                      parts::joint_port("out", outlet, aside, parts::circle_of(piece, "out_bore"))};
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    return parts::entered_by({under_the_lid(piece, index), down_the_ring(piece, index)}, "in", entry);
  }

  std::vector<FieldClash> clashes(const PieceView& piece) const override {
    std::vector<FieldClash> found;
    parts::want_below(found, piece, "bore", piece.length("riser_outer"), Length{});
    parts::want_below(found, piece, "riser_outer", piece.length("diameter"), parts::least_room);
    parts::want_below(found, piece, "out_height", piece.length("height") - piece.length("gap"), parts::least_room);
    parts::want_below(found, piece, "out_bore", 2.0 * piece.length("out_height"), Length{});
    return found;
  }

 private:
  /// From the riser's rim down to the middle of the outlet.
  static Length fall(const PieceView& piece) {
    return piece.length("height") - piece.length("gap") - piece.length("out_height");
  }

  /// Outwards from half the riser's radius to its outside, through a ring as high as the gap. Both turns are sharp and
  /// close together; 2.4 for the two is the low end of what close-coupled mitres do.
  static Stretch under_the_lid(const PieceView& piece, std::size_t index) {
    const Length bore = piece.length("bore");
    const Section ring = Section::rectangle(std::numbers::pi * bore, piece.length("gap"));
    Stretch stretch =
        parts::inner_stretch(piece, index, ring, 0.5 * piece.length("riser_outer") - 0.25 * bore, Length{});
    stretch.at_start.push_back(sharp_turn("turn under the lid"));
    stretch.at_end.push_back(sharp_turn("turn over the riser's rim"));
    return stretch;
  }

  static Stretch down_the_ring(const PieceView& piece, std::size_t index) {
    const Length diameter = piece.length("diameter");
    Stretch stretch = parts::stretch_of(piece, index, Section::annulus(diameter, piece.length("riser_outer")),
                                        fall(piece), -fall(piece));
    stretch.chamber = true;
    // The wall above the rim is as hot as the lid and counts with it.
    stretch.lid = Lid{std::numbers::pi * diameter * (0.25 * diameter + piece.length("gap")), diameter, piece.length("bore"),
                      piece.length("gap")};
    stretch.at_end.push_back(sharp_turn("turn to the outlet"));
    return stretch;
  }

  static LocalLoss sharp_turn(std::string name) {
    const Ratio zeta = mitre_bend(parts::right_angle);
    return parts::loss(std::move(name), zeta, zeta, loss::mitre.citation(), LocalLoss::Reynolds::mitre);
  }
};

}  // namespace

const Shape& barrel() {
  static const Barrel shape;
  return shape;
}

}  // namespace fluewright::shapes
