// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/bill/masses.hpp"

#include "engine/bill/prism.hpp"
#include "engine/pieces/parts.hpp"

#include <algorithm>
#include <numbers>

namespace fluewright {

namespace {

/// A piece with its flue, for those that can be computed.
struct Computed {
  std::size_t index = 0;
  std::vector<Stretch> stretches;
  Place place = Place::room;  ///< of what is not inside the piece itself
  Embedding embedding;
};

Computed computed(const Design& design, const Library& library, std::size_t i, const DrawnPiece& drawn) {
  Computed c;
  c.index = i;
  const PieceView view{design, library, design.pieces[i], *drawn.known.type};
  const auto& ports = drawn.geometry.ports;
  if (ports.size() > 1) c.stretches = drawn.known.shape->passage(view, i, ports[0].name, ports[1].name);
  const Stretch whole = parts::stretch_of(view, i, Section::circle(millimetre), millimetre, {});
  c.place = whole.place;
  c.embedding = whole.embedding;
  return c;
}

std::vector<Computed> all_computed(const Design& design, const Library& library, const std::vector<DrawnPiece>& drawn) {
  std::vector<Computed> all;
  for (std::size_t i = 0; i < drawn.size(); ++i) {
    if (drawn[i].sound) all.push_back(computed(design, library, i, drawn[i]));
  }
  return all;
}

/// What a flue takes up with a wall of that thickness around it. An annulus has walls outside only.
Area outer_area(const Section& section, Length wall) {
  constexpr double pi = std::numbers::pi;
  const Length wide = section.first_size() + 2.0 * wall;
  switch (section.form()) {
    case Section::Form::rectangle:
      return wide * (section.second_size() + 2.0 * wall);
    case Section::Form::half_round:
      return pi / 8.0 * wide * wide + wide * wall;
    case Section::Form::circle:
    case Section::Form::annulus:
      break;
  }
  return pi / 4.0 * wide * wide;
}

Length thickness(const std::vector<WallLayerView>& wall) {
  Length sum{};
  for (const WallLayerView& layer : wall) sum += layer.thickness;
  return sum;
}

void add(std::vector<MaterialAmount>& amounts, const Material& material, Volume volume) {
  auto known = std::find_if(amounts.begin(), amounts.end(), [&](const auto& a) { return a.material == material.id; });
  if (known == amounts.end()) known = amounts.insert(amounts.end(), {material.id, {}, {}});
  known->volume += volume;
  known->mass += volume * material.density;
}

void add_walls(std::vector<MaterialAmount>& amounts, const Stretch& stretch) {
  Length inside{};
  for (const WallLayerView& layer : stretch.wall) {
    if (layer.material == nullptr) continue;
    const Length outside = inside + layer.thickness;
    Volume volume = (outer_area(stretch.section, outside) - outer_area(stretch.section, inside)) * stretch.length;
    if (stretch.lid) volume += stretch.lid->surface * layer.thickness;
    add(amounts, *layer.material, volume);
    inside = outside;
  }
}

/// Benches of one material with the flues that run in them.
struct Bench {
  const Material* material = nullptr;
  std::vector<Prism> prisms;
  Volume flues{};
};

std::vector<Bench> benches_of(const std::vector<Computed>& pieces, const std::vector<DrawnPiece>& drawn) {
  std::vector<Bench> benches;
  for (const Computed& c : pieces) {
    if (c.place != Place::mass || c.embedding.material == nullptr) continue;
    auto same = std::find_if(benches.begin(), benches.end(),
                             [&](const Bench& b) { return b.material == c.embedding.material; });
    if (same == benches.end()) same = benches.insert(benches.end(), {c.embedding.material, {}, {}});
    for (Prism& prism : mass_around(drawn[c.index].geometry, c.embedding.width, c.embedding.height)) {
      same->prisms.push_back(std::move(prism));
    }
    for (const Stretch& s : c.stretches) {
      if (s.place == Place::mass) same->flues += outer_area(s.section, thickness(s.wall)) * s.length;
    }
  }
  return benches;
}

/// Overlaps of benches of different materials belong to the first.
void add_benches(std::vector<MaterialAmount>& amounts, const std::vector<Bench>& benches) {
  std::vector<Prism> before;
  Volume filled_before{};
  for (const Bench& bench : benches) {
    before.insert(before.end(), bench.prisms.begin(), bench.prisms.end());
    const Volume filled = filled_volume(before);
    add(amounts, *bench.material, std::max(Volume{}, filled - filled_before - bench.flues));
    filled_before = filled;
  }
}

bool stands_on_the_floor(Place place) { return place == Place::room || place == Place::mass || place == Place::jacket; }

SurfaceLoad surface_load(detail::quotient<Mass, Area> mass) { return {mass, mass * standard_gravity}; }

Mass sum(const std::vector<MaterialAmount>& amounts) {
  Mass total{};
  for (const MaterialAmount& a : amounts) total += a.mass;
  return total;
}

}  // namespace

Mass MassBill::total() const { return sum(around) + sum(walls); }

MassBill mass_bill(const Design& design, const Library& library) {
  const std::vector<DrawnPiece> drawn = drawn_pieces(design, library);
  const std::vector<Computed> pieces = all_computed(design, library, drawn);
  MassBill bill;
  add_benches(bill.around, benches_of(pieces, drawn));
  for (const Computed& c : pieces) {
    for (const Stretch& s : c.stretches) add_walls(bill.walls, s);
  }
  return bill;
}

FloorLoad floor_load(const Design& design, const Library& library) {
  const std::vector<DrawnPiece> drawn = drawn_pieces(design, library);
  const std::vector<Computed> pieces = all_computed(design, library, drawn);
  std::vector<MaterialAmount> amounts;
  std::vector<Prism> prisms;
  FloorLoad load;
  const std::vector<Bench> benches = benches_of(pieces, drawn);
  add_benches(amounts, benches);
  for (const Bench& bench : benches) {
    for (const Prism& p : bench.prisms) {
      const SurfaceLoad column = surface_load(bench.material->density * (p.top - p.bottom));
      if (column.pressure > load.tallest.pressure) load.tallest = column;
      prisms.push_back(p);
    }
  }
  for (const Computed& c : pieces) {
    if (!stands_on_the_floor(c.place)) continue;
    for (const Stretch& s : c.stretches) add_walls(amounts, s);
    const PieceType& type = *drawn[c.index].known.type;
    const bool own_stand = type.family == "fire" || type.family == "inlet" || type.family == "exchange";
    if (c.place == Place::mass || !own_stand) continue;
    const PieceView view{design, library, design.pieces[c.index], type};
    for (Prism& p : standing_on(view, drawn[c.index].geometry)) prisms.push_back(std::move(p));
  }
  load.mass = sum(amounts);
  load.footprint = covered_area(prisms);
  if (load.footprint > Area{}) load.spread = surface_load(load.mass / load.footprint);
  return load;
}

Citation usual_floor_allowance_source() {
  return {"ASCE 7 and IRC Table R301.5, dwellings 40 lb/ft2 (1.9 kPa)", Standing::from_memory};
}

CobMix cob_mix(Mass dry, const CobRecipe& recipe) {
  const Density per_part = recipe.sand * recipe.loose_sand + recipe.clay * recipe.loose_clay;
  if (!(per_part > Density{})) return {};
  const Volume part = dry / per_part;
  CobMix mix;
  mix.sand_loose = recipe.sand * part;
  mix.clay_loose = recipe.clay * part;
  mix.sand = mix.sand_loose * recipe.loose_sand;
  mix.clay = mix.clay_loose * recipe.loose_clay;
  return mix;
}

}  // namespace fluewright
