// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/bends.hpp"
#include "engine/pieces/parts.hpp"

#include <array>

namespace fluewright::shapes {

namespace {

/// The level tunnel between the feed and the riser, where the fire burns. `entry` and `exit` say whether the gas comes
/// in and leaves through the roof ("top", a sharp turn) or straight through the end ("end"). `length` runs from the
/// middle of the feed to the middle of the riser.
///
/// Entered from above, it runs towards Piece::turn of the heading (see usual_turn()); it leaves the roof upwards.
class BurnTunnel final : public Shape {
 public:
  std::string_view id() const override { return "burn_tunnel"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 4> keys{"length", "entry", "exit", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    const Way way = way_of(piece);
    const Section section = parts::section_of(piece);
    PieceGeometry geometry;
    geometry.lines.push_back({way.points, parts::outside_width(piece, section), false});
    geometry.ports = {parts::joint_port("in", way.points.front(), opposite(piece.piece().heading), section),
                      parts::joint_port("out", way.points.back(), way.leaving, section)};
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    const Way way = way_of(piece);
    const Section section = parts::section_of(piece);
    std::vector<Stretch> stretches;
    Position fire_starts = way.points.front();
    Length fire_length = piece.length("length");
    if (from_above(piece)) {
      // The drop to the floor is cold: its turn counts with cold air, not with fire.
      fire_starts = way.points[1];
      stretches.push_back(
          parts::stretch_of(piece, index, section, drop(piece), parts::rise(way.points[0], fire_starts)));
      stretches.back().at_end.push_back(turn_loss(piece));
    }
    if (upwards(piece)) fire_length += drop(piece);
    stretches.push_back(
        parts::stretch_of(piece, index, section, fire_length, parts::rise(fire_starts, way.points.back())));
    stretches.back().fire = true;
    if (upwards(piece)) stretches.back().at_end.push_back(turn_loss(piece));
    return parts::entered_by(std::move(stretches), "in", entry);
  }

  bool holds_fire() const override { return true; }

 private:
  struct Way {
    std::vector<Position> points;
    Heading leaving;
  };

  static bool from_above(const PieceView& piece) { return piece.choice("entry") == "top"; }
  static bool upwards(const PieceView& piece) { return piece.choice("exit") == "top"; }
  static Length tall(const PieceView& piece) { return piece.length(piece.has("bore") ? "bore" : "height"); }
  /// From the roof to the axis.
  static Length drop(const PieceView& piece) { return 0.5 * tall(piece); }

  static Way way_of(const PieceView& piece) {
    const Heading& heading = piece.piece().heading;
    const Heading along = from_above(piece) ? turned(heading, piece.piece().turn, parts::right_angle) : heading;
    Way way{{position_of(piece.piece().at)}, along};
    const auto go = [&way](const Heading& to, Length length) {
      way.points.push_back(way.points.back() + step_along(to, length));
    };
    if (from_above(piece)) go(heading, drop(piece));
    go(along, piece.length("length"));
    if (upwards(piece)) {
      way.leaving = turned(along, Turn::up, parts::right_angle);
      go(way.leaving, drop(piece));
    }
    return way;
  }

  static LocalLoss turn_loss(const PieceView& piece) {
    if (piece.has("bore")) {
      const Ratio zeta = mitre_bend(parts::right_angle);
      return parts::loss("sharp turn", zeta, zeta, loss::mitre.citation(), LocalLoss::Reynolds::mitre);
    }
    // The turn is in the upright plane: the width lies along its axis.
    const Ratio zeta = rectangular_mitre_bend(piece.length("width") / piece.length("height"), parts::right_angle);
    return parts::loss("sharp turn of a channel", zeta, zeta, loss::rectangular_mitre_90.citation(),
                       LocalLoss::Reynolds::mitre);
  }
};

}  // namespace

const Shape& burn_tunnel() {
  static const BurnTunnel shape;
  return shape;
}

}  // namespace fluewright::shapes
