// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/edit.hpp"
#include "engine/layout/path.hpp"

#include <gtest/gtest.h>

#include <string>
#include <string_view>
#include <vector>

namespace fluewright::tests {

/// The catalogue that ships.
[[nodiscard]] const Library& shipped();

/// The design an edit gave back; the test fails if it was refused.
[[nodiscard]] Design taken(const EditResult& result);
/// That an edit was refused for this reason and gave nothing back.
[[nodiscard]] ::testing::AssertionResult refused_as(const EditResult& result, Refusal why);

/// One sentence for each joint whose ports are not within 0.2 mm of one another and face to face. Empty is good.
[[nodiscard]] std::vector<std::string> gaps(const Design& design);
/// The same for ids, ports in two joints and values out of their range.
[[nodiscard]] std::vector<std::string> disorder(const Design& design);

[[nodiscard]] Port port_of(const Design& design, std::string_view piece, std::string_view port);
/// The effective value of a length field, in millimetres.
[[nodiscard]] double millimetres(const Design& design, std::string_view piece, std::string_view key = "length");
[[nodiscard]] const Piece& piece_of(const Design& design, std::string_view piece);
/// Sum of the lengths of all straight runs of a type.
[[nodiscard]] double total_run(const Design& design, std::string_view type);

/// Straight ahead of a design: a first bench pipe at the origin, heading east.
[[nodiscard]] Design bench_pipe(Length length = 1000.0 * millimetre);
[[nodiscard]] GridPoint in_millimetres(double x, double y, double z);

/// Grow with bench pipe and smooth elbows; the design and the piece to go on from.
struct Drawn {
  Design design;
  PieceId last;
};
[[nodiscard]] Drawn grown(const Drawn& from, Heading heading, Length length, std::string_view port = "out",
                          std::string_view run = "bench_pipe", std::string_view bend = "elbow_smooth");

::testing::AssertionResult is_at(const Position& position, double x, double y, double z, double within = 0.06);

}  // namespace fluewright::tests
