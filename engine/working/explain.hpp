// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Any number of the answer explains itself. The values are the engine's own: the march behind the answer is walked once
// more, and the same laws are called with the states it ended in.

#include "engine/working/retrace.hpp"
#include "engine/working/working.hpp"

#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace fluewright {

/// One slice from top to bottom: air, wood, fire, gas, films, wall, heat, pressure, moisture. `row` is a row of the
/// profile. The slice's own temperatures are repeated until they stand still, so that every relation holds to the
/// digits printed; the last part sets the result beside the walk's own row.
[[nodiscard]] Working explain_slice(const Retrace& run, std::size_t row);

/// What a piece adds up to, and the working of the slice in its middle, or of the one with its fan. Nothing if the gas does not pass the piece.
[[nodiscard]] std::optional<Working> explain_piece(const Retrace& run, std::size_t piece);

/// The rows of a piece's slices in flow order; none if the gas does not pass the piece.
[[nodiscard]] std::vector<std::size_t> rows_of_piece(const Retrace& run, std::size_t piece);

/// A number that the answer is known by.
enum class HeadlineNumber {
  draft_margin_cold_bench,
  draft_margin_one_hour,
  draft_margin_charged,
  standing_draft,
  excess_air,
  fire_temperature,
  exit_temperature,
  condensation,
  heat_to_room,
  heat_into_mass,
  stack_loss
};

/// All headlines in the order of the answer, each with the name it goes by in commands ("exit_temperature").
struct NamedHeadline {
  HeadlineNumber headline{};
  std::string_view name;
};
[[nodiscard]] std::span<const NamedHeadline> headlines();
/// The draft margin's headline at an age.
[[nodiscard]] HeadlineNumber draft_margin(BenchAge age);

/// The working of a headline number; sums go piece by piece and each term names its piece. Nothing where the answer has
/// no such number (the path is not complete, or nothing is running). `slice` is the one the answer was made with.
[[nodiscard]] std::optional<Working> explain_headline(const Design& design, const Library& library,
                                                      const Assessment& answer, HeadlineNumber headline,
                                                      Length slice = AssessOptions{}.slice);

}  // namespace fluewright
