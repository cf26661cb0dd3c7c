// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// How long the whole answer takes, and how long from a change of the drawing to its answer: the budget is one frame,
// 16 ms, for a design of 60 pieces.

#include "app/shared/library_reader.hpp"
#include "engine/layout/edit.hpp"
#include "engine/solve/assessment.hpp"

#include <benchmark/benchmark.h>

#include <algorithm>
#include <string>

namespace fluewright {
namespace {

void push(Design& design, std::string type, GridPoint at, Heading heading, std::int32_t length) {
  Piece piece;
  piece.id = design.fresh_id();
  piece.type = std::move(type);
  piece.at = at;
  piece.heading = heading;
  if (length > 0) piece.fields["length"] = static_cast<double>(length) * grid_count;
  if (!design.pieces.empty()) design.joints.push_back({{design.pieces.back().id, "out"}, {piece.id, "in"}});
  design.pieces.push_back(std::move(piece));
}

/// Feed, tunnel, riser and a stack of many short pipes: so many pieces, 30 m long or 50 mm a piece, whatever is more.
Design tall(int pieces) {
  constexpr int others = 4;
  const int pipes = pieces - others;
  const std::int32_t each = std::max(500, 300000 / pipes);
  Design design;
  push(design, "feed_tube", {0, 0, 4500}, heading_down(), 3000);
  push(design, "burn_tunnel", {0, 0, 1500}, heading_down(), 6000);
  design.pieces.back().turn = Turn::up;
  push(design, "heat_riser", {6000, 0, 1500}, heading_up(), 10000);
  for (int i = 0; i < pipes; ++i) push(design, "stovepipe", {6000, 0, 11500 + i * each}, heading_up(), each);
  push(design, "cap_plain", {6000, 0, 11500 + pipes * each}, heading_up(), 0);
  return design;
}

void whole_answer(benchmark::State& state) {
  const auto library = shipped_library();
  const Design design = tall(static_cast<int>(state.range(0)));
  std::size_t slices = 0;
  for (auto round : state) {
    (void)round;
    const Assessment answer = assess(design, *library);
    if (!answer.path.complete) state.SkipWithError("the path is not complete");
    slices = answer.profile.size();
  }
  state.counters["slices"] = static_cast<double>(slices);
}
BENCHMARK(whole_answer)->Arg(60)->Arg(300)->Arg(1000)->Unit(benchmark::kMillisecond);

/// The same with two tees in the stack whose lids are off: two side branches.
Design tall_with_open_tees(int pieces) {
  constexpr std::int32_t tee = 2500;  // grid counts: a 150 mm tee is 250 mm long
  Design design = tall(pieces);
  std::int32_t lift = 0;
  const std::size_t first = design.pieces.size() / 4;
  const std::size_t second = design.pieces.size() / 2;
  for (std::size_t i = 3; i < design.pieces.size(); ++i) {
    Piece& piece = design.pieces[i];
    piece.at.z += lift;
    if (i != first && i != second) continue;
    const Length before = std::get<Length>(piece.fields.at("length"));
    piece.type = "cleanout_tee";
    piece.fields.clear();
    piece.fields["cover"] = std::string("off");
    lift += tee - static_cast<std::int32_t>(in(before, grid_count) + 0.5);
  }
  return design;
}

void branched_answer(benchmark::State& state) {
  const auto library = shipped_library();
  const Design design = tall_with_open_tees(static_cast<int>(state.range(0)));
  for (auto round : state) {
    (void)round;
    const Assessment answer = assess(design, *library);
    if (!answer.path.complete || answer.branches.size() != 5) state.SkipWithError("not two side branches");
  }
}
BENCHMARK(branched_answer)->Arg(60)->Arg(300)->Unit(benchmark::kMillisecond);

void edit_and_answer(benchmark::State& state) {
  const auto library = shipped_library();
  const Design design = tall(static_cast<int>(state.range(0)));
  const PieceId pipe = design.pieces[design.pieces.size() / 2].id;
  std::int32_t counts = 1000;
  for (auto round : state) {
    (void)round;
    counts = counts == 1000 ? 1250 : 1000;
    const EditResult edit = set_field(design, *library, pipe, "length", static_cast<double>(counts) * grid_count);
    if (!edit.design) {
      state.SkipWithError("the edit was refused");
      break;
    }
    benchmark::DoNotOptimize(assess(*edit.design, *library));
  }
}
BENCHMARK(edit_and_answer)->Arg(60)->Arg(300)->Arg(1000)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace fluewright

BENCHMARK_MAIN();
