// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// What to do with a cold heater at each outdoor and room temperature, for the card beside it: the start map of a few
// days, and for days on which the stack must be primed the least that holds. No Qt.

#include "app/shared/start_jobs.hpp"
#include "app/shared/units.hpp"
#include "engine/burn/start_map.hpp"

#include <functional>
#include <memory>
#include <optional>
#include <vector>

namespace fluewright {

enum class CardStep {
  light,               ///< it draws before anything is lit
  kindle_at_the_foot,  ///< shut until the match, a small fire first
  prime,               ///< a fire in the stack's foot, then as above
  fan,                 ///< the design's own fan, then as above
  wait                 ///< nothing that the owner has gets it to hold
};

struct CardCell {
  CardStep step = CardStep::wait;
  Mass priming{};  ///< of newspaper, for CardStep::prime
  Time lasts{};    ///< of priming or of the fan
};

/// A row an outdoor temperature, a cell a room temperature.
struct CardTable {
  std::vector<Temperature> outdoor;
  std::vector<Temperature> room;
  std::vector<std::vector<CardCell>> rows;
  MassFlow kindling{};    ///< the small fire's burn rate
  Time kindling_lasts{};
  PieceId primed_at;      ///< empty: there is no tee to prime in
};

/// Five outdoor and four room temperatures over the weather in which people light such heaters, round in the reader's
/// unit (chosen).
struct CardDays {
  std::vector<Temperature> outdoor;
  std::vector<Temperature> room;
};
[[nodiscard]] CardDays card_days(UnitSystem units);

/// The table being computed, in the background.
class CardTableJob {
 public:
  /// Null where the drawing has no complete path with a fire. `told` is called from a worker's thread after every cell
  /// and once at the end.
  [[nodiscard]] static std::unique_ptr<CardTableJob> begin(const Design& design, std::shared_ptr<const Library> library,
                                                           const CardDays& days, std::function<void()> told = {});
  ~CardTableJob();

  [[nodiscard]] Ratio progress() const;
  [[nodiscard]] bool done() const;
  void cancel();
  void wait();
  /// Once every cell is computed; nothing before, and nothing after calling it off.
  [[nodiscard]] std::optional<CardTable> table() const;

 private:
  CardTableJob(StartQuestion question, std::shared_ptr<const Library> library, const CardDays& days,
               std::function<void()> told);
  Workers::Work take();
  [[nodiscard]] std::optional<CardCell> cell_at(Temperature outdoors, Temperature room) const;
  [[nodiscard]] std::size_t size() const { return table_.outdoor.size() * table_.room.size(); }

  StartQuestion question_;
  std::shared_ptr<const Library> library_;
  CardTable table_;
  std::size_t next_ = 0;
  std::size_t computed_ = 0;
  std::unique_ptr<Workers> workers_;
};

}  // namespace fluewright
