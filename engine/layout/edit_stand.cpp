// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_geometry.hpp"

#include <algorithm>
#include <array>
#include <cmath>

namespace fluewright::edit {

namespace {

/// Tries headings of one piece until one of its ports looks the wanted way.
class Stander {
 public:
  Stander(const Design& design, const Library& library, const Piece& piece, std::string_view port, const Port& target)
      : design_{&design}, library_{&library}, trial_{piece}, given_{piece.heading}, port_{port}, target_{target},
        wanted_{opposite(target.outward)} {}

  void try_heading(const Heading& heading) {
    trial_.heading = tidy(heading);
    if (known(trial_.heading)) {
      return;
    }
    std::optional<PieceGeometry> geometry = geometry_of(*design_, *library_, trial_);
    const Port* port = geometry ? geometry->port(port_) : nullptr;
    if (port == nullptr || !same_direction(port->outward, wanted_)) {
      return;
    }
    const Position here = position_of(trial_.at);
    const std::optional<GridPoint> at = grid_point_at(target_.at - (port->at - here));
    if (at) {
      shift(*geometry, position_of(*at) - here);
      placed_.push_back({{*at, trial_.heading}, std::move(*geometry)});
    }
  }

  /// Any shape turns about the vertical as a whole, so at a given elevation the azimuth follows from one look.
  void try_elevation(Angle wished, Angle swing) {
    const Angle elevation = tidy({given_.azimuth, wished}).elevation;
    if (std::abs(in(elevation, degree)) > 90.0) {
      return;
    }
    if (is_vertical(wanted_)) {
      try_heading({given_.azimuth + swing, elevation});
      return;
    }
    trial_.heading = tidy({given_.azimuth, elevation});
    const std::optional<PieceGeometry> geometry = geometry_of(*design_, *library_, trial_);
    if (const Port* port = geometry ? geometry->port(port_) : nullptr) {
      try_heading({given_.azimuth + wanted_.azimuth - port->outward.azimuth, elevation});
    }
  }

  [[nodiscard]] const Heading& wanted() const { return wanted_; }
  [[nodiscard]] std::vector<Placed>& placed() { return placed_; }

 private:
  [[nodiscard]] bool known(const Heading& heading) const {
    return std::any_of(placed_.begin(), placed_.end(), [&](const Placed& p) { return p.stand.heading == heading; });
  }

  static void shift(PieceGeometry& geometry, const Position& step) {
    for (Port& port : geometry.ports) {
      port.at = port.at + step;
    }
    for (CentreLine& line : geometry.lines) {
      for (Position& point : line.points) {
        point = point + step;
      }
    }
  }

  const Design* design_;
  const Library* library_;
  Piece trial_;
  Heading given_;
  std::string_view port_;
  Port target_;
  Heading wanted_;
  std::vector<Placed> placed_;
};

/// The elevations at which a port fixed in the piece's own frame rises as steeply as wanted. With f and u the port's
/// cosines along and above the heading: f sin e + u cos e = sin(wanted).
std::array<Angle, 2> elevations_to_rise(const Heading& heading, const Heading& port_outward, const Heading& wanted) {
  const Frame frame = frame_of(heading);
  const Direction out = direction_of(port_outward);
  const double f = cosine_between(out, {frame.forward[0], frame.forward[1], frame.forward[2]});
  const double u = cosine_between(out, {frame.up[0], frame.up[1], frame.up[2]});
  const double reach = std::sqrt(f * f + u * u);
  const double rise = std::sin(in(wanted.elevation, radian));
  if (reach < std::abs(rise) * (1.0 - 1e-9) || reach < 1e-9) {
    return {heading.elevation, heading.elevation};
  }
  const Angle base = std::asin(std::clamp(rise / reach, -1.0, 1.0)) * radian;
  const Angle lean = std::atan2(u, f) * radian;
  std::array<Angle, 2> found{base - lean, 180.0 * degree - base - lean};
  for (Angle& angle : found) {
    angle = std::remainder(in(angle, degree), 360.0) * degree;
  }
  return found;
}

/// The least change of heading first.
void sort_by_change(std::vector<Placed>& placed, const Heading& before) {
  const Direction given = direction_of(before);
  const auto change = [&](const Placed& p) {
    return -std::round(1e9 * static_cast<double>(cosine_between(given, direction_of(p.stand.heading))));
  };
  std::stable_sort(placed.begin(), placed.end(),
                   [&](const Placed& a, const Placed& b) { return change(a) < change(b); });
}

}  // namespace

std::vector<Placed> stands_to_meet(const Design& design, const Library& library, const Piece& piece,
                                   std::string_view port, const Port& target, Angle swing) {
  const std::optional<PieceGeometry> given = geometry_of(design, library, piece);
  const Port* own = given ? given->port(port) : nullptr;
  if (own == nullptr) {
    return {};
  }
  Stander stander{design, library, piece, port, target};
  const Heading wanted = stander.wanted();
  const auto [one, other] = elevations_to_rise(piece.heading, own->outward, wanted);
  // Where two change the heading alike the earlier one counts: as steep as before, else gas falls in from above.
  for (const Angle& elevation : {piece.heading.elevation, -90.0 * degree, 90.0 * degree, 0.0 * degree, one, other,
                                 wanted.elevation, -wanted.elevation}) {
    stander.try_elevation(elevation, swing);
  }
  sort_by_change(stander.placed(), piece.heading);
  return std::move(stander.placed());
}

std::optional<Placed> stand_to_meet(const Design& design, const Library& library, const Piece& piece,
                                    const PieceGeometry& given, std::string_view port, const Port& target,
                                    Angle swing) {
  const Port* own = given.port(port);
  if (own == nullptr) {
    return std::nullopt;
  }
  Stander stander{design, library, piece, port, target};
  const Heading wanted = stander.wanted();
  stander.try_heading({piece.heading.azimuth + swing, piece.heading.elevation});
  if (stander.placed().empty() && !is_vertical(wanted)) {
    stander.try_heading({piece.heading.azimuth + wanted.azimuth - own->outward.azimuth, piece.heading.elevation});
  }
  if (stander.placed().empty() && given.ports.front().name == port) {
    stander.try_heading(target.outward);
  }
  std::vector<Placed> placed = std::move(stander.placed());
  if (placed.empty()) {
    placed = stands_to_meet(design, library, piece, port, target, swing);
  }
  return placed.empty() ? std::nullopt : std::optional{std::move(placed.front())};
}

}  // namespace fluewright::edit
