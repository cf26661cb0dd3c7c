// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The drawing without its dead ends: ways between free air and the pieces in which three streams meet.

#include "engine/layout/port_graph.hpp"

#include <optional>
#include <vector>

namespace fluewright {

/// Stands for a port's number where the gas comes from or goes to the middle of a piece in which streams meet.
inline constexpr std::size_t the_meeting = std::numeric_limits<std::size_t>::max();

/// A way through one piece by port numbers.
struct WayStep {
  std::size_t piece = 0;
  std::size_t entry = 0;
  std::size_t exit = 0;
};

/// Pieces in a row that only two streams pass, between two ends. An end is free air where its step's port is open, and
/// a meeting where the port is `the_meeting`.
struct Way {
  std::vector<WayStep> steps;
  bool holds_fire = false;
  Length length{};  ///< as drawn

  [[nodiscard]] bool starts_at_meeting() const { return steps.front().entry == the_meeting; }
  [[nodiscard]] bool ends_at_meeting() const { return steps.back().exit == the_meeting; }
};
[[nodiscard]] Way turned_round(Way way);

/// What can carry gas of the pieces around an inlet.
class FlueMap {
 public:
  /// `graph` and `reach` must outlive the map.
  FlueMap(const PortGraph& graph, const Reach& reach);

  /// The way from an inlet through the fire to the cap, cut at the meetings it passes. Of several inlets one that draws
  /// on the room comes before an outside-air duct; then the longest way counts as the main path and a shorter one beside
  /// it as a bypass. Empty where no way leads from an inlet through a fire to a cap.
  [[nodiscard]] std::vector<Way> main_path() const;

  /// Every other way, those at the first meetings of the main path first. Written from free air, else from the meeting
  /// that comes first.
  [[nodiscard]] std::vector<Way> side_ways(const std::vector<Way>& main_path) const;

  /// Gas can pass the piece, or would if something drove it.
  [[nodiscard]] bool is_alive(std::size_t piece) const { return alive_[piece]; }
  /// Three streams can meet in it: three of its ends lead on, or it has an opening in its side.
  [[nodiscard]] bool is_meeting(std::size_t piece) const { return alive_[piece] && meeting_[piece]; }
  [[nodiscard]] bool leads_on(PortAt port) const;

  /// Pieces of a part that hangs by one pipe and leads nowhere: gas could only go round in it.
  [[nodiscard]] std::vector<std::size_t> rings_that_lead_nowhere(const std::vector<Way>& all) const;

 private:
  void drop_dead_ends();
  [[nodiscard]] std::size_t ends_that_lead_on(std::size_t piece) const;
  [[nodiscard]] Way follow(std::size_t piece, std::size_t entry, std::size_t exit) const;
  [[nodiscard]] Way from_air(PortAt port) const;
  [[nodiscard]] std::size_t other_end(std::size_t piece, std::size_t entry) const;

  const PortGraph* graph_;
  const Reach* reach_;
  std::vector<bool> alive_;
  std::vector<bool> meeting_;
};

}  // namespace fluewright
