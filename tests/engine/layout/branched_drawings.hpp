// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Small drawings, each with one branch.

#include "tests/engine/layout/chain.hpp"

namespace fluewright::test {

/// p1 feed, p2 burn tunnel, p3 riser, p4 barrel, p5 bench pipe, p6 elbow, p7 stack; the stack waits for its cap.
[[nodiscard]] inline Chain small_heater_without_cap() {
  Chain chain = small_heater();
  chain.design.pieces.pop_back();
  chain.design.joints.pop_back();
  return chain;
}

/// A tee at the stack's foot: the bench comes in by its run, the stack stands on its branch, a lid closes its far end.
[[nodiscard]] inline Chain tee_at_foot(const std::string& cover) {
  Chain chain = small_heater();
  chain.design.pieces.resize(5);
  chain.design.joints.resize(4);
  const PieceId tee = chain.add("tee", Turn::up).id;
  chain.add_on(tee, "branch", "stack_insulated").fields["length"] = 4.0 * metre;
  chain.add("cap_rain");
  chain.add_on(tee, "out", "cleanout_cap").fields["cover"] = cover;
  return chain;
}

/// Two tees in the stack, their branches joined by a pipe beside it: the pipe is the longer way.
[[nodiscard]] inline Chain bypassed_stack() {
  Chain chain = small_heater_without_cap();
  const PieceId low = chain.add("tee", Turn::down).id;
  chain.add("stack_insulated");
  const PieceId high = chain.add("tee", Turn::down).id;
  chain.add("open_head");
  chain.add_on(low, "branch", "elbow_mitre", Turn::up);
  chain.add("stovepipe").fields["length"] = 1100.0 * millimetre;
  const PieceId back = chain.add("elbow_mitre", Turn::up).id;
  chain.design.joints.push_back({{back, "out"}, {high, "branch"}});
  return chain;
}

/// A bench out and back with a short link from its beginning to its end, the blade in the link turned by `blade`.
[[nodiscard]] inline Chain bypassed_bench(Angle blade) {
  Chain chain = small_heater();
  chain.design.pieces.resize(4);
  chain.design.joints.resize(3);
  const PieceId before = chain.add("tee", Turn::left).id;
  chain.add("bench_pipe").fields["length"] = 4.0 * metre;
  chain.add("bench_elbow", Turn::left);
  chain.add("bench_elbow", Turn::left);
  chain.add("bench_pipe").fields["length"] = 4.0 * metre;
  const PieceId behind = chain.add("tee", Turn::left).id;
  chain.add("bench_elbow", Turn::up);
  chain.add("stack_insulated").fields["length"] = 4.0 * metre;
  chain.add("cap_rain");
  Piece& link = chain.add_on(before, "branch", "bypass_link");
  link.fields["length"] = 50.0 * millimetre;
  link.fields["blade_angle"] = blade;
  chain.design.joints.push_back({{link.id, "out"}, {behind, "branch"}});
  return chain;
}

/// A round feed, and under it a tee into which a duct brings outdoor air.
[[nodiscard]] inline Chain duct_beside_feed() {
  Chain chain;
  chain.place("feed_tube_round", {0, 0, 12000}, heading_down());
  const PieceId tee = chain.add("tee", Turn::up).id;
  chain.add("burn_tunnel_round");
  chain.add("heat_riser");
  chain.add("barrel");
  chain.add("bench_pipe").fields["length"] = 3.0 * metre;
  chain.add("bench_elbow", Turn::up);
  chain.add("stack_insulated").fields["length"] = 4.0 * metre;
  chain.add("cap_rain");
  const PieceGeometry geometry = chain.geometry_of(tee);
  const Port& port = *geometry.port("branch");
  const Position start = port.at + step_along(port.outward, 500.0 * millimetre);
  Piece& duct = chain.place("outside_air_duct", grid_point_near(start), opposite(port.outward));
  duct.fields["length"] = 500.0 * millimetre;
  chain.design.joints.push_back({{duct.id, "out"}, {tee, "branch"}});
  return chain;
}

/// A piece of that type between stack and cap.
[[nodiscard]] inline Chain with_in_stack(std::string_view type) {
  Chain chain = small_heater_without_cap();
  chain.add(type);
  chain.add("cap_rain");
  return chain;
}

}  // namespace fluewright::test
