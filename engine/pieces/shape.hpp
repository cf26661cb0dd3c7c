// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// A shape is the physics of a piece: where its ports are and what flue it puts between two of them. A piece type of
// the catalogue names its shape; many types share one (every straight pipe is a "run").

#include "engine/flow/stretch.hpp"
#include "engine/layout/design.hpp"
#include "engine/layout/space.hpp"

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace fluewright {

/// What a port opens to.
enum class PortKind {
  joint,       ///< is pushed into another piece's port
  room_air,    ///< open to the room: a feed's mouth
  outdoor_air  ///< open to the sky: a stack's top, an outside-air intake
};

/// An end of a piece, in world coordinates.
struct Port {
  std::string name;  ///< "in", "out", "branch"
  PortKind kind = PortKind::joint;
  Position at;
  Heading outward;  ///< the way one walks out of the piece through this port
  Section section = Section::circle(150.0 * millimetre);
  bool may_stay_shut = false;  ///< an unjoined port that is capped (tee, cleanout): not an open end
  bool beside_the_way = false; ///< open on purpose where a lid is off: neither the path's inlet nor its cap
};

/// A line of the drawing: the axis of the gas's way, with its outer size for drawing.
struct CentreLine {
  std::vector<Position> points;
  Length width{};             ///< outside width across the axis
  bool upright_body = false;  ///< draw as a standing body (barrel, bell, batch box) rather than as a pipe
};

/// Everything the desk and the path check need to know of a piece's geometry.
struct PieceGeometry {
  std::vector<Port> ports;
  std::vector<CentreLine> lines;

  [[nodiscard]] const Port* port(std::string_view name) const;
};

/// A field whose value is within its own range but does not go with the others: a barrel narrower than the riser that
/// stands in it. Either limit may be absent.
struct FieldClash {
  std::string field;
  FieldValue value;
  std::optional<FieldValue> lowest;
  std::optional<FieldValue> highest;
};

/// Where a third stream can meet the two that pass a piece. Such a piece calls its ports "in", "out" and "branch".
struct Meeting {
  JunctionForm form;
  Position at;
  std::optional<Opening> opening;           ///< the third stream comes through a hole or a flap in the piece's side
  PortKind opens_to = PortKind::room_air;   ///< what is outside that opening
};

/// One shape. Stateless; one object of each lives in the registry.
class Shape {
 public:
  Shape() = default;
  Shape(const Shape&) = delete;
  Shape& operator=(const Shape&) = delete;
  virtual ~Shape() = default;

  [[nodiscard]] virtual std::string_view id() const = 0;
  /// The field keys a catalogue type of this shape must have.
  [[nodiscard]] virtual std::span<const std::string_view> required_fields() const = 0;
  /// Ports and axis. The first port is the one Piece::at and Piece::heading refer to.
  [[nodiscard]] virtual PieceGeometry geometry(const PieceView& piece) const = 0;
  /// The flue between two different ports, written from `entry` to `exit`, at least one stretch. `index` is the
  /// piece's place in Design::pieces. Walls and materials are resolved; unknown ones were findings before this call.
  [[nodiscard]] virtual std::vector<Stretch> passage(const PieceView& piece, std::size_t index, std::string_view entry,
                                                     std::string_view exit) const = 0;
  /// Fields that do not go together. Every value is within its own range before this call; geometry() and passage()
  /// may count on an empty answer.
  [[nodiscard]] virtual std::vector<FieldClash> clashes(const PieceView&) const { return {}; }
  /// Whether the piece has an opening of its own in its side (a crack, a flap): a stream can always meet it there.
  [[nodiscard]] virtual bool has_side_opening() const { return false; }
  /// Where three streams meet in it. A shape with three ports or a side opening has one; others are passed only.
  [[nodiscard]] virtual std::optional<Meeting> meeting(const PieceView&, std::size_t) const { return {}; }
  /// The flue between a port and where the streams meet, written from the port if `inwards`, else towards it. What
  /// happens where they meet is the junction's, not in it.
  [[nodiscard]] virtual std::vector<Stretch> leg(const PieceView&, std::size_t, std::string_view, bool) const {
    return {};
  }
  /// What the piece does to the draft that a steady calculation leaves out (a fan's pressure): the key of the field
  /// that describes it, empty for a piece that is calculated in full.
  [[nodiscard]] virtual std::string_view left_out() const { return {}; }
  /// Whether the fuel burns in it.
  [[nodiscard]] virtual bool holds_fire() const { return false; }
};

/// The shape of that id, nullptr if there is none. To add a shape: one file, one line in registry.cpp.
[[nodiscard]] const Shape* find_shape(std::string_view id);
[[nodiscard]] std::span<const Shape* const> all_shapes();

/// The heading a piece of this type has in the trade when it is the first on the desk: a feed stands and takes air
/// from above, a riser or a stack stands and goes up, all else lies level.
[[nodiscard]] Heading usual_heading(const PieceType& type, Angle facing = {});
/// The turn that keeps a piece in the plane of the path: from a level heading upwards, from straight up or down
/// towards the facing azimuth.
[[nodiscard]] Turn usual_turn(const Heading& into);

}  // namespace fluewright
