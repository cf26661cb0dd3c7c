// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/library/library.hpp"

#include <algorithm>
#include <cassert>

namespace fluewright {

namespace {

/// A conductivity given at one temperature only is a room-temperature value; it is trusted up to here.
constexpr Temperature single_point_trusted_below = celsius(200.0);

template <class Things>
auto* by_id(const Things& things, std::string_view id) {
  const auto found = std::find_if(things.begin(), things.end(), [id](const auto& thing) { return thing.id == id; });
  return found == things.end() ? nullptr : &*found;
}

const FieldSpec* by_key(const std::vector<FieldSpec>& specs, std::string_view key) {
  const auto found = std::find_if(specs.begin(), specs.end(), [key](const FieldSpec& s) { return s.key == key; });
  return found == specs.end() ? nullptr : &*found;
}

}  // namespace

Conductivity Material::conductivity(Temperature t) const {
  assert(!conductivity_points.empty());
  const auto above = std::find_if(conductivity_points.begin(), conductivity_points.end(),
                                  [t](const ConductivityPoint& p) { return t < p.at; });
  if (above == conductivity_points.begin()) return above->conductivity;
  const ConductivityPoint& low = *(above - 1);
  if (above == conductivity_points.end()) return low.conductivity;
  const Ratio share = (t - low.at) / (above->at - low.at);
  return low.conductivity + share * (above->conductivity - low.conductivity);
}

bool Material::covers(Temperature t) const {
  if (conductivity_points.size() == 1) return t < single_point_trusted_below;
  return !conductivity_points.empty() && conductivity_points.front().at <= t && t <= conductivity_points.back().at;
}

ValidRange<Temperature> Material::covered() const {
  assert(!conductivity_points.empty());
  if (conductivity_points.size() == 1) return {kelvins(0.0), single_point_trusted_below, name, thermal_citation.source};
  return {conductivity_points.front().at, conductivity_points.back().at, name, thermal_citation.source};
}

Diffusivity Material::diffusivity(Temperature t) const { return conductivity(t) / (density * specific_heat); }

const FieldSpec* PieceType::field(std::string_view key) const { return by_key(fields, key); }

const Material* Library::material(std::string_view id) const { return by_id(materials, id); }
const Wall* Library::wall(std::string_view id) const { return by_id(walls, id); }
const WoodSpecies* Library::wood(std::string_view id) const { return by_id(woods, id); }
const FanSheet* Library::fan(std::string_view id) const { return by_id(fans, id); }
const FieldSpec* Library::fan_field(std::string_view key) const { return by_key(fan_fields, key); }
const PieceType* Library::piece_type(std::string_view id) const { return by_id(piece_types, id); }
const FieldSpec* Library::condition(std::string_view key) const { return by_key(conditions, key); }

}  // namespace fluewright
