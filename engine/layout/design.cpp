// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/design.hpp"

#include <algorithm>
#include <cassert>
#include <charconv>

namespace fluewright {

namespace {

template <class Pieces>
auto* find_piece(Pieces& pieces, std::string_view id) {
  const auto found = std::find_if(pieces.begin(), pieces.end(), [id](const Piece& p) { return p.id == id; });
  return found == pieces.end() ? nullptr : &*found;
}

/// N of an id "pN", 0 for any other id.
long number_of(std::string_view id) {
  if (id.size() < 2 || id.front() != 'p') return 0;
  long number = 0;
  const char* end = id.data() + id.size();
  const auto [stop, error] = std::from_chars(id.data() + 1, end, number);
  return error == std::errc{} && stop == end ? number : 0;
}

}  // namespace

const Piece* Design::piece(std::string_view id) const { return find_piece(pieces, id); }
Piece* Design::piece(std::string_view id) { return find_piece(pieces, id); }

std::optional<PortRef> Design::joined_to(const PortRef& port) const {
  for (const Joint& joint : joints) {
    if (joint.a == port) return joint.b;
    if (joint.b == port) return joint.a;
  }
  return std::nullopt;
}

PieceId Design::fresh_id() const {
  long highest = 0;
  for (const Piece& p : pieces) highest = std::max(highest, number_of(p.id));
  for (const Acknowledgement& a : acknowledged) highest = std::max(highest, number_of(a.piece));
  return "p" + std::to_string(highest + 1);
}

bool PieceView::has(std::string_view key) const { return type_->field(key) != nullptr; }

const FieldValue& PieceView::value(std::string_view key) const {
  const FieldSpec* spec = type_->field(key);
  assert(spec && "a shape asked for a field that its type lacks");
  const auto given = piece_->fields.find(key);
  return given == piece_->fields.end() ? spec->fallback : given->second;
}

Length PieceView::length(std::string_view key) const { return std::get<Length>(value(key)); }
Angle PieceView::angle(std::string_view key) const { return std::get<Angle>(value(key)); }
Ratio PieceView::ratio(std::string_view key) const { return std::get<Ratio>(value(key)); }
int PieceView::count(std::string_view key) const { return std::get<Count>(value(key)).value; }
Pressure PieceView::pressure(std::string_view key) const { return std::get<Pressure>(value(key)); }
const std::string& PieceView::choice(std::string_view key) const { return std::get<std::string>(value(key)); }

const Wall* PieceView::wall(std::string_view key) const {
  const std::string& id = std::get<std::string>(value(key));
  for (const Wall& own : design_->walls) {
    if (own.id == id) return &own;
  }
  return library_->wall(id);
}

const FanSheet* PieceView::fan(std::string_view key) const {
  const std::string& id = std::get<std::string>(value(key));
  for (const FanSheet& own : design_->fans) {
    if (own.id == id) return &own;
  }
  return library_->fan(id);
}

const Material* PieceView::material(std::string_view key) const {
  return library_->material(std::get<std::string>(value(key)));
}

}  // namespace fluewright
