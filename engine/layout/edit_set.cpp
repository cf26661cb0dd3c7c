// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_set.hpp"

#include "engine/layout/edit_support.hpp"
#include "engine/layout/port_graph.hpp"

#include <algorithm>
#include <cmath>
#include <functional>
#include <map>
#include <utility>

namespace fluewright {

namespace {

using edit::refused;

/// Which pieces of a design are in a set.
std::vector<char> members(const edit::JointIndex& index, const std::vector<PieceId>& set) {
  std::vector<char> in_set(index.piece_count(), 0);
  for (const PieceId& id : set) {
    if (const auto piece = index.piece(id)) in_set[*piece] = 1;
  }
  return in_set;
}

std::vector<PieceId> names(const Design& design, const std::vector<char>& in_set) {
  std::vector<PieceId> found;
  for (std::size_t i = 0; i < design.pieces.size(); ++i) {
    if (in_set[i] != 0) found.push_back(design.pieces[i].id);
  }
  return found;
}

bool joint_meets(const Design& design, const Library& library, const Joint& joint) {
  const Piece* a = design.piece(joint.a.piece);
  const Piece* b = design.piece(joint.b.piece);
  const auto geometry_a = a == nullptr ? std::nullopt : edit::geometry_of(design, library, *a);
  const auto geometry_b = b == nullptr ? std::nullopt : edit::geometry_of(design, library, *b);
  const Port* port_a = geometry_a ? geometry_a->port(joint.a.port) : nullptr;
  const Port* port_b = geometry_b ? geometry_b->port(joint.b.port) : nullptr;
  return port_a != nullptr && port_b != nullptr && edit::meet(*port_a, *port_b);
}

/// Joints between the set and the rest whose ports do not meet come apart.
void part_from_rest(Design& design, const Library& library, const std::vector<char>& in_set) {
  const edit::JointIndex index{design};
  const auto crosses = [&](const Joint& joint) {
    const auto a = index.piece(joint.a.piece);
    const auto b = index.piece(joint.b.piece);
    return a && b && (in_set[*a] != 0) != (in_set[*b] != 0);
  };
  std::vector<Joint> kept;
  for (const Joint& joint : design.joints) {
    if (!crosses(joint) || joint_meets(design, library, joint)) kept.push_back(joint);
  }
  design.joints = std::move(kept);
}

/// Change each piece of the set by itself, then part it from the rest where need be.
SetResult change_each(const Design& design, const Library& library, const std::vector<PieceId>& set,
                      const std::function<std::optional<Refusal>(Piece&)>& change) {
  const std::vector<char> in_set = members(edit::JointIndex{design}, set);
  const std::vector<PieceId> pieces = names(design, in_set);
  if (pieces.empty()) return {refused(Refusal::unknown_piece), {}};
  Design changed = design;
  for (std::size_t i = 0; i < changed.pieces.size(); ++i) {
    if (in_set[i] == 0) continue;
    if (const auto why = change(changed.pieces[i])) return {refused(*why), {}};
  }
  part_from_rest(changed, library, in_set);
  return {edit::done(std::move(changed), pieces.back()), pieces};
}

std::optional<GridPoint> mirrored(const GridPoint& at, const GridPoint& pivot, bool east) {
  const auto arm = edit::difference(at, pivot);
  if (!arm) return std::nullopt;
  return edit::sum(pivot, east ? GridPoint{-arm->x, arm->y, arm->z} : GridPoint{arm->x, -arm->y, arm->z});
}

/// A run outside the set that hangs on it, and the port away from the set.
struct Taker {
  std::size_t run = 0;
  std::string far_port;
  std::string near_port;
};

/// The runs that can take up a step along themselves; nothing if one of the joints to the rest has none.
std::optional<std::vector<Taker>> takers(const Design& design, const Library& library, const edit::JointIndex& index,
                                         const std::vector<char>& in_set, const Position& step) {
  std::vector<Taker> found;
  for (std::size_t i = 0; i < in_set.size(); ++i) {
    if (in_set[i] == 0) continue;
    for (const edit::Link& link : index.links(i)) {
      if (in_set[link.other] != 0) continue;
      const auto run = edit::straight_run(design, library, design.pieces[link.other]);
      if (!run) return std::nullopt;
      const Length along = edit::along(step, edit::direction_of(run->last.outward));
      const Length whole = distance({}, step);
      if (bu::abs(bu::abs(along) - whole) > edit::length_tolerance) return std::nullopt;
      const bool near_is_last = run->last.name == link.other_port;
      found.push_back({link.other, near_is_last ? run->first.name : run->last.name, std::string{link.other_port}});
    }
  }
  return found;
}

/// Lengthen or shorten the runs so that their far ends stay where they are.
std::optional<Refusal> take_up(Design& design, const Library& library, const std::vector<Taker>& runs,
                               const Position& step, const GridPoint& grid_step) {
  for (const Taker& taker : runs) {
    Piece& piece = design.pieces[taker.run];
    const auto run = edit::straight_run(design, library, piece);
    const bool near_is_last = run->last.name == taker.near_port;
    const Length along = edit::along(step, edit::direction_of(run->last.outward));
    const Length length = edit::tidy(run->length + (near_is_last ? along : -along));
    if (const auto why = edit::check_run_length(*run->type, length)) return why;
    piece.fields.insert_or_assign("length", length);
    if (near_is_last) continue;
    const auto at = edit::sum(piece.at, grid_step);
    if (!at) return Refusal::out_of_range;
    piece.at = *at;
  }
  return std::nullopt;
}

/// What a design has of its own under a name, once.
template <class Own>
void take_along(std::vector<Own>& clip, const std::vector<Own>& design, const std::string& id) {
  const auto named = [&id](const Own& one) { return one.id == id; };
  const auto own = std::find_if(design.begin(), design.end(), named);
  if (own != design.end() && std::none_of(clip.begin(), clip.end(), named)) clip.push_back(*own);
}

/// What the design does not have under its name and the library does not either.
template <class Own, class InLibrary>
void bring_along(std::vector<Own>& design, const std::vector<Own>& clip, InLibrary in_library) {
  for (const Own& one : clip) {
    const bool known = std::any_of(design.begin(), design.end(), [&one](const Own& other) { return other.id == one.id; });
    if (!known && !in_library(one.id)) design.push_back(one);
  }
}

}  // namespace

Clip copy_pieces(const Design& design, const Library& library, const std::vector<PieceId>& set) {
  const edit::JointIndex index{design};
  const std::vector<char> in_set = members(index, set);
  Clip clip;
  for (std::size_t i = 0; i < in_set.size(); ++i) {
    if (in_set[i] == 0) continue;
    const Piece& piece = design.pieces[i];
    clip.pieces.push_back(piece);
    const PieceType* type = library.piece_type(piece.type);
    for (const auto& [key, value] : piece.fields) {
      const FieldSpec* spec = type == nullptr ? nullptr : type->field(key);
      const auto* id = std::get_if<std::string>(&value);
      if (spec == nullptr || id == nullptr) continue;
      if (spec->kind == FieldKind::wall) take_along(clip.walls, design.walls, *id);
      if (spec->kind == FieldKind::fan) take_along(clip.fans, design.fans, *id);
    }
  }
  for (const Joint& joint : design.joints) {
    const auto a = index.piece(joint.a.piece);
    const auto b = index.piece(joint.b.piece);
    if (a && b && in_set[*a] != 0 && in_set[*b] != 0) clip.joints.push_back(joint);
  }
  return clip;
}

SetResult paste_pieces(const Design& design, const Library& library, const Clip& clip, GridPoint step) {
  if (clip.pieces.empty()) return {refused(Refusal::unknown_piece), {}};
  Design changed = design;
  std::map<PieceId, PieceId> fresh;
  std::vector<PieceId> pasted;
  for (Piece piece : clip.pieces) {
    const auto at = edit::sum(piece.at, step);
    if (!at) return {refused(Refusal::out_of_range), {}};
    piece.at = *at;
    const PieceId id = changed.fresh_id();
    fresh[piece.id] = id;
    piece.id = id;
    pasted.push_back(id);
    changed.pieces.push_back(std::move(piece));
  }
  for (const Joint& joint : clip.joints) {
    changed.joints.push_back({{fresh[joint.a.piece], joint.a.port}, {fresh[joint.b.piece], joint.b.port}});
  }
  bring_along(changed.walls, clip.walls, [&library](const std::string& id) { return library.wall(id) != nullptr; });
  bring_along(changed.fans, clip.fans, [&library](const std::string& id) { return library.fan(id) != nullptr; });
  PieceId touched = pasted.back();
  return {edit::done(std::move(changed), std::move(touched)), std::move(pasted)};
}

SetResult remove_pieces(const Design& design, const Library& library, const std::vector<PieceId>& set) {
  EditResult result{std::nullopt, Refusal::unknown_piece, {}};
  Design changed = design;
  for (const PieceId& id : set) {
    // Two lengths of one pipe may have become one meanwhile: then the second went with the first.
    if (changed.piece(id) == nullptr) continue;
    EditResult removed = remove_piece(changed, library, id);
    if (!removed.design) return {std::move(removed), {}};
    changed = std::move(*removed.design);
    result.touched = removed.touched;
    result.design.emplace();
  }
  if (!result.design) return {std::move(result), {}};
  if (changed.piece(result.touched) == nullptr) result.touched.clear();
  std::vector<PieceId> left;
  if (!result.touched.empty()) left.push_back(result.touched);
  result.design = std::move(changed);
  return {std::move(result), std::move(left)};
}

SetResult move_pieces(const Design& design, const Library& library, const std::vector<PieceId>& set, GridPoint step) {
  const edit::JointIndex index{design};
  const std::vector<char> in_set = members(index, set);
  const auto shift_piece = [&step](Piece& piece) -> std::optional<Refusal> {
    const auto at = edit::sum(piece.at, step);
    if (!at) return Refusal::out_of_range;
    piece.at = *at;
    return std::nullopt;
  };
  const Position by = position_of(step);
  if (const auto runs = takers(design, library, index, in_set, by)) {
    Design stretched = design;
    if (const auto why = take_up(stretched, library, *runs, by, step)) return {refused(*why), {}};
    return change_each(stretched, library, set, shift_piece);
  }
  return change_each(design, library, set, shift_piece);
}

SetResult turn_pieces(const Design& design, const Library& library, const std::vector<PieceId>& set, int quarters,
                      GridPoint pivot) {
  const int turns = (quarters % 4 + 4) % 4;
  return change_each(design, library, set, [&](Piece& piece) -> std::optional<Refusal> {
    auto arm = edit::difference(piece.at, pivot);
    for (int i = 0; arm && i < turns; ++i) arm = GridPoint{-arm->y, arm->x, arm->z};
    const auto at = arm ? edit::sum(pivot, *arm) : std::nullopt;
    if (!at) return Refusal::out_of_range;
    piece.at = *at;
    const Heading heading = edit::drawn_heading(piece.heading);
    piece.heading = edit::with_azimuth(heading, heading.azimuth + 90.0 * turns * degree);
    return std::nullopt;
  });
}

SetResult mirror_pieces(const Design& design, const Library& library, const std::vector<PieceId>& set,
                        const Heading& across, GridPoint pivot) {
  const bool east = std::abs(std::cos(in(across.azimuth, radian))) > 0.5;
  return change_each(design, library, set, [&](Piece& piece) -> std::optional<Refusal> {
    const auto at = mirrored(piece.at, pivot, east);
    if (!at) return Refusal::out_of_range;
    piece.at = *at;
    const Heading heading = edit::drawn_heading(piece.heading);
    piece.heading = edit::with_azimuth(heading, (east ? 180.0 : 0.0) * degree - heading.azimuth);
    // Left of a mirrored way is right of it; above stays above.
    if (piece.turn == Turn::left) {
      piece.turn = Turn::right;
    } else if (piece.turn == Turn::right) {
      piece.turn = Turn::left;
    }
    return std::nullopt;
  });
}

GridPoint middle_of(const Design& design, const Library& library, const std::vector<PieceId>& set, Length step) {
  constexpr double far = 1e9;
  double low[2] = {far, far};
  double high[2] = {-far, -far};
  for (const PieceId& id : set) {
    const Piece* piece = design.piece(id);
    const auto geometry = piece == nullptr ? std::nullopt : edit::geometry_of(design, library, *piece);
    if (!geometry) continue;
    for (const Port& port : geometry->ports) {
      const double at[2] = {in(port.at.x, metre), in(port.at.y, metre)};
      for (int axis = 0; axis < 2; ++axis) {
        low[axis] = std::min(low[axis], at[axis]);
        high[axis] = std::max(high[axis], at[axis]);
      }
    }
  }
  if (low[0] > high[0]) return {};
  const double grid = in(step, metre);
  const auto snapped = [&](int axis) { return std::round(0.5 * (low[axis] + high[axis]) / grid) * grid * metre; };
  return grid_point_near({snapped(0), snapped(1), 0.0 * metre});
}

EditResult break_joint(const Design& design, const PortRef& port) {
  const auto at_port = [&port](const Joint& joint) { return joint.a == port || joint.b == port; };
  const auto joint = std::find_if(design.joints.begin(), design.joints.end(), at_port);
  if (joint == design.joints.end()) return refused(Refusal::unknown_piece);
  Design changed = design;
  changed.joints.erase(changed.joints.begin() + (joint - design.joints.begin()));
  return edit::done(std::move(changed), port.piece);
}

EditResult heal_joints(const Design& design, const Library& library) {
  Design changed = design;
  PieceId touched;
  const std::vector<OpenEnd> ends = free_ports(design, library);
  std::vector<char> taken(ends.size(), 0);
  for (std::size_t i = 0; i < ends.size(); ++i) {
    for (std::size_t j = i + 1; j < ends.size() && taken[i] == 0; ++j) {
      if (taken[j] != 0 || ends[i].ref.piece == ends[j].ref.piece || !edit::meet(ends[i].port, ends[j].port)) continue;
      EditResult joined = join_ports(changed, library, ends[i].ref, ends[j].ref);
      if (!joined.design) continue;
      changed = std::move(*joined.design);
      touched = joined.touched;
      taken[i] = taken[j] = 1;
    }
  }
  if (touched.empty()) return refused(Refusal::not_an_open_end);
  return edit::done(std::move(changed), std::move(touched));
}

}  // namespace fluewright
