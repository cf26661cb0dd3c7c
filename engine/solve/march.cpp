// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/march.hpp"

#include "engine/flow/bends.hpp"
#include "engine/gas/species.hpp"
#include "engine/moisture/condensation.hpp"
#include "engine/moisture/saturation.hpp"
#include "engine/solve/fans.hpp"

#include <algorithm>
#include <cstddef>

namespace fluewright {
namespace {

/// Fixed-point rounds of the wall temperatures: more where the wall changes, few while the last slice's are a good guess.
constexpr int rounds_at_start = 6;
constexpr int rounds_along = 2;
/// Rounds of the exchange between a riser and the gas around it; the coupling is weak (an insulated wall).
/// Going forward the last walk passes the riser first and takes its loss as it is; going backward the loss must have settled
/// before, so the rounds close in on it by the secant rule.
constexpr int jacket_rounds_forward = 2;
constexpr int jacket_rounds_backward = 7;

/// What a riser and the gas around it know of one another.
struct JacketExchange {
  Temperature chamber_gas;
  FilmCoefficient chamber_film = 10.0 * watt_per_square_metre_kelvin;
  Power from_riser{};
  Area chamber_surface{};
  bool active = false;

  void surround_riser(Temperature gas, FilmCoefficient film) {
    chamber_gas = gas;
    chamber_film = film;
  }
};

/// One walk through the path. Copyable on purpose: the jacket exchange repeats a part of the walk from a saved state.
class Walk {
 public:
  Walk(const SlicedPath& path, const Surround& surround, const Stream& in, const FireState& fire, const GasTable& after,
       WallAge age)
      : path_{&path},
        surround_{&surround},
        fire_{&fire},
        after_{&after},
        age_{age},
        gas_{in.gas},
        flow_{fire.air},
        burning_passed_{in.flue_gas},
        co2_{in.co2},
        h2o_{in.h2o},
        temperature_{in.temperature},
        total_pressure_{in.total},
        vapour_left_{in.vapour_left} {
    heat_.wall = heat_.surface = heat_.mean = temperature_;
    inlet_enthalpy_ = fire.air * gas_->specific_enthalpy(temperature_);
  }

  void pass(std::size_t index, std::vector<SliceState>* rows, std::vector<SliceVisit>* visits = nullptr) {
    const Slice& slice = path_->slices[index];
    const Stretch& stretch = path_->stretch_of(slice);
    const MarchTotals before = totals_;
    came_in_ = temperature_;
    if (fire_->forward ? slice.opens_stretch : slice.closes_stretch) enter(slice.stretch, stretch);
    SliceVisit visit;
    visit.slice = index;
    visit.vapour_left = vapour_left_;
    visit.total_before = total_pressure_;
    take_heat(slice, stretch, visit);
    if (visits != nullptr) visits->push_back(visit);
    if (fire_->forward ? slice.closes_stretch : slice.opens_stretch) leave(slice.stretch, stretch);
    if (rows != nullptr) add_row(slice, stretch, before, *rows);
  }

  /// The jet's kinetic energy is lost where the gas leaves into the open.
  void finish(bool to_free_air, std::vector<SliceState>* rows) {
    totals_.exit = temperature_;
    totals_.stack = flow_ * gas_->specific_enthalpy(temperature_) - inlet_enthalpy_;
    totals_.vapour_left = vapour_left_;
    totals_.fans = fans_;
    if (!to_free_air) return;
    const Stretch& last = fire_->forward ? path_->branch->stretches.back() : path_->branch->stretches.front();
    const Pressure head = velocity_head(last.section.area());
    totals_.local += head;
    if (rows != nullptr && !rows->empty()) {
      rows->back().local += way() * head;
      rows->back().loss += way() * head;
    }
  }

  [[nodiscard]] const MarchTotals& totals() const { return totals_; }
  JacketExchange jacket;

  /// What the riser has lost on this walk goes into the chamber around it.
  void take_riser_heat() { jacket.from_riser = riser_heat_; }
  void leave_jacket() {
    jacket = {};
    riser_heat_ = {};
  }

 private:
  /// +1 with the branch as it is written, -1 against it.
  [[nodiscard]] double way() const { return fire_->forward ? 1.0 : -1.0; }
  [[nodiscard]] Density density() const { return gas_->density(temperature_, surround_->absolute); }
  [[nodiscard]] Pressure velocity_head(Area area) const {
    const MassFlux g = flow_ / area;
    return 0.5 * g * g / density();
  }

  void add_losses(const std::vector<LocalLoss>& losses, const Section& section) {
    for (const LocalLoss& loss : losses) {
      Ratio zeta = fire_->forward ? loss.forward : loss.backward;
      if (loss.correction == LocalLoss::Reynolds::mitre) {
        zeta *= mitre_reynolds_factor(flow_ / section.area() * section.hydraulic_diameter() / gas_->viscosity(temperature_));
      }
      totals_.local += zeta * velocity_head(section.area());
    }
  }

  void add_step(std::size_t index) {
    const AreaStep& step = path_->steps[index];
    if (step.narrow > Area{}) {
      totals_.local += (fire_->forward ? step.forward : step.backward) * velocity_head(step.narrow);
    }
  }

  /// A fan that stands at this end of the stretch.
  void pass_fan(const Stretch& stretch, bool at_end) {
    if (!stretch.fan || stretch.fan->at_end != at_end) return;
    fans_.push_back(passed_fan(stretch, way() * flow_, *gas_, temperature_, surround_->absolute));
    totals_.fan += (stretch.fan->blows_along ? 1.0 : -1.0) * fans_.back().effect.head;
    totals_.local += fans_.back().effect.loss;
  }

  void enter(std::size_t index, const Stretch& stretch) {
    if (fire_->forward) {
      add_step(index);
      add_losses(stretch.at_start, stretch.section);
      pass_fan(stretch, false);
      if (stretch.fire) burn(stretch);
    } else {
      add_losses(stretch.at_end, stretch.section);
      pass_fan(stretch, true);
    }
  }

  void leave(std::size_t index, const Stretch& stretch) {
    if (fire_->forward) {
      pass_fan(stretch, true);
      add_losses(stretch.at_end, stretch.section);
    } else {
      pass_fan(stretch, false);
      add_losses(stretch.at_start, stretch.section);
      if (stretch.fire) burn(stretch);
      add_step(index);
    }
  }

  /// Air becomes flue gas: heat, mass and momentum, at constant area.
  void burn(const Stretch& stretch) {
    const MassFlux g_in = flow_ / stretch.section.area();
    const auto momentum_in = g_in * g_in / density();
    const Power brought = flow_ * gas_->specific_enthalpy(temperature_);
    gas_ = after_;
    flow_ = fire_->flue;
    burning_passed_ = true;
    temperature_ = gas_->temperature_at((brought + fire_->added) / flow_, kelvins(1200.0));
    totals_.fire = temperature_;
    const MassFlux g_out = flow_ / stretch.section.area();
    totals_.acceleration += 0.5 * (g_out * g_out / density() - momentum_in);
    co2_ = gas_->mixture().mole_fraction(Species::carbon_dioxide) * surround_->absolute;
    h2o_ = gas_->mixture().mole_fraction(Species::water) * surround_->absolute;
    heat_.kept = 1.0;
    heat_.mean = temperature_;
  }

  void take_heat(const Slice& slice, const Stretch& stretch, SliceVisit& visit) {
    SliceSetting& setting = visit.setting;
    setting.stretch = &stretch;
    setting.wall = &path_->walls[slice.stretch];
    setting.diameter_over_run = path_->diameter_over_run[slice.stretch];
    setting.beyond = surround_->beyond(stretch.place, stretch.embedding);
    setting.rest = stretch.place == Place::ground ? surround_->ground : setting.beyond;
    setting.lid = slice.lid;
    setting.flue_gas = burning_passed_;
    setting.co2 = co2_;
    setting.h2o = h2o_;
    const bool jacketed = jacket.active && stretch.place == Place::jacket;
    const bool around = jacket.active && stretch.chamber && !age_;
    if (jacketed) setting.beyond = jacket.chamber_gas;
    setting.jacket_film = jacket.chamber_film;
    const Power gained = around ? jacket.from_riser * (slice.surface / jacket.chamber_surface) : Power{};

    const bool fresh = slice.lid || (fire_->forward ? slice.opens_stretch : slice.closes_stretch);
    const Density density_in = density();
    heat_slice(heat_, temperature_, flow_, *gas_, slice, setting, *surround_, age_, gained,
               fresh ? rounds_at_start : rounds_along);
    visit.entering = temperature_;
    visit.flow = flow_;
    visit.gained = gained;
    visit.heat = heat_;
    temperature_ = heat_.out;
    density_ = gas_->density(heat_.mean, surround_->absolute);

    const MassFlux g = flow_ / stretch.section.area();
    totals_.buoyancy += (surround_->outdoor_air - density_) * standard_gravity * slice.rise;
    totals_.friction += heat_.friction_factor * slice.length / stretch.section.hydraulic_diameter() * (0.5 * g * g / density_);
    totals_.acceleration += 0.5 * g * g * (1.0 / density() - 1.0 / density_in);
    account(stretch.place, jacketed);
  }

  void account(Place place, bool jacketed) {
    if (jacketed) {
      riser_heat_ += heat_.through_wall;  // comes back in the chamber
      if (age_) totals_.into_mass += heat_.through_wall;
      return;
    }
    switch (place) {
      case Place::room:
      case Place::jacket: totals_.to_room += heat_.through_wall; break;
      case Place::mass:
      case Place::ground: totals_.into_mass += heat_.through_wall; break;
      case Place::outdoors:
      case Place::attic: totals_.to_outdoors += heat_.through_wall; break;
    }
  }

  void add_row(const Slice& slice, const Stretch& stretch, const MarchTotals& before, std::vector<SliceState>& rows) {
    SliceState row;
    row.piece = stretch.piece;
    row.length = slice.length;
    row.z = slice.end_height;
    row.room_gauge = surround_->room_gauge(slice.end_height);
    row.beside_room = opens_to_room(stretch);
    row.gas = fire_->forward ? temperature_ : came_in_;
    row.wall = heat_.wall;
    row.surface = heat_.surface;
    row.density = density_;
    row.velocity = way() * flow_ / stretch.section.area() / density_;
    row.reynolds = heat_.reynolds;
    row.friction_factor = heat_.friction_factor;
    row.nusselt = heat_.nusselt;
    row.film = heat_.film;
    row.overall = heat_.overall;
    row.heat = heat_.through_wall;
    row.friction = way() * (totals_.friction - before.friction);
    row.local = way() * (totals_.local - before.local);
    row.acceleration = way() * (totals_.acceleration - before.acceleration);
    row.loss = row.friction + row.local + row.acceleration;
    row.buoyancy = totals_.buoyancy - before.buoyancy;
    row.fan = totals_.fan - before.fan;
    step_pressure(slice, stretch, row);
    wet(slice, row);
    rows.push_back(row);
  }

  /// Static pressure at the slice's end as the branch is written: where the gas leaves it going forward, and where it
  /// comes in going backward.
  void step_pressure(const Slice& slice, const Stretch& stretch, SliceState& row) {
    const Pressure gained = row.buoyancy + row.fan - row.loss;
    if (fire_->forward) total_pressure_ += gained;
    const MassFlux g = flow_ / stretch.section.area();
    row.gauge = total_pressure_ - 0.5 * g * g / gas_->density(row.gas, surround_->absolute);
    if (!fire_->forward) total_pressure_ -= gained;
    row.s = slice.end_s;
  }

  /// Water that leaves the gas on a wall below the dew point; what has condensed is gone for the slices after.
  void wet(const Slice& slice, SliceState& row) {
    if (!burning_passed_) {
      row.dew_point = dew_point(gas_->mixture().mole_fraction(Species::water) * surround_->absolute);
      return;
    }
    const Ratio y = gas_->mixture().mole_fraction(Species::water);
    const Ratio left = y * vapour_left_;
    const Pressure vapour = surround_->absolute * left / (1.0 - y + left);
    row.dew_point = dew_point(vapour);
    if (heat_.wall > row.dew_point) return;
    const MassFlow carried = flow_ * y * (molar_mass(Species::water) / gas_->mixture().molar_mass());
    const MassFlow could = slice.surface * condensing_flux(heat_.convective, *gas_, vapour, surround_->absolute, heat_.wall,
                                                           heat_.mean);
    row.condensing = std::min(could, carried * vapour_left_);
    vapour_left_ -= row.condensing / carried;
  }

  const SlicedPath* path_;
  const Surround* surround_;
  const FireState* fire_;
  const GasTable* after_;
  WallAge age_;
  const GasTable* gas_;
  MassFlow flow_;
  bool burning_passed_ = false;
  Pressure co2_{};
  Pressure h2o_{};
  Temperature temperature_;
  Temperature came_in_;  ///< at the slice the gas is passing
  Density density_{};
  Power inlet_enthalpy_{};
  Power riser_heat_{};
  Pressure total_pressure_{};
  Ratio vapour_left_ = 1.0;
  SliceHeat heat_;
  MarchTotals totals_;
  std::vector<FanState> fans_;  // beside the totals, of which every slice takes a copy

  friend JacketExchange exchanged(const Walk& start, const JacketGroup& group, const SlicedPath& path, bool forward);
};

/// Closes in on a value that a walk gives back changed, until it comes back as it was: one secant step a round.
class SecantRounds {
 public:
  /// The next value to try after `tried` came back as `given`.
  Power next(Power tried, Power given) {
    const Power off = given - tried;
    const bool turns = any_ && off_ != off;
    const Power next = turns ? Power(tried - off * ((tried - tried_) / (off - off_))) : given;
    any_ = true;
    tried_ = tried;
    off_ = off;
    return next;
  }

 private:
  bool any_ = false;
  Power tried_{};
  Power off_{};
};

/// The riser's loss and the temperature of the gas around it, by repeating both walks.
JacketExchange exchanged(const Walk& start, const JacketGroup& group, const SlicedPath& path, bool forward) {
  JacketExchange jacket;
  jacket.active = true;
  jacket.chamber_gas = midway(start.temperature_, start.surround_->room);
  for (std::size_t i = group.chamber; i < group.last; ++i) jacket.chamber_surface += path.slices[i].surface;
  const int rounds = forward ? jacket_rounds_forward : jacket_rounds_backward;
  SecantRounds secant;
  for (int round = 1; round <= rounds; ++round) {
    Walk walk = start;
    walk.jacket = jacket;
    walk.riser_heat_ = {};
    TemperatureDifference weighted{};
    FilmCoefficient film{};
    const std::size_t count = group.last - group.first;
    for (std::size_t n = 0; n < count; ++n) {
      const std::size_t i = forward ? group.first + n : group.last - 1 - n;
      if (forward && i == group.chamber) walk.jacket.from_riser = walk.riser_heat_;
      walk.pass(i, nullptr);
      if (i < group.chamber) continue;
      const Ratio share = path.slices[i].surface / jacket.chamber_surface;
      weighted += share * walk.heat_.mean.above_zero();
      film += share * walk.heat_.film;
      if (!forward && i == group.chamber) walk.jacket.surround_riser(Temperature::above_zero(weighted), film);
    }
    jacket.surround_riser(Temperature::above_zero(weighted), film);
    // What the last round tried stands: it came back as it was.
    if (forward || round < rounds) {
      jacket.from_riser = forward ? walk.riser_heat_ : secant.next(jacket.from_riser, walk.riser_heat_);
    }
  }
  return jacket;
}

}  // namespace

MarchTotals March::run(const FireState& fire, const GasTable& before, const GasTable& after, WallAge age,
                       std::vector<SliceState>* rows, std::vector<SliceVisit>* visits) const {
  const BranchEnd& source = fire.forward ? path_->branch->from : path_->branch->to;
  Stream in;
  in.gas = &before;
  in.flow = fire.air;
  in.forward = fire.forward;
  in.temperature = source.kind == EndKind::room_air ? surround_->room : surround_->outdoor;
  in.total = surround_->gauge_at(source);
  return run(in, fire, after, true, age, rows, visits);
}

MarchTotals March::run(const Stream& in, const FireState& fire, const GasTable& after, bool to_free_air, WallAge age,
                       std::vector<SliceState>* rows, std::vector<SliceVisit>* visits) const {
  Walk walk{*path_, *surround_, in, fire, after, age};
  const std::size_t count = path_->slices.size();
  for (std::size_t n = 0; n < count; ++n) {
    const std::size_t i = fire.forward ? n : count - 1 - n;
    for (const JacketGroup& g : path_->jackets) {
      if (i == (fire.forward ? g.first : g.last - 1)) walk.jacket = exchanged(walk, g, *path_, fire.forward);
      if (fire.forward && i == g.chamber) walk.take_riser_heat();
      if (i == (fire.forward ? g.last : g.first - 1)) walk.leave_jacket();
    }
    walk.pass(i, rows, visits);
  }
  walk.finish(to_free_air, rows);
  return walk.totals();
}

}  // namespace fluewright
