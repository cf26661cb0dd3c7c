// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Verbs on the runs of a bench: longer with its returns, laid in loops, end for end, another type, a reducer.

#include "edit_help.hpp"
#include "engine/layout/clash.hpp"
#include "engine/layout/edit_run.hpp"
#include "engine/layout/starter.hpp"
#include "engine/solve/assessment.hpp"

namespace fluewright::tests {
namespace {

Design looped(int passes, Length length, Length spacing, Turn side = Turn::left) {
  const Design start = bench_pipe(500.0 * millimetre);
  return taken(grow_serpentine(start, shipped(), {"p1", "out"}, {passes, length, spacing, side}, "bench_pipe", "elbow_smooth"));
}

std::size_t count(const Design& design, std::string_view type) {
  std::size_t found = 0;
  for (const Piece& piece : design.pieces) found += piece.type == type ? 1U : 0U;
  return found;
}

TEST(ARunInLoops, HasItsPassesSideBySideAtTheSpacing) {
  for (const Turn side : {Turn::left, Turn::right}) {
    const Design design = looped(4, 2000.0 * millimetre, 700.0 * millimetre, side);
    EXPECT_TRUE(gaps(design).empty());
    EXPECT_EQ(count(design, "elbow_smooth"), 6U);
    std::vector<double> rows;
    for (const Piece& piece : design.pieces) {
      if (piece.type != "bench_pipe" || millimetres(design, piece.id) < 1900.0) continue;
      rows.push_back(in(position_of(piece.at).y, millimetre));
    }
    ASSERT_EQ(rows.size(), 4U);
    const double way = side == Turn::left ? 700.0 : -700.0;
    for (std::size_t i = 0; i < rows.size(); ++i) EXPECT_NEAR(rows[i], way * static_cast<double>(i), 0.2);
    EXPECT_NEAR(millimetres(design, "p1"), 2500.0, 1e-6) << "the first pass goes on with the run that was there";
  }
}

TEST(ARunInLoops, IsRefusedWhereTheBendsAreWiderThanTheSpacing) {
  const Design start = bench_pipe();
  EXPECT_TRUE(refused_as(grow_serpentine(start, shipped(), {"p1", "out"}, {3, 2.0 * metre, 150.0 * millimetre, Turn::left},
                                         "bench_pipe", "elbow_smooth"),
                         Refusal::too_short));
  EXPECT_TRUE(refused_as(grow_serpentine(start, shipped(), {"p1", "out"}, {0, 2.0 * metre, 1.0 * metre, Turn::left},
                                         "bench_pipe", "elbow_smooth"),
                         Refusal::out_of_range));
}

TEST(ALongerBench, TakesItsReturnRunsAlong) {
  const Design design = looped(4, 2000.0 * millimetre, 700.0 * millimetre);
  EXPECT_EQ(bench_runs(design, shipped(), "p1").size(), 4U);
  for (const double by : {300.0, -300.0}) {
    const Design longer = taken(stretch_bench(design, shipped(), "p1", by * millimetre));
    EXPECT_TRUE(gaps(longer).empty());
    for (const PieceId& run : bench_runs(design, shipped(), "p1")) {
      EXPECT_NEAR(millimetres(longer, run), millimetres(design, run) + by, 1e-6);
    }
    EXPECT_EQ(taken(stretch_bench(longer, shipped(), "p1", -by * millimetre)), design);
  }
  EXPECT_TRUE(refused_as(stretch_bench(design, shipped(), "p1", -5.0 * metre), Refusal::too_short));
}

TEST(EndForEnd, ASlopingPipeFallsWhereItRose) {
  Design design = bench_pipe();
  design.pieces.front().fields["slope"] = Ratio(0.02);
  const Drawn drawn = grown({design, "p1"}, heading_north, 1000.0 * millimetre);
  const Design reversed = taken(reverse_piece(drawn.design, shipped(), "p1"));
  EXPECT_TRUE(gaps(reversed).empty());
  const double rise = in(port_of(drawn.design, "p1", "out").at.z - port_of(drawn.design, "p1", "in").at.z, millimetre);
  const double after = in(port_of(reversed, "p1", "in").at.z - port_of(reversed, "p1", "out").at.z, millimetre);
  EXPECT_NEAR(rise, 20.0, 0.2);
  EXPECT_NEAR(after, -rise, 0.3);
}

TEST(EndForEnd, TwiceIsNothingForEveryPieceOfTwoJoints) {
  for (const PieceType& type : shipped().piece_types) {
    const Design start = bench_pipe();
    const EditResult put = attach_piece(start, shipped(), {"p1", "out"}, type.id, Turn::left);
    if (!put.design) continue;
    const EditResult once = reverse_piece(*put.design, shipped(), put.touched);
    if (!once.design) continue;
    EXPECT_TRUE(gaps(*once.design).empty()) << type.id;
    const EditResult twice = reverse_piece(*once.design, shipped(), put.touched);
    ASSERT_TRUE(twice.design) << type.id;
    const auto before = geometries(*put.design, shipped()).back();
    const auto after = geometries(*twice.design, shipped()).back();
    for (std::size_t i = 0; i < before.ports.size(); ++i) {
      EXPECT_LT(in(distance(before.ports[i].at, after.ports[i].at), millimetre), 0.3) << type.id;
    }
  }
}

TEST(TypesThatFit, CanAllBeHad) {
  const Drawn drawn = grown({bench_pipe(), "p1"}, heading_east, 500.0 * millimetre, "out", "stovepipe");
  const auto fitting = types_that_fit(drawn.design, shipped(), "p1");
  ASSERT_FALSE(fitting.empty());
  for (const PieceType* type : fitting) {
    EXPECT_NE(type->id, "bench_pipe");
    EXPECT_TRUE(gaps(taken(set_type(drawn.design, shipped(), "p1", type->id))).empty()) << type->id;
  }
}

TEST(AReducer, GoesBetweenTwoBoresAndMatchesBoth) {
  Drawn drawn = grown({bench_pipe(), "p1"}, heading_east, 500.0 * millimetre, "out", "stovepipe");
  drawn.design.piece(drawn.last)->fields["bore"] = 200.0 * millimetre;
  const PortRef joint{"p1", "out"};
  EXPECT_TRUE(wants_reducer(drawn.design, shipped(), joint));
  const EditResult put = put_reducer(drawn.design, shipped(), joint, "reducer");
  const Design design = taken(put);
  EXPECT_TRUE(gaps(design).empty());
  EXPECT_FALSE(wants_reducer(design, shipped(), {put.touched, "in"}));
  EXPECT_FALSE(wants_reducer(design, shipped(), {put.touched, "out"}));
  EXPECT_NEAR(millimetres(design, put.touched, "bore"), 150.0, 1e-6);
  EXPECT_NEAR(millimetres(design, put.touched, "out_bore"), 200.0, 1e-6);
}

std::vector<Clash> clashes_of(const Design& design) {
  const std::vector<PieceGeometry> all = geometries(design, shipped());
  std::vector<const PieceGeometry*> pointers;
  for (const PieceGeometry& geometry : all) pointers.push_back(&geometry);
  return clashes(design, pointers);
}

TEST(TwoPiecesInOnePlace, AreAClashAndPiecesThatTouchAreNone) {
  Design design = bench_pipe(2000.0 * millimetre);  // 150 mm bore with a thin wall along x
  const auto across = [&](double z) {
    Design crossed = taken(place_piece(design, shipped(), "stovepipe", in_millimetres(1000, -500, z), heading_north));
    crossed.pieces.back().fields["length"] = 1000.0 * millimetre;
    return crossed;
  };
  const std::vector<Clash> found = clashes_of(across(100));
  ASSERT_EQ(found.size(), 1U);
  EXPECT_NEAR(in(found.front().at.x, metre), 1.0, 0.03);
  EXPECT_NEAR(in(found.front().depth, millimetre), 52.0, 6.0) << "two pipes of about 151 mm, 100 mm apart";
  EXPECT_TRUE(clashes_of(across(155)).empty());
}

// Each answer's path is complete, without a fault, a clash or a step in bore, and as long and as high as asked for.
TEST(AStarter, IsACorrectPathWhateverTheAnswers) {
  for (const double bore : {100.0, 125.0, 150.0, 175.0, 200.0, 250.0}) {
    for (const BenchShape shape : {BenchShape::straight, BenchShape::l_shape, BenchShape::u_shape, BenchShape::serpentine}) {
      for (const StackPlace stack : {StackPlace::inside, StackPlace::outside}) {
        for (const double bench : {3.0, 9.0}) {
          const StarterAnswers answers{bore * millimetre, shape, bench * metre, stack, 5.0 * metre};
          const EditResult built = starter_path(shipped(), answers);
          ASSERT_TRUE(built.design) << bore << ' ' << static_cast<int>(shape) << ' ' << static_cast<int>(stack) << ' ' << bench;
          const Design& design = *built.design;
          EXPECT_TRUE(gaps(design).empty());
          EXPECT_TRUE(disorder(design).empty());
          const TracedPath path = trace_path(design, shipped());
          EXPECT_TRUE(path.complete);
          for (const Finding& finding : path.findings) {
            EXPECT_EQ(finding.severity, Severity::note) << static_cast<int>(finding.code) << ' ' << finding.piece << ' ' << bore
                                                        << ' ' << static_cast<int>(shape) << ' ' << static_cast<int>(stack);
          }
          EXPECT_TRUE(clashes_of(design).empty()) << bore << ' ' << static_cast<int>(shape) << ' ' << static_cast<int>(stack);
          double straight = 0.0;
          double top = 0.0;
          for (const Piece& piece : design.pieces) {
            if (piece.type == "bench_pipe" && millimetres(design, piece.id) >= 900.0) straight += millimetres(design, piece.id);
            top = std::max(top, in(position_of(piece.at).z, millimetre));
          }
          EXPECT_NEAR(straight, bench * 1000.0, 620.0);
          EXPECT_NEAR(top, 5000.0, 60.0);
        }
      }
    }
  }
}

TEST(AStarter, OutsideItsRangesIsRefused) {
  EXPECT_TRUE(refused_as(starter_path(shipped(), {40.0 * millimetre, BenchShape::u_shape, 4.0 * metre, StackPlace::inside, 5.0 * metre}),
                         Refusal::out_of_range));
  EXPECT_TRUE(refused_as(starter_path(shipped(), {150.0 * millimetre, BenchShape::u_shape, 4.0 * metre, StackPlace::inside, 2.0 * metre}),
                         Refusal::out_of_range));
}

}  // namespace
}  // namespace fluewright::tests
