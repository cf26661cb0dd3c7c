// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// How long it takes to try every remedy of a design of 60 pieces, until the first is there, and to draw the curve of a
// limit at 40 lengths: the budgets are 100 ms for the first remedy and one frame, 16 ms, for the quick curve.

#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "app/shared/limit_search.hpp"
#include "app/shared/price_reader.hpp"
#include "app/shared/remedy_search.hpp"
#include "engine/layout/edit.hpp"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <atomic>
#include <chrono>

namespace fluewright {
namespace {

/// The demo of the run that is too long with every run in pieces: 60 of them.
Design sixty_pieces() {
  const auto library = shipped_library();
  for (const Demo& demo : shipped_demos()) {
    if (demo.id != "run_too_long") continue;
    Design design = std::get<DesignDocument>(read_design_text(demo.text, *library)).design;
    while (design.pieces.size() < 60) {
      // A cleanout tee in the middle of the longest run: two pieces more each.
      const auto longer = [](const Piece& a, const Piece& b) {
        const auto length = [](const Piece& p) { return p.type == "bench_pipe" ? std::get<Length>(p.fields.at("length")) : Length{}; };
        return length(a) < length(b);
      };
      const Piece& run = *std::max_element(design.pieces.begin(), design.pieces.end(), longer);
      const Length middle = 0.5 * std::get<Length>(run.fields.at("length"));
      design = *insert_in_run(design, *library, run.id, middle, "cleanout_tee").design;
    }
    return design;
  }
  return {};
}

void all_remedies(benchmark::State& state) {
  const auto library = shipped_library();
  const Design design = sixty_pieces();
  double first = 0.0;
  SearchState last;
  for (auto round : state) {
    (void)round;
    const auto begin = std::chrono::steady_clock::now();
    std::atomic<bool> seen{false};
    RemedySearch asked{design, *library, shipped_prices(), state.range(0) != 0, {}, {}, {}};
    asked.moved_on = [&](const SearchState&) {
      if (!seen.exchange(true)) first = std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - begin).count();
    };
    last = search_remedies(asked).state;
  }
  state.counters["pieces"] = static_cast<double>(design.pieces.size());
  state.counters["tried"] = static_cast<double>(last.tried);
  state.counters["first_ms"] = first;
}
BENCHMARK(all_remedies)->Arg(0)->Arg(1)->Unit(benchmark::kMillisecond)->UseRealTime()->Iterations(2);

void limit_curve_of_40(benchmark::State& state) {
  const auto library = shipped_library();
  const Design design = sixty_pieces();
  const LimitSearch asked{LimitKind::longest_bench, design, *library, marginal_below, 40, {}, {}};
  const auto scale = limit_scale(LimitKind::longest_bench, design, *library, assess(design, *library));
  const Length slice = state.range(0) != 0 ? quick_slice : AssessOptions{}.slice;
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(limit_curve(asked, *scale, slice));
  }
}
BENCHMARK(limit_curve_of_40)->Arg(1)->Arg(0)->Unit(benchmark::kMillisecond)->UseRealTime();

}  // namespace
}  // namespace fluewright

BENCHMARK_MAIN();
