// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_stretch.hpp"

#include <algorithm>
#include <utility>

namespace fluewright {

namespace {

using edit::refused;
using edit::SideRuns;
using edit::SideStart;
using edit::Uptake;

/// How both sides of a joint take up its step; they agree on where the joint goes.
struct Agreement {
  Uptake leading;
  Uptake following;
  Position step;
};

std::optional<Agreement> agree(SideRuns& leading, SideRuns* following, const Position& wanted) {
  if (const std::optional<Uptake> lead = leading.along_axes(wanted)) {
    const Position step = lead->total();
    if (following == nullptr) {
      return Agreement{*lead, {}, step};
    }
    const std::optional<Uptake> follow = following->exactly(step);
    return Agreement{*lead, follow ? *follow : following->share(lead->components, step), step};
  }
  if (following == nullptr) {
    return std::nullopt;
  }
  if (const std::optional<Uptake> follow = following->along_axes(wanted)) {
    const Position step = follow->total();
    return Agreement{leading.share(follow->components, step), *follow, step};
  }
  // Neither side alone: each takes up what it has a run for and is carried along by what only the other has.
  std::vector<edit::Yielding> both = leading.all();
  both.insert(both.end(), following->all().begin(), following->all().end());
  const std::optional<Uptake> together = edit::span_step(both, wanted, false);
  if (!together) {
    return std::nullopt;
  }
  const Position step = together->total();
  return Agreement{leading.share(together->components, step), following->share(together->components, step), step};
}

/// Slanting runs leave their neighbours by parts of a grid count; bring back those that rounding has carried too far.
bool mend_rounding(Design& design, const Library& library, const edit::JointIndex& index,
                   const std::vector<std::size_t>& pieces) {
  for (const std::size_t piece : pieces) {
    const std::optional<PieceGeometry> geometry = edit::geometry_of(design, library, design.pieces[piece]);
    for (const edit::Link& link : index.links(piece)) {
      const std::optional<PieceGeometry> other = edit::geometry_of(design, library, design.pieces[link.other]);
      const Port* port = geometry ? geometry->port(link.port) : nullptr;
      const Port* other_port = other ? other->port(link.other_port) : nullptr;
      if (port == nullptr || other_port == nullptr || edit::meet(*port, *other_port)) {
        continue;
      }
      const PortRef ref{design.pieces[piece].id, std::string{link.port}};
      if (distance(port->at, other_port->at) > 1.0 * millimetre || !edit::mend_joint(design, library, ref)) {
        return false;
      }
    }
  }
  return true;
}

}  // namespace

EditResult move_joint(const Design& design, const Library& library, const PortRef& ref, GridPoint to) {
  const edit::JointIndex index{design};
  const std::optional<std::size_t> piece = index.piece(ref.piece);
  if (!piece) {
    return refused(Refusal::unknown_piece);
  }
  const std::optional<PieceGeometry> geometry = edit::geometry_of(design, library, design.pieces[*piece]);
  if (!geometry) {
    return refused(Refusal::unknown_type);
  }
  const Port* port = geometry->port(ref.port);
  if (port == nullptr || port->kind != PortKind::joint) {
    return refused(Refusal::not_an_open_end);
  }
  const std::optional<GridPoint> from = edit::grid_point_at(port->at);
  if (!from) {
    return refused(Refusal::out_of_range);
  }
  if (*from == to) {
    return edit::done(Design{design}, ref.piece);
  }
  const Position wanted = position_of(to) - position_of(*from);

  const edit::Link* link = index.link(*piece, ref.port);
  const auto joint = link != nullptr ? std::optional{link->joint} : std::nullopt;
  SideStart leading{*piece, port->name, joint};
  SideStart following = link != nullptr ? SideStart{link->other, link->other_port, joint} : leading;
  // Upstream leads: where a sloping pipe lifts the joint, what comes after it follows.
  if (link != nullptr && port->name == geometry->ports.front().name) {
    std::swap(leading, following);
  }
  SideRuns leading_runs{design, library, index, leading};
  SideRuns following_runs{design, library, index, following};
  const auto agreement = agree(leading_runs, link != nullptr ? &following_runs : nullptr, wanted);
  if (!agreement) {
    return refused(Refusal::does_not_fit);
  }
  const std::optional<GridPoint> step = edit::grid_point_at(agreement->step);
  edit::Displacement displacement{design, library, index};
  if (!step || !displacement.spread(leading, agreement->leading, *step) ||
      (link != nullptr && !displacement.spread(following, agreement->following, *step))) {
    return refused(Refusal::does_not_fit);
  }
  Design changed = design;
  if (const std::optional<Refusal> why = displacement.apply(changed)) {
    return refused(*why);
  }
  if (!mend_rounding(changed, library, index, displacement.yielding())) {
    return refused(Refusal::does_not_fit);
  }
  return edit::done(std::move(changed), ref.piece);
}

}  // namespace fluewright
