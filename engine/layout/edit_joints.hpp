// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/layout/design.hpp"

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace fluewright::edit {

/// A joint as one of its pieces sees it.
struct Link {
  std::size_t joint = 0;         ///< index in Design::joints
  std::string_view port;         ///< own port
  std::size_t other = 0;         ///< index in Design::pieces
  std::string_view other_port;
};

/// Pieces by id and joints by piece, built in one pass. It looks into the design: after pieces or joints were added,
/// removed or renamed it must be built anew.
class JointIndex {
 public:
  explicit JointIndex(const Design& design);

  [[nodiscard]] std::optional<std::size_t> piece(std::string_view id) const;
  /// The joints of a piece to other pieces that exist.
  [[nodiscard]] std::span<const Link> links(std::size_t piece) const;
  /// The first joint at a port.
  [[nodiscard]] const Link* link(std::size_t piece, std::string_view port) const;
  /// All pieces that hang together with this one, itself first, nearest first.
  [[nodiscard]] std::vector<std::size_t> group(std::size_t piece) const;
  [[nodiscard]] std::size_t piece_count() const { return first_link_.size() - 1; }

 private:
  std::unordered_map<std::string_view, std::size_t> by_id_;
  std::vector<std::size_t> first_link_;  ///< of each piece, in links_; one more at the end
  std::vector<Link> links_;
};

}  // namespace fluewright::edit
