// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// The stepper against SUNDIALS CVODE on the same semi-discrete equations to a tight tolerance.

#include "tests/engine/burn/burning_heater.hpp"
#include "tests/engine/burn/cvode_run.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace fluewright::test {
namespace {

using kernel::BurnStepper;

void agree(BurningHeater& b, const std::vector<double>& begun) {
  const std::vector<double> times{60.0, 600.0, 3600.0};
  std::vector<std::vector<double>> reference;
  const CvodeResult cvode = run_cvode(*b.equations, b.interval, begun, 1e-7, false, times, &reference);
  ASSERT_TRUE(cvode.done);
  BurnStepper stepper{*b.equations, {}};
  stepper.start(begun, 0.0);
  stepper.enter(b.interval);
  for (std::size_t k = 0; k < times.size(); ++k) {
    ASSERT_TRUE(BurningHeater::run(stepper, times[k]));
    double worst = 0.0;
    for (const kernel::Cell& cell : b.cells->cells) {
      worst = std::max(worst, std::abs(stepper.state()[cell.base] - reference[k][cell.base]));
      for (std::size_t j = 0; j < cell.node_count; ++j) {
        worst = std::max(worst, std::abs(stepper.state()[cell.base + 2 + j] - reference[k][cell.base + 2 + j]));
      }
    }
    EXPECT_LT(worst, 0.5) << "kelvin, after " << times[k] << " s";
    EXPECT_NEAR(stepper.state()[b.flow()] / reference[k][b.flow()], 1.0, 0.01) << "after " << times[k] << " s";
  }
}

TEST(BurnAgainstCvode, every_temperature_within_half_a_kelvin_and_the_flow_within_a_hundredth) {
  BurnGrid grid = few_slices();
  BurningHeater b{a_day(5.0, 18.0), {}, grid};
  agree(b, b.equations->at_rest(b.interval));
}

TEST(BurnAgainstCvode, when_it_burns_backwards_in_a_house_colder_than_outdoors) {
  HandBuiltHeater heater;
  heater.bench = 9.0 * metre;
  BurningHeater b{a_day(20.0, 10.0), heater, few_slices()};
  std::vector<double> begun = b.equations->at_rest(b.interval);
  begun[b.flow()] = -0.004;
  agree(b, begun);
}

}  // namespace
}  // namespace fluewright::test
