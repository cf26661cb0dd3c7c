// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/bill/upkeep.hpp"

#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "engine/advice/clearance.hpp"
#include "tests/engine/layout/chain.hpp"

#include <gtest/gtest.h>

namespace fluewright {
namespace {

const Library& shelf() { return *shipped_library(); }

Design demo(std::string_view id) {
  for (const Demo& d : shipped_demos()) {
    if (d.id == id) return std::get<DesignDocument>(read_design_text(d.text, shelf())).design;
  }
  return {};
}

std::size_t index_of(const Design& design, std::string_view id) {
  return static_cast<std::size_t>(design.piece(id) - design.pieces.data());
}

TEST(Upkeep, FindsWhereABrushGoesIn) {
  const Design design = demo("bench_small_150");
  const Upkeep all = upkeep(design, shelf());
  std::vector<std::pair<AccessKind, std::string>> found;
  for (const Access& a : all.accesses) found.emplace_back(a.kind, design.pieces[a.piece].id);
  const std::vector<std::pair<AccessKind, std::string>> wanted{
      {AccessKind::mouth, "p1"},
      {AccessKind::lid, "p4"},
      {AccessKind::cover, "p10"},
      {AccessKind::top, design.pieces[found.size() > 3 ? all.accesses[3].piece : 0].id}};
  EXPECT_EQ(found, wanted);
  ASSERT_EQ(all.lengths.size(), 3u);
  EXPECT_EQ(all.lengths[1].turns, 2u);  // the two elbows at the bench's far end
  Length sum{};
  for (const SweptLength& l : all.lengths) sum += l.length;
  EXPECT_NEAR(in(sum, metre), in(all.accesses.back().s, metre), 1e-9);
}

TEST(Upkeep, FindsTheLowPlaceOfASunkenRunAndThatItOpens) {
  const Design design = demo("greenhouse_floor");
  const Upkeep all = upkeep(design, shelf());
  ASSERT_FALSE(all.low_places.empty());
  const LowPlace& low = all.low_places.back();
  EXPECT_NEAR(in(low.height, millimetre), -350.0, 0.1);
  EXPECT_TRUE(low.opens);
}

TEST(Upkeep, PutsGaugesWhereTheBenchBeginsAndEnds) {
  const Design design = demo("bench_small_150");
  const Upkeep all = upkeep(design, shelf());
  ASSERT_EQ(all.gauges.size(), 3u);
  EXPECT_EQ(all.gauges[0].place, GaugePlace::into_the_bench);
  EXPECT_EQ(all.gauges[2].piece, index_of(design, "p11"));
}

TEST(Clearances, FollowWhatThePieceIsMadeOf) {
  const Design design = demo("bench_small_150");
  const auto of = [&](std::string_view id) {
    const Piece& piece = *design.piece(id);
    const auto c = clearance_of({design, shelf(), piece, *shelf().piece_type(piece.type)});
    return c ? in(c->least.value, inch) : -1.0;
  };
  EXPECT_NEAR(of("p4"), 36.0, 1e-9);   // drum
  EXPECT_NEAR(of("p11"), 18.0, 1e-9);  // stove pipe
  EXPECT_NEAR(of("p12"), 2.0, 1e-9);   // insulated chimney
  EXPECT_NEAR(of("p6"), 4.0, 1e-9);    // bench
}

}  // namespace
}  // namespace fluewright
