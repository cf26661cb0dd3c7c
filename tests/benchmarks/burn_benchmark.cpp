// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What a burn costs: a 24 h burn of a path of 60 pieces against SUNDIALS CVODE with its own banded solver on the same
// equations, both at about the same error against a tight run of our own, in one program; and a 90 min cold start with
// coarse slices, as maps of starts do it.
//
//   burn_benchmark            prints a table; no limit is enforced

#include "engine/burn/burn_stepper.hpp"
#include "engine/solve/stretch_slices.hpp"
#include "tests/engine/burn/cvode_run.hpp"
#include "tests/engine/solve/hand_built_heater.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <ctime>
#include <memory>
#include <vector>

namespace fluewright::test {
namespace {

double processor_seconds() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

/// The hand-built heater with its bench and stack cut into pieces until there are sixty of them.
Branch sixty_pieces(const HandBuiltHeater& heater) {
  Branch branch = heater.branch();
  while (branch.stretches.size() < 60) {
    const auto longest = std::max_element(branch.stretches.begin(), branch.stretches.end(),
                                          [](const Stretch& a, const Stretch& b) { return a.length < b.length; });
    Stretch half = *longest;
    half.length = 0.5 * half.length;
    half.rise = 0.5 * half.rise;
    Stretch second = half;
    half.at_end.clear();
    second.at_start.clear();
    second.lid.reset();
    second.fire = false;
    second.start_height = half.start_height + half.rise;
    const auto at = longest - branch.stretches.begin();
    branch.stretches[static_cast<std::size_t>(at)] = half;
    branch.stretches.insert(branch.stretches.begin() + at + 1, second);
  }
  return branch;
}

struct Case {
  HandBuiltHeater heater;
  Branch branch;
  Surround surround;
  SlicedPath path;
  std::unique_ptr<kernel::GasPair> gas;
  std::unique_ptr<kernel::BurnCells> cells;
  std::unique_ptr<kernel::BurnEquations> equations;
  std::vector<kernel::Interval> intervals;

  explicit Case(const BurnGrid& grid, double hours) {
    heater.bench = 12.0 * metre;
    branch = sixty_pieces(heater);
    const Design day = a_day(2.0, 18.0);
    surround = surround_of(day);
    path = slice_stretches(branch, [&grid](const Stretch& stretch) { return grid.longest_slice(stretch); });
    gas = std::make_unique<kernel::GasPair>(usual_wood(), surround.room_water);
    const double outdoors = in_kelvin(surround.outdoor);
    cells = std::make_unique<kernel::BurnCells>(
        path, *gas, kernel::AirRange{outdoors, outdoors, in_kelvin(surround.room), in(surround.absolute, pascal), 2.0}, grid);
    equations = std::make_unique<kernel::BurnEquations>(*cells, *gas, surround, day.site.outdoor_humidity);
    // Fire for four hours, then the bench gives back what it took; and again.
    const double rest = 0.5 * hours * 3600.0;
    for (int i = 0; i < 2; ++i) {
      kernel::Interval burning;
      burning.begin = i * rest;
      burning.end = burning.begin + rest / 3.0;
      burning.wanted_burn = 3.0 / 3600.0;
      burning.outdoor_begin = burning.outdoor_end = outdoors;
      kernel::Interval cooling = burning;
      cooling.begin = burning.end;
      cooling.end = (i + 1) * rest;
      cooling.wanted_burn = 0.0;
      intervals.push_back(burning);
      intervals.push_back(cooling);
    }
  }

  using States = std::vector<std::vector<double>>;

  States own(const BurnAccuracy& accuracy, kernel::StepCounts& counts) const {
    kernel::BurnStepper stepper{*equations, accuracy};
    stepper.start(equations->at_rest(intervals.front()), 0.0);
    States at;
    for (const kernel::Interval& interval : intervals) {
      stepper.enter(interval);
      while (stepper.moment() < interval.end) {
        if (!stepper.step(interval.end, 7200.0)) return {};
      }
      at.push_back(stepper.state());
    }
    counts = stepper.counts();
    return at;
  }

  States cvode(double relative, long& steps, long& rates) const {
    std::vector<double> state = equations->at_rest(intervals.front());
    States at;
    for (const kernel::Interval& interval : intervals) {
      const CvodeResult result = run_cvode(*equations, interval, state, relative, true, {interval.end}, &at);
      if (!result.done) return {};
      state = result.state;
      steps += result.steps;
      rates += result.rates;
    }
    return at;
  }

  /// Worst temperature at the ends of the intervals [K].
  [[nodiscard]] double worst(const States& a, const States& b) const {
    if (a.size() != b.size()) return std::nan("");
    double found = 0.0;
    for (std::size_t k = 0; k < a.size(); ++k) {
      for (const kernel::Cell& cell : cells->cells) {
        found = std::max(found, std::abs(a[k][cell.base] - b[k][cell.base]));
        for (std::size_t j = 0; j < cell.node_count; ++j) {
          found = std::max(found, std::abs(a[k][cell.base + 2 + j] - b[k][cell.base + 2 + j]));
        }
      }
    }
    return found;
  }
};

void against_cvode() {
  const Case day{BurnGrid{}, 24.0};
  kernel::StepCounts counts;
  const Case::States tight = day.own(BurnAccuracy{}.scaled(1e-3), counts);
  std::printf("24 h, 60 pieces, %zu slices, %zu unknowns\n", day.cells->cells.size(), day.cells->unknowns);
  std::printf("%-22s %10s %10s %10s %10s\n", "", "ms", "steps", "rates", "worst K");
  for (const double scale : {4.0, 1.0, 0.1}) {
    const double begun = processor_seconds();
    const Case::States at = day.own(BurnAccuracy{}.scaled(scale), counts);
    std::printf("own, accuracy x %-6g %10.1f %10zu %10zu %10.4f\n", scale, 1e3 * (processor_seconds() - begun), counts.accepted,
                counts.rates, day.worst(at, tight));
  }
  for (const double relative : {1e-3, 1e-4, 1e-5}) {
    long steps = 0;
    long rates = 0;
    const double begun = processor_seconds();
    const Case::States at = day.cvode(relative, steps, rates);
    std::printf("CVODE banded, %-8g %10.1f %10ld %10ld %10.4f\n", relative, 1e3 * (processor_seconds() - begun), steps, rates,
                day.worst(at, tight));
  }
}

void cold_start() {
  const Case start{BurnGrid::coarse(), 4.5};  // fires for the first third of half of it: 45 min, then cools for 90
  kernel::StepCounts counts;
  const double begun = processor_seconds();
  constexpr int times = 20;
  for (int i = 0; i < times; ++i) (void)start.own(BurnAccuracy{}.scaled(2.0), counts);
  std::printf("4.5 h coarse (two starts), %zu slices: %.2f ms, %zu steps\n", start.cells->cells.size(),
              1e3 * (processor_seconds() - begun) / times, counts.accepted);
}

}  // namespace
}  // namespace fluewright::test

int main() {
  fluewright::test::against_cvode();
  fluewright::test::cold_start();
}
