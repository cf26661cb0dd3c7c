// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/burn_equations.hpp"

#include "engine/burn/burn_walk.hpp"
#include "engine/flow/bends.hpp"
#include "engine/site/atmosphere.hpp"
#include "engine/site/house.hpp"
#include "engine/solve/burning.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright::kernel {

BurnEquations::BurnEquations(const BurnCells& cells, const GasPair& gas, const Surround& surround, Ratio outdoor_humidity)
    : cells_{&cells},
      gas_{&gas},
      surround_{surround},
      outdoor_humidity_{outdoor_humidity},
      surround_absolute_{in(surround.absolute, pascal)},
      now_(cells.cells.size()),
      links_(cells.nodes.size()),
      inner_(cells.cells.size()),
      balance_(cells.branches.size()),
      nodes_(cells.junctions.size()) {
  for (const BranchCells& b : cells.branches) {
    if (b.hole && b.hole->priming_tee) priming_node_ = b.to.node;
  }
  std::vector<double> level(cells.unknowns, in_kelvin(celsius(20.0)));
  for (const Cell& cell : cells.cells) refresh_links(cell, level.data());
}

AirNow BurnEquations::air_at(double time, const Interval& interval) const {
  AirNow air;
  const double length = interval.end - interval.begin;
  const double along = length > 0.0 ? (time - interval.begin) / length : 0.0;
  air.outdoor = interval.outdoor_begin + along * (interval.outdoor_end - interval.outdoor_begin);
  air.room = in_kelvin(surround_.room);
  air.attic = 0.5 * (air.room + air.outdoor);
  air.outdoor_density = in(moist_air_density(kelvins(air.outdoor), surround_.absolute, outdoor_humidity_), kilogram_per_cubic_metre);
  air.room_density = in(surround_.room_air, kilogram_per_cubic_metre);
  return air;
}

double BurnEquations::air_beside(const Cell& cell) const {
  switch (cell.place) {
    case Place::outdoors: return air_.outdoor;
    case Place::attic: return air_.attic;
    case Place::ground: return cell.under_sky ? air_.outdoor : air_.room;
    case Place::room:
    case Place::mass:
    case Place::jacket: break;
  }
  return air_.room;
}

std::vector<double> BurnEquations::at_rest(const Interval& interval) const {
  const AirNow air = air_at(interval.begin, interval);
  std::vector<double> state(size(), 0.0);
  for (const Cell& cell : cells_->cells) {
    double level = air.room;
    if (cell.place == Place::outdoors) level = air.outdoor;
    if (cell.place == Place::attic) level = air.attic;
    if (cell.place == Place::ground) level = in_kelvin(surround_.ground);
    state[cell.base] = level;
    state[cell.base + 1] = 0.0;
    for (std::size_t j = 0; j < cell.node_count; ++j) state[cell.base + 2 + j] = level;
  }
  for (const JunctionCell& junction : cells_->junctions) state[junction.base] = air.room;
  return state;
}

void BurnEquations::rates(double time, const Interval& interval, const double* state, double* rate, Lines* lines,
                          Slopes* slopes) {
  air_ = air_at(time, interval);
  fire_ = {};
  Walk walk{};
  walk.time = time;
  walk.interval = &interval;
  walk.state = state;
  walk.rate = rate;
  walk.lines = lines;
  walk.slopes = slopes;
  if (lines != nullptr) {
    lines->fill(0.0);
    (*lines)[scheduled] = interval.wanted_burn;
  }
  if (slopes != nullptr) {
    slopes->cells.assign(cells_->cells.size(), CellSlopes{});
    slopes->branches.assign(cells_->branches.size(), BranchSlopes{});
    slopes->nodes.assign(cells_->junctions.size(), NodeSlopes{});
  }
  for (NodeNow& node : nodes_) node = {};
  for (std::size_t b = 0; b < cells_->branches.size(); ++b) walk_branch(b, walk);
  settle_nodes(walk);
  if (slopes != nullptr) slopes->links = links_;
}

double BurnEquations::room_gauge_at(double height, double depressurisation) const {
  return (air_.outdoor_density - air_.room_density) * gravity * (height - in(surround_.neutral_plane, metre)) -
         depressurisation;
}

double BurnEquations::gauge_of(const BranchCells& branch, const BranchEnd& end, double depressurisation) const {
  if (end.kind == EndKind::node) return 0.0;
  if (end.kind == EndKind::room_air) return room_gauge_at(in(end.height, metre), depressurisation);
  // The wind's pressure acts where the stack ends, not where a duct takes its air.
  return end.cap || (&end == &branch.to && !branch.hole) ? in(surround_.cap_gauge, pascal) : 0.0;
}

void BurnEquations::walk_branch(std::size_t index, Walk& w) {
  const BranchCells& branch = cells_->branches[index];
  const double m = w.state[branch.flow];
  w.branch = index;
  w.forward = m >= 0.0;
  w.sign = w.forward ? 1.0 : -1.0;
  w.reaching = w.flow = w.stirred = std::max(std::abs(m), still);
  w.exchange = 0.0;
  w.flow_per_reaching = 1.0;
  w.vapour_left = 1.0;
  w.pending_loss = w.loss_by_flow = w.drive_slope = 0.0;
  w.now = {};
  w.now.forward = w.forward;
  w.fan_by_flow = 0.0;
  w.now.from = gauge_of(branch, branch.from, w.interval->depressurisation);
  w.now.to = gauge_of(branch, branch.to, w.interval->depressurisation);
  const BranchEnd& source = w.forward ? branch.from : branch.to;
  if (source.kind == EndKind::node) {
    const double* node = w.state + cells_->junctions[source.node].base;
    w.gas = {node[0], node[1]};
    w.vapour_left = nodes_[source.node].vapour_left;
  } else {
    w.gas = {source.kind == EndKind::room_air ? air_.room : air_.outdoor, 0.0};
  }
  w.rate[branch.flow] = branch.hole ? -m / node_settling : 0.0;
  if (branch.hole) return pass_opening(index, w);
  const double arriving = gas_->enthalpy(w.gas.temperature, w.gas.share);

  const std::size_t count = branch.last - branch.first;
  for (std::size_t n = 0; n < count; ++n) {
    const std::size_t i = w.forward ? branch.first + n : branch.last - 1 - n;
    const Cell& cell = cells_->cells[i];
    if (w.forward && cell.opens) {
      local_loss(w, cell, cell.step_forward + cell.at_start.forward, cell.at_start.mitre_forward);
      if (cell.fan != nullptr && !cell.fan->at_end) pass_fan(w, cell);
      if (cell.fire) burn(w, cell);
    } else if (!w.forward && cell.closes) {
      local_loss(w, cell, cell.at_end.backward, cell.at_end.mitre_backward);
      if (cell.fan != nullptr && cell.fan->at_end) pass_fan(w, cell);
    }
    pass_cell(w, i);
    if (w.forward && cell.closes) {
      if (cell.fan != nullptr && cell.fan->at_end) pass_fan(w, cell);
      local_loss(w, cell, cell.at_end.forward, cell.at_end.mitre_forward);
    } else if (!w.forward && cell.opens) {
      if (cell.fan != nullptr && !cell.fan->at_end) pass_fan(w, cell);
      local_loss(w, cell, cell.at_start.backward, cell.at_start.mitre_backward);
      if (cell.fire) burn(w, cell);
      local_loss(w, cell, cell.step_backward, 0.0);
    }
    now_[i].loss += w.pending_loss;
    w.pending_loss = 0.0;
    if (w.slopes != nullptr) w.slopes->cells[i].drive_by_own += w.drive_slope;
    w.drive_slope = 0.0;
  }
  settle_jackets(w, branch);

  // The jet's kinetic energy is lost where the gas leaves into the open.
  if ((w.forward ? branch.to : branch.from).kind != EndKind::node) {
    const std::size_t last = w.forward ? branch.last - 1 : branch.first;
    const double area = cells_->cells[last].area;
    const double head = 0.5 * w.flow * w.flow / (density(w.gas.temperature, w.gas.share) * area * area);
    w.now.resistance += head;
    w.now.exit_head = head;
    w.loss_by_flow += 2.0 * head / w.flow;
    if (w.slopes != nullptr) w.slopes->cells[last].drive_by_own -= w.sign * head / w.gas.temperature;
  }
  leave_branch(w, branch, arriving);
}

void BurnEquations::local_loss(Walk& w, const Cell& cell, double plain, double mitre) {
  double zeta = plain;
  if (mitre > 0.0) {
    const double mu = gas_->transport(w.gas.temperature, w.gas.share).viscosity;
    zeta += mitre * mitre_reynolds_factor(w.flow / cell.area * cell.diameter / mu).value();
  }
  const double loss = 0.5 * zeta * w.flow * w.flow / density(w.gas.temperature, w.gas.share);
  w.now.resistance += loss;
  w.pending_loss += loss;
  w.loss_by_flow += 2.0 * loss / w.flow * w.flow_per_reaching;
  w.drive_slope -= w.sign * loss / w.gas.temperature;
}

void BurnEquations::burn(Walk& w, const Cell& cell) {
  const GasPair& gas = *gas_;
  const double a = gas.air_per_fuel();
  const double s = gas.solid_per_fuel();
  const double wanted = w.interval->wanted_burn;
  const double m = w.reaching;
  const double faded = m / mouth_exchange;
  const double exchange = mouth_exchange / (1.0 + faded * faded);
  const double fresh = m * (1.0 - w.gas.share) + exchange;
  const double allowed = fresh / (least_excess_air * a);
  const double burn_rate = std::min(wanted, allowed);
  const bool limited = allowed < wanted;

  // The gas leaving: air, and what the air has been turned into.
  const double flow = m + s * burn_rate;
  const double stirred = flow + exchange;
  const double spent = m * w.gas.share + burn_rate * (a + s);
  const double share = spent / stirred;
  const double h_in = gas.enthalpy(w.gas.temperature, w.gas.share);
  const double h_room = gas.air_enthalpy(air_.room);
  const double h = (m * h_in + exchange * h_room + burn_rate * gas.heat_to_gas()) / stirred;
  const double t = gas.temperature_at(h, share, burn_rate > 0.0 ? 1100.0 : w.gas.temperature);

  // Momentum at constant area.
  const double before = m * m / density(w.gas.temperature, w.gas.share);
  const double after = flow * flow / density(t, share);
  const double momentum = 0.5 * (after - before) / (cell.area * cell.area);
  w.now.acceleration += momentum;
  w.pending_loss += momentum;
  w.loss_by_flow += 2.0 * momentum / m;

  fire_ = {burn_rate, m, wanted > 0.0 ? fresh / (burn_rate * a) : 0.0, t, limited && wanted > 0.0};
  if (w.lines != nullptr) {
    Lines& lines = *w.lines;
    lines[released] += burn_rate * gas.heat_per_fuel();
    lines[unburned] += burn_rate * (gas.heat_per_fuel() - gas.heat_to_gas());
    lines[burnt] += burn_rate;
  }
  if (w.slopes != nullptr) {
    BranchSlopes& b = w.slopes->branches[w.branch];
    const double cp = gas.specific_heat(t, share);
    const double burn_by_m = limited ? (1.0 - w.gas.share) / (least_excess_air * a) : 0.0;
    const double air_by_m = (1.0 - w.gas.share) - burn_by_m * a;
    const double spent_by_m = w.gas.share + burn_by_m * (a + s);
    b.fire_by_entering = m * gas.specific_heat(w.gas.temperature, w.gas.share) / (stirred * cp);
    b.fire_by_flow = w.sign *
                     (h_in + burn_by_m * gas.heat_to_gas() - air_by_m * gas.air_enthalpy(t) - spent_by_m * gas.burnt_enthalpy(t)) /
                     (stirred * cp);
    b.fire_share_by_entering = m / stirred;
    b.fire_share_by_flow = w.sign * (spent_by_m - share * (1.0 + s * burn_by_m)) / stirred;
    b.burn_by_flow = w.sign * burn_by_m;
    const BranchCells& branch = cells_->branches[w.branch];
    const std::size_t here = branch.fire;
    b.fire_into = w.forward ? here : (here > branch.first ? here - 1 : nowhere);
    w.flow_per_reaching = 1.0 + s * burn_by_m;
  }
  w.gas = {t, share};
  w.flow = flow;
  w.stirred = stirred;
  w.exchange = exchange;
  w.vapour_left = 1.0;
}

void BurnEquations::pass_cell(Walk& w, std::size_t index) {
  const Cell& cell = cells_->cells[index];
  const GasPair& gas = *gas_;
  const double* s = w.state + cell.base;
  const double t = s[0];
  const double share = s[1];
  const double first = s[2];
  if (cell.variable) refresh_links(cell, w.state);

  // A first weight from a usual film, to know at which temperature to take the properties.
  constexpr double usual_film = 8.0;
  constexpr double usual_heat = 1100.0;
  const auto weight = [](double n) { return n < 0.02 ? 0.5 - n / 12.0 : 1.0 / n - 1.0 / std::expm1(n); };
  const double near = t + weight(usual_film * cell.surface / (w.stirred * usual_heat)) * (w.gas.temperature - t);
  const double half = inner_[index];
  Film film = inside_film(cell, near, first, share, w.flow);
  if (half * film.all * cell.surface > 0.01) {
    const double face = first + (near - first) * half / (half + 1.0 / (film.all * cell.surface));
    film = inside_film(cell, near, face, share, w.flow);
  }
  const double cp = gas.specific_heat(near, share);
  const double u = 1.0 / (1.0 / (film.all * cell.surface) + half);
  const double theta = weight(u / (w.stirred * cp));
  const double mean = t + theta * (w.gas.temperature - t);
  const double through = u * (mean - first);
  const double face = mean - through / (film.all * cell.surface);

  const double rho = density(mean, share);
  const double storage = rho * cell.volume * gas.specific_heat(t, share);
  const double h_in = gas.enthalpy(w.gas.temperature, w.gas.share);
  const double h_out = gas.enthalpy(t, w.gas.share);
  const double heat = w.stirred * (h_in - h_out) - through;
  const double renewal = w.stirred / (rho * cell.volume);
  w.rate[cell.base] = heat / storage;
  w.rate[cell.base + 1] = renewal * (w.gas.share - share);

  CellNow& now = now_[index];
  now = {};
  now.mean = mean;
  now.density = rho;
  now.entering = w.gas.temperature;
  now.face = face;
  now.through = through;
  now.film = film.all;
  now.flow = w.sign * w.flow;
  now.condensing = condensing(w, cell, film.convective, face, mean);

  // Pressure.
  const double flux2 = w.flow * w.flow;
  const double buoyancy = (air_.outdoor_density - rho) * gravity * cell.rise;
  const double rubbing = 0.5 * film.friction * cell.friction * flux2 / rho;
  const double acceleration = 0.5 * flux2 / (cell.area * cell.area) *
                              (1.0 / density(t, share) - 1.0 / density(w.gas.temperature, w.gas.share));
  now.buoyancy = buoyancy;
  now.loss = w.pending_loss + rubbing + acceleration;
  w.pending_loss = 0.0;
  w.now.buoyancy += buoyancy;
  w.now.resistance += rubbing;
  w.now.acceleration += acceleration;
  w.loss_by_flow += ((2.0 + film.friction_power) * rubbing + 2.0 * acceleration) / w.flow * w.flow_per_reaching;

  if (w.slopes != nullptr) {
    CellSlopes& slope = w.slopes->cells[index];
    const double u_gas = 1.0 / (1.0 / (film.by_gas * cell.surface) + half);
    const double u_wall = 1.0 / (1.0 / (film.by_wall * cell.surface) + half);
    slope.storage = storage;
    slope.renewal = renewal;
    slope.by_entering = w.stirred * gas.specific_heat(w.gas.temperature, w.gas.share) - u_gas * theta;
    slope.by_own = w.stirred * gas.specific_heat(t, w.gas.share) + u_gas * (1.0 - theta);
    slope.by_wall = u_wall;
    slope.wall_by_entering = u_gas * theta;
    slope.wall_by_gas = u_gas * (1.0 - theta);
    slope.wall_by_flow = w.sign * w.flow_per_reaching * through * film.flow_power * u / (film.all * cell.surface) / w.flow;
    slope.by_flow = w.sign * w.flow_per_reaching * (h_in - h_out) - slope.wall_by_flow;
    const double film_share = u / (film.all * cell.surface);
    slope.wall_by_share = through * film_share * film.by_share / film.all;
    slope.by_share = -slope.wall_by_share;
    slope.by_share_entering = w.stirred * (gas.burnt_enthalpy(w.gas.temperature) - gas.air_enthalpy(w.gas.temperature) -
                                           gas.burnt_enthalpy(t) + gas.air_enthalpy(t));
    // Density like 1/T, viscosity like T^0.7.
    const double by_mean = (rho * gravity * cell.rise - w.sign * (1.0 - 0.7 * film.friction_power) * rubbing) / mean;
    const double jerk = 0.5 * w.sign * flux2 / (cell.area * cell.area) * gas.gas_constant(share) / surround_absolute_;
    slope.drive_by_entering = theta * by_mean + jerk + w.drive_slope;
    slope.drive_by_own = (1.0 - theta) * by_mean - jerk;
  }
  if (w.lines != nullptr && w.exchange > 0.0) {
    (*w.lines)[out_of_mouth] += w.exchange * (gas.enthalpy(t, w.gas.share) - gas.air_enthalpy(air_.room));
    (*w.lines)[smoke] += w.exchange * share;
  }
  if (w.lines != nullptr) (*w.lines)[condensate] += now.condensing;
  conduct(w, cell, through + (latent_heat_counts ? now.condensing * in(evaporation_heat, joule_per_kilogram) : 0.0));
  if (w.lines != nullptr && latent_heat_counts) {
    (*w.lines)[latent] += now.condensing * in(evaporation_heat, joule_per_kilogram);
  }
  w.gas = {t, share};
  w.stirred = w.flow;
  w.exchange = 0.0;
  w.drive_slope = 0.0;
}

double BurnEquations::wall_heat(const double* state, double above) const {
  double heat = 0.0;
  for (const Cell& cell : cells_->cells) {
    for (std::size_t j = 0; j < cell.node_count; ++j) {
      heat += cells_->nodes[cell.first_node + j].capacity * (state[cell.base + 2 + j] - above);
    }
  }
  return heat;
}

double BurnEquations::gas_heat(const double* state, double above) const {
  double heat = 0.0;
  for (const Cell& cell : cells_->cells) {
    // Integral of p V cp/(R T) dT by Simpson in ln T: cp is nearly straight.
    const double share = state[cell.base + 1];
    const double ratio = std::log(state[cell.base] / above);
    const double middle = above * std::exp(0.5 * ratio);
    const double cp = (gas_->specific_heat(above, share) + 4.0 * gas_->specific_heat(middle, share) +
                       gas_->specific_heat(state[cell.base], share)) / 6.0;
    heat += surround_absolute_ * cell.volume / gas_->gas_constant(share) * cp * ratio;
  }
  for (const JunctionCell& junction : cells_->junctions) {
    const double share = state[junction.base + 1];
    heat += surround_absolute_ * junction.volume / gas_->gas_constant(share) *
            gas_->specific_heat(state[junction.base], share) * std::log(state[junction.base] / above);
  }
  return heat;
}

}  // namespace fluewright::kernel
