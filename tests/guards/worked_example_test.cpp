// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// DEVELOPERS.md adds a shape, a piece type and a material. Its blocks are compiled and built in (see CMakeLists.txt);
// here they are used.

#include "app/shared/design_file.hpp"
#include "app/shared/library_reader.hpp"
#include "engine/layout/edit.hpp"
#include "engine/solve/assessment.hpp"

#include <gtest/gtest.h>

namespace fluewright {
namespace {

/// The longest piece of the last passages that an orifice plate fits into: a length of stack.
const Piece& stack_of(const Design& design, const Library& library) {
  const Piece* longest = nullptr;
  for (const Piece& piece : design.pieces) {
    const PieceType* type = library.piece_type(piece.type);
    if (type == nullptr || type->family != "stack" || type->shape != "run" || type->field("bore") == nullptr) continue;
    const auto length = [&](const Piece& p) { return PieceView(design, library, p, *library.piece_type(p.type)).length("length"); };
    if (longest == nullptr || length(piece) > length(*longest)) longest = &piece;
  }
  EXPECT_NE(longest, nullptr);
  return *longest;
}

TEST(TheWorkedExample, AddsAMaterial) {
  const Material* tuff = shipped_library()->material("tuff");
  ASSERT_NE(tuff, nullptr);
  EXPECT_NEAR(in(tuff->conductivity(celsius(20.0)), watt_per_metre_kelvin), 0.85, 1e-12);
}

TEST(TheWorkedExample, AddsAPieceThatCostsDraft) {
  const auto library = shipped_library();
  ASSERT_NE(library->piece_type("orifice_plate"), nullptr);
  const ReadResult read = read_design_file(FLUEWRIGHT_TOP "/resources/documentation/shortest-path.fluepath", *library);
  ASSERT_TRUE(std::holds_alternative<DesignDocument>(read));
  const Design before = std::get<DesignDocument>(read).design;
  const EditResult edit =
      insert_in_run(before, *library, stack_of(before, *library).id, 300.0 * millimetre, "orifice_plate");
  ASSERT_TRUE(edit.design.has_value());
  const Assessment without = assess(before, *library);
  const Assessment with = assess(*edit.design, *library);
  EXPECT_TRUE(with.path.complete);
  EXPECT_EQ(edit.design->piece(edit.touched)->type, "orifice_plate");
  EXPECT_LT(with.worst_margin, without.worst_margin);
}

}  // namespace
}  // namespace fluewright
