// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_follow.hpp"

#include <cmath>
#include <deque>

namespace fluewright::edit {

namespace {

bool same_heading(const Heading& a, const Heading& b) {
  return same_direction(a, b) && (!is_vertical(a) || same_direction({a.azimuth, {}}, {b.azimuth, {}}));
}

/// How many quarter turns about the vertical lead from one heading to the other; nothing if that is not what does it.
std::optional<int> quarter_turns(const Heading& from, const Heading& to) {
  const double quarters = in(to.azimuth - from.azimuth, degree) / 90.0;
  if (from.elevation != to.elevation || !(std::abs(quarters - std::round(quarters)) < 1e-9)) {
    return std::nullopt;
  }
  return (static_cast<int>(std::round(quarters)) % 4 + 4) % 4;
}

GridPoint turned_step(GridPoint step, int quarters) {
  for (int i = 0; i < quarters; ++i) {
    step = {-step.y, step.x, step.z};
  }
  return step;
}

/// The walk outwards from a changed piece.
class Follower {
 public:
  Follower(Design& design, const Library& library, const JointIndex& index)
      : design_{&design}, library_{&library}, index_{&index}, travels_(design.pieces.size()) {}

  bool run(std::size_t changed, const PieceGeometry& before) {
    const Piece& piece = design_->pieces[changed];
    const std::optional<PieceGeometry> after = geometry_of(*design_, *library_, piece);
    if (!after) {
      return true;
    }
    start_ = changed;
    start_before_ = &before;
    travels_[changed] = {Travel::changed, 0, no_joint, {piece.at, piece.heading}};
    queue_.push_back({changed, before, *after});
    while (!queue_.empty()) {
      const Motion motion = std::move(queue_.front());
      queue_.pop_front();
      const bool rigid = travels_[motion.piece].how == Travel::rigidly;
      if (!(rigid ? pass_rigid_motion_on(motion.piece) : pass_change_on(motion))) {
        return false;
      }
    }
    return closing_joints_meet();
  }

 private:
  static constexpr std::size_t no_joint = static_cast<std::size_t>(-1);

  /// How a piece came to its new stand.
  struct Travel {
    enum How { not_at_all, rigidly, changed } how = not_at_all;
    int quarters = 0;           ///< if rigidly: turned about the vertical by so many right angles
    std::size_t by = no_joint;  ///< the joint it was reached through
    Stand from;
  };

  struct Motion {
    std::size_t piece = 0;
    PieceGeometry before;  ///< both empty if rigidly
    PieceGeometry after;
  };

  // A shift by whole grid counts and a turn by right angles need no geometry: every neighbour goes along as it is.
  bool pass_rigid_motion_on(std::size_t piece) {
    const Travel& travel = travels_[piece];
    for (const Link& link : index_->links(piece)) {
      if (travels_[link.other].how != Travel::not_at_all) {
        note_closing(piece, link);
        continue;
      }
      Piece& other = design_->pieces[link.other];
      other.heading = drawn_heading(other.heading);
      const auto arm = difference(other.at, travel.from.at);
      const auto at = arm ? sum(design_->pieces[piece].at, turned_step(*arm, travel.quarters)) : std::nullopt;
      if (!at) {
        return false;
      }
      move_rigidly(link, {*at, with_azimuth(other.heading, other.heading.azimuth + 90.0 * travel.quarters * degree)},
                   travel.quarters);
    }
    return true;
  }

  bool pass_change_on(const Motion& motion) {
    for (const Link& link : index_->links(motion.piece)) {
      const Port* old_port = motion.before.port(link.port);
      const Port* new_port = motion.after.port(link.port);
      if (old_port == nullptr) {
        continue;  // the joint names a port that never was: the path check says so
      }
      if (new_port == nullptr) {
        return false;
      }
      const bool stayed =
          distance(old_port->at, new_port->at) < 1e-9 * metre && same_heading(old_port->outward, new_port->outward);
      if (travels_[link.other].how != Travel::not_at_all || stayed) {
        note_closing(motion.piece, link);
      } else if (!place(link, *old_port, *new_port)) {
        return false;
      }
    }
    return true;
  }

  bool place(const Link& link, const Port& old_port, const Port& new_port) {
    Piece& piece = design_->pieces[link.other];
    piece.heading = drawn_heading(piece.heading);
    std::optional<PieceGeometry> before = geometry_of(*design_, *library_, piece);
    const Port* own = before ? before->port(link.other_port) : nullptr;
    if (own == nullptr) {
      return true;
    }
    const Angle swing = is_vertical(old_port.outward) == is_vertical(new_port.outward)
                            ? new_port.outward.azimuth - old_port.outward.azimuth
                            : 0.0 * degree;
    std::optional<Placed> placed = stand_to_meet(*design_, *library_, piece, *before, link.other_port, new_port, swing);
    if (!placed) {
      return !meet(*own, old_port);
    }
    if (same_heading(placed->stand.heading, piece.heading)) {
      move_rigidly(link, {placed->stand.at, piece.heading}, 0);
    } else if (const std::optional<int> quarters = quarter_turns(piece.heading, placed->stand.heading)) {
      move_rigidly(link, placed->stand, *quarters);
    } else {
      travels_[link.other] = {Travel::changed, 0, link.joint, {piece.at, piece.heading}};
      piece.at = placed->stand.at;
      piece.heading = placed->stand.heading;
      queue_.push_back({link.other, std::move(*before), std::move(placed->geometry)});
    }
    return true;
  }

  void move_rigidly(const Link& link, const Stand& to, int quarters) {
    Piece& piece = design_->pieces[link.other];
    travels_[link.other] = {Travel::rigidly, quarters, link.joint, {piece.at, piece.heading}};
    if (to.at != piece.at || quarters != 0) {
      piece.at = to.at;
      if (quarters != 0) {
        piece.heading = to.heading;
      }
      queue_.push_back({link.other, {}, {}});
    }
  }

  void note_closing(std::size_t piece, const Link& link) {
    if (travels_[piece].by != link.joint && travels_[link.other].by != link.joint) {
      closing_.push_back({piece, link});
    }
  }

  // Joints the walk did not go through: the one behind the port that stayed, and those that close a loop.
  [[nodiscard]] bool closing_joints_meet() const {
    for (const auto& [piece, link] : closing_) {
      if (travels_[link.other].how == Travel::not_at_all) {
        continue;
      }
      if (!joint_meets(piece, link, false) && joint_meets(piece, link, true)) {
        return false;
      }
    }
    return true;
  }

  [[nodiscard]] bool joint_meets(std::size_t piece, const Link& link, bool formerly) const {
    const std::optional<PieceGeometry> a = geometry(piece, formerly);
    const std::optional<PieceGeometry> b = geometry(link.other, formerly);
    const Port* port = a ? a->port(link.port) : nullptr;
    const Port* other = b ? b->port(link.other_port) : nullptr;
    return port != nullptr && other != nullptr && meet(*port, *other);
  }

  [[nodiscard]] std::optional<PieceGeometry> geometry(std::size_t piece, bool formerly) const {
    if (!formerly) {
      return geometry_of(*design_, *library_, design_->pieces[piece]);
    }
    if (piece == start_) {
      return *start_before_;
    }
    Piece before = design_->pieces[piece];
    before.at = travels_[piece].from.at;
    before.heading = travels_[piece].from.heading;
    return geometry_of(*design_, *library_, before);
  }

  Design* design_;
  const Library* library_;
  const JointIndex* index_;
  std::size_t start_ = 0;
  const PieceGeometry* start_before_ = nullptr;
  std::vector<Travel> travels_;
  std::deque<Motion> queue_;
  std::vector<std::pair<std::size_t, Link>> closing_;
};

}  // namespace

bool follow(Design& design, const Library& library, const JointIndex& index, std::size_t changed,
            const PieceGeometry& before) {
  return Follower{design, library, index}.run(changed, before);
}

std::string_view staying_port(const JointIndex& index, std::size_t piece, const PieceGeometry& geometry) {
  for (const Port& port : geometry.ports) {
    if (index.link(piece, port.name) != nullptr) {
      return port.name;
    }
  }
  return geometry.ports.front().name;
}

bool reshape(Design& design, const Library& library, const JointIndex& index, std::size_t piece, std::string_view stays,
             const std::function<void(Piece&)>& change) {
  Piece& changed = design.pieces[piece];
  const std::optional<PieceGeometry> before = geometry_of(design, library, changed);
  const Port* stood = before ? before->port(stays) : nullptr;
  if (stood == nullptr) {
    return false;
  }
  changed.heading = drawn_heading(changed.heading);
  change(changed);
  const std::optional<PieceGeometry> after = geometry_of(design, library, changed);
  const Port* stands = after ? after->port(stays) : nullptr;
  if (stands == nullptr) {
    return false;
  }
  if (distance(stands->at, stood->at) > 1e-9 * metre || !same_heading(stands->outward, stood->outward)) {
    Port target = *stood;
    target.outward = opposite(stood->outward);
    const std::optional<Placed> placed = stand_to_meet(design, library, changed, *after, stays, target);
    if (!placed) {
      return false;
    }
    changed.at = placed->stand.at;
    changed.heading = placed->stand.heading;
  }
  return follow(design, library, index, piece, *before);
}

bool mend_joint(Design& design, const Library& library, const PortRef& ref) {
  const JointIndex index{design};
  const std::optional<std::size_t> piece = index.piece(ref.piece);
  const Link* link = piece ? index.link(*piece, ref.port) : nullptr;
  if (link == nullptr) {
    return true;
  }
  std::optional<PieceGeometry> before = geometry_of(design, library, design.pieces[*piece]);
  const std::optional<PieceGeometry> other = geometry_of(design, library, design.pieces[link->other]);
  const Port* other_port = other ? other->port(link->other_port) : nullptr;
  if (!before || other_port == nullptr) {
    return true;
  }
  for (Port& port : before->ports) {
    if (port.name == ref.port) {
      if (meet(port, *other_port, mending_distance)) {
        return true;
      }
      port.at = other_port->at;
      port.outward = opposite(other_port->outward);
    }
  }
  return follow(design, library, index, *piece, *before);
}

bool shift(Design& design, const std::vector<std::size_t>& pieces, const GridPoint& step) {
  for (const std::size_t piece : pieces) {
    const std::optional<GridPoint> at = sum(design.pieces[piece].at, step);
    if (!at) {
      return false;
    }
    design.pieces[piece].at = *at;
  }
  return true;
}

}  // namespace fluewright::edit
