// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/piece_check.hpp"

#include "engine/layout/value_range.hpp"
#include "engine/pieces/parts.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

namespace fluewright {

namespace {

/// Field name of a heading in a finding.
constexpr std::string_view heading_field = "heading";

Finding finding_on(const Piece& piece, FindingCode code, std::string_view field, FieldValue value) {
  Finding finding;
  finding.code = code;
  finding.piece = piece.id;
  finding.field = std::string(field);
  finding.value = std::move(value);
  return finding;
}

bool has_finite_heading(const Piece& piece) {
  return std::isfinite(in(piece.heading.azimuth, radian)) && std::isfinite(in(piece.heading.elevation, radian));
}

/// A field that names a wall, a material or a fan: does the name answer?
void check_reference(const PieceView& view, const FieldSpec& spec, std::vector<Finding>& findings) {
  const std::string& id = view.choice(spec.key);
  const auto [answers, code] = [&]() -> std::pair<bool, FindingCode> {
    switch (spec.kind) {
      case FieldKind::wall: return {view.wall(spec.key) != nullptr, FindingCode::unknown_wall};
      case FieldKind::fan: return {view.fan(spec.key) != nullptr, FindingCode::unknown_fan};
      default: return {view.material(spec.key) != nullptr, FindingCode::unknown_material};
    }
  }();
  if (answers) return;
  Finding finding = finding_on(view.piece(), code, spec.key, id);
  finding.text = id;
  findings.push_back(std::move(finding));
}

void check_field(const PieceView& view, const FieldSpec& spec, std::vector<Finding>& findings) {
  if (std::optional<Finding> finding = check_range(spec, view.value(spec.key))) {
    finding->piece = view.piece().id;
    findings.push_back(std::move(*finding));
  } else if (spec.kind == FieldKind::wall || spec.kind == FieldKind::material || spec.kind == FieldKind::fan) {
    check_reference(view, spec, findings);
  }
}

void check_clashes(const PieceView& view, const Shape& shape, std::vector<Finding>& findings) {
  std::vector<FieldClash> clashes = shape.clashes(view);
  const std::vector<FieldClash> around = parts::embedding_clashes(view);
  clashes.insert(clashes.end(), around.begin(), around.end());
  for (FieldClash& clash : clashes) {
    Finding finding = finding_on(view.piece(), FindingCode::out_of_range, clash.field, clash.value);
    finding.lowest = clash.lowest;
    finding.highest = clash.highest;
    findings.push_back(std::move(finding));
  }
}

bool touches_geometry(const Finding& f) {
  return f.code == FindingCode::out_of_range || f.code == FindingCode::wrong_kind;
}

}  // namespace

std::vector<KnownPiece> known_pieces(const Design& design, const Library& library) {
  std::unordered_map<std::string_view, KnownPiece> by_type;
  std::vector<KnownPiece> known;
  known.reserve(design.pieces.size());
  for (const Piece& piece : design.pieces) {
    const auto [entry, is_new] = by_type.try_emplace(piece.type);
    if (is_new) {
      const PieceType* type = library.piece_type(piece.type);
      const Shape* shape = type ? find_shape(type->shape) : nullptr;
      if (shape) entry->second = {type, shape};
    }
    known.push_back(entry->second);
  }
  return known;
}

std::vector<Finding> check_piece(const Design& design, const Library& library, const Piece& piece,
                                 const KnownPiece& known) {
  std::vector<Finding> findings;
  if (!known.shape) {
    findings.push_back(finding_on(piece, FindingCode::unknown_type, {}, piece.type));
    findings.back().text = piece.type;
    return findings;
  }
  if (!has_finite_heading(piece)) {
    findings.push_back(finding_on(piece, FindingCode::out_of_range, heading_field, piece.heading.azimuth));
  }
  const PieceView view(design, library, piece, *known.type);
  for (const FieldSpec& spec : known.type->fields) check_field(view, spec, findings);
  if (std::none_of(findings.begin(), findings.end(), touches_geometry)) check_clashes(view, *known.shape, findings);
  return findings;
}

std::vector<DrawnPiece> drawn_pieces(const Design& design, const Library& library) {
  const std::vector<KnownPiece> known = known_pieces(design, library);
  std::vector<DrawnPiece> drawn(design.pieces.size());
  for (std::size_t i = 0; i < drawn.size(); ++i) {
    drawn[i].known = known[i];
    if (!known[i].shape) continue;
    const Piece& piece = design.pieces[i];
    const std::vector<Finding> faults = check_piece(design, library, piece, known[i]);
    drawn[i].sound = faults.empty();
    const PieceView view(design, library, piece, *known[i].type);
    if (drawn[i].sound) {
      drawn[i].geometry = known[i].shape->geometry(view);
    } else {
      const Piece drawable = mended(design, library, piece, known[i], faults);
      drawn[i].geometry = known[i].shape->geometry(PieceView(design, library, drawable, *known[i].type));
    }
  }
  return drawn;
}

Piece mended(const Design& design, const Library& library, const Piece& piece, const KnownPiece& known,
             const std::vector<Finding>& faults) {
  Piece copy = piece;
  const auto take_out = [&copy](const std::vector<Finding>& found) {
    for (const Finding& f : found) {
      if (!touches_geometry(f)) continue;
      if (f.field == heading_field) {
        copy.heading = {};
      } else {
        copy.fields.erase(f.field);
      }
    }
  };
  take_out(faults);
  // Taking one value out may set another at odds with its fallback; all fallbacks together always agree.
  const std::vector<Finding> left = check_piece(design, library, copy, known);
  if (std::any_of(left.begin(), left.end(), touches_geometry)) copy.fields.clear();
  return copy;
}

}  // namespace fluewright
