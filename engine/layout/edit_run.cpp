// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_run.hpp"

#include "engine/layout/edit_support.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <utility>

namespace fluewright {

namespace {

using edit::refused;

bool is_level(const Heading& heading) { return std::abs(in(heading.elevation, degree)) < 1.0; }

bool lies_level(const PieceGeometry& geometry) {
  return std::all_of(geometry.ports.begin(), geometry.ports.end(), [](const Port& port) { return is_level(port.outward); });
}

bool parallel(const Heading& a, const Heading& b) { return same_direction(a, b) || same_direction(a, opposite(b)); }

std::string_view shape_of(const Library& library, const Piece& piece) {
  const PieceType* type = library.piece_type(piece.type);
  return type == nullptr ? std::string_view{} : std::string_view{type->shape};
}

/// Sections that a builder would put a reducer between: as the path check's caution, more than a hundredth apart.
bool differ(const Section& a, const Section& b) {
  const Ratio ratio = a.equal_area_diameter() / b.equal_area_diameter();
  return std::abs(static_cast<double>(ratio) - 1.0) > 0.01;
}

struct JointEnds {
  PortRef a;  ///< the upstream side where that is known: a port that is not its piece's first
  PortRef b;
  Port port_a;
  Port port_b;
};

std::optional<JointEnds> ends_of(const Design& design, const Library& library, const PortRef& ref) {
  const auto other = design.joined_to(ref);
  if (!other) return std::nullopt;
  JointEnds ends{ref, *other, {}, {}};
  const auto first_port = [&](const PortRef& end) {
    const Piece* piece = design.piece(end.piece);
    const auto geometry = piece == nullptr ? std::nullopt : edit::geometry_of(design, library, *piece);
    return geometry && geometry->ports.front().name == end.port;
  };
  if (first_port(ends.a) && !first_port(ends.b)) std::swap(ends.a, ends.b);
  for (auto [end, port] : {std::pair{&ends.a, &ends.port_a}, std::pair{&ends.b, &ends.port_b}}) {
    const Piece* piece = design.piece(end->piece);
    const auto geometry = piece == nullptr ? std::nullopt : edit::geometry_of(design, library, *piece);
    const Port* found = geometry ? geometry->port(end->port) : nullptr;
    if (found == nullptr) return std::nullopt;
    *port = *found;
  }
  return ends;
}

/// The leg of a bend on the way it came from, by growing one on trial.
std::optional<Length> bend_leg(const Design& design, const Library& library, const PortRef& end, const Port& port,
                               const Heading& side, std::string_view run_type, std::string_view bend_type) {
  constexpr Length roomy = 10.0 * metre;
  const EditResult trial = grow(design, library, end, side, roomy, run_type, bend_type);
  if (!trial.design) return std::nullopt;
  const Piece* run = trial.design->piece(trial.touched);
  return edit::along(position_of(run->at) - port.at, edit::direction_of(port.outward));
}

std::optional<OpenEnd> free_end_of(const Design& design, const Library& library, const PieceId& piece) {
  for (OpenEnd& end : open_ends(design, library)) {
    if (end.ref.piece == piece) return std::move(end);
  }
  return std::nullopt;
}

}  // namespace

std::vector<PieceId> bench_runs(const Design& design, const Library& library, const PieceId& run) {
  const edit::JointIndex index{design};
  const auto start = index.piece(run);
  if (!start) return {};
  const auto straight = edit::straight_run(design, library, design.pieces[*start]);
  if (!straight || !is_level(straight->last.outward)) return {};
  std::vector<PieceId> found;
  std::vector<char> seen(index.piece_count(), 0);
  std::vector<std::size_t> queue{*start};
  seen[*start] = 1;
  for (std::size_t next = 0; next < queue.size(); ++next) {
    const Piece& piece = design.pieces[queue[next]];
    const std::string_view shape = shape_of(library, piece);
    const auto geometry = edit::geometry_of(design, library, piece);
    if (!geometry || (shape != "run" && shape != "bend") || !lies_level(*geometry)) continue;
    if (shape == "run" && parallel(geometry->ports.back().outward, straight->last.outward)) found.push_back(piece.id);
    for (const edit::Link& link : index.links(queue[next])) {
      if (std::exchange(seen[link.other], char{1}) == 0) queue.push_back(link.other);
    }
  }
  return found;
}

EditResult stretch_bench(const Design& design, const Library& library, const PieceId& run, Length by) {
  const std::vector<PieceId> runs = bench_runs(design, library, run);
  if (runs.empty()) return refused(Refusal::not_a_run);
  Design changed = design;
  for (const PieceId& id : runs) {
    const auto straight = edit::straight_run(changed, library, *changed.piece(id));
    const Length length = edit::tidy(straight->length + by);
    if (const auto why = edit::check_run_length(*straight->type, length)) return refused(*why);
    EditResult longer = set_field(changed, library, id, "length", length);
    if (!longer.design) return longer;
    changed = std::move(*longer.design);
  }
  return edit::done(std::move(changed), run);
}

EditResult grow_serpentine(const Design& design, const Library& library, const PortRef& open_port,
                           const Serpentine& wanted, std::string_view run_type, std::string_view bend_type) {
  if (wanted.passes < 1 || wanted.passes > most_passes) return refused(Refusal::out_of_range);
  const edit::JointIndex index{design};
  const auto found = edit::find_open_port(design, library, index, open_port);
  if (const Refusal* why = std::get_if<Refusal>(&found)) return refused(*why);
  const Heading out = std::get<edit::OpenPort>(found).port.outward;
  if (!is_level(out)) return refused(Refusal::does_not_fit);
  const Heading side = turned(out, wanted.side == Turn::right ? Turn::right : Turn::left, 90.0 * degree);

  EditResult result = grow(design, library, open_port, out, wanted.length, run_type, bend_type);
  for (int pass = 1; pass < wanted.passes && result.design; ++pass) {
    const auto end = free_end_of(*result.design, library, result.touched);
    if (!end) return refused(Refusal::not_an_open_end);
    const auto leg = bend_leg(*result.design, library, end->ref, end->port, side, run_type, bend_type);
    if (!leg) return refused(Refusal::does_not_fit);
    // The second bend brings its own leg along: the rest of the spacing is what is drawn across.
    result = grow(*result.design, library, end->ref, side, wanted.spacing - *leg, run_type, bend_type);
    if (!result.design) return result;
    const auto turned_end = free_end_of(*result.design, library, result.touched);
    if (!turned_end) return refused(Refusal::not_an_open_end);
    const Heading back = pass % 2 == 1 ? opposite(out) : out;
    result = grow(*result.design, library, turned_end->ref, back, *leg + wanted.length, run_type, bend_type);
  }
  return result;
}

EditResult reverse_piece(const Design& design, const Library& library, const PieceId& id) {
  const edit::JointIndex index{design};
  const auto at = index.piece(id);
  if (!at) return refused(Refusal::unknown_piece);
  const auto before = edit::geometry_of(design, library, design.pieces[*at]);
  if (!before) return refused(Refusal::unknown_type);
  const auto is_joint = [](const Port& port) { return port.kind == PortKind::joint; };
  if (before->ports.size() != 2 || !std::all_of(before->ports.begin(), before->ports.end(), is_joint)) {
    return refused(Refusal::does_not_fit);
  }
  const std::string front = before->ports[0].name;
  const std::string back = before->ports[1].name;
  const Port stays = *before->port(edit::staying_port(index, *at, *before));
  const std::string now_there = stays.name == front ? back : front;

  Design changed = design;
  for (Joint& joint : changed.joints) {
    for (PortRef* end : {&joint.a, &joint.b}) {
      if (end->piece == id) end->port = end->port == front ? back : front;
    }
  }
  Port target = stays;
  target.outward = opposite(stays.outward);
  Piece& piece = changed.pieces[*at];
  // Of the ways to stand there, the one whose other end looks where the other end looked.
  const Heading& wanted = before->port(now_there)->outward;
  std::optional<edit::Placed> best;
  for (edit::Placed& way : edit::stands_to_meet(design, library, piece, now_there, target)) {
    const bool same = same_direction(way.geometry.port(stays.name)->outward, wanted);
    if (!best || same) best = std::move(way);
    if (same) break;
  }
  if (!best) return refused(Refusal::does_not_fit);
  piece.at = best->stand.at;
  piece.heading = best->stand.heading;
  // A turn seen from the other end is its opposite.
  if (!same_direction(best->geometry.port(stays.name)->outward, wanted)) {
    for (const Turn turn : {Turn::left, Turn::right, Turn::up, Turn::down}) {
      piece.turn = turn;
      for (edit::Placed& way : edit::stands_to_meet(design, library, piece, now_there, target)) {
        if (!same_direction(way.geometry.port(stays.name)->outward, wanted)) continue;
        piece.at = way.stand.at;
        piece.heading = way.stand.heading;
      }
      const auto now = edit::geometry_of(changed, library, piece);
      if (now && same_direction(now->port(stays.name)->outward, wanted)) break;
    }
  }
  PieceGeometry renamed = *before;
  std::swap(renamed.ports[0].name, renamed.ports[1].name);
  if (!edit::follow(changed, library, edit::JointIndex{changed}, *at, renamed)) return refused(Refusal::does_not_fit);
  return edit::done(std::move(changed), id);
}

std::vector<const PieceType*> types_that_fit(const Design& design, const Library& library, const PieceId& id) {
  std::vector<const PieceType*> found;
  const Piece* piece = design.piece(id);
  if (piece == nullptr) return found;
  for (const PieceType& type : library.piece_types) {
    if (type.id != piece->type && set_type(design, library, id, type.id).design) found.push_back(&type);
  }
  return found;
}

bool wants_reducer(const Design& design, const Library& library, const PortRef& joint) {
  const auto ends = ends_of(design, library, joint);
  return ends && differ(ends->port_a.section, ends->port_b.section);
}

EditResult put_reducer(const Design& design, const Library& library, const PortRef& joint, std::string_view type_id) {
  const auto ends = ends_of(design, library, joint);
  if (!ends) return refused(Refusal::unknown_piece);
  const PieceType* type = edit::known_type(library, type_id);
  if (type == nullptr || type->shape != "taper") return refused(Refusal::unknown_type);
  Design apart = design;
  std::erase_if(apart.joints, [&](const Joint& j) { return j.a == ends->a || j.b == ends->a; });
  EditResult put = attach_piece(apart, library, ends->a, type_id);
  if (!put.design) return put;
  const PieceId id = put.touched;
  Design changed = std::move(*put.design);
  const auto end = free_end_of(changed, library, id);
  if (!end) return refused(Refusal::does_not_fit);
  // The far bore is the neighbour's, where the type has one.
  const PieceType* now = library.piece_type(changed.piece(id)->type);
  if (const FieldSpec* spec = now->field("out_bore")) {
    const FieldValue bore = edit::tidy(ends->port_b.section.equal_area_diameter());
    if (const auto why = edit::check_value(changed, library, *spec, bore)) return refused(*why);
    changed.piece(id)->fields.insert_or_assign("out_bore", bore);
  }
  EditResult joined = join_ports(changed, library, end->ref, ends->b);
  if (!joined.design) return joined;
  joined.touched = id;
  return joined;
}

}  // namespace fluewright
