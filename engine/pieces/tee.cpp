// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/flow/tees.hpp"

#include "engine/flow/bends.hpp"
#include "engine/pieces/parts.hpp"

#include <array>
#include <cmath>
#include <utility>

namespace fluewright::shapes {

namespace {

/// A run with a branch: a tee, or with an `angle` a wye whose branch leans forward by it. Any two of its three ports
/// carry the flow and the third is shut, or all three do and meet in its middle. `capped` says which port may stay
/// unjoined: in, out, branch, any or none. With `cover` "off" the lid is off the branch and it stands open.
///
/// The legs' change of section is part of Crane's coefficient, so the step between them is marked as eased.
class Tee final : public Shape {
 public:
  std::string_view id() const override { return "tee"; }

  std::span<const std::string_view> required_fields() const override {
    static constexpr std::array<std::string_view, 4> keys{"bore", "branch_bore", "capped", "wall"};
    return keys;
  }

  PieceGeometry geometry(const PieceView& piece) const override {
    const Position start = position_of(piece.piece().at);
    const Heading& heading = piece.piece().heading;
    const Heading leaning = turned(heading, piece.piece().turn, branch_angle(piece));
    const Position centre = start + step_along(heading, half_body(piece));
    const Position end = start + step_along(heading, 2.0 * half_body(piece));
    const Position branch = centre + step_along(leaning, reach(piece));
    const Section run = parts::circle_of(piece, "bore");
    const Section side = parts::circle_of(piece, "branch_bore");
    PieceGeometry geometry;
    geometry.ports = {parts::joint_port("in", start, opposite(heading), run),
                      parts::joint_port("out", end, heading, run), parts::joint_port("branch", branch, leaning, side)};
    const std::string& capped = piece.choice("capped");
    for (Port& port : geometry.ports) port.may_stay_shut = capped == "any" || capped == port.name;
    if (is_open(piece)) {
      geometry.ports.back().kind = parts::air_beside(piece);
      geometry.ports.back().beside_the_way = true;
    }
    geometry.lines = {{{start, end}, parts::outside_width(piece, run), false},
                      {{centre, branch}, parts::outside_width(piece, side), false}};
    return geometry;
  }

  std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                               std::string_view exit) const override {
    if (entry == "branch" || exit == "branch") {
      const std::string_view run_port = entry == "branch" ? exit : entry;
      return parts::entered_by(from_run_to_branch(piece, index, run_port), run_port, entry);
    }
    const Length length = 2.0 * half_body(piece);
    const Position along = step_along(piece.piece().heading, length);
    Stretch stretch = parts::stretch_of(piece, index, parts::circle_of(piece, "bore"), length, along.z);
    stretch.at_start.push_back(parts::loss("straight past the branch", straight_past_branch(), straight_past_branch(),
                                           loss::shut_branch.citation()));
    return parts::entered_by({stretch}, "in", entry);
  }

  std::optional<Meeting> meeting(const PieceView& piece, std::size_t) const override {
    Meeting meeting;
    meeting.at = position_of(piece.piece().at) + step_along(piece.piece().heading, half_body(piece));
    meeting.form.run = parts::circle_of(piece, "bore").area();
    meeting.form.branch = parts::circle_of(piece, "branch_bore").area();
    meeting.form.angle = branch_angle(piece);
    return meeting;
  }

  std::vector<Stretch> leg(const PieceView& piece, std::size_t index, std::string_view port,
                           bool inwards) const override {
    const Heading& heading = piece.piece().heading;
    std::vector<Stretch> from_middle;
    if (port == "branch") {
      from_middle.push_back(side_stretch(piece, index));
    } else {
      const Position along = step_along(port == "out" ? heading : opposite(heading), half_body(piece));
      from_middle.push_back(
          parts::stretch_of(piece, index, parts::circle_of(piece, "bore"), half_body(piece), along.z));
    }
    return inwards ? parts::reversed(std::move(from_middle)) : from_middle;
  }

  std::vector<FieldClash> clashes(const PieceView& piece) const override {
    std::vector<FieldClash> found;
    parts::want_below(found, piece, "branch_bore", piece.length("bore"), Length{});
    return found;
  }

 private:
  static Angle branch_angle(const PieceView& piece) {
    return piece.has("angle") ? piece.angle("angle") : parts::right_angle;
  }
  static bool is_open(const PieceView& piece) { return piece.has("cover") && piece.choice("cover") == "off"; }
  static double branch_sine(const PieceView& piece) { return std::sin(in(branch_angle(piece), radian)); }

  /// Up to the next whole step, as sheet-metal fittings come.
  static Length rounded_up(Length length, Length step) { return std::ceil(in(length, step) - 1e-9) * step; }

  /// Half the run: the branch's mouth and a collar of 50 mm on either side (common practice).
  static Length half_body(const PieceView& piece) {
    const Length mouth = piece.length("branch_bore") / branch_sine(piece);
    return 0.5 * rounded_up(mouth + 100.0 * millimetre, 50.0 * millimetre);
  }
  /// From the axis to the branch's end: clear of the run by a collar of 50 mm (common practice).
  static Length reach(const PieceView& piece) {
    return rounded_up(0.5 * piece.length("bore") + 50.0 * millimetre, 25.0 * millimetre) / branch_sine(piece);
  }

  /// From the middle to the branch's end, with the entry of free air there where the lid is off.
  static Stretch side_stretch(const PieceView& piece, std::size_t index) {
    const Heading leaning = turned(piece.piece().heading, piece.piece().turn, branch_angle(piece));
    const Section section = parts::circle_of(piece, "branch_bore");
    Stretch side = parts::stretch_of(piece, index, section, reach(piece), step_along(leaning, reach(piece)).z);
    if (is_open(piece)) {
      LocalLoss entry = parts::open_end_loss(piece);
      std::swap(entry.forward, entry.backward);
      side.at_end.push_back(std::move(entry));
    }
    return side;
  }

  static std::vector<Stretch> from_run_to_branch(const PieceView& piece, std::size_t index, std::string_view run_port) {
    const Heading& heading = piece.piece().heading;
    const bool by_in = run_port == "in";
    const Position along = step_along(by_in ? heading : opposite(heading), half_body(piece));
    Stretch run = parts::stretch_of(piece, index, parts::circle_of(piece, "bore"), half_body(piece), along.z);
    Stretch side = side_stretch(piece, index);
    side.eased_step_at_start = true;
    // On the head of the run's leg, which carries the whole flow either way.
    run.at_end.push_back(by_in ? gentle_turn(piece) : sharp_turn(piece));
    return {run, side};
  }

  static Ratio area_ratio(const PieceView& piece) {
    const Ratio bores = piece.length("branch_bore") / piece.length("bore");
    return bores * bores;
  }

  /// Between the port that the branch leans away from and the branch: the flow turns by the branch's angle.
  static LocalLoss gentle_turn(const PieceView& piece) {
    const Angle angle = branch_angle(piece);
    return parts::loss("turn through the branch", diverging_branch(1.0, area_ratio(piece), angle),
                       converging_branch(1.0, area_ratio(piece), angle), loss::dividing_branch.citation());
  }

  /// The other way round a wye the flow turns by more than a right angle. No published row: the tee's coefficient
  /// times the factor by which bends grow with their angle (chosen).
  static LocalLoss sharp_turn(const PieceView& piece) {
    const Angle angle = branch_angle(piece);
    const Ratio factor = bend_angle_factor(180.0 * degree - angle);
    Citation citation = loss::dividing_branch.citation();
    if (angle < parts::right_angle)
      citation = {citation.source + ", times SMACNA's factor for the angle", Standing::chosen};
    return parts::loss("turn through the branch", factor * diverging_branch(1.0, area_ratio(piece), parts::right_angle),
                       factor * converging_branch(1.0, area_ratio(piece), parts::right_angle), citation);
  }
};

}  // namespace

const Shape& tee() {
  static const Tee shape;
  return shape;
}

}  // namespace fluewright::shapes
