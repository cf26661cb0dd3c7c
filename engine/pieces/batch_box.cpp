// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/bends.hpp"
#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// A firebox loaded through a door, with a narrow upright port in its back wall into the foot of a riser behind it:
/// `width` x `height` x `length` the box, `port_width` x `port_height` x `port_length` the port, `bore` the riser.
/// The steps in area at the port are the solver's.
class BatchBox final : public Shape {
 public:
  std::string_view id() const override { return "batch_box"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 8> keys{"length",      "width",       "height", "port_width",
                                                          "port_height", "port_length", "bore",   "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    const Way way = way_of(piece);
    PieceGeometry geometry;
    geometry.lines.push_back({{way.front, way.back}, parts::outside_width(piece, box(piece)), true});
    geometry.lines.push_back({{way.back, way.foot}, parts::outside_width(piece, riser(piece)), false});
    geometry.ports = {parts::joint_port("in", way.front, opposite(piece.piece().heading), box(piece)),
                      parts::joint_port("out", way.foot, way.up, riser(piece))};
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    const Way way = way_of(piece);
    Stretch fire =
        parts::stretch_of(piece, index, box(piece), piece.length("length"), parts::rise(way.front, way.back));
    fire.fire = true;
    Stretch port = parts::stretch_of(piece, index, slot(piece), port_run(piece), parts::rise(way.back, way.foot));
    const Ratio zeta = mitre_bend(parts::right_angle);
    port.at_end.push_back(
        parts::loss("sharp turn up the riser", zeta, zeta, loss::mitre.citation(), LocalLoss::Reynolds::mitre));
    return parts::entered_by({fire, port}, "in", entry);
  }

  bool holds_fire() const override { return true; }

  std::vector<FieldClash> clashes(const PieceView& piece) const override {
    std::vector<FieldClash> found;
    parts::want_below(found, piece, "port_width", piece.length("width"), Length{});
    parts::want_below(found, piece, "port_height", piece.length("height"), Length{});
    return found;
  }

 private:
  struct Way {
    Position front;
    Position back;
    Position foot;  ///< of the riser, on its axis
    Heading up;
  };

  static Section box(const PieceView& piece) {
    return Section::rectangle(piece.length("width"), piece.length("height"));
  }
  static Section slot(const PieceView& piece) {
    return Section::rectangle(piece.length("port_width"), piece.length("port_height"));
  }
  static Section riser(const PieceView& piece) { return Section::circle(piece.length("bore")); }

  /// Through the port and on to the riser's axis.
  static Length port_run(const PieceView& piece) { return piece.length("port_length") + 0.5 * piece.length("bore"); }

  static Way way_of(const PieceView& piece) {
    const Heading& heading = piece.piece().heading;
    const Position front = position_of(piece.piece().at);
    const Position back = front + step_along(heading, piece.length("length"));
    return {front, back, back + step_along(heading, port_run(piece)), turned(heading, Turn::up, parts::right_angle)};
  }
};

}  // namespace

const Shape& batch_box() {
  static const BatchBox shape;
  return shape;
}

}  // namespace fluewright::shapes
