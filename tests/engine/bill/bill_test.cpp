// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Parts, cuts, masses and floor load of drawings whose amounts are worked by hand.

#include <gtest/gtest.h>
#include "app/shared/design_file.hpp"
#include "engine/bill/masses.hpp"
#include "engine/bill/parts_list.hpp"
#include "engine/bill/prism.hpp"

#include "tests/engine/layout/chain.hpp"

#include <map>
#include <numbers>

namespace fluewright {
namespace {

using test::Chain;
constexpr double pi = std::numbers::pi;

const Library& library() { return *shipped_library(); }

std::vector<Design> demos() {
  std::vector<Design> designs;
  for (const Demo& demo : shipped_demos()) {
    designs.push_back(std::get<DesignDocument>(read_design_text(demo.text, library())).design);
  }
  return designs;
}

void set_length(Piece& piece, std::string_view key, double millimetres) {
  piece.fields[std::string(key)] = millimetres * millimetre;
}

Chain two_pipes(double first, double second) {
  Chain chain;
  set_length(chain.place("stovepipe", {0, 0, 0}, heading_east), "length", first);
  set_length(chain.add("stovepipe"), "length", second);
  return chain;
}

TEST(PartsList, CountsEveryPieceOnce) {
  for (const Design& design : demos()) {
    std::vector<std::size_t> seen;
    for (const PartLine& line : parts_list(design, library())) {
      seen.insert(seen.end(), line.pieces.begin(), line.pieces.end());
    }
    std::sort(seen.begin(), seen.end());
    std::vector<std::size_t> all(design.pieces.size());
    for (std::size_t i = 0; i < all.size(); ++i) all[i] = i;
    EXPECT_EQ(seen, all) << design.title;
  }
}

TEST(PartsList, PutsAlikePiecesOnOneLine) {
  EXPECT_EQ(parts_list(two_pipes(700, 700).design, library()).size(), 1u);
  EXPECT_EQ(parts_list(two_pipes(700, 701).design, library()).size(), 2u);
}

TEST(CutList, CoversEveryPipeRunExactly) {
  for (const Design& design : demos()) {
    for (const double stock : {500.0, 1000.0, 3000.0}) {
      const auto list = cut_list(design, library(), {stock * millimetre, 3.0 * millimetre, 40.0 * millimetre});
      ASSERT_TRUE(list.has_value());
      std::map<std::size_t, Length> covered;
      for (const CutGroup& group : list->groups) {
        for (const StockLength& length : group.lengths) {
          Length used = length.left;
          for (const Cut& cut : length.cuts) {
            covered[cut.piece] += cut.drawn;
            used += cut.sawn;
            EXPECT_NEAR(in(cut.sawn - cut.drawn, millimetre), 40.0, 1e-9);
          }
          EXPECT_LE(in(used, millimetre), stock + 1e-6);
        }
        // Nothing gets lost between stock, pipes, offcuts and dust.
        Length pipes{};
        for (const StockLength& length : group.lengths) {
          for (const Cut& cut : length.cuts) pipes += cut.sawn;
        }
        EXPECT_NEAR(in(pipes + group.offcuts + group.dust, millimetre),
                    stock * static_cast<double>(group.lengths.size()), 1e-6);
      }
      for (std::size_t i = 0; i < design.pieces.size(); ++i) {
        const Piece& piece = design.pieces[i];
        const PieceView view{design, library(), piece, *library().piece_type(piece.type)};
        const bool pipe = piece.type == "stovepipe" || piece.type == "bench_pipe" || piece.type == "floor_pipe";
        EXPECT_EQ(covered.contains(i), pipe) << piece.id;
        if (pipe) {
          EXPECT_NEAR(in(covered[i], millimetre), in(view.length("length"), millimetre), 0.2) << piece.id;
        }
      }
    }
  }
}

TEST(CutList, MakesALongRunOfSeveralPipesWithoutAStub) {
  // 3000 mm of stock covers 2960; 6000 leaves 80, which the last two share.
  const auto list = cut_list(two_pipes(6000, 500).design, library());
  ASSERT_TRUE(list && list->groups.size() == 1);
  std::vector<double> drawn;
  for (const StockLength& length : list->groups[0].lengths) {
    for (const Cut& cut : length.cuts) {
      if (cut.piece == 0) drawn.push_back(in(cut.drawn, millimetre));
    }
  }
  std::sort(drawn.begin(), drawn.end());
  ASSERT_EQ(drawn.size(), 3u);
  EXPECT_NEAR(drawn[0], 1520.0, 1e-6);
  EXPECT_NEAR(drawn[1], 1520.0, 1e-6);
  EXPECT_NEAR(drawn[2], 2960.0, 1e-6);
}

TEST(CutList, LeavesPipeOfSeveralLayersWhole) {
  Chain chain;
  chain.place("stack_insulated", {0, 0, 0}, heading_up());
  const auto list = cut_list(chain.design, library());
  ASSERT_TRUE(list.has_value());
  EXPECT_TRUE(list->groups.empty());
  EXPECT_EQ(list->whole, std::vector<std::size_t>{0});
  EXPECT_FALSE(cut_list(chain.design, library(), {40.0 * millimetre, {}, 40.0 * millimetre}).has_value());
}

TEST(Masses, AreTheBenchLessItsFlue) {
  Chain chain;
  Piece& run = chain.place("bench_pipe", {0, 0, 2500}, heading_east);
  set_length(run, "length", 2000);
  set_length(run, "mass_width", 500);
  set_length(run, "mass_height", 450);
  const MassBill bill = mass_bill(chain.design, library());
  ASSERT_EQ(bill.around.size(), 1u);
  // 2.0 x 0.5 x 0.45 m less a pipe of 150 mm with 0.5 mm of wall; cob of 1600 kg/m3.
  const double volume = 2.0 * 0.5 * 0.45 - pi / 4.0 * 0.151 * 0.151 * 2.0;
  EXPECT_NEAR(in(bill.around[0].volume, cubic_metre), volume, 1e-9);
  EXPECT_NEAR(in(bill.around[0].mass, kilogram), 1600.0 * volume, 1e-6);
  ASSERT_EQ(bill.walls.size(), 1u);
  EXPECT_EQ(bill.walls[0].material, "galvanised_steel");
  EXPECT_NEAR(in(bill.walls[0].volume, cubic_metre), pi / 4.0 * (0.151 * 0.151 - 0.150 * 0.150) * 2.0, 1e-12);
}

TEST(Masses, CountWhereTwoRunsShareTheirBenchOnce) {
  Chain chain;
  for (const int y : {0, 3000}) {
    Piece& run = chain.place("bench_pipe", {0, y, 2500}, heading_east);
    set_length(run, "length", 2000);
    set_length(run, "mass_width", 450);
    set_length(run, "mass_height", 450);
  }
  const MassBill bill = mass_bill(chain.design, library());
  // Axes 300 mm apart, each 450 mm wide: a bench of 750 mm.
  const double volume = 2.0 * 0.75 * 0.45 - 2.0 * pi / 4.0 * 0.151 * 0.151 * 2.0;
  EXPECT_NEAR(in(bill.around.at(0).volume, cubic_metre), volume, 1e-9);
  const FloorLoad load = floor_load(chain.design, library());
  EXPECT_NEAR(in(load.footprint, square_metre), 2.0 * 0.75, 1e-9);
  EXPECT_NEAR(in(load.spread.pressure, pascal), in(load.mass, kilogram) * 9.80665 / 1.5, 1e-6);
  EXPECT_NEAR(in(load.tallest.pressure, pascal), 1600.0 * 9.80665 * 0.45, 1e-6);
}

TEST(Masses, BuildCornersOutSquare) {
  Chain chain;
  Piece& bend = chain.place("bench_elbow", {0, 0, 2500}, heading_east, Turn::left);
  set_length(bend, "mass_width", 400);
  const PieceGeometry g = chain.geometry_of("p1");
  const double radius = in(g.ports[1].at.x, metre);
  const Area area = covered_area(mass_around(g, 400.0 * millimetre, 450.0 * millimetre));
  EXPECT_NEAR(in(area, square_metre), (radius + 0.2) * (radius + 0.2), 1e-6);
}

TEST(Masses, OfABarrelAreItsSteel) {
  Chain chain;
  chain.place("barrel", {0, 0, 11500}, heading_up(), Turn::down);
  const MassBill bill = mass_bill(chain.design, library());
  ASSERT_EQ(bill.walls.size(), 1u);
  // Drum 570 mm wide, 850 high, 1.2 mm; the side down to the outlet 150 mm above the foot, and the lid.
  const double side = pi / 4.0 * (0.5724 * 0.5724 - 0.57 * 0.57) * (0.85 - 0.05 - 0.15);
  const double lid = pi * 0.57 * (0.25 * 0.57 + 0.05) * 0.0012;
  EXPECT_NEAR(in(bill.walls[0].volume, cubic_metre), side + lid, 1e-9);
  EXPECT_TRUE(bill.around.empty());
}

TEST(Masses, OnTheFloorLeaveOutWhatIsInTheGround) {
  Chain chain;
  chain.place("floor_pipe", {0, 0, -3500}, heading_east);
  EXPECT_EQ(in(floor_load(chain.design, library()).mass, kilogram), 0.0);
  EXPECT_GT(in(mass_bill(chain.design, library()).total(), kilogram), 0.0);
}

TEST(CobMix, WeighsWhatTheCobWeighsInTheRecipesProportion) {
  const CobMix mix = cob_mix(1600.0 * kilogram, {3.0, 1.0});
  EXPECT_NEAR(in(mix.sand + mix.clay, kilogram), 1600.0, 1e-9);
  EXPECT_NEAR(mix.sand_loose / mix.clay_loose, 3.0, 1e-12);
  // 3 x 1600 + 1 x 1200 kg a part: 0.2667 m3 of clay.
  EXPECT_NEAR(in(mix.clay_loose, cubic_metre), 1600.0 / 6000.0, 1e-12);
  EXPECT_EQ(in(cob_mix(1600.0 * kilogram, {0.0, 0.0}).sand, kilogram), 0.0);
}

}  // namespace
}  // namespace fluewright
