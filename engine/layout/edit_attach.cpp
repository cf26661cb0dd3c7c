// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_support.hpp"

#include <algorithm>

namespace fluewright {

namespace edit {

std::variant<OpenPort, Refusal> find_open_port(const Design& design, const Library& library, const JointIndex& index,
                                               const PortRef& ref) {
  const std::optional<std::size_t> piece = index.piece(ref.piece);
  if (!piece) {
    return Refusal::unknown_piece;
  }
  const std::optional<PieceGeometry> geometry = geometry_of(design, library, design.pieces[*piece]);
  if (!geometry) {
    return Refusal::unknown_type;
  }
  const Port* port = geometry->port(ref.port);
  if (port == nullptr || port->kind != PortKind::joint || index.link(*piece, ref.port) != nullptr) {
    return Refusal::not_an_open_end;
  }
  return OpenPort{*piece, *port, port->name == geometry->ports.front().name};
}

std::vector<std::string> joining_ports(const PieceGeometry& geometry, bool upstream) {
  std::vector<std::string> names;
  for (const Port& port : geometry.ports) {
    if (port.kind == PortKind::joint) {
      names.push_back(port.name);
    }
  }
  if (upstream && names.size() > 1 && names.front() == geometry.ports.front().name) {
    std::rotate(names.begin(), names.begin() + 1, names.end());
  }
  return names;
}

std::optional<std::string> stand_on(const Design& design, const Library& library, Piece& piece, const OpenPort& open) {
  const std::optional<PieceGeometry> geometry = geometry_of(design, library, piece);
  if (!geometry) {
    return std::nullopt;
  }
  for (const std::string& name : joining_ports(*geometry, open.upstream)) {
    std::vector<Placed> placed;
    if (name == geometry->ports.front().name) {
      if (auto straight = stand_to_meet(design, library, piece, *geometry, name, open.port)) {
        placed.push_back(std::move(*straight));
      }
    } else {
      placed = stands_to_meet(design, library, piece, name, open.port);
    }
    if (!placed.empty()) {
      piece.at = placed.front().stand.at;
      piece.heading = placed.front().stand.heading;
      return name;
    }
  }
  return std::nullopt;
}

void add_joined(Design& design, const OpenPort& open, Piece piece, const std::string& port) {
  design.joints.push_back({{design.pieces[open.piece].id, open.port.name}, {piece.id, port}});
  design.pieces.push_back(std::move(piece));
}

}  // namespace edit

EditResult place_piece(const Design& design, const Library& library, std::string_view type, GridPoint at,
                       Heading heading) {
  if (edit::known_type(library, type) == nullptr) {
    return edit::refused(Refusal::unknown_type);
  }
  Design changed = design;
  Piece piece;
  piece.id = design.fresh_id();
  piece.type = type;
  piece.at = at;
  piece.heading = edit::tidy(heading);
  piece.turn = usual_turn(piece.heading);
  changed.pieces.push_back(piece);
  return edit::done(std::move(changed), piece.id);
}

EditResult attach_piece(const Design& design, const Library& library, const PortRef& open_port, std::string_view type,
                        Turn turn) {
  const edit::JointIndex index{design};
  const PieceType* known = edit::known_type(library, type);
  if (known == nullptr) {
    return edit::refused(Refusal::unknown_type);
  }
  const auto found = edit::find_open_port(design, library, index, open_port);
  if (const Refusal* why = std::get_if<Refusal>(&found)) {
    return edit::refused(*why);
  }
  const auto& open = std::get<edit::OpenPort>(found);
  Piece piece = edit::new_piece(design, library, index, *known, open);
  piece.turn = turn;
  const std::optional<std::string> port = edit::stand_on(design, library, piece, open);
  if (!port) {
    return edit::refused(Refusal::does_not_fit);
  }
  Design changed = design;
  PieceId id = piece.id;
  edit::add_joined(changed, open, std::move(piece), *port);
  return edit::done(std::move(changed), std::move(id));
}

EditResult join_ports(const Design& design, const Library& library, const PortRef& fixed, const PortRef& moving) {
  const edit::JointIndex index{design};
  const auto found_fixed = edit::find_open_port(design, library, index, fixed);
  const auto found_moving = edit::find_open_port(design, library, index, moving);
  for (const auto* found : {&found_fixed, &found_moving}) {
    if (const Refusal* why = std::get_if<Refusal>(found)) {
      return edit::refused(*why);
    }
  }
  const auto& to = std::get<edit::OpenPort>(found_fixed);
  const auto& from = std::get<edit::OpenPort>(found_moving);
  Design changed = design;
  if (!edit::meet(to.port, from.port)) {
    const std::vector<std::size_t> group = index.group(from.piece);
    Piece& piece = changed.pieces[from.piece];
    const std::optional<PieceGeometry> before = edit::geometry_of(design, library, piece);
    const auto placed = edit::stand_to_meet(design, library, piece, *before, from.port.name, to.port);
    if (!placed || std::find(group.begin(), group.end(), to.piece) != group.end()) {
      return edit::refused(Refusal::does_not_fit);
    }
    piece.at = placed->stand.at;
    piece.heading = placed->stand.heading;
    if (!edit::follow(changed, library, index, from.piece, *before)) {
      return edit::refused(Refusal::does_not_fit);
    }
  } else if (to.piece == from.piece) {
    return edit::refused(Refusal::does_not_fit);
  }
  changed.joints.push_back({fixed, moving});
  return edit::done(std::move(changed), moving.piece);
}

}  // namespace fluewright
