// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Start classes over outdoor and room temperature: which cells there are, in what order they are best computed, and what
// may be shown of those that are not computed yet. Computing a cell is classify_start()'s; running many at once is the
// caller's.

#include "engine/burn/start_class.hpp"

#include <cstddef>
#include <optional>
#include <vector>

namespace fluewright {

/// Evenly spaced temperatures.
struct TemperatureRow {
  Temperature first;
  TemperatureDifference step{};
  std::size_t count = 0;
  [[nodiscard]] Temperature at(std::size_t i) const { return first + static_cast<double>(i) * step; }
  /// The index nearest to a temperature; ends beyond the ends.
  [[nodiscard]] std::size_t nearest(Temperature t) const;
  [[nodiscard]] bool holds(Temperature t) const;
};

struct StartMapGrid {
  TemperatureRow outdoors;
  TemperatureRow room;
};

/// So many cells a side, over the weather in which people light such heaters (outdoors -15 to 30, room 0 to 25 degC,
/// chosen), widened where the design's own day lies outside.
[[nodiscard]] StartMapGrid usual_grid(const Design& design, std::size_t cells_a_side = 41);

/// How a cell is known.
enum class CellState {
  unknown,
  between,  ///< not computed: the nearest computed cells around it all agree on this class
  computed
};

struct StartCell {
  CellState state = CellState::unknown;
  StartClass start = StartClass::only_with_fan;
  bool draws_with_fan = false;
  bool certain = true;
};

/// Between which differences of room over outdoors a room's row changes from starting with kindling at most to needing
/// more.
struct StartLimit {
  Temperature room;                                 ///< of the row that was read
  std::optional<TemperatureDifference> enough;      ///< the least computed difference from which on kindling is enough
  std::optional<TemperatureDifference> not_enough;  ///< the greatest below which it is not
  std::optional<StartClass> then_needs;             ///< what is needed there
  bool known = false;                               ///< every cell of the row is computed
};

class StartMap {
 public:
  explicit StartMap(const StartMapGrid& grid);

  [[nodiscard]] const StartMapGrid& grid() const { return grid_; }
  [[nodiscard]] std::size_t size() const { return cells_.size(); }
  [[nodiscard]] std::size_t index(std::size_t outdoors, std::size_t room) const { return room * grid_.outdoors.count + outdoors; }
  [[nodiscard]] const StartCell& cell(std::size_t index) const { return cells_[index]; }
  [[nodiscard]] Temperature outdoors(std::size_t index) const { return grid_.outdoors.at(index % grid_.outdoors.count); }
  [[nodiscard]] Temperature room(std::size_t index) const { return grid_.room.at(index / grid_.outdoors.count); }
  [[nodiscard]] std::size_t computed() const { return computed_; }
  [[nodiscard]] bool complete() const { return computed_ == cells_.size(); }

  /// Which cells to compute next, all of them independent of one another: first a coarse picture, then lines halfway
  /// between wherever neighbours differ, and at last every cell that is only known to lie between. Empty: complete.
  [[nodiscard]] std::vector<std::size_t> next() const;
  /// A cell's answer.
  void set(std::size_t index, const StartAnswer& answer);
  /// Marks what lies between agreeing cells; worth doing after a round of next() has been computed.
  void fill_between();

  /// Reads the row nearest to a room temperature: "below what difference must I prime".
  [[nodiscard]] StartLimit limit(Temperature room) const;

 private:
  [[nodiscard]] std::vector<std::size_t> open_at(std::size_t stride) const;
  [[nodiscard]] std::vector<std::size_t> lines(std::size_t count, std::size_t stride) const;
  [[nodiscard]] std::optional<StartClass> agreed_around(std::size_t outdoors, std::size_t room, std::size_t stride) const;

  StartMapGrid grid_;
  std::size_t coarsest_;
  std::size_t computed_ = 0;
  std::vector<StartCell> cells_;
};

}  // namespace fluewright
