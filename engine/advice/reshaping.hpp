// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Changes to a whole design that limits and remedies share. Each works on a copy and settles it, so that every joint
// still meets; nothing where the design has no such part or where a value would leave its range.

#include "engine/layout/design.hpp"
#include "engine/layout/path.hpp"

#include <optional>
#include <vector>

namespace fluewright::advice {

/// Where the parts of a design are that can be changed as a whole: indices in Design::pieces, in the gas's way.
struct Parts {
  std::vector<std::size_t> bench_runs;    ///< straight runs of the bench or under the floor
  std::vector<std::size_t> level_bends;   ///< bends from a level heading to another
  std::vector<std::size_t> upright_runs;  ///< straight upright runs of the stack, from its foot
  std::vector<std::size_t> stack;         ///< all pieces of the stack, from its foot
  std::vector<std::size_t> flue;          ///< all round pieces behind the heat exchangers, side pieces too
  std::optional<std::size_t> chamber;     ///< the exchanger just before the flue
};
[[nodiscard]] Parts parts_of(const Design& design, const Library& library, const TracedPath& path);

[[nodiscard]] Length bench_length(const Design& design, const Library& library, const Parts& parts);
/// Every run of the bench longer or shorter by the same factor, so that folds stay folds.
[[nodiscard]] std::optional<Design> with_bench_length(const Design& design, const Library& library, const Parts& parts,
                                                      Length total);

[[nodiscard]] Length stack_height(const Design& design, const Library& library, const Parts& parts);
/// Longer at the topmost upright run; shorter there too, then at the next one down.
[[nodiscard]] std::optional<Design> with_stack_height(const Design& design, const Library& library, const Parts& parts,
                                                      Length total);

/// The bore most of the flue has.
[[nodiscard]] std::optional<Length> flue_bore(const Design& design, const Library& library, const Parts& parts);
/// Every round piece of that bore behind the exchangers gets the new one.
[[nodiscard]] std::optional<Design> with_flue_bore(const Design& design, const Library& library, const Parts& parts,
                                                   Length bore);

/// A level bend taken out; what comes after it goes straight on.
[[nodiscard]] std::optional<Design> without_bend(const Design& design, const Library& library, const TracedPath& path,
                                                 std::size_t bend);
/// The longest level run of the bench is cut in its middle and a bend set in, left and right in turn.
[[nodiscard]] std::optional<Design> with_bend(const Design& design, const Library& library, const TracedPath& path,
                                              const Parts& parts);

/// A tee at the beginning of the bench, one at its end, and the shortest pipe with an open blade between them that can
/// be built: straight across, or round the bench with elbows. Nothing where the path branches already.
[[nodiscard]] std::optional<Design> with_bypass(const Design& design, const Library& library, const TracedPath& path,
                                                const Parts& parts);

/// Whether the drawing carries gas from inlet to cap, and nothing has come in that was not wrong before.
[[nodiscard]] bool can_be_built(const Design& before, const Design& after, const Library& library);

/// The value of a piece's field.
[[nodiscard]] Length length_of(const Design& design, const Library& library, std::size_t piece, std::string_view key);
/// Sets a field without moving anything; false where the type has no such field or does not allow the value.
[[nodiscard]] bool put_field(Design& design, const Library& library, std::size_t piece, std::string_view key, FieldValue value);

}  // namespace fluewright::advice
