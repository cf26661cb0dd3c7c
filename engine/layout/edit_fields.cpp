// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_inherit.hpp"
#include "engine/layout/edit_support.hpp"

namespace fluewright {

namespace {

using edit::refused;

/// Whether every joined port of the piece is still there and still a joint.
bool joints_stay(const Design& design, const Library& library, const edit::JointIndex& index, std::size_t piece) {
  const PieceGeometry geometry = *edit::geometry_of(design, library, design.pieces[piece]);
  for (const edit::Link& link : index.links(piece)) {
    const Port* port = geometry.port(link.port);
    if (port == nullptr || port->kind != PortKind::joint) {
      return false;
    }
  }
  return true;
}

/// Change one piece by `change`; what hangs on it follows.
EditResult change_piece(const Design& design, const Library& library, const edit::JointIndex& index, std::size_t piece,
                        const std::function<void(Piece&)>& change) {
  Design changed = design;
  const PieceGeometry geometry = *edit::geometry_of(design, library, design.pieces[piece]);
  if (!edit::reshape(changed, library, index, piece, edit::staying_port(index, piece, geometry), change) ||
      (joints_stay(design, library, index, piece) && !joints_stay(changed, library, index, piece))) {
    return refused(Refusal::does_not_fit);
  }
  return edit::done(std::move(changed), design.pieces[piece].id);
}

}  // namespace

EditResult set_field(const Design& design, const Library& library, const PieceId& id, std::string_view key,
                     FieldValue value) {
  const edit::JointIndex index{design};
  const std::optional<std::size_t> piece = index.piece(id);
  if (!piece) {
    return refused(Refusal::unknown_piece);
  }
  const PieceType* type = edit::known_type(library, design.pieces[*piece].type);
  if (type == nullptr) {
    return refused(Refusal::unknown_type);
  }
  const FieldSpec* spec = type->field(key);
  if (spec == nullptr || edit::check_value(design, library, *spec, value)) {
    return refused(Refusal::out_of_range);
  }
  Piece trial = design.pieces[*piece];
  trial.fields.insert_or_assign(std::string{key}, value);
  trial.heading = edit::drawn_heading(trial.heading);
  if (edit::has_new_faults(design, library, design.pieces[*piece], trial, *type)) {
    return refused(Refusal::out_of_range);
  }
  return change_piece(design, library, index, *piece, [&](Piece& p) { p.fields = trial.fields; });
}

EditResult set_turn(const Design& design, const Library& library, const PieceId& id, Turn turn) {
  const edit::JointIndex index{design};
  const std::optional<std::size_t> piece = index.piece(id);
  if (!piece) {
    return refused(Refusal::unknown_piece);
  }
  if (edit::known_type(library, design.pieces[*piece].type) == nullptr) {
    return refused(Refusal::unknown_type);
  }
  return change_piece(design, library, index, *piece, [turn](Piece& p) { p.turn = turn; });
}

EditResult move_group(const Design& design, const Library&, const PieceId& member, GridPoint step) {
  const edit::JointIndex index{design};
  const std::optional<std::size_t> piece = index.piece(member);
  if (!piece) {
    return refused(Refusal::unknown_piece);
  }
  Design changed = design;
  if (!edit::shift(changed, index.group(*piece), step)) {
    return refused(Refusal::out_of_range);
  }
  return edit::done(std::move(changed), member);
}

}  // namespace fluewright
