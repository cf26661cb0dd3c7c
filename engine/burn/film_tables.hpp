// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/burn/gas_pair.hpp"
#include "engine/heat/gas_radiation.hpp"
#include "engine/solve/sliced_path.hpp"
#include "engine/solve/surround.hpp"

#include <array>
#include <cmath>
#include <cstddef>
#include <vector>

namespace fluewright::kernel {

/// Friction factor and Nusselt number of one kind of duct, tabulated over the logarithm of the Reynolds number from the
/// engine's own laws. Nodes lie on 2300 and 4000, where the film has its kinks; linear between nodes (within 2e-4).
class DuctFilm {
 public:
  DuctFilm(double relative_roughness, double diameter_over_run);

  struct Value {
    double friction;
    double nusselt;
    double friction_power;  ///< d ln f/d ln Re
    double nusselt_power;   ///< d ln Nu/d ln Re
  };
  [[nodiscard]] Value at(double reynolds, double prandtl) const;

  [[nodiscard]] bool is_for(double relative_roughness, double diameter_over_run) const {
    return relative_roughness == roughness_ && diameter_over_run == over_run_;
  }

 private:
  struct Node {
    double friction;
    double low;   ///< Nusselt number at the lower Prandtl number
    double high;  ///< at the higher
  };
  double roughness_;
  double over_run_;
  std::vector<Node> nodes_;
};

/// Radiation of the gas in a duct of one width to its sooty wall, over the share of flue gas.
class DuctRadiation {
 public:
  DuctRadiation(const GasPair& gas, double hydraulic_diameter, double absolute);

  struct Value {
    double film;   ///< [W/m2K], q/(Tg - Tw)
    double by_gas; ///< dq/dTg
    double by_wall;///< -dq/dTw
    double by_share;  ///< of the film, by the share of flue gas
  };
  [[nodiscard]] Value at(double gas, double wall, double share) const;
  [[nodiscard]] bool is_for(double hydraulic_diameter) const { return hydraulic_diameter == diameter_; }

 private:
  static constexpr std::size_t pieces = 32;
  double diameter_;
  std::vector<grey_gas::Column> columns_;
};

/// What the outer film of a stretch depends on.
struct OuterKind {
  Place place = Place::room;
  bool lid = false;
  bool upright = false;
  double size = 0.0;        ///< seat size, height, diameter or quarter of the lid, whichever the law wants
  double diameter = 0.0;    ///< for wind
  double emissivity = 0.9;
  friend bool operator==(const OuterKind&, const OuterKind&) = default;
};
[[nodiscard]] OuterKind outer_kind(const Stretch& stretch, const WallGeometry& wall, bool lid);

/// Free convection, radiation and wind on the outside, tabulated over the excess of the surface over the air, at the two
/// ends of the range of air temperatures that a run will see; the root of the excess spaces the nodes.
class OuterFilm {
 public:
  OuterFilm(const OuterKind& kind, double coldest, double warmest, double absolute, double wind);

  struct Value {
    double film;   ///< [W/m2K]
    double slope;  ///< d(film x excess)/d(surface): what a step of the surface does to the flux
  };
  [[nodiscard]] Value at(double surface, double air) const;
  [[nodiscard]] const OuterKind& kind() const { return kind_; }

 private:
  static constexpr std::size_t half = 24;    ///< nodes below zero excess
  static constexpr std::size_t nodes = 160;
  static constexpr double spacing = 0.25;    ///< of the signed root of the excess
  OuterKind kind_;
  double coldest_;
  double per_kelvin_;  ///< 1/(warmest - coldest), or zero
  std::array<std::array<double, nodes>, 2> film_{};
};

}  // namespace fluewright::kernel
