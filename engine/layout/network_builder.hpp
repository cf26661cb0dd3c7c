// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/flue_map.hpp"

#include <string>
#include <vector>

namespace fluewright {

/// Puts the flue of pieces together: ways through the drawing become branches, meetings become nodes.
class NetworkBuilder {
 public:
  NetworkBuilder(const Design& design, const Library& library, const PortGraph& graph)
      : design_{design}, library_{library}, graph_{graph} {}

  /// The main path way by way, then every way beside it, then the openings in the sides of pieces. False where a piece's
  /// values do not allow it.
  bool add_all(const std::vector<Way>& main_path, const std::vector<Way>& side_ways);
  /// One branch, meetings passed straight through: all there is of a path that is not complete. As far as pieces can be
  /// computed; false where that is not to the end.
  bool add_one(const std::vector<WayStep>& steps, bool ends_outdoors);

  [[nodiscard]] FlueNetwork& network() { return network_; }
  /// What each branch leads through, in the order of the branches.
  [[nodiscard]] std::vector<std::vector<Passage>>& ways() { return ways_; }
  /// Pieces on it that the calculation leaves something out of.
  [[nodiscard]] const std::vector<std::size_t>& left_out() const { return left_out_; }

 private:
  bool add_way(const Way& way);
  void add_opening(std::size_t node);
  bool append(Branch& branch, const WayStep& step);
  [[nodiscard]] std::size_t node_at(std::size_t piece);
  [[nodiscard]] BranchEnd end_at(std::size_t piece, std::size_t port, std::size_t leg, Length height);
  [[nodiscard]] PieceView view(std::size_t piece) const;
  [[nodiscard]] const Shape& shape(std::size_t piece) const { return *graph_.piece(piece).known.shape; }

  const Design& design_;
  const Library& library_;
  const PortGraph& graph_;
  FlueNetwork network_;
  std::vector<std::vector<Passage>> ways_;
  std::vector<std::size_t> left_out_;
};

/// The steps as passages of whole pieces: the two legs of a meeting become one passage.
[[nodiscard]] std::vector<Passage> passages_of(const std::vector<WayStep>& steps, const PortGraph& graph);

/// The way's own steps with the two legs of each meeting put together.
[[nodiscard]] std::vector<WayStep> straight_through(const std::vector<Way>& main_path);

}  // namespace fluewright
