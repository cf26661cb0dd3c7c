// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_inherit.hpp"
#include "engine/layout/edit_support.hpp"

#include <algorithm>

namespace fluewright {

namespace {

using edit::refused;

struct RenamedPort {
  std::string was;
  std::string is;
};

/// New names for the ports that are joined: the same where the new type has it, else in order. Nothing if the new type
/// has too few.
std::optional<std::vector<RenamedPort>> rename_joined(const edit::JointIndex& index, std::size_t piece,
                                                      const PieceGeometry& was, const PieceGeometry& is) {
  std::vector<std::string> free = edit::joining_ports(is, false);
  std::vector<std::string> homeless;
  std::vector<RenamedPort> names;
  for (const Port& port : was.ports) {
    if (index.link(piece, port.name) == nullptr) {
      continue;
    }
    const auto same = std::find(free.begin(), free.end(), port.name);
    if (same == free.end()) {
      homeless.push_back(port.name);
    } else {
      names.push_back({port.name, port.name});
      free.erase(same);
    }
  }
  if (homeless.size() > free.size()) {
    return std::nullopt;
  }
  for (std::size_t i = 0; i < homeless.size(); ++i) {
    names.push_back({homeless[i], free[i]});
  }
  return names;
}

std::string new_name(const std::vector<RenamedPort>& names, const std::string& port) {
  const auto found = std::find_if(names.begin(), names.end(), [&](const RenamedPort& name) { return name.was == port; });
  return found != names.end() ? found->is : std::string{};
}

void rename_in_joints(Design& design, const PieceId& id, const std::vector<RenamedPort>& names) {
  for (Joint& joint : design.joints) {
    for (PortRef* end : {&joint.a, &joint.b}) {
      if (end->piece == id) {
        end->port = new_name(names, end->port);
      }
    }
  }
}

/// The piece as another type, with every field that the new type has too and allows.
Piece retyped(const Design& design, const Library& library, const Piece& piece, const PieceType& type) {
  Piece changed = piece;
  changed.type = type.id;
  for (auto field = changed.fields.begin(); field != changed.fields.end();) {
    const FieldSpec* spec = type.field(field->first);
    const bool fits = spec != nullptr && !edit::check_value(design, library, *spec, field->second);
    field = fits ? std::next(field) : changed.fields.erase(field);
  }
  return changed;
}

}  // namespace

EditResult set_type(const Design& design, const Library& library, const PieceId& id, std::string_view type_id) {
  const edit::JointIndex index{design};
  const std::optional<std::size_t> at = index.piece(id);
  if (!at) {
    return refused(Refusal::unknown_piece);
  }
  const PieceType* type = edit::known_type(library, type_id);
  std::optional<PieceGeometry> before = edit::geometry_of(design, library, design.pieces[*at]);
  if (type == nullptr || !before) {
    return refused(Refusal::unknown_type);
  }
  const Port stays = *before->port(edit::staying_port(index, *at, *before));
  Piece piece = retyped(design, library, design.pieces[*at], *type);
  const auto names = rename_joined(index, *at, *before, *edit::geometry_of(design, library, piece));
  if (!names) {
    return refused(Refusal::does_not_fit);
  }
  const std::string joined = new_name(*names, stays.name);
  const std::string section_at = joined.empty() ? edit::geometry_of(design, library, piece)->ports.front().name : joined;
  edit::follow_section(design, library, piece, *type, section_at, stays.section);
  edit::resolve_clashes(design, library, piece, *type);
  if (!joined.empty()) {
    Port target = stays;
    target.outward = opposite(stays.outward);
    const auto placed = edit::stand_to_meet(design, library, piece, *edit::geometry_of(design, library, piece), joined,
                                            target);
    if (!placed) {
      return refused(Refusal::does_not_fit);
    }
    piece.at = placed->stand.at;
    piece.heading = placed->stand.heading;
  }
  Design changed = design;
  changed.pieces[*at] = std::move(piece);
  rename_in_joints(changed, id, *names);
  for (Port& port : before->ports) {
    port.name = new_name(*names, port.name);
  }
  if (!edit::follow(changed, library, edit::JointIndex{changed}, *at, *before)) {
    return refused(Refusal::does_not_fit);
  }
  return edit::done(std::move(changed), id);
}

}  // namespace fluewright
