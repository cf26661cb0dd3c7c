// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_support.hpp"

#include <cmath>

namespace fluewright {

namespace {

using edit::done;
using edit::OpenPort;
using edit::refused;

/// Give a straight run another length by its open end.
EditResult with_length(const Design& design, const Library& library, const edit::JointIndex& index,
                       const OpenPort& open, const edit::StraightRun& run, Length length) {
  const Length neat = edit::tidy(length);
  if (const std::optional<Refusal> why = edit::check_run_length(*run.type, neat)) {
    return refused(*why);
  }
  const std::string& stays = open.port.name == run.first.name ? run.last.name : run.first.name;
  Design changed = design;
  if (!edit::reshape(changed, library, index, open.piece, stays, [neat](Piece& p) { p.fields["length"] = neat; })) {
    return refused(Refusal::does_not_fit);
  }
  return done(std::move(changed), design.pieces[open.piece].id);
}

EditResult attach_run(Design design, const Library& library, const edit::JointIndex& index, const OpenPort& open,
                      const PieceType& type, Length length) {
  const Length neat = edit::tidy(length);
  if (const std::optional<Refusal> why = edit::check_run_length(type, neat)) {
    return refused(*why);
  }
  Piece piece = edit::new_piece(design, library, index, type, open);
  piece.fields["length"] = neat;
  if (!edit::straight_run(design, library, piece)) {
    return refused(Refusal::not_a_run);
  }
  const std::optional<std::string> port = edit::stand_on(design, library, piece, open);
  if (!port) {
    return refused(Refusal::does_not_fit);
  }
  PieceId id = piece.id;
  edit::add_joined(design, open, std::move(piece), *port);
  return done(std::move(design), std::move(id));
}

EditResult grow_straight(const Design& design, const Library& library, const edit::JointIndex& index,
                         const OpenPort& open, const PieceType& type, Length length) {
  const Piece& last = design.pieces[open.piece];
  if (length < edit::length_tolerance) {
    return done(Design{design}, last.id);
  }
  if (last.type == type.id) {
    if (const std::optional<edit::StraightRun> run = edit::straight_run(design, library, last)) {
      return with_length(design, library, index, open, *run, run->length + length);
    }
  }
  return attach_run(design, library, index, open, type, length);
}

EditResult grow_back(const Design& design, const Library& library, const edit::JointIndex& index, const OpenPort& open,
                     Length length) {
  const Piece& last = design.pieces[open.piece];
  const std::optional<edit::StraightRun> run = edit::straight_run(design, library, last);
  if (!run) {
    return refused(Refusal::not_a_run);
  }
  const Length rest = run->length - length;
  if (rest > edit::length_tolerance) {
    return length < edit::length_tolerance ? done(Design{design}, last.id)
                                           : with_length(design, library, index, open, *run, rest);
  }
  return rest < -edit::length_tolerance ? refused(Refusal::too_short) : remove_piece(design, library, last.id);
}

/// A bend that stands on the open port and leads to the wanted heading.
struct FittedBend {
  Piece piece;
  std::string joined;
  OpenPort exit;  ///< its piece not yet set
};

/// The free joint port that looks the wanted way, if there is one.
std::optional<OpenPort> exit_towards(const PieceGeometry& geometry, std::string_view joined, const Heading& heading) {
  for (const Port& port : geometry.ports) {
    if (port.name != joined && port.kind == PortKind::joint && same_direction(port.outward, heading)) {
      return OpenPort{0, port, port.name == geometry.ports.front().name};
    }
  }
  return std::nullopt;
}

/// The same piece on a vertical port, facing so that its exit looks as far round as wanted.
std::optional<edit::Placed> faced_towards(const Design& design, const Library& library, Piece bend,
                                          const edit::Placed& placed, std::string_view joined, const Port& target,
                                          const Heading& heading) {
  bend.at = placed.stand.at;
  bend.heading = placed.stand.heading;
  for (const Port& port : placed.geometry.ports) {
    if (port.name != joined && port.kind == PortKind::joint && !edit::is_vertical(port.outward)) {
      const Angle swing = heading.azimuth - port.outward.azimuth;
      return edit::stand_to_meet(design, library, bend, placed.geometry, joined, target, swing);
    }
  }
  return std::nullopt;
}

/// The ways the bend can stand on the port; by its first port there is but one.
std::vector<edit::Placed> ways_to_stand(const Design& design, const Library& library, const Piece& bend,
                                        const std::string& port, const OpenPort& open) {
  const PieceGeometry geometry = *edit::geometry_of(design, library, bend);
  if (port != geometry.ports.front().name) {
    return edit::stands_to_meet(design, library, bend, port, open.port);
  }
  std::vector<edit::Placed> only;
  if (auto placed = edit::stand_to_meet(design, library, bend, geometry, port, open.port)) {
    only.push_back(std::move(*placed));
  }
  return only;
}

/// The bend with its present turn, pushed on by one of its ports. `may_face`: it need not face as the port does.
std::optional<FittedBend> fit_turn(const Design& design, const Library& library, Piece bend, const OpenPort& open,
                                   const std::string& port, const Heading& heading, bool may_face) {
  for (const edit::Placed& way : ways_to_stand(design, library, bend, port, open)) {
    const auto placed = may_face ? faced_towards(design, library, bend, way, port, open.port, heading) : std::optional{way};
    if (!placed) {
      continue;
    }
    if (const std::optional<OpenPort> exit = exit_towards(placed->geometry, port, heading)) {
      bend.at = placed->stand.at;
      bend.heading = placed->stand.heading;
      return FittedBend{bend, port, *exit};
    }
  }
  return std::nullopt;
}

std::optional<FittedBend> fit_bend(const Design& design, const Library& library, Piece bend, const OpenPort& open,
                                   const Heading& heading) {
  const PieceGeometry geometry = *edit::geometry_of(design, library, bend);
  for (const std::string& port : edit::joining_ports(geometry, open.upstream)) {
    // On a vertical port the four turns of the given facing come first; only a slanting azimuth needs another facing.
    for (const bool may_face : {false, true}) {
      if (may_face && !edit::is_vertical(open.port.outward)) {
        break;
      }
      for (const Turn turn : {Turn::down, Turn::up, Turn::left, Turn::right}) {
        bend.turn = turn;
        if (auto fitted = fit_turn(design, library, bend, open, port, heading, may_face)) {
          return fitted;
        }
      }
    }
  }
  return std::nullopt;
}

EditResult grow_across(const Design& design, const Library& library, const edit::JointIndex& index,
                       const OpenPort& open, const Heading& heading, Length length, const PieceType& run_type,
                       const PieceType& bend_type) {
  Piece bend = edit::new_piece(design, library, index, bend_type, open);
  if (const FieldSpec* spec = bend_type.field("angle")) {
    const double whole = std::round(in(edit::angle_between(open.port.outward, heading), degree) * 100.0) / 100.0;
    const FieldValue angle = whole * degree;
    if (const std::optional<Refusal> why = edit::check_value(design, library, *spec, angle)) {
      return refused(*why);
    }
    bend.fields["angle"] = angle;
  }
  std::optional<FittedBend> fitted = fit_bend(design, library, std::move(bend), open, heading);
  if (!fitted) {
    return refused(Refusal::does_not_fit);
  }
  const Length rest = length - edit::along(fitted->exit.port.at - open.port.at, edit::direction_of(heading));
  if (rest < -edit::length_tolerance) {
    return refused(Refusal::too_short);
  }
  Design bent = design;
  const PieceId bend_id = fitted->piece.id;
  edit::add_joined(bent, open, std::move(fitted->piece), fitted->joined);
  if (rest < edit::length_tolerance) {
    return done(std::move(bent), bend_id);
  }
  fitted->exit.piece = bent.pieces.size() - 1;
  const edit::JointIndex index_with_bend{bent};
  return attach_run(std::move(bent), library, index_with_bend, fitted->exit, run_type, rest);
}

}  // namespace

EditResult grow(const Design& design, const Library& library, const PortRef& open_port, Heading heading, Length length,
                std::string_view run_type, std::string_view bend_type) {
  const edit::JointIndex index{design};
  const PieceType* run = edit::known_type(library, run_type);
  const PieceType* bend = edit::known_type(library, bend_type);
  if (run == nullptr || bend == nullptr) {
    return refused(Refusal::unknown_type);
  }
  const auto found = edit::find_open_port(design, library, index, open_port);
  if (const Refusal* why = std::get_if<Refusal>(&found)) {
    return refused(*why);
  }
  if (!(length >= 0.0 * metre)) {
    return refused(Refusal::too_short);
  }
  const auto& open = std::get<OpenPort>(found);
  if (same_direction(heading, open.port.outward)) {
    return grow_straight(design, library, index, open, *run, length);
  }
  if (same_direction(heading, opposite(open.port.outward))) {
    return grow_back(design, library, index, open, length);
  }
  return grow_across(design, library, index, open, edit::tidy(heading), length, *run, *bend);
}

}  // namespace fluewright
