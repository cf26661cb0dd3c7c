// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit.hpp"
#include "engine/layout/edit_geometry.hpp"
#include "engine/layout/edit_joints.hpp"

#include <algorithm>
#include <deque>
#include <utility>

namespace fluewright {

namespace {

/// The walk from the anchor. Joints that meet already are walked first, so that what is in order stays so, and a gap
/// stays where it is.
class Settler {
 public:
  Settler(Design& design, const Library& library)
      : design_{&design}, library_{&library}, index_{design}, settled_(design.pieces.size(), 0) {}

  void run(const PieceId& anchor) {
    const std::optional<std::size_t> start = index_.piece(anchor);
    const auto geometry =
        start ? edit::geometry_of(*design_, *library_, design_->pieces[*start]) : std::optional<PieceGeometry>{};
    if (geometry) {
      settle(*start, *geometry);
    }
    while (!meeting_.empty() || !apart_.empty()) {
      std::deque<Pull>& pulls = meeting_.empty() ? apart_ : meeting_;
      const Pull pull = std::move(pulls.front());
      pulls.pop_front();
      if (settled_[pull.piece] == 0) {
        settle(pull.piece, put_to_meet(pull));
      }
    }
  }

 private:
  /// A piece that a settled neighbour's port wants at its own.
  struct Pull {
    std::size_t piece = 0;
    std::string_view port;
    Port target;
    PieceGeometry geometry;  ///< as the piece stands now
  };

  void settle(std::size_t piece, const PieceGeometry& geometry) {
    settled_[piece] = 1;
    for (const edit::Link& link : index_.links(piece)) {
      const Port* target = geometry.port(link.port);
      if (settled_[link.other] != 0 || target == nullptr) {
        continue;
      }
      auto other = edit::geometry_of(*design_, *library_, design_->pieces[link.other]);
      const Port* port = other ? other->port(link.other_port) : nullptr;
      if (port != nullptr) {
        const bool met = edit::meet(*port, *target, edit::mending_distance);
        (met ? meeting_ : apart_).push_back({link.other, link.other_port, *target, std::move(*other)});
      }
    }
  }

  /// The geometry of the piece after it was put where it is wanted; as it was if it cannot be put there.
  PieceGeometry put_to_meet(const Pull& pull) {
    if (edit::meet(*pull.geometry.port(pull.port), pull.target, edit::mending_distance)) {
      return pull.geometry;
    }
    Piece& piece = design_->pieces[pull.piece];
    auto placed = edit::stand_to_meet(*design_, *library_, piece, pull.geometry, pull.port, pull.target);
    if (!placed) {
      return pull.geometry;
    }
    piece.at = placed->stand.at;
    piece.heading = placed->stand.heading;
    return std::move(placed->geometry);
  }

  Design* design_;
  const Library* library_;
  edit::JointIndex index_;
  std::vector<char> settled_;
  std::deque<Pull> meeting_;
  std::deque<Pull> apart_;
};

}  // namespace

void settle(Design& design, const Library& library, const PieceId& anchor) { Settler{design, library}.run(anchor); }

namespace {

/// Ports that are joined to nothing, of every piece, and whether the piece has a way through it without them.
template <class Take>
void for_free_ports(const Design& design, const Library& library, const Take& take) {
  const edit::JointIndex index{design};
  for (std::size_t i = 0; i < design.pieces.size(); ++i) {
    const std::optional<PieceGeometry> geometry = edit::geometry_of(design, library, design.pieces[i]);
    if (!geometry) {
      continue;
    }
    const auto is_free = [&](const Port& port) {
      return port.kind == PortKind::joint && index.link(i, port.name) == nullptr;
    };
    const auto in_use = geometry->ports.size() - static_cast<std::size_t>(std::count_if(
                                                     geometry->ports.begin(), geometry->ports.end(), is_free));
    for (const Port& port : geometry->ports) {
      if (is_free(port)) {
        take(OpenEnd{{design.pieces[i].id, port.name}, port}, in_use >= 2);
      }
    }
  }
}

}  // namespace

std::vector<OpenEnd> open_ends(const Design& design, const Library& library) {
  std::vector<OpenEnd> found;
  for_free_ports(design, library, [&found](OpenEnd end, bool has_way_through) {
    if (!end.port.may_stay_shut || !has_way_through) {
      found.push_back(std::move(end));
    }
  });
  return found;
}

std::vector<OpenEnd> free_ports(const Design& design, const Library& library) {
  std::vector<OpenEnd> found;
  for_free_ports(design, library, [&found](OpenEnd end, bool) { found.push_back(std::move(end)); });
  return found;
}

}  // namespace fluewright
