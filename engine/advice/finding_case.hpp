// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What the finders of practice share: the design with its answer, and where they put what they find.

#include "engine/layout/path.hpp"
#include "engine/layout/piece_check.hpp"
#include "engine/solve/assessment.hpp"

#include <optional>
#include <string>
#include <vector>

namespace fluewright::advice {

/// A design looked at.
struct FindingCase {
  const Design& design;
  const Library& library;
  const Assessment& assessment;
  std::vector<DrawnPiece> drawn;   ///< in the order of Design::pieces
  std::vector<Finding>& found;
  std::vector<Stretch> way;        ///< the main path's, in its order

  [[nodiscard]] bool sound(std::size_t piece) const { return drawn[piece].sound; }
  [[nodiscard]] PieceView view(std::size_t piece) const {
    return {design, library, design.pieces[piece], *drawn[piece].known.type};
  }
  [[nodiscard]] const std::string& family(std::size_t piece) const { return drawn[piece].known.type->family; }
  /// The stretches the gas passes from the inlet on, past every side branch.
  [[nodiscard]] const std::vector<Stretch>& stretches() const { return way; }
  Finding& add(FindingCode code, Severity severity, std::optional<std::size_t> piece, FieldValue value);
};

/// Will it draw, does it draw too much, does the house pull.
void find_draft(FindingCase& of);
/// Sections, outlet, clearances.
void find_on_drawing(FindingCase& of);
/// Where water runs and pools, and runs that fall the wrong way.
void find_water(FindingCase& of);
/// Bends that no brush reaches.
void find_cleanouts(FindingCase& of);
/// Speeds, seats, floor, alarm.
void find_comfort(FindingCase& of);

/// Whether a piece can be opened for brush and water: a lid on one of its ports, or one that is shut and unjoined.
[[nodiscard]] bool has_lid(const FindingCase& of, std::size_t piece);

}  // namespace fluewright::advice
