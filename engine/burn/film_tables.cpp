// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/film_tables.hpp"

#include "engine/flow/friction.hpp"
#include "engine/heat/inside_film.hpp"
#include "engine/heat/outside_film.hpp"
#include "engine/solve/slice_heat.hpp"

#include <algorithm>

namespace fluewright::kernel {
namespace {

constexpr double low_prandtl = 0.66;
constexpr double high_prandtl = 0.80;
/// Between the two kinks lie so many pieces.
constexpr int pieces_between_kinks = 16;
const double log_laminar_ends = std::log(laminar_film_ends);
const double log_spacing = std::log(turbulent_film_begins / laminar_film_ends) / pieces_between_kinks;
/// From about Re 1 to a million.
constexpr int nodes_below = 223;
constexpr int nodes_above = 177;
const double first_log = log_laminar_ends - nodes_below * log_spacing;

}  // namespace

DuctFilm::DuctFilm(double relative_roughness, double diameter_over_run)
    : roughness_{relative_roughness}, over_run_{diameter_over_run} {
  nodes_.reserve(nodes_below + nodes_above + 1);
  for (int i = 0; i <= nodes_below + nodes_above; ++i) {
    // The kinks themselves are hit to the last digit from the side on which they count.
    const double re = i == nodes_below                          ? laminar_film_ends
                      : i == nodes_below + pieces_between_kinks ? turbulent_film_begins
                                                                : std::exp(first_log + i * log_spacing);
    const Ratio f = friction_factor(re, relative_roughness);
    nodes_.push_back({f, inside_nusselt(re, low_prandtl, f, diameter_over_run),
                      inside_nusselt(re, high_prandtl, f, diameter_over_run)});
  }
}

DuctFilm::Value DuctFilm::at(double reynolds, double prandtl) const {
  const double x = (std::log(std::max(reynolds, 1e-6)) - first_log) * (1.0 / log_spacing);
  const double w_pr = (prandtl - low_prandtl) * (1.0 / (high_prandtl - low_prandtl));
  if (x < 0.0) {
    const Node& n = nodes_.front();
    return {64.0 / std::max(reynolds, 1e-6), n.low + w_pr * (n.high - n.low), -1.0, 0.0};
  }
  const auto i = std::min(static_cast<std::size_t>(x), nodes_.size() - 2);
  const double w = std::min(x - static_cast<double>(i), 1.0);
  const Node& a = nodes_[i];
  const Node& b = nodes_[i + 1];
  const double low = a.low + w * (b.low - a.low);
  const double high = a.high + w * (b.high - a.high);
  const double friction = a.friction + w * (b.friction - a.friction);
  const double nusselt = low + w_pr * (high - low);
  return {friction, nusselt, (b.friction - a.friction) / (log_spacing * friction), (b.low - a.low) / (log_spacing * nusselt)};
}

DuctRadiation::DuctRadiation(const GasPair& gas, double hydraulic_diameter, double absolute)
    : diameter_{hydraulic_diameter} {
  columns_.reserve(pieces + 1);
  for (std::size_t i = 0; i <= pieces; ++i) {
    const double share = static_cast<double>(i) / static_cast<double>(pieces);
    columns_.push_back(grey_gas::column(gas.carbon_dioxide(share) * absolute * pascal, gas.water(share) * absolute * pascal,
                                        mean_beam_length(hydraulic_diameter * metre)));
  }
}

DuctRadiation::Value DuctRadiation::at(double gas, double wall, double share) const {
  constexpr double wall_factor = 0.5 * (1.0 + soot_emissivity) * stefan_boltzmann;
  const double y = std::clamp(share, 0.0, 1.0) * static_cast<double>(pieces);
  const auto i = std::min(static_cast<std::size_t>(y), pieces - 1);
  const double w = y - static_cast<double>(i);
  const auto mixed = [&](double a, double b) { return wall_factor * ((1.0 - w) * a + w * b); };
  const grey_gas::Column& a = columns_[i];
  const grey_gas::Column& b = columns_[i + 1];
  // Where both temperatures meet the slope is the derivative.
  const double thin = a.mean_slope(gas, wall);
  const double thick = b.mean_slope(gas, wall);
  return {mixed(thin, thick), mixed(a.mean_slope(gas, gas), b.mean_slope(gas, gas)),
          mixed(a.mean_slope(wall, wall), b.mean_slope(wall, wall)),
          wall_factor * (thick - thin) * static_cast<double>(pieces)};
}

OuterKind outer_kind(const Stretch& stretch, const WallGeometry& wall, bool lid) {
  OuterKind kind;
  kind.place = stretch.place;
  kind.lid = lid;
  kind.upright = stretch.stands_upright;
  kind.emissivity = wall.outer_emissivity;
  kind.size = in(lid                                     ? Length(0.25 * stretch.lid->across)
                 : stretch.place == Place::mass          ? wall.seat_size
                 : stretch.stands_upright                ? wall.upright_height
                                                         : wall.outside_diameter,
                 metre);
  kind.diameter = in(wall.outside_diameter, metre);
  return kind;
}

namespace {

/// The outer film as the march has it.
double outer_film(const OuterKind& kind, Temperature surface, Temperature air, Pressure absolute, Velocity wind) {
  FilmCoefficient film{};
  const Length size = kind.size * metre;
  if (kind.lid || kind.place == Place::mass) {
    film = plate_facing_up_film(size, surface, air, absolute);
  } else if (kind.upright) {
    film = vertical_wall_film(size, surface, air, absolute);
  } else {
    film = horizontal_cylinder_film(size, surface, air, absolute);
  }
  double h = in(film, watt_per_square_metre_kelvin);
  if (kind.place == Place::outdoors && wind > Velocity{}) {
    const double forced =
        in(cross_flow_film(kind.diameter * metre, surface, air, absolute, wind), watt_per_square_metre_kelvin);
    h = std::cbrt(h * h * h + forced * forced * forced);
  }
  return h + in(radiation_film(kind.emissivity, surface, air), watt_per_square_metre_kelvin);
}

}  // namespace

OuterFilm::OuterFilm(const OuterKind& kind, double coldest, double warmest, double absolute, double wind)
    : kind_{kind}, coldest_{coldest}, per_kelvin_{warmest - coldest > 1e-6 ? 1.0 / (warmest - coldest) : 0.0} {
  for (std::size_t side = 0; side < 2; ++side) {
    const double air = side == 0 ? coldest : warmest;
    for (std::size_t i = 0; i < nodes; ++i) {
      const double root = spacing * (static_cast<double>(i) - static_cast<double>(half));
      const double surface = air + root * std::abs(root);
      film_[side][i] =
          outer_film(kind, kelvins(surface), kelvins(air), absolute * pascal, wind * metre_per_second);
    }
  }
}

OuterFilm::Value OuterFilm::at(double surface, double air) const {
  const double excess = surface - air;
  const double root = std::sqrt(std::abs(excess));
  const double x = std::clamp((excess < 0.0 ? -root : root) * (1.0 / spacing) + static_cast<double>(half), 0.0,
                              static_cast<double>(nodes - 1));
  const auto i = std::min(static_cast<std::size_t>(x), nodes - 2);
  const double w = x - static_cast<double>(i);
  const double w_air = (air - coldest_) * per_kelvin_;
  const double a = film_[0][i] + w_air * (film_[1][i] - film_[0][i]);
  const double b = film_[0][i + 1] + w_air * (film_[1][i + 1] - film_[0][i + 1]);
  const double film = a + w * (b - a);
  // d(h e)/de = h + e dh/de; the nodes are even in the root of e, so e dh/de = (root/2) dh/droot.
  const double along = (b - a) * (1.0 / spacing) * (excess < 0.0 ? -root : root);
  return {film, film + 0.5 * std::max(along, 0.0)};
}

}  // namespace fluewright::kernel
