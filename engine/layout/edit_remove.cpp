// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_support.hpp"

#include <algorithm>

namespace fluewright {

namespace {

/// What stands on either side of a piece that is taken out: two ports that look at one another.
struct Neighbours {
  PortRef a;
  PortRef b;
  Port port_a;
  Port port_b;
  bool on_one_axis = false;
  Length between{};
};

std::optional<Port> neighbour_port(const Design& design, const Library& library, const edit::Link* link) {
  const auto geometry =
      link != nullptr ? edit::geometry_of(design, library, design.pieces[link->other]) : std::optional<PieceGeometry>{};
  const Port* port = geometry ? geometry->port(link->other_port) : nullptr;
  return port != nullptr ? std::optional{*port} : std::nullopt;
}

/// The first two neighbours, in the order of the piece's ports, that face one another across it.
std::optional<Neighbours> facing_neighbours(const Design& design, const Library& library,
                                            const edit::JointIndex& index, std::size_t piece) {
  const std::optional<PieceGeometry> geometry = edit::geometry_of(design, library, design.pieces[piece]);
  if (!geometry) {
    return std::nullopt;
  }
  for (std::size_t i = 0; i < geometry->ports.size(); ++i) {
    const edit::Link* link_a = index.link(piece, geometry->ports[i].name);
    const std::optional<Port> a = neighbour_port(design, library, link_a);
    for (std::size_t j = i + 1; a && j < geometry->ports.size(); ++j) {
      const edit::Link* link_b = index.link(piece, geometry->ports[j].name);
      const std::optional<Port> b = neighbour_port(design, library, link_b);
      if (!b || link_a->other == link_b->other || !same_direction(a->outward, opposite(b->outward))) {
        continue;
      }
      const edit::Direction onwards = edit::direction_of(a->outward);
      const Length between = edit::along(b->at - a->at, onwards);
      if (between < -edit::meeting_distance) {
        continue;
      }
      return Neighbours{{design.pieces[link_a->other].id, a->name}, {design.pieces[link_b->other].id, b->name}, *a, *b,
                        edit::straight_on(*a, *b), edit::tidy(between)};
    }
  }
  return std::nullopt;
}

bool lengthen(Design& design, const Library& library, const PortRef& end, Length by) {
  const edit::JointIndex index{design};
  const std::size_t piece = *index.piece(end.piece);
  const std::optional<edit::StraightRun> run = edit::straight_run(design, library, design.pieces[piece]);
  if (!run || edit::check_run_length(*run->type, run->length + by)) {
    return false;
  }
  const std::string& stays = end.port == run->first.name ? run->last.name : run->first.name;
  const Length length = edit::tidy(run->length + by);
  return edit::reshape(design, library, index, piece, stays, [length](Piece& p) { p.fields["length"] = length; });
}

/// One pipe in two pieces: of one type and make, the second going on where the first ends.
bool same_pipe(const Piece& a, const Piece& b) {
  auto fields_a = a.fields;
  auto fields_b = b.fields;
  fields_a.erase("length");
  fields_b.erase("length");
  return a.type == b.type && fields_a == fields_b && same_direction(a.heading, b.heading);
}

/// Make one run of the two on either side; undoes what insert_in_run() did.
bool merge(Design& design, const Library& library, const Neighbours& sides) {
  const edit::JointIndex index{design};
  const std::size_t a = *index.piece(sides.a.piece);
  const std::size_t b = *index.piece(sides.b.piece);
  const auto run_a = edit::straight_run(design, library, design.pieces[a]);
  const auto run_b = edit::straight_run(design, library, design.pieces[b]);
  if (!run_a || !run_b || !same_pipe(design.pieces[a], design.pieces[b]) || run_a->last.name != sides.a.port ||
      run_b->first.name != sides.b.port) {
    return false;
  }
  const Length length = edit::tidy(run_a->length + sides.between + run_b->length);
  if (edit::check_run_length(*run_a->type, length)) {
    return false;
  }
  if (const edit::Link* onwards = index.link(b, run_b->last.name)) {
    Joint& joint = design.joints[onwards->joint];
    (joint.a.piece == sides.b.piece ? joint.a : joint.b) = {sides.a.piece, run_a->last.name};
  }
  design.pieces[a].fields["length"] = length;
  edit::erase_piece(design, b);
  return edit::mend_joint(design, library, sides.a);
}

/// Fill the gap a fitting leaves by the straight runs beside it, so that nothing else moves.
bool fill(Design& design, const Library& library, const Neighbours& sides) {
  if (sides.between >= edit::length_tolerance) {
    for (const PortRef* end : {&sides.a, &sides.b}) {
      if (lengthen(design, library, *end, sides.between)) {
        design.joints.push_back({sides.a, sides.b});
        return edit::mend_joint(design, library, sides.a);
      }
    }
  }
  return false;
}

/// Push the second neighbour and all that hangs on it up to the first.
bool close_up(Design& design, const Neighbours& sides) {
  const edit::JointIndex index{design};
  const std::size_t b = *index.piece(sides.b.piece);
  const std::vector<std::size_t> group = index.group(b);
  if (std::find(group.begin(), group.end(), *index.piece(sides.a.piece)) != group.end()) {
    return false;
  }
  const Position offset = sides.port_b.at - position_of(design.pieces[b].at);
  const auto at = edit::grid_point_at(sides.port_a.at - offset);
  const auto step = at ? edit::difference(*at, design.pieces[b].at) : std::nullopt;
  if (!step || !edit::shift(design, group, *step)) {
    return false;
  }
  design.joints.push_back({sides.a, sides.b});
  return true;
}

}  // namespace

void edit::erase_piece(Design& design, std::size_t piece) {
  const PieceId id = design.pieces[piece].id;
  const auto touches = [&id](const Joint& joint) { return joint.a.piece == id || joint.b.piece == id; };
  design.joints.erase(std::remove_if(design.joints.begin(), design.joints.end(), touches), design.joints.end());
  design.pieces.erase(design.pieces.begin() + static_cast<std::ptrdiff_t>(piece));
}

EditResult remove_piece(const Design& design, const Library& library, const PieceId& id) {
  const edit::JointIndex index{design};
  const std::optional<std::size_t> piece = index.piece(id);
  if (!piece) {
    return edit::refused(Refusal::unknown_piece);
  }
  const auto links = index.links(*piece);
  PieceId touched = links.empty() ? PieceId{} : design.pieces[links.front().other].id;
  const std::optional<Neighbours> sides = facing_neighbours(design, library, index, *piece);
  Design without = design;
  edit::erase_piece(without, *piece);
  if (!sides) {
    return edit::done(std::move(without), std::move(touched));
  }
  touched = sides->a.piece;
  // A run that is taken out makes the path shorter; a fitting in a run gives its place back to the run.
  const bool is_run = edit::straight_run(design, library, design.pieces[*piece]).has_value();
  if (!is_run && sides->on_one_axis) {
    for (const auto mend : {merge, fill}) {
      Design changed = without;
      if (mend(changed, library, *sides)) {
        return edit::done(std::move(changed), std::move(touched));
      }
    }
  }
  Design closed = without;
  return edit::done(close_up(closed, *sides) ? std::move(closed) : std::move(without), std::move(touched));
}

}  // namespace fluewright
