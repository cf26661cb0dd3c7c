// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What passes between gas, wall and surroundings in a cell.

#include "engine/burn/burn_equations.hpp"
#include "engine/burn/burn_walk.hpp"
#include "engine/heat/inside_film.hpp"
#include "engine/heat/jet_film.hpp"
#include "engine/heat/outside_film.hpp"
#include "engine/moisture/condensation.hpp"
#include "engine/moisture/saturation.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fluewright::kernel {
namespace {

constexpr double molar_constant = 8.314462618;
constexpr double water_molar_mass = 0.01801528;

double cubic_sum(double a, double b) { return detail::cube_root(a * a * a + b * b * b); }

/// Properties of the gas between two temperatures, for free convection.
struct FreeGas {
  double rayleigh;
  double prandtl;
  double conductivity;
};

FreeGas free_gas(const GasPair& gas, double a, double b, double share, double length, double absolute) {
  const double t = 0.5 * (a + b);
  const GasPair::Transport tr = gas.transport(t, share);
  const double nu = tr.viscosity * gas.gas_constant(share) * t / absolute;
  const double prandtl = gas.specific_heat(t, share) * tr.viscosity / tr.conductivity;
  return {gravity * length * length * length / (nu * nu) * std::abs(a - b) / t * prandtl, prandtl, tr.conductivity};
}

/// Below this a steel sheet's half is no resistance.
constexpr double negligible = 1e-9;

/// What a node resists towards a face.
double resistance(double geometry, const Material* material, double level) {
  return material == nullptr || geometry <= 0.0
             ? 0.0
             : geometry / in(material->conductivity(kelvins(level)), watt_per_metre_kelvin);
}

}  // namespace

BurnEquations::Film BurnEquations::inside_film(const Cell& cell, double t, double wall, double share, double flow) const {
  const GasPair& gas = *gas_;
  const GasPair::Transport tr = gas.transport(t, share);
  const double cp = gas.specific_heat(t, share);
  const double prandtl = cp * tr.viscosity / tr.conductivity;
  const double reynolds = flow * cell.diameter / (cell.area * tr.viscosity);
  const DuctFilm::Value duct = cells_->tables.films[cell.film].at(reynolds, prandtl);
  double free_share = 0.0;  // of the film, by cubes
  double forced_power = duct.nusselt_power;
  double convective = duct.nusselt * tr.conductivity / cell.diameter;
  if (cell.lid) {
    const Lid& lid = *cell.lid_shape;
    const double size = 0.25 * in(lid.across, metre);
    const FreeGas f = free_gas(gas, t, wall, share, size, surround_absolute_);
    convective = plate_facing_up_nusselt(f.rayleigh).value() * f.conductivity / size;
    free_share = 1.0;
    forced_power = 0.5;
    if (lid.jet_diameter > Length{}) {
      const double d = in(lid.jet_diameter, metre);
      const Ratio re = 4.0 * flow / (std::numbers::pi * d * tr.viscosity);
      const double jet = jet_nusselt(re, prandtl, 2.0 * (lid.jet_diameter / lid.across), lid.jet_gap / lid.jet_diameter).value();
      const double free = convective;
      convective = cubic_sum(jet * tr.conductivity / d, free);
      free_share = free * free * free / (convective * convective * convective);
    }
  } else if (cell.chamber) {
    const FreeGas f = free_gas(gas, t, wall, share, cell.upright_height, surround_absolute_);
    const double free = vertical_wall_nusselt(f.rayleigh, f.prandtl).value() * f.conductivity / cell.upright_height;
    convective = cubic_sum(convective, free);
    free_share = free * free * free / (convective * convective * convective);
  }
  const DuctRadiation::Value radiant = cells_->tables.radiations[cell.radiation].at(t, wall, share);
  double film = convective + radiant.film;
  if (cell.lid && cell.lid_shape->jet_diameter > Length{}) {
    // The riser's mouth, as the march has it: a black opening that two bores of its wall feed.
    const double d = in(cell.lid_shape->jet_diameter, metre);
    const double mouth = 0.25 * std::numbers::pi * d * d;
    const double out = in(radiation_film(1.0, kelvins(t), kelvins(wall)), watt_per_square_metre_kelvin) * mouth;
    const double fed = film * 8.0 * mouth;
    const double seen = out * fed / (out + fed) / in(cell.lid_shape->surface, square_metre);
    film += seen;
    convective += seen;
  }
  // Conductivity goes like T^0.8 and viscosity like T^0.7; free convection like the cube root of the difference.
  const double forced = (1.0 - free_share) * (0.8 - 0.7 * forced_power) * (t - wall) / t;
  const double free = free_share / 3.0;
  return {film,
          convective,
          convective * (1.0 + forced + free) + radiant.by_gas,
          convective * (1.0 + free) + radiant.by_wall,
          radiant.by_share,
          (1.0 - free_share) * forced_power * convective / film,
          duct.friction,
          duct.friction_power};
}

void BurnEquations::refresh_links(const Cell& cell, const double* state) {
  const double* t = state + cell.base + 2;
  // The levels at which the steady march takes conductivities: a wall in free air between its faces; in a mass the flue's
  // own layers at the face, the mass between face and seat.
  const double face = t[0];
  const double middle = 0.5 * (t[0] + t[cell.node_count - 1]);
  const bool embedded = cell.place == Place::mass || cell.place == Place::ground;
  const WallNode* node = cells_->nodes.data() + cell.first_node;
  const auto level = [&](const WallNode& n) { return embedded && !n.embedding ? face : middle; };
  const auto index = static_cast<std::size_t>(&cell - cells_->cells.data());
  inner_[index] = resistance(node[0].inner, node[0].material, level(node[0]));
  for (std::size_t j = 0; j < cell.node_count; ++j) {
    double r = resistance(node[j].outer, node[j].material, level(node[j])) +
               resistance(node[j].gap, node[j].gap_material, level(node[j]));
    if (j + 1 < cell.node_count) r += resistance(node[j + 1].inner, node[j + 1].material, level(node[j + 1]));
    links_[cell.first_node + j] = 1.0 / std::max(r, negligible);
  }
}

void BurnEquations::conduct(Walk& w, const Cell& cell, double into_wall) {
  const double* t = w.state + cell.base + 2;
  double* rate = w.rate + cell.base + 2;
  const WallNode* node = cells_->nodes.data() + cell.first_node;
  const double* link = links_.data() + cell.first_node;
  const std::size_t last = cell.node_count - 1;
  double in_flow = into_wall;
  for (std::size_t j = 0; j < last; ++j) {
    const double out_flow = link[j] * (t[j] - t[j + 1]);
    rate[j] = (in_flow - out_flow) / node[j].capacity;
    in_flow = out_flow;
  }
  CellNow& now = now_[static_cast<std::size_t>(&cell - cells_->cells.data())];
  double out = 0.0;
  double slope = 0.0;
  if (cell.place == Place::jacket) {
    now.surface = t[last];  // settled when the gas around it is known
  } else if (cell.place == Place::ground) {
    const double beyond = air_beside(cell);
    slope = link[last];
    out = slope * (t[last] - beyond);
    now.surface = t[last];
  } else {
    const double air = air_beside(cell);
    const OuterFilm& films = cells_->tables.outers[cell.outer];
    double surface = t[last];
    OuterFilm::Value film = films.at(surface, air);
    // Newton from the last node; three steps where the way to the face counts, none where it does not.
    const int steps = film.film * cell.outer_surface > 0.01 * link[last] ? 3 : 1;
    for (int step = 0; step < steps; ++step) {
      const double left = film.film * cell.outer_surface * (surface - air) - link[last] * (t[last] - surface);
      surface -= left / (film.slope * cell.outer_surface + link[last]);
      film = films.at(surface, air);
    }
    out = link[last] * (t[last] - surface);
    const double outer = film.slope * cell.outer_surface;
    slope = outer * link[last] / (outer + link[last]);
    now.surface = surface;
  }
  rate[last] = (in_flow - out) / node[last].capacity;
  if (w.slopes != nullptr) w.slopes->cells[static_cast<std::size_t>(&cell - cells_->cells.data())].outer = slope;
  if (w.lines != nullptr && cell.place != Place::jacket) {
    const bool outside = cell.place == Place::outdoors || cell.place == Place::attic || cell.under_sky;
    (*w.lines)[outside ? to_outdoors : to_room] += out;
  }
}

double BurnEquations::condensing(Walk& w, const Cell& cell, double convective, double face, double mean) {
  const double share = w.state[cell.base + 1];
  if (share < 1e-3) return 0.0;
  const GasPair& gas = *gas_;
  const double total = surround_absolute_;
  const double y = gas.water(share);
  const double left = y * w.vapour_left;
  const double vapour = total * left / (1.0 - y + left);
  // Dry at a glance: water boils at 373 K.
  if (face > 372.0) return 0.0;
  const double at_wall = in(saturation_pressure(kelvins(face)), pascal);
  if (!(at_wall < vapour)) return 0.0;
  const double film = 0.5 * (face + mean);
  const double rho = density(film, share);
  const double cp = gas.specific_heat(film, share);
  const double lewis = gas.transport(film, share).conductivity /
                       (rho * cp * in(vapour_diffusivity(kelvins(film), surround_.absolute), square_metre / second));
  const double root = std::cbrt(lewis);
  const double transfer = convective / (rho * cp) / (root * root);
  const double scale = total * water_molar_mass / (molar_constant * film);
  const double could = cell.surface * transfer * scale * std::log((total - at_wall) / (total - vapour));
  const double moles = gas.gas_constant(share) / molar_constant;  // per kilogram
  const double carried = w.flow * y * water_molar_mass * moles;
  const double rate = std::min(could, carried * w.vapour_left);
  w.vapour_left -= rate / std::max(carried, 1e-12);
  if (w.slopes != nullptr && latent_heat_counts) {
    // The secant of the saturation pressure, about 6 % a kelvin.
    const auto index = static_cast<std::size_t>(&cell - cells_->cells.data());
    w.slopes->cells[index].wet = 0.06 * at_wall / (vapour - at_wall + 0.06 * at_wall) * rate *
                                 in(evaporation_heat, joule_per_kilogram);
  }
  return rate;
}

void BurnEquations::settle_jackets(Walk& w, const BranchCells& branch) {
  for (const CellJacket& jacket : branch.jackets) {
    double around = 0.0;
    double film = 0.0;
    for (std::size_t i = jacket.chamber; i < jacket.last; ++i) {
      const double share = cells_->cells[i].surface / jacket.chamber_surface;
      around += share * now_[i].mean;
      film += share * now_[i].film;
    }
    double regained = 0.0;
    for (std::size_t i = jacket.first; i < jacket.chamber; ++i) {
      const Cell& cell = cells_->cells[i];
      const std::size_t last = cell.node_count - 1;
      const double link = links_[cell.first_node + last];
      const double outer = film * cell.outer_surface;
      const double conductance = link * outer / (link + outer);
      const double t = w.state[cell.base + 2 + last];
      const double out = conductance * (t - around);
      regained += out;
      now_[i].surface = around + out / outer;
      w.rate[cell.base + 2 + last] -= out / cells_->nodes[cell.first_node + last].capacity;
      if (w.slopes != nullptr) w.slopes->cells[i].outer = conductance;
    }
    for (std::size_t i = jacket.chamber; i < jacket.last; ++i) {
      const Cell& cell = cells_->cells[i];
      const double storage = density(now_[i].mean, w.state[cell.base + 1]) * cell.volume *
                             gas_->specific_heat(w.state[cell.base], w.state[cell.base + 1]);
      w.rate[cell.base] += regained * cell.surface / jacket.chamber_surface / storage;
    }
  }
}

}  // namespace fluewright::kernel
