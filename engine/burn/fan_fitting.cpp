// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/burn/fan_fitting.hpp"

#include "engine/layout/edit.hpp"
#include "engine/layout/path.hpp"

#include <algorithm>

namespace fluewright {
namespace {

bool is_fan(const Piece& piece, const Library& library) {
  const PieceType* type = library.piece_type(piece.type);
  return type != nullptr && (type->shape == "fan" || type->shape == "fan_head");
}

/// The passages of the stack from its foot to its top: those at the path's end that only rise.
std::vector<Passage> stack_of(const TracedPath& traced) {
  const auto rises = [&](std::size_t piece) {
    Length rise{};
    Length length{};
    for (const Branch& branch : traced.network.branches) {
      for (const Stretch& stretch : branch.stretches) {
        if (stretch.piece != piece) continue;
        rise += stretch.rise;
        length += stretch.length;
      }
    }
    return length > Length{} && rise > 0.7 * length;
  };
  std::vector<Passage> stack;
  for (auto p = traced.passages.rbegin(); p != traced.passages.rend() && rises(p->piece); ++p) stack.push_back(*p);
  std::reverse(stack.begin(), stack.end());
  return stack;
}

/// Lies where the run lies that it was put into, where such a fan can lie there.
Design placed_like(Design design, const Library& library, const PieceId& fan, const FieldValue* place) {
  if (place == nullptr) return design;
  const Piece* piece = design.piece(fan);
  const PieceType* type = piece != nullptr ? library.piece_type(piece->type) : nullptr;
  const FieldSpec* spec = type != nullptr ? type->field("place") : nullptr;
  const auto* choice = std::get_if<std::string>(place);
  if (spec == nullptr || choice == nullptr) return design;
  if (std::find(spec->choices.begin(), spec->choices.end(), *choice) == spec->choices.end()) return design;
  EditResult edited = set_field(design, library, fan, "place", *place);
  return edited.design ? *std::move(edited.design) : design;
}

std::optional<FanFitted> insert(const Design& design, const Library& library, std::string_view type, std::vector<Passage> runs,
                                bool low) {
  if (!low) std::reverse(runs.begin(), runs.end());
  const PieceType* fan_type = library.piece_type(type);
  const FieldSpec* own = fan_type != nullptr ? fan_type->field("length") : nullptr;
  if (own == nullptr) return std::nullopt;
  const Length fan_length = std::get<Length>(own->fallback);
  for (const Passage& passage : runs) {
    const Piece& run = design.pieces[passage.piece];
    const PieceType* run_type = library.piece_type(run.type);
    // A fan blows the way its run is drawn: a run drawn against the gas is no place for it.
    if (run_type == nullptr || run_type->field("length") == nullptr || passage.entry != "in") continue;
    const PieceView view{design, library, run, *run_type};
    const Length along = low ? Length{} : view.length("length") - fan_length;
    EditResult edited = insert_in_run(design, library, run.id, along, type);
    if (!edited.design) continue;
    const FieldValue* place = view.has("place") ? &view.value("place") : nullptr;
    return FanFitted{placed_like(*std::move(edited.design), library, edited.touched, place), edited.touched, false};
  }
  return std::nullopt;
}

}  // namespace

std::vector<PieceId> fans_of(const Design& design, const Library& library) {
  std::vector<PieceId> found;
  for (const Piece& piece : design.pieces) {
    if (is_fan(piece, library)) found.push_back(piece.id);
  }
  return found;
}

std::optional<FanSheet> sheet_of(const Design& design, const Library& library, std::string_view fan) {
  const Piece* piece = design.piece(fan);
  if (piece == nullptr || !is_fan(*piece, library)) return std::nullopt;
  const PieceView view{design, library, *piece, *library.piece_type(piece->type)};
  const FanSheet* sheet = view.fan("fan");
  return sheet != nullptr ? std::optional{*sheet} : std::nullopt;
}

std::optional<FanFitted> fit_fan(const Design& design, const Library& library, std::string_view type, FanSeat seat) {
  for (const Piece& piece : design.pieces) {
    if (piece.type == type) return FanFitted{design, piece.id, true};
  }
  const TracedPath traced = trace_path(design, library);
  if (!traced.complete) return std::nullopt;
  const std::vector<Passage> stack = stack_of(traced);
  if (stack.empty()) return std::nullopt;
  if (seat != FanSeat::on_top) return insert(design, library, type, stack, seat == FanSeat::stack_foot);
  EditResult edited = set_type(design, library, design.pieces[stack.back().piece].id, type);
  if (!edited.design) return std::nullopt;
  return FanFitted{*std::move(edited.design), edited.touched, false};
}

}  // namespace fluewright
