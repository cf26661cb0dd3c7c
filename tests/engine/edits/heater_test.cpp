// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/engine/edits/edit_help.hpp"

// What the desk does: a whole heater by verbs alone.

namespace fluewright::tests {

namespace {

/// Attaches and grows at the far end of a line.
class Builder {
 public:
  void place(std::string_view type, Heading heading) {
    take(place_piece(design_, shipped(), type, in_millimetres(0.0, 0.0, 600.0), heading));
  }
  void attach(std::string_view type, std::string_view port = "out") {
    const Port open = port_of(design_, last_, port);
    take(attach_piece(design_, shipped(), {last_, std::string{port}}, type, usual_turn(open.outward)));
  }
  void grow(Heading heading, double mm, std::string_view run, std::string_view bend, std::string_view port = "out") {
    take(fluewright::grow(design_, shipped(), {last_, std::string{port}}, heading, mm * millimetre, run, bend));
  }
  [[nodiscard]] const Design& design() const { return design_; }
  [[nodiscard]] const PieceId& last() const { return last_; }

 private:
  void take(const EditResult& result) {
    design_ = taken(result);
    last_ = result.touched;
  }

  Design design_;
  PieceId last_;
};

/// Feed, tunnel, riser, barrel, manifold, a bench with three elbows, a tee at the stack's foot, chimney, cap.
Builder heater() {
  Builder b;
  b.place("feed_tube", heading_down());
  b.attach("burn_tunnel");
  b.attach("heat_riser");
  b.attach("barrel");
  b.attach("manifold");
  b.attach("bench_pipe");
  b.grow(heading_east, 500.0, "bench_pipe", "bench_elbow");
  b.grow(heading_north, 2000.0, "bench_pipe", "bench_elbow");
  b.grow(heading_west, 1500.0, "bench_pipe", "bench_elbow");
  b.grow(heading_south, 800.0, "bench_pipe", "bench_elbow");
  b.attach("cleanout_tee");
  b.grow(heading_up(), 300.0, "stovepipe", "elbow_smooth", "branch");
  b.grow(heading_up(), 2000.0, "stack_insulated", "elbow_smooth");
  b.grow(heading_up(), 1000.0, "stack_insulated", "elbow_smooth");
  b.attach("cap_plain");
  return b;
}

std::vector<std::string> told(const std::vector<Finding>& findings) {
  std::vector<std::string> told;
  for (const Finding& finding : findings) {
    told.push_back(finding.piece + "." + finding.field + " code " + std::to_string(static_cast<int>(finding.code)));
  }
  return told;
}

}  // namespace

TEST(Heater, drawn_by_verbs_alone_is_complete_and_without_fault) {
  const Builder built = heater();
  const TracedPath path = trace_path(built.design(), shipped());
  EXPECT_TRUE(path.complete);
  EXPECT_EQ(told(path.findings), std::vector<std::string>{});
  EXPECT_EQ(told(check_values(built.design(), shipped())), std::vector<std::string>{});
  EXPECT_EQ(path.passages.size(), built.design().pieces.size());
  EXPECT_TRUE(open_ends(built.design(), shipped()).empty());
  // The stack's two lengths grew into one.
  EXPECT_DOUBLE_EQ(total_run(built.design(), "stack_insulated"), 3000.0);
}

TEST(Heater, stays_complete_under_edits_in_the_middle) {
  Design design = heater().design();
  PieceId bench;
  for (const Piece& piece : design.pieces) {
    if (piece.type == "bench_pipe" && millimetres(design, piece.id) > 1000.0) {
      bench = piece.id;
    }
  }
  const EditResult cleanout = insert_in_run(design, shipped(), bench, 400.0 * millimetre, "cleanout_tee", Turn::left);
  design = taken(cleanout);
  const Position joint = port_of(design, bench, "in").at;
  design = taken(move_joint(design, shipped(), {bench, "in"}, grid_point_near(joint + Position{{}, 200.0 * millimetre, {}})));
  design = taken(set_field(design, shipped(), bench, "slope", FieldValue{Ratio{0.02}}));
  const TracedPath path = trace_path(design, shipped());
  EXPECT_TRUE(path.complete);
  EXPECT_EQ(told(path.findings), std::vector<std::string>{});
}

TEST(Heater, drawn_from_the_cap_backwards_is_the_same_flue) {
  // Against the flow: each piece is pushed onto the entry of the one before.
  Design design = taken(place_piece({}, shipped(), "cap_plain", in_millimetres(0.0, 0.0, 4000.0), heading_up()));
  PieceId last = "p1";
  const auto take = [&](const EditResult& result) {
    design = taken(result);
    last = result.touched;
  };
  take(grow(design, shipped(), {last, "in"}, heading_down(), 3000.0 * millimetre, "stack_insulated", "elbow_smooth"));
  take(grow(design, shipped(), {last, "in"}, heading_west, 2000.0 * millimetre, "bench_pipe", "bench_elbow"));
  for (const char* type : {"manifold", "barrel", "heat_riser", "burn_tunnel", "feed_tube"}) {
    take(attach_piece(design, shipped(), {last, "in"}, type, usual_turn(usual_heading(*shipped().piece_type(type)))));
  }
  const TracedPath path = trace_path(design, shipped());
  EXPECT_TRUE(path.complete);
  EXPECT_EQ(told(path.findings), std::vector<std::string>{});
  for (const Passage& passage : path.passages) {
    EXPECT_NE(passage.entry, "out") << design.pieces[passage.piece].type;
  }
}

}  // namespace fluewright::tests
