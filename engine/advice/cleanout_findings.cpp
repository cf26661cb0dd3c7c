// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/advice/finding_case.hpp"
#include "engine/advice/practice.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright::advice {

namespace {

/// A piece of the path as a brush meets it.
struct Leg {
  std::size_t piece = 0;
  Length length{};
  Angle turn{};        ///< how far the way through it turns
  bool is_bend = false;
  bool opens = false;  ///< can be opened: lid, drum, ash pit, firebox, or an end of the path
};

Angle turn_through(const PieceGeometry& geometry, const Passage& passage) {
  const Port* in = geometry.port(passage.entry);
  const Port* out = geometry.port(passage.exit);
  if (in == nullptr || out == nullptr) return {};
  const Frame a = frame_of(opposite(in->outward));
  const Frame b = frame_of(out->outward);
  double cosine = 0.0;
  for (int i = 0; i < 3; ++i) cosine += a.forward[i] * b.forward[i];
  return std::acos(std::clamp(cosine, -1.0, 1.0)) * radian;
}

std::vector<Leg> legs_of(const FindingCase& of) {
  std::vector<Leg> legs;
  const auto& passages = of.assessment.path.passages;
  for (std::size_t i = 0; i < passages.size(); ++i) {
    const std::size_t piece = passages[i].piece;
    if (!of.sound(piece)) return {};
    Leg leg;
    leg.piece = piece;
    for (const Stretch& s : of.stretches()) {
      if (s.piece == piece) leg.length += s.length;
    }
    const std::string& shape = of.drawn[piece].known.type->shape;
    leg.turn = turn_through(of.drawn[piece].geometry, passages[i]);
    leg.is_bend = shape == "bend";
    const bool room_to_reach_in = of.family(piece) == "exchange" || of.family(piece) == "fire";
    leg.opens = i == 0 || i + 1 == passages.size() || room_to_reach_in || has_lid(of, piece);
    legs.push_back(leg);
  }
  return legs;
}

/// Marks the bends that a brush put in at `from` gets to, walking by `step`. A fitting opened by its lid lets the
/// brush go on along its run; what turns the way is counted from the next piece on.
void brush_from(const std::vector<Leg>& legs, std::size_t from, std::ptrdiff_t step, Length brush, std::vector<char>& reached) {
  Length gone{};
  Angle turned{};
  for (auto i = static_cast<std::ptrdiff_t>(from) + step; i >= 0 && i < static_cast<std::ptrdiff_t>(legs.size()); i += step) {
    const auto at = static_cast<std::size_t>(i);
    if (gone > brush || turned > practice().brush_turns.value) return;
    reached[at] = 1;
    gone += legs[at].length;
    turned += legs[at].turn;
  }
}

}  // namespace

void find_cleanouts(FindingCase& of) {
  const std::vector<Leg> legs = legs_of(of);
  std::vector<char> reached(legs.size(), 0);
  for (std::size_t i = 0; i < legs.size(); ++i) {
    if (!legs[i].opens) continue;
    reached[i] = 1;
    brush_from(legs, i, 1, of.design.house.brush_length, reached);
    brush_from(legs, i, -1, of.design.house.brush_length, reached);
  }
  for (std::size_t i = 0; i < legs.size(); ++i) {
    if (legs[i].is_bend && reached[i] == 0) {
      of.add(FindingCode::missing_cleanout, Severity::caution, legs[i].piece, of.design.house.brush_length);
    }
  }
}

}  // namespace fluewright::advice
