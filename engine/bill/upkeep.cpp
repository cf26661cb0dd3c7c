// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/bill/upkeep.hpp"

#include "engine/layout/piece_check.hpp"
#include "engine/pieces/parts.hpp"

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

constexpr Angle brush_turn = 20.0 * degree;
constexpr Length same_level = 1.0 * millimetre;

struct Step {
  std::size_t piece = 0;
  const Port* entry = nullptr;
  const Port* exit = nullptr;
  Length from{};  ///< along the path
  Length to{};
  Place place = Place::room;
};

Angle angle_between(const Heading& a, const Heading& b) {
  const Frame fa = frame_of(a);
  const Frame fb = frame_of(b);
  double cosine = 0.0;
  for (int i = 0; i < 3; ++i) cosine += fa.forward[i].value() * fb.forward[i].value();
  return std::acos(std::clamp(cosine, -1.0, 1.0)) * radian;
}

/// The main path with its geometry at hand.
class Walk {
 public:
  Walk(const Design& design, const Library& library)
      : design_{design}, library_{library}, drawn_{drawn_pieces(design, library)} {
    Length s{};
    for (const Passage& passage : trace_path(design, library).passages) {
      const DrawnPiece& piece = drawn_[passage.piece];
      const Port* entry = piece.geometry.port(passage.entry);
      const Port* exit = piece.geometry.port(passage.exit);
      if (!piece.sound || entry == nullptr || exit == nullptr) break;
      Length length{};
      for (const Stretch& stretch :
           piece.known.shape->passage(view(passage.piece), passage.piece, passage.entry, passage.exit)) {
        length += stretch.length;
      }
      steps_.push_back({passage.piece, entry, exit, s, s + length, place_of(passage.piece)});
      s += length;
    }
  }

  [[nodiscard]] const std::vector<Step>& steps() const { return steps_; }
  [[nodiscard]] PieceView view(std::size_t piece) const {
    return {design_, library_, design_.pieces[piece], *drawn_[piece].known.type};
  }
  [[nodiscard]] std::string_view shape(std::size_t piece) const { return drawn_[piece].known.shape->id(); }

  [[nodiscard]] std::optional<Access> access_at(const Step& step) const {
    const Length middle = 0.5 * (step.from + step.to);
    if (step.entry->kind == PortKind::room_air) return Access{AccessKind::mouth, step.piece, step.from};
    if (step.exit->kind == PortKind::outdoor_air) return Access{AccessKind::top, step.piece, step.to};
    if (shape(step.piece) == "barrel") return Access{AccessKind::lid, step.piece, step.from};
    for (const Port& port : drawn_[step.piece].geometry.ports) {
      if (&port == step.entry || &port == step.exit) continue;
      if (opens(step.piece, port)) return Access{AccessKind::cover, step.piece, middle};
    }
    return std::nullopt;
  }

  [[nodiscard]] bool turns(const Step& step) const {
    if (shape(step.piece) == "barrel" || shape(step.piece) == "bell") return false;  // there is room for an arm
    return angle_between(opposite(step.entry->outward), step.exit->outward) > brush_turn;
  }

 private:
  [[nodiscard]] Place place_of(std::size_t piece) const {
    return parts::stretch_of(view(piece), piece, Section::circle(millimetre), millimetre, {}).place;
  }

  [[nodiscard]] bool opens(std::size_t piece, const Port& port) const {
    const auto other = design_.joined_to({design_.pieces[piece].id, port.name});
    if (!other) return port.may_stay_shut;
    for (std::size_t i = 0; i < drawn_.size(); ++i) {
      if (design_.pieces[i].id == other->piece) return drawn_[i].known.shape != nullptr && shape(i) == "end_cap";
    }
    return false;
  }

  const Design& design_;
  const Library& library_;
  std::vector<DrawnPiece> drawn_;
  std::vector<Step> steps_;
};

void find_accesses(const Walk& walk, Upkeep& all) {
  std::size_t turns = 0;
  for (const Step& step : walk.steps()) {
    const std::optional<Access> access = walk.access_at(step);
    if (access && !all.accesses.empty()) {
      all.lengths.push_back({all.accesses.back(), *access, access->s - all.accesses.back().s, turns});
    }
    if (access) {
      all.accesses.push_back(*access);
      turns = 0;
    } else if (walk.turns(step)) {
      ++turns;
    }
  }
}

/// Water runs along the bottom: a stretch whose neighbours on both sides climb away from it.
void find_low_places(const Walk& walk, Upkeep& all) {
  const auto& steps = walk.steps();
  std::size_t i = 0;
  bool falling = false;  // into the stretch that is being looked at
  while (i < steps.size()) {
    const Length enter = steps[i].entry->at.z;
    const Length leave = steps[i].exit->at.z;
    if (leave < enter - same_level) falling = true;
    if (leave > enter + same_level) {
      // A climb: what lies before it is low if something fell into it.
      const std::string_view family =
          i > 0 ? std::string_view(walk.view(steps[i - 1].piece).type().family) : std::string_view{};
      const bool hot = family == "inlet" || family == "fire";  // no water there while it burns
      if (falling && i > 0 && !hot) {
        std::size_t first = i - 1;
        while (first > 0 && bu::abs(steps[first].entry->at.z - enter) <= same_level) --first;
        LowPlace low{steps[std::min(first + 1, i - 1)].piece, steps[i - 1].piece, enter, false};
        for (std::size_t k = first; k <= i; ++k) {
          const auto access = walk.access_at(steps[k]);
          low.opens = low.opens || (access && access->kind == AccessKind::cover);
        }
        all.low_places.push_back(low);
      }
      falling = false;
    }
    ++i;
  }
}

void find_slopes(const Walk& walk, Upkeep& all) {
  for (const Step& step : walk.steps()) {
    const PieceView view = walk.view(step.piece);
    if (!view.has("slope") || view.ratio("slope") == 0.0) continue;
    const Position d = step.exit->at - step.entry->at;
    const Length level = bu::sqrt(d.x * d.x + d.y * d.y);
    if (level > same_level) all.slopes.push_back({step.piece, d.z / level});
  }
}

void find_gauges(const Walk& walk, Upkeep& all) {
  const auto& steps = walk.steps();
  const auto in_mass = [](const Step& s) { return s.place == Place::mass || s.place == Place::ground; };
  const auto put = [&](GaugePlace place, const Step& step) {
    const Position& a = step.entry->at;
    const Position& b = step.exit->at;
    all.gauges.push_back({place, step.piece, {0.5 * (a.x + b.x), 0.5 * (a.y + b.y), 0.5 * (a.z + b.z)}});
  };
  const auto first = std::find_if(steps.begin(), steps.end(), in_mass);
  if (first != steps.end()) put(GaugePlace::into_the_bench, *first);
  const auto last = std::find_if(steps.rbegin(), steps.rend(), in_mass);
  if (last != steps.rend() && &*last != &*first) put(GaugePlace::out_of_the_bench, *last);
  const auto stack = std::find_if(last.base(), steps.end(), [&](const Step& s) {
    return s.exit->at.z - s.entry->at.z > 0.7071 * (s.to - s.from) && walk.view(s.piece).type().family == "stack";
  });
  if (stack != steps.end()) put(GaugePlace::foot_of_the_stack, *stack);
}

}  // namespace

Upkeep upkeep(const Design& design, const Library& library) {
  const Walk walk(design, library);
  Upkeep all;
  find_accesses(walk, all);
  find_low_places(walk, all);
  find_slopes(walk, all);
  find_gauges(walk, all);
  return all;
}

}  // namespace fluewright
