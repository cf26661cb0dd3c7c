// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/bends.hpp"
#include "engine/pieces/parts.hpp"

#include <array>
#include <cmath>
#include <numbers>

namespace fluewright::shapes {

namespace {

/// A turn by `angle`. How it is made follows from the fields: `radius_ratio` (centre-line radius over bore) a smooth
/// bend, with `gores` one made of that many pieces; neither, a sharp mitre; with `width` and `height`, a sharp turn
/// of a channel.
class Bend final : public Shape {
 public:
  std::string_view id() const override { return "bend"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 2> keys{"angle", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    const Heading& heading = piece.piece().heading;
    const Heading leaving = turned(heading, piece.piece().turn, piece.angle("angle"));
    const Section section = parts::section_of(piece);
    PieceGeometry geometry;
    geometry.lines.push_back({axis(piece, leaving), parts::outside_width(piece, section), false});
    geometry.ports = {parts::joint_port("in", geometry.lines[0].points.front(), opposite(heading), section),
                      parts::joint_port("out", geometry.lines[0].points.back(), leaving, section)};
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view) const override {
    const Heading leaving = turned(piece.piece().heading, piece.piece().turn, piece.angle("angle"));
    const std::vector<Position> points = axis(piece, leaving);
    Stretch stretch = parts::stretch_of(piece, index, parts::section_of(piece), axis_length(piece),
                                        parts::rise(points.front(), points.back()));
    stretch.at_start.push_back(turn_loss(piece));
    return parts::entered_by({stretch}, "in", entry);
  }

 private:
  static bool is_round(const PieceView& piece) { return piece.has("bore"); }
  static bool is_curved(const PieceView& piece) { return piece.has("radius_ratio"); }
  static bool turns_level(const PieceView& piece) {
    return piece.piece().turn == Turn::left || piece.piece().turn == Turn::right;
  }

  /// The side of the section that lies in the plane of the turn.
  static Length turning_side(const PieceView& piece) {
    if (is_round(piece)) return piece.length("bore");
    return turns_level(piece) ? piece.length("width") : piece.length("height");
  }

  static Length radius(const PieceView& piece) { return piece.ratio("radius_ratio") * piece.length("bore"); }
  /// From either end to the corner of a sharp turn: half the side, so that the inner corners of a square turn meet.
  static Length leg(const PieceView& piece) { return 0.5 * turning_side(piece); }

  static Length axis_length(const PieceView& piece) {
    return is_curved(piece) ? radius(piece) * in(piece.angle("angle"), radian) : 2.0 * leg(piece);
  }

  static std::vector<Position> axis(const PieceView& piece, const Heading& leaving) {
    const Position start = position_of(piece.piece().at);
    const Heading& heading = piece.piece().heading;
    if (!is_curved(piece)) {
      const Position corner = start + step_along(heading, leg(piece));
      return {start, corner, corner + step_along(leaving, leg(piece))};
    }
    constexpr int chords = 8;  // for the drawing; the ends are exact
    const Heading sideways = turned(heading, piece.piece().turn, parts::right_angle);
    std::vector<Position> points;
    for (int i = 0; i <= chords; ++i) {
      const double angle = in(piece.angle("angle"), radian) * i / chords;
      points.push_back(start + step_along(heading, radius(piece) * std::sin(angle)) +
                       step_along(sideways, radius(piece) * (1.0 - std::cos(angle))));
    }
    return points;
  }

  static LocalLoss turn_loss(const PieceView& piece) {
    const Angle angle = piece.angle("angle");
    if (!is_round(piece)) {
      const Length other = turns_level(piece) ? piece.length("height") : piece.length("width");
      const Ratio zeta = rectangular_mitre_bend(other / turning_side(piece), angle);
      return parts::loss("sharp turn of a channel", zeta, zeta, loss::rectangular_mitre_90.citation(),
                         LocalLoss::Reynolds::mitre);
    }
    if (!is_curved(piece)) {
      const Ratio zeta = mitre_bend(angle);
      return parts::loss("sharp turn", zeta, zeta, loss::mitre.citation(), LocalLoss::Reynolds::mitre);
    }
    const Ratio ratio = piece.ratio("radius_ratio");
    if (piece.has("gores")) {
      const Ratio zeta = gored_bend(piece.count("gores"), ratio, angle);
      return parts::loss("bend of pieces", zeta, zeta, loss::five_piece.citation());
    }
    const Ratio zeta = smooth_bend(ratio, angle);
    return parts::loss("smooth bend", zeta, zeta, loss::smooth.citation());
  }
};

}  // namespace

const Shape& bend() {
  static const Bend shape;
  return shape;
}

}  // namespace fluewright::shapes
