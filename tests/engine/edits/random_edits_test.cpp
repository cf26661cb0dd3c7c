// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

#include <rapidcheck/gtest.h>

#include <array>
#include <cmath>
#include <limits>
#include <random>

namespace fluewright::tests {

namespace {

/// Random choices from one seed: a failing case is told by its seed and the number of edits, and shrinks by the latter.
class Dice {
 public:
  explicit Dice(unsigned seed) : engine_{seed} {}
  unsigned below(std::size_t bound) { return static_cast<unsigned>(engine_() % bound); }
  double between(double low, double high) { return low + (high - low) * below(10001) / 10000.0; }
  template <class Things>
  const auto& one_of(const Things& things) {
    return things[below(std::size(things))];
  }

 private:
  std::mt19937 engine_;
};

constexpr std::array turns{Turn::left, Turn::right, Turn::up, Turn::down};
constexpr std::array<std::string_view, 4> runs{"bench_pipe", "stovepipe", "stack_insulated", "bench_brick_channel"};
constexpr std::array<std::string_view, 4> bends{"elbow_smooth", "elbow_mitre", "bench_elbow", "channel_turn"};
constexpr std::array<std::string_view, 3> ports{"in", "out", "branch"};

std::string_view any_type(Dice& dice) { return dice.one_of(shipped().piece_types).id; }

PieceId any_piece(const Design& design, Dice& dice) {
  if (design.pieces.empty() || dice.below(20) == 0) {
    return "nobody";
  }
  return dice.one_of(design.pieces).id;
}

/// Mostly one that is free, sometimes any.
PortRef any_port(const Design& design, Dice& dice) {
  const std::vector<OpenEnd> free = free_ports(design, shipped());
  if (free.empty() || dice.below(10) == 0) {
    return {any_piece(design, dice), std::string{dice.one_of(ports)}};
  }
  return dice.one_of(free).ref;
}

Heading any_heading(Dice& dice) {
  if (dice.below(4) == 0) {
    return {15.0 * dice.below(24) * degree, 15.0 * (static_cast<int>(dice.below(13)) - 6) * degree};
  }
  return dice.one_of(std::array{heading_east, heading_north, heading_west, heading_south, heading_up(), heading_down()});
}

/// The 25 mm grid, mostly.
double any_millimetres(Dice& dice, double most) {
  return dice.below(4) == 0 ? dice.between(-100.0, most) : 25.0 * dice.below(static_cast<std::size_t>(most / 25.0));
}

FieldValue any_value(const FieldSpec& spec, Dice& dice) {
  if (const auto* length = std::get_if<Length>(&spec.fallback)) {
    return *length * dice.between(0.0, 3.0);
  }
  if (const auto* ratio = std::get_if<Ratio>(&spec.fallback)) {
    return Ratio{*ratio * dice.between(0.0, 2.0) + dice.between(0.0, 0.05)};
  }
  if (std::holds_alternative<Angle>(spec.fallback)) {
    return 15.0 * dice.below(8) * degree;
  }
  if (!spec.choices.empty()) {
    return dice.one_of(spec.choices);
  }
  return spec.fallback;
}

EditResult edit_a_field(const Design& design, Dice& dice) {
  const PieceId id = any_piece(design, dice);
  const Piece* piece = design.piece(id);
  const PieceType* type = piece != nullptr ? shipped().piece_type(piece->type) : nullptr;
  if (type == nullptr) {
    return set_field(design, shipped(), id, "length", 1.0 * metre);
  }
  const FieldSpec& spec = dice.one_of(type->fields);
  return set_field(design, shipped(), id, spec.key, any_value(spec, dice));
}

EditResult drag_a_joint(const Design& design, Dice& dice) {
  const PortRef ref = design.joints.empty() || dice.below(4) == 0 ? any_port(design, dice) : dice.one_of(design.joints).a;
  GridPoint to = in_millimetres(25.0 * dice.below(40), 25.0 * dice.below(40), 25.0 * dice.below(40));
  const Piece* piece = design.piece(ref.piece);
  if (piece != nullptr) {
    to = piece->at;
    std::int32_t* const axes[] = {&to.x, &to.y, &to.z};
    const int count = 1 + static_cast<int>(dice.below(2));
    for (int i = 0; i < count; ++i) {
      *dice.one_of(axes) += 250 * (static_cast<int>(dice.below(21)) - 10);
    }
  }
  return move_joint(design, shipped(), ref, to);
}

EditResult any_edit(const Design& design, Dice& dice) {
  if (design.pieces.empty()) {
    return place_piece(design, shipped(), any_type(dice), {}, any_heading(dice));
  }
  switch (dice.below(16)) {
    case 0: return place_piece(design, shipped(), any_type(dice), in_millimetres(0.0, 0.0, 500.0), any_heading(dice));
    case 1:
    case 2: {
      const PortRef port = any_port(design, dice);
      const std::string_view type = any_type(dice);
      return attach_piece(design, shipped(), port, type, dice.one_of(turns));
    }
    case 3:
    case 4:
    case 5:
    case 6: {
      const PortRef port = any_port(design, dice);
      const Heading heading = any_heading(dice);
      const Length length = any_millimetres(dice, 2500.0) * millimetre;
      const std::string_view run = dice.one_of(runs);
      return grow(design, shipped(), port, heading, length, run, dice.one_of(bends));
    }
    case 7: {
      const PieceId run = any_piece(design, dice);
      const Length along = any_millimetres(dice, 1500.0) * millimetre;
      const std::string_view type = any_type(dice);
      return insert_in_run(design, shipped(), run, along, type, dice.one_of(turns));
    }
    case 8:
    case 9:
    case 10: return drag_a_joint(design, dice);
    case 11:
    case 12: return edit_a_field(design, dice);
    case 13: {
      const PieceId piece = any_piece(design, dice);
      return dice.below(2) == 0 ? set_turn(design, shipped(), piece, dice.one_of(turns))
                                : set_type(design, shipped(), piece, any_type(dice));
    }
    case 14: return remove_piece(design, shipped(), any_piece(design, dice));
    default: {
      const PortRef fixed = any_port(design, dice);
      return dice.below(2) == 0 ? join_ports(design, shipped(), fixed, any_port(design, dice))
                                : move_group(design, shipped(), fixed.piece, in_millimetres(25.0, -50.0, 0.0));
    }
  }
}

void break_something(Design& design, Dice& dice) {
  Piece& piece = design.pieces[dice.below(design.pieces.size())];
  switch (dice.below(8)) {
    case 0: piece.fields["length"] = std::string{"long"}; break;
    case 1: piece.fields["bore"] = -1.0 * metre; break;
    case 2: piece.fields["angle"] = std::numeric_limits<double>::quiet_NaN() * radian; break;
    case 3: piece.heading.azimuth = std::numeric_limits<double>::infinity() * radian; break;
    case 4: piece.type = "teapot"; break;
    case 5: piece.at = {2147483647, -2147483647, 0}; break;
    case 6: design.joints.push_back({{piece.id, "out"}, {"nobody", "in"}}); break;
    default: design.pieces.push_back(Piece{piece}); break;
  }
}

unsigned any_seed() { return *rc::gen::noShrink(rc::gen::arbitrary<unsigned>()); }

}  // namespace

RC_GTEST_PROP(RandomEdits, leave_every_joint_closed_or_the_design_untouched, ()) {
  Dice dice{any_seed()};
  const int edits = *rc::gen::inRange(1, 201);
  Design design;
  int done = 0;
  for (int i = 0; i < edits; ++i) {
    const EditResult result = any_edit(design, dice);
    if (result.design) {
      ++done;
      design = *result.design;
      RC_ASSERT(gaps(design) == std::vector<std::string>{});
      RC_ASSERT(result.touched.empty() || design.piece(result.touched) != nullptr);
    } else {
      RC_ASSERT(result.touched.empty());
    }
  }
  RC_ASSERT(disorder(design) == std::vector<std::string>{});
  RC_CLASSIFY(done > 60, "more than 60 edits done");
}

RC_GTEST_PROP(RandomEdits, on_a_broken_design_do_no_further_harm, ()) {
  // As a file edited by hand may be: wrong kinds, values out of range, unknown types, joints to nowhere, ids twice.
  Dice dice{any_seed()};
  const int edits = *rc::gen::inRange(1, 120);
  Design design;
  for (int i = 0; i < edits; ++i) {
    if (dice.below(6) == 0 && !design.pieces.empty()) {
      break_something(design, dice);
    }
    const std::size_t before = gaps(design).size();
    const EditResult result = any_edit(design, dice);
    if (result.design) {
      design = *result.design;
      RC_ASSERT(gaps(design).size() <= before);
    }
  }
  Design settled = design;
  settle(settled, shipped(), any_piece(design, dice));
  (void)trace_path(settled, shipped());
}

RC_GTEST_PROP(RandomEdits, inserting_and_removing_gives_the_run_its_length_back, ()) {
  const double length = *rc::gen::inRange(200, 5000);
  const double along = *rc::gen::inRange(0, static_cast<int>(length));
  const std::string type = *rc::gen::element<std::string>("tee", "cleanout_tee", "damper", "wye");
  Drawn drawn = grown({bench_pipe(), "p1"}, heading_north, (225.0 + length) * millimetre);
  drawn = grown(drawn, heading_east, 1000.0 * millimetre);
  const EditResult inserted = insert_in_run(drawn.design, shipped(), "p3", along * millimetre, type);
  // A piece as long as the whole run takes its place: then there is no run left to give it back to.
  RC_PRE(inserted.design.has_value() && inserted.design->pieces.size() > drawn.design.pieces.size());
  RC_ASSERT(gaps(*inserted.design).empty());
  const EditResult removed = remove_piece(*inserted.design, shipped(), inserted.touched);
  RC_ASSERT(removed.design.has_value());
  RC_ASSERT(gaps(*removed.design).empty());
  RC_ASSERT(std::abs(total_run(*removed.design, "bench_pipe") - total_run(drawn.design, "bench_pipe")) < 1e-6);
  RC_ASSERT(removed.design->piece(drawn.last)->at == drawn.design.piece(drawn.last)->at);
}

RC_GTEST_PROP(RandomEdits, growing_in_two_steps_equals_growing_once, ()) {
  const double first = 25.0 * *rc::gen::inRange(12, 60);
  const double second = 25.0 * *rc::gen::inRange(0, 60);
  const double azimuth = 15.0 * *rc::gen::inRange(-6, 7);
  const double elevation = azimuth == 0.0 ? 15.0 * *rc::gen::inRange(-6, 7) : 0.0;
  const Heading heading{azimuth * degree, elevation * degree};
  const auto grow_by = [&](const Design& design, const PieceId& last, double mm) {
    return grow(design, shipped(), {last, "out"}, heading, mm * millimetre, "bench_pipe", "elbow_mitre");
  };
  const EditResult once = grow_by(bench_pipe(), "p1", first + second);
  const EditResult half = grow_by(bench_pipe(), "p1", first);
  RC_PRE(once.design.has_value() && half.design.has_value());
  const EditResult twice = grow_by(*half.design, half.touched, second);
  RC_ASSERT(twice.design.has_value());
  RC_ASSERT(*once.design == *twice.design);
}

RC_GTEST_PROP(RandomEdits, moving_a_joint_there_and_back_gives_the_same_design, ()) {
  Dice dice{any_seed()};
  Drawn drawn{bench_pipe(), "p1"};
  for (int i = 0; i < 6; ++i) {
    const Heading heading =
        dice.one_of(std::array{heading_east, heading_north, heading_west, heading_south, heading_up(), heading_down()});
    const EditResult result = grow(drawn.design, shipped(), {drawn.last, "out"}, heading,
                                   25.0 * (20.0 + dice.below(60)) * millimetre, "bench_pipe", "elbow_smooth");
    if (result.design) {
      drawn = {*result.design, result.touched};
    }
  }
  RC_PRE(!drawn.design.joints.empty());
  const PortRef ref = dice.one_of(drawn.design.joints).b;
  const GridPoint from = grid_point_near(port_of(drawn.design, ref.piece, ref.port).at);
  GridPoint to = from;
  to.x += 250 * (static_cast<int>(dice.below(9)) - 4);
  to.y += 250 * (static_cast<int>(dice.below(9)) - 4);
  to.z += 250 * (static_cast<int>(dice.below(9)) - 4);
  const EditResult there = move_joint(drawn.design, shipped(), ref, to);
  RC_PRE(there.design.has_value());
  RC_ASSERT(gaps(*there.design).empty());
  const EditResult back = move_joint(*there.design, shipped(), ref, from);
  RC_ASSERT(back.design.has_value());
  RC_ASSERT(*back.design == drawn.design);
}

}  // namespace fluewright::tests
