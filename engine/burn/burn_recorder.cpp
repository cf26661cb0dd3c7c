// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/burn_recorder.hpp"

#include "engine/burn/path_balance.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright::kernel {
namespace {

/// The least margin counts from here after lighting: before, the stack is as cold as on any other morning (chosen).
constexpr double margin_counts_after = 300.0;  // [s]
/// The excess air under which the steady answer calls a fire starved (common practice, no source).
constexpr double starving_below = 1.5;
/// Less burnt gas than this into the room is no smoke but what a feed breathes [kg/s].
constexpr double breath = 2e-6;

}  // namespace

BurnRecorder::BurnRecorder(BurnRecord& record, const BurningFlue& flue, const Design& design, const BurnOptions& options,
                           const Timeline& timeline)
    : record_{&record},
      equations_{flue.equations.get()},
      probe_{*flue.equations},
      design_{&design},
      options_{&options},
      aids_end_{timeline.aids_end()},
      design_flow_{in(design.fire.burn_rate, kilogram_per_second) * design.fire.wanted_excess_air *
                   flue.equations->gas().air_per_fuel()} {
  const BurnCells& cells = equations_->cells();
  for (std::size_t b = 0; b < cells.branches.size(); ++b) {
    const BranchCells& branch = cells.branches[b];
    for (std::size_t i = branch.first; i < branch.last; ++i) {
      const Cell& cell = cells.cells[i];
      const Slice& slice = flue.paths[b].slices[cell.slice];
      record.slices.push_back({cell.piece, b, slice.end_s - slice.length, slice.end_s, slice.end_height, cell.place,
                               record.nodes.size(), 0});
      if (options.keep_slices && (cell.place == Place::mass || cell.place == Place::ground)) keep_nodes(cell);
    }
  }
}

void BurnRecorder::set_mouth(Area open, Length height) {
  mouth_open_ = open;
  mouth_height_ = height;
}

void BurnRecorder::use(const BurnEquations& equations) {
  equations_ = &equations;
  probe_.emplace(equations);
}

void BurnRecorder::keep_nodes(const Cell& cell) {
  record_->slices.back().node_count = cell.node_count;
  for (std::size_t k = 0; k < cell.node_count; ++k) {
    const WallNode& node = equations_->cells().nodes[cell.first_node + k];
    const double volume_heat = in(node.material->density, kilogram_per_cubic_metre) *
                               in(node.material->specific_heat, joule_per_kilogram_kelvin);
    record_->nodes.push_back({node.capacity / (volume_heat * cell.length) * square_metre, node.embedding});
  }
}

void BurnRecorder::enter(const Interval& interval, const BurnStepper& stepper) {
  interval_ = interval;
  if (begun_.empty()) {
    begun_ = stepper.state();
    rate_.resize(begun_.size());
  }
  if (!lit_ && interval.wanted_burn > 0.0) lit_ = interval.begin;
  record_->rows.push_back(row_of(stepper));
  last_row_ = stepper.moment();
  last_step_ = stepper.moment();
}

double BurnRecorder::margin_at(const BurnStepper& stepper) {
  const BurnCells& cells = equations_->cells();
  trial_ = stepper.state();
  for (const std::size_t b : cells.main_path) trial_[cells.branches[b].flow] = design_flow_;
  Interval at_design = interval_;
  at_design.wanted_burn = in(design_->fire.burn_rate, kilogram_per_second);
  at_design.priming = 0.0;
  at_design.powered = false;  // as the design-flow check: fans standing still
  probe_->rates(stepper.moment(), at_design, trial_.data(), rate_.data());
  return path_balance(*probe_).margin(design_->fire.flow_safety) - in(design_->site.wind_allowance, pascal);
}

void BurnRecorder::set_drafts(BurnRow& row) const {
  const BurnCells& cells = equations_->cells();
  const std::vector<CellNow>& now = equations_->cells_now();
  for (std::size_t b = 0; b < cells.branches.size(); ++b) {
    const BranchCells& branch = cells.branches[b];
    const double sign = equations_->branches_now()[b].forward ? 1.0 : -1.0;
    double total = equations_->branches_now()[b].from;
    if (sign < 0.0 && branch.from.kind != EndKind::node) total += equations_->branches_now()[b].exit_head;
    for (std::size_t i = branch.first; i < branch.last; ++i) {
      const Cell& cell = cells.cells[i];
      const double below = cell.end_height - cell.rise;
      const auto draft = [&](double height, double static_gauge) {
        return (equations_->room_gauge_at(height, interval_.depressurisation) - static_gauge) * pascal;
      };
      const double head = 0.5 * now[i].flow * now[i].flow / (now[i].density * cell.area * cell.area);
      if (i == branch.foot) row.foot_draft = draft(below, total - head);
      total += now[i].buoyancy - sign * now[i].loss;
      if (b == cells.fire_branch && i == branch.first) row.feed_draft = draft(cell.end_height, total - head);
    }
  }
}

BurnRow BurnRecorder::row_of(const BurnStepper& stepper) {
  const BurnCells& cells = equations_->cells();
  const std::vector<CellNow>& now = equations_->cells_now();
  const FireNow& fire = equations_->fire_now();
  const Lines& lines = stepper.lines();
  const std::vector<double>& state = stepper.state();
  BurnRow row;
  row.at = stepper.moment() * second;
  row.wanted = interval_.wanted_burn * kilogram_per_second;
  row.burning = fire.burn * kilogram_per_second;
  row.air = fire.air * kilogram_per_second;
  row.excess_air_ratio = interval_.wanted_burn > 0.0 ? fire.excess : 0.0;
  row.short_of_air = fire.short_of_air;
  row.outdoors = kelvins(equations_->air_at(stepper.moment(), interval_).outdoor);
  row.fire = kelvins(fire.temperature);
  for (const BranchCells& b : cells.branches) row.flows.push_back(state[b.flow] * kilogram_per_second);
  const BranchCells& burning = cells.branches[cells.fire_branch];
  row.forward = state[burning.flow] >= 0.0;
  if (row.forward && fire.burn > 0.0 && mouth_open_ > Area{}) {
    const AirNow air = equations_->air_at(stepper.moment(), interval_);
    const Velocity inflow = row.air / (air.room_density * kilogram_per_cubic_metre * mouth_open_);
    row.mouth_froude = mouth_froude(inflow, mouth_height_, row.fire, kelvins(air.room));
  }
  for (const BranchCells& b : cells.branches) {
    if (b.to.kind != EndKind::outdoor_air || b.last == b.first) continue;
    row.flue_gas = now[b.last - 1].flow * kilogram_per_second;
    row.exit = kelvins(state[cells.cells[row.forward ? b.last - 1 : burning.first].base]);
  }
  row.stored = (equations_->wall_heat(state.data(), 0.0) - equations_->wall_heat(begun_.data(), 0.0)) * joule;
  row.burnt = lines[burnt] * kilogram;
  row.smoke = lines[smoke] * kilogram;
  row.condensate = lines[condensate] * kilogram;
  row.condensing = stepper.line_rates()[condensate] * kilogram_per_second;
  row.margin = margin_at(stepper) * pascal;
  set_drafts(row);
  for (std::size_t i = 0; i < cells.cells.size(); ++i) {
    if (cells.cells[i].fan != nullptr) row.motors.emplace_back(cells.cells[i].piece, kelvins(equations_->motor_at(i)));
  }
  if (options_->keep_slices) {
    for (const CellNow& cell : now) {
      row.gas.push_back(kelvins(cell.mean));
      row.wall.push_back(kelvins(cell.face));
      row.surface.push_back(kelvins(cell.surface));
    }
    for (std::size_t i = 0; i < now.size(); ++i) {
      const Cell& cell = cells.cells[i];
      row.speeds.push_back(now[i].flow / (now[i].density * cell.area) * metre_per_second);
      for (std::size_t k = 0; k < record_->slices[i].node_count; ++k) {
        row.nodes.push_back(kelvins(state[cell.base + 2 + k]));
      }
    }
  }
  return row;
}

/// Whether a fan blows while the interval lasts: then nothing holds by itself.
bool BurnRecorder::fan_runs() const {
  if (!interval_.powered) return false;
  for (const Cell& cell : equations_->cells().cells) {
    if (cell.fan == nullptr) continue;
    double speed = cell.fan->speed;
    for (const auto& [piece, switched] : interval_.fan_speeds) {
      if (piece == cell.piece) speed = switched;
    }
    if (speed > 0.0) return true;
  }
  return false;
}

void BurnRecorder::count(const BurnRow& row, double seconds) {
  BurnSummary& s = record_->summary;
  const Time passed = seconds * second;
  const bool burning = row.wanted > MassFlow{};
  if (burning && !row.forward) s.reversed += passed;
  if (burning && (row.short_of_air || row.excess_air_ratio < starving_below)) s.starved += passed;
  if (row.counterflow()) s.counterflow += passed;
  if (burning && row.forward) {
    if (!holds_from_ && in(row.at, second) >= aids_end_ && !fan_runs()) holds_from_ = in(row.at, second);
  } else if (burning) {
    holds_from_.reset();
  }
  const bool counts = burning && lit_ && in(row.at, second) >= *lit_ + margin_counts_after;
  if (counts && (!least_margin_seen_ || row.margin < s.least_margin)) {
    s.least_margin = row.margin;
    s.least_margin_at = row.at;
    least_margin_seen_ = true;
  }
  for (const auto& [piece, temperature] : row.motors) s.hottest_motor = std::max(s.hottest_motor, temperature);
}

void BurnRecorder::add(const BurnStepper& stepper) {
  const double seconds = stepper.moment() - last_step_;
  last_step_ = stepper.moment();
  BurnRow row = row_of(stepper);
  count(row, seconds);
  if (options_->watch && !options_->watch(row)) seen_enough_ = true;
  if (stepper.line_rates()[smoke] > breath) record_->summary.smoke_time += seconds * second;
  const bool due = stepper.moment() - last_row_ >= in(options_->cadence, second) || stepper.moment() >= interval_.end;
  if (!due) return;
  last_row_ = stepper.moment();
  record_->rows.push_back(std::move(row));
}

void BurnRecorder::finish(const BurnStepper& stepper) {
  const Lines& lines = stepper.lines();
  BurnSummary& s = record_->summary;
  s.ran = stepper.moment() * second;
  if (holds_from_) s.holds_from = *holds_from_ * second;
  s.smoke = lines[smoke] * kilogram;
  s.wanted = lines[scheduled] * kilogram;
  s.burnt = lines[burnt] * kilogram;
  s.condensate = lines[condensate] * kilogram;
  for (const BurnRow& row : record_->rows) {
    for (const Temperature& gas : row.gas) s.hottest_gas = std::max(s.hottest_gas, gas);
  }
  BurnHeat& heat = s.heat;
  const double level = equations_->air_at(stepper.moment(), interval_).room;
  const double* end = stepper.state().data();
  heat.released = lines[released] * joule;
  heat.unburned = lines[unburned] * joule;
  heat.to_room = lines[to_room] * joule;
  heat.to_outdoors = lines[to_outdoors] * joule;
  heat.out_of_cap = lines[out_of_cap] * joule;
  heat.out_of_mouth = lines[out_of_mouth] * joule;
  heat.latent = lines[latent] * joule;
  heat.stored = (equations_->wall_heat(end, level) - equations_->wall_heat(begun_.data(), level)) * joule;
  heat.in_gas = (equations_->gas_heat(end, level) - equations_->gas_heat(begun_.data(), level)) * joule;
  const Energy accounted = heat.unburned + heat.to_room + heat.to_outdoors + heat.out_of_cap + heat.out_of_mouth +
                           heat.stored + heat.in_gas;
  if (heat.released > Energy{}) {
    heat.closure = std::abs(in(heat.released + heat.latent - accounted, joule) / in(heat.released, joule));
  }
  record_->steps = stepper.counts().accepted;
  record_->rejected_steps = stepper.counts().rejected;
}

}  // namespace fluewright::kernel
