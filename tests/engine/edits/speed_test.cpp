// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

#include <chrono>
#include <iostream>

// A verb runs on every mouse move, so its cost must not grow faster than the drawing. Absolute times depend on the
// machine and the build; the test holds their growth, and prints them.

namespace fluewright::tests {

namespace {

/// A flat spiral-free zigzag: runs and elbows, `count` pieces.
Design zigzag(std::size_t count) {
  Design design;
  Drawn drawn{bench_pipe(), "p1"};
  int leg = 0;
  while (drawn.design.pieces.size() + 2 <= count) {
    const Heading headings[] = {heading_north, heading_east, heading_up(), heading_east};
    const EditResult result = grow(drawn.design, shipped(), {drawn.last, "out"}, headings[leg++ % 4],
                                   1000.0 * millimetre, "bench_pipe", "elbow_smooth");
    drawn = {*result.design, result.touched};
  }
  return drawn.design;
}

template <class Verb>
double best_microseconds(const Verb& verb) {
  double best = 1e9;
  for (int i = 0; i < 30; ++i) {
    const auto start = std::chrono::steady_clock::now();
    const EditResult result = verb();
    const std::chrono::duration<double, std::micro> took = std::chrono::steady_clock::now() - start;
    EXPECT_TRUE(result.design.has_value());
    best = std::min(best, took.count());
  }
  return best;
}

struct Times {
  double grow, set_length, set_turn, insert, move_near, move_group, remove, settle, copy;
};

Times times_of(const Design& design) {
  const PieceId last = design.pieces.back().id;
  const GridPoint near = grid_point_near(port_of(design, "p3", "in").at + Position{25.0 * millimetre, {}, {}});
  return {
      best_microseconds([&] {
        return grow(design, shipped(), {last, "out"}, heading_south, 1.0 * metre, "bench_pipe", "elbow_smooth");
      }),
      best_microseconds([&] { return set_field(design, shipped(), "p1", "length", 1.5 * metre); }),
      best_microseconds([&] { return set_turn(design, shipped(), "p2", Turn::right); }),
      best_microseconds([&] { return insert_in_run(design, shipped(), "p3", 0.1 * metre, "tee"); }),
      best_microseconds([&] { return move_joint(design, shipped(), {"p3", "in"}, near); }),
      best_microseconds([&] { return move_group(design, shipped(), "p1", {250, 0, 0}); }),
      best_microseconds([&] { return remove_piece(design, shipped(), "p3"); }),
      best_microseconds([&] {
        Design copy = design;
        settle(copy, shipped(), "p1");
        return EditResult{std::move(copy), {}, {}};
      }),
      best_microseconds([&] { return EditResult{design, {}, {}}; }),
  };
}

void print(std::size_t count, const Times& t) {
  std::cout << count << " pieces [us]: grow " << t.grow << ", length " << t.set_length << ", turn " << t.set_turn
            << ", insert " << t.insert << ", move joint " << t.move_near << ", move group " << t.move_group
            << ", remove " << t.remove << ", settle " << t.settle << ", copy alone " << t.copy << '\n';
}

}  // namespace

TEST(Speed, grows_no_faster_than_the_drawing) {
  const Times small = times_of(zigzag(250));
  const Times large = times_of(zigzag(1000));
  print(250, small);
  print(1000, large);
  // Four times the pieces: four times the work, with room for caches and noise; quadratic growth would be sixteen.
  constexpr double most = 9.0;
  EXPECT_LT(large.grow, most * small.grow);
  EXPECT_LT(large.set_length, most * small.set_length);
  EXPECT_LT(large.set_turn, most * small.set_turn);
  EXPECT_LT(large.insert, most * small.insert);
  EXPECT_LT(large.move_near, most * small.move_near);
  EXPECT_LT(large.remove, most * small.remove);
  EXPECT_LT(large.settle, most * small.settle);
}

}  // namespace fluewright::tests
