// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The drawing as a graph: pieces are its points, joints its lines. Everything is found by number, not by name.

#include "engine/layout/path.hpp"
#include "engine/layout/piece_check.hpp"

#include <cstddef>
#include <limits>
#include <optional>
#include <vector>

namespace fluewright {

inline constexpr std::size_t no_piece = std::numeric_limits<std::size_t>::max();

/// One port by piece and number.
struct PortAt {
  std::size_t piece = no_piece;
  std::size_t port = 0;
};

/// Pieces that can be reached from one of them, each by its shortest way.
struct Reach {
  /// The piece's port that leads back towards the start; piece == no_piece for the start and for what is not reached.
  std::vector<PortAt> back;
  std::vector<std::size_t> order;  ///< of reaching; the start first
  std::vector<std::size_t> steps;  ///< from the start, by piece; no_piece where not reached
};

class PortGraph {
 public:
  PortGraph(const Design& design, const Library& library);

  [[nodiscard]] const DrawnPiece& piece(std::size_t index) const { return pieces_[index]; }
  [[nodiscard]] const std::vector<Port>& ports(std::size_t piece) const { return pieces_[piece].geometry.ports; }
  [[nodiscard]] const Port& port(PortAt at) const { return ports(at.piece)[at.port]; }
  /// The port joined to this one; piece == no_piece if none.
  [[nodiscard]] PortAt joined(PortAt at) const { return joined_[at.piece][at.port]; }
  [[nodiscard]] bool is_joined(PortAt at) const { return joined(at).piece != no_piece; }

  /// Ports through which air comes in: open to the room, or to the outdoors on a piece's first port.
  [[nodiscard]] const std::vector<PortAt>& inlets() const { return inlets_; }
  /// Ports through which gas leaves: open to the outdoors on any other port.
  [[nodiscard]] const std::vector<PortAt>& outlets() const { return outlets_; }

  [[nodiscard]] Reach reach_from(std::size_t piece) const;

  /// What is wrong with the joints themselves: unknown ports, ports taken twice, gaps, steps in bore.
  [[nodiscard]] const std::vector<Finding>& findings() const { return findings_; }

 private:
  void join(const Joint& joint, const std::unordered_map<std::string_view, std::size_t>& by_id);
  [[nodiscard]] std::optional<PortAt> find(const PortRef& ref,
                                           const std::unordered_map<std::string_view, std::size_t>& by_id);
  [[nodiscard]] bool is_free(PortAt at, const PortRef& ref);
  void compare(const Joint& joint, const Port& a, const Port& b);
  void note(FindingCode code, Severity severity, const PortRef& ref, FieldValue value = {}, std::string text = {});

  std::vector<DrawnPiece> pieces_;
  std::vector<std::vector<PortAt>> joined_;
  std::vector<PortAt> inlets_;
  std::vector<PortAt> outlets_;
  std::vector<Finding> findings_;
};

/// Two joined ports may be this far apart.
inline constexpr Length joint_tolerance = 1.0 * millimetre;

}  // namespace fluewright
