// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// What the unit types cost: the engine's march with them and the same code in raw doubles, measured in one run, turn
// and turn about, and compared by medians of processor time.
//   units_ratio [HIGHEST_RATIO]

#include "tests/benchmarks/slice_kernel.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <vector>

namespace {

constexpr int rounds = 61;
constexpr int marches_a_round = 40;

double seconds(slice_kernel::Result (*kernel)(int)) {
  const std::clock_t start = std::clock();
  (void)kernel(marches_a_round);
  return static_cast<double>(std::clock() - start) / CLOCKS_PER_SEC;
}

double median(std::vector<double> values) {
  const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
  std::nth_element(values.begin(), middle, values.end());
  return *middle;
}

bool same(double a, double b) { return std::abs(a - b) <= 1e-12 * std::abs(b); }

}  // namespace

int main(int argc, char** argv) {
  const double highest = argc > 1 ? std::strtod(argv[1], nullptr) : 1.02;
  const slice_kernel::Result typed = slice_kernel::with_units(5);
  const slice_kernel::Result bare = slice_kernel::in_bare_doubles(5);
  if (!same(typed.buoyancy, bare.buoyancy) || !same(typed.loss, bare.loss) || !same(typed.exit, bare.exit)) {
    std::printf("the two versions differ: exit %.17g K with units, %.17g K in doubles\n", typed.exit, bare.exit);
    return 1;
  }
  std::vector<double> with;
  std::vector<double> without;
  std::vector<double> ratios;
  for (int i = 0; i < rounds; ++i) {
    with.push_back(seconds(slice_kernel::with_units));
    without.push_back(seconds(slice_kernel::in_bare_doubles));
    ratios.push_back(with.back() / without.back());
  }
  const double nanoseconds = 1e9 / (static_cast<double>(marches_a_round) * typed.slices);
  const double ratio = median(ratios);
  std::printf("%d slices; with units %.0f ns a slice, raw doubles %.0f ns; ratio %.3f (median of %d, highest allowed %.2f)\n",
              typed.slices, median(with) * nanoseconds, median(without) * nanoseconds, ratio, rounds, highest);
  return ratio <= highest ? 0 : 1;
}
