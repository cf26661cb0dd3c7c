// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What has to be bought or built, and how pipe is sawn from the lengths it is sold in.

#include "engine/bill/packing.hpp"
#include "engine/layout/path.hpp"

#include <optional>
#include <string>
#include <vector>

namespace fluewright {

/// Pieces that are alike: one line of the parts list.
struct PartLine {
  std::string type;                       ///< id in Library::piece_types
  Section section = Section::circle({});  ///< at its first port
  std::optional<Section> far_section;     ///< at its second port, where that differs
  std::optional<Length> length;           ///< drawn, of a straight piece
  std::optional<Length> body_width;       ///< outside, of a standing body (barrel, bell, batch box)
  std::optional<Length> body_height;
  std::string wall;                 ///< id of its build-up; empty where it has none
  std::vector<std::size_t> pieces;  ///< indices in Design::pieces: as many as are needed
};

/// All pieces that can be drawn, alike ones together, in the order in which the gas meets the first of each.
[[nodiscard]] std::vector<PartLine> parts_list(const Design& design, const Library& library);

/// The pieces' order along the main path, then those beside it in the order of the design: the numbers on the drawings
/// count along this. Every index of Design::pieces once.
[[nodiscard]] std::vector<std::size_t> building_order(const Design& design, const TracedPath& path);

/// Pipe as it is sold and sawn. Defaults are common practice, no source.
struct StockPipe {
  Length length = 3000.0 * millimetre;
  Length kerf = 3.0 * millimetre;      ///< of the saw or the cutting disc
  Length overlap = 40.0 * millimetre;  ///< of a crimped end in the next pipe: each pipe is sawn longer by it
};

/// One pipe to saw. A run longer than stock pipe is made of several, pushed together.
struct Cut {
  std::size_t piece = 0;  ///< index in Design::pieces
  std::size_t part = 1;   ///< of `parts`, along the gas
  std::size_t parts = 1;
  Length drawn{};  ///< what it covers of the run as drawn
  Length sawn{};   ///< with the overlap
};

/// One stock length and what is sawn from it.
struct StockLength {
  std::vector<Cut> cuts;
  Length left{};  ///< offcut
};

/// Pipe of one bore and one wall.
struct CutGroup {
  Length bore{};
  std::string wall;
  std::vector<StockLength> lengths;
  std::size_t at_least = 0;  ///< stock lengths that any way of sawing takes
  bool proven = false;       ///< and this takes no more
  Length offcuts{};          ///< what is left over of all of them
  Length dust{};             ///< what the saw takes
};

struct CutList {
  std::vector<CutGroup> groups;
  std::vector<std::size_t> whole;  ///< straight pipes of several layers: sold in fixed lengths, not to be sawn
};

/// Single-skin round metal pipe, sawn. Nothing if the stock is no longer than its overlap.
[[nodiscard]] std::optional<CutList> cut_list(const Design& design, const Library& library,
                                              const StockPipe& stock = {});

/// Metal no thicker than this counts as pipe that is sawn (chosen; stove pipe is 0.5-2 mm).
inline constexpr Length thickest_sawn_skin = 3.0 * millimetre;

/// A last pipe shorter than this shares its length with the one before: too short to be a pipe (chosen).
inline constexpr Length shortest_rest = 200.0 * millimetre;

}  // namespace fluewright
