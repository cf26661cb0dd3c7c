// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/space.hpp"
#include "engine/library/library.hpp"

#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace fluewright {

/// The ground the house stands on and the weather of the day in question.
struct Site {
  Length altitude = 0.0 * metre;
  Temperature outdoor_temperature = celsius(5.0);
  Ratio outdoor_humidity = 0.7;                      ///< relative
  Temperature ground_temperature = celsius(10.0);    ///< undisturbed, under the floor
  Velocity wind_speed = 0.0 * metre_per_second;
  Ratio wind_coefficient = 0.0;                      ///< pressure coefficient at the cap; > 0 blows down
  Pressure wind_allowance = 0.0 * pascal;            ///< taken off the design margin: 0 sheltered, 25 inland, 40 coast
  friend bool operator==(const Site&, const Site&) = default;
};

/// The room the heater stands in and the house around it.
struct Room {
  Temperature temperature = celsius(18.0);
  Ratio humidity = 0.5;
  Length house_height = 5.0 * metre;    ///< floor to the top of the heated space
  Length neutral_plane = 2.5 * metre;   ///< above the floor, where indoor and outdoor pressure agree
  VolumeFlow exhaust_flow{};            ///< of all exhaust fans running at once
  Volume house_volume = 300.0 * cubic_metre;
  Ratio air_changes_at_50_pascal = 5.0; ///< [1/h] by a blower-door test
  Pressure extra_depressurisation{};    ///< measured suction at the heater, on top of the exhaust flow's
  friend bool operator==(const Room&, const Room&) = default;
};

/// What burns, how fast, and with how much air.
struct Fire {
  MassFlow burn_rate = 3.0 * kilogram_per_hour;  ///< wood as fired
  std::string wood = "mixed_hardwood";           ///< id in Library::woods
  Ratio moisture = 0.18;                         ///< wet basis
  Ratio wanted_excess_air = 2.5;                 ///< excess-air ratio of the design-flow check
  Ratio unburned_share = 0.03;                   ///< of the heating value
  Ratio flow_safety = 1.5;                       ///< S_E: resistance is multiplied by it in the margin
  friend bool operator==(const Fire&, const Fire&) = default;
};

/// What the building asks of a heater and what is at hand for it. It does not change the draft.
struct House {
  Length highest_near{};               ///< above the floor: the highest thing within 3 m of the chimney's top
  Length brush_length = 5.0 * metre;   ///< longest brush with its rods
  Pressure floor_capacity = 1.9e3 * pascal;  ///< load that the floor carries
  std::string co_alarm = "not said";   ///< whether there is a carbon-monoxide alarm: "not said", "yes" or "no"
  friend bool operator==(const House&, const House&) = default;
};

/// The house around the heater, as far as the drawing and the path check need it: one room, its ceiling, a gable roof
/// whose ridge runs along the longer side. The answer does not depend on it. Lengths are coordinates of the drawing.
struct HouseOutline {
  Length west = -1.0 * metre;   ///< inside faces of the four walls
  Length east = 5.0 * metre;
  Length south = -1.5 * metre;
  Length north = 2.5 * metre;
  Length wall = 250.0 * millimetre;     ///< thickness of the walls, and of the roof
  Length ceiling = 2500.0 * millimetre; ///< its underside
  Length ceiling_thickness = 200.0 * millimetre;
  Length eaves = 2800.0 * millimetre;   ///< where the roof begins, at the outer faces
  Length ridge = 4500.0 * millimetre;
  friend bool operator==(const HouseOutline&, const HouseOutline&) = default;
};

using PieceId = std::string;

/// A finding that someone has looked at and lets stand.
struct Acknowledgement {
  std::string finding;  ///< the code's name, see finding_name()
  PieceId piece;        ///< the piece it was found on; may be empty
  std::string reason;   ///< in the words of whoever lets it stand
  friend bool operator==(const Acknowledgement&, const Acknowledgement&) = default;
};

/// One piece on the grid. Only fields that differ from the catalogue's fallback need to be present.
struct Piece {
  PieceId id;        ///< unique in the design: "p1"
  std::string type;  ///< id in Library::piece_types
  std::string label; ///< the user's own name for it; may be empty
  GridPoint at;      ///< where its first port is
  Heading heading;   ///< the way gas goes into its first port
  Turn turn = Turn::left;
  std::map<std::string, FieldValue, std::less<>> fields;
  std::string notes;
  friend bool operator==(const Piece&, const Piece&) = default;
};

/// One end of a joint: a piece and the name of its port.
struct PortRef {
  PieceId piece;
  std::string port;
  friend bool operator==(const PortRef&, const PortRef&) = default;
};

/// Two ports that are pushed together.
struct Joint {
  PortRef a;
  PortRef b;
  friend bool operator==(const Joint&, const Joint&) = default;
};

/// A whole design. A plain value: copy it to fork it.
struct Design {
  std::string title;
  std::string scene;  ///< the story behind a demo; may be empty
  Site site;
  Room room;
  Fire fire;
  House house;
  std::vector<Piece> pieces;
  std::vector<Joint> joints;
  std::vector<Wall> walls;  ///< the user's own build-ups; found before the library's
  std::vector<FanSheet> fans;  ///< the user's own data sheets; found before the library's
  std::vector<Acknowledgement> acknowledged;
  std::optional<HouseOutline> building;  ///< drawn behind the path
  std::string notes;

  [[nodiscard]] const Piece* piece(std::string_view id) const;
  [[nodiscard]] Piece* piece(std::string_view id);
  /// The port joined to this one, if any.
  [[nodiscard]] std::optional<PortRef> joined_to(const PortRef& port) const;
  /// An id no piece has yet and no acknowledgement speaks of: "p1", "p2", ...
  [[nodiscard]] PieceId fresh_id() const;
  friend bool operator==(const Design&, const Design&) = default;
};

/// A piece together with what the catalogue and the design say about it: every field answers, given or fallback.
class PieceView {
 public:
  PieceView(const Design& design, const Library& library, const Piece& piece, const PieceType& type)
      : design_{&design}, library_{&library}, piece_{&piece}, type_{&type} {}

  [[nodiscard]] const Piece& piece() const { return *piece_; }
  [[nodiscard]] const PieceType& type() const { return *type_; }
  [[nodiscard]] const Library& library() const { return *library_; }

  /// Whether the type has such a field at all.
  [[nodiscard]] bool has(std::string_view key) const;
  /// The given value, else the fallback. Asking for a field that the type lacks is a broken invariant (asserts).
  [[nodiscard]] const FieldValue& value(std::string_view key) const;
  [[nodiscard]] Length length(std::string_view key) const;
  [[nodiscard]] Angle angle(std::string_view key) const;
  [[nodiscard]] Ratio ratio(std::string_view key) const;
  [[nodiscard]] int count(std::string_view key) const;
  [[nodiscard]] Pressure pressure(std::string_view key) const;
  [[nodiscard]] const std::string& choice(std::string_view key) const;
  /// The build-up named by a wall field: the design's own first, then the library's; nullptr if unknown.
  [[nodiscard]] const Wall* wall(std::string_view key) const;
  [[nodiscard]] const Material* material(std::string_view key) const;
  /// The data sheet named by a fan field: the design's own first, then the library's; nullptr if unknown.
  [[nodiscard]] const FanSheet* fan(std::string_view key) const;

 private:
  const Design* design_;
  const Library* library_;
  const Piece* piece_;
  const PieceType* type_;
};

}  // namespace fluewright
