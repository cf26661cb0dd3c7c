// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/library_check.hpp"

#include "engine/layout/conditions.hpp"
#include "engine/pieces/shape.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <set>
#include <stdexcept>

namespace fluewright {

namespace {

[[noreturn]] void fail(std::string_view where, const std::string& what) {
  throw std::runtime_error(fmt::format("{}: {}", where, what));
}

template <class Item>
void check_ids(std::string_view where, const std::vector<Item>& items) {
  std::set<std::string_view> ids;
  for (const Item& item : items) {
    if (!ids.insert(item.id).second) fail(where, fmt::format("the id “{}” stands twice", item.id));
  }
}

/// A fallback that is an id must be one of the library's.
void check_fallback(const Library& library, std::string_view where, const FieldSpec& field) {
  const auto* id = std::get_if<std::string>(&field.fallback);
  if (id == nullptr) return;
  const bool known = (field.kind == FieldKind::wall && library.wall(*id) != nullptr) ||
                     (field.kind == FieldKind::material && library.material(*id) != nullptr) ||
                     (field.kind == FieldKind::wood && library.wood(*id) != nullptr) ||
                     (field.kind == FieldKind::fan && library.fan(*id) != nullptr) || field.kind == FieldKind::choice;
  if (!known) fail(where, fmt::format("the fallback “{}” of {} is not in the library", *id, field.key));
}

void check_piece_type(const Library& library, const PieceType& type) {
  constexpr std::string_view families[] = {"inlet", "fire", "exchange", "bench", "fitting", "stack", "helper"};
  if (std::find(std::begin(families), std::end(families), type.family) == std::end(families)) {
    fail(type.id, fmt::format("the family “{}” is not known", type.family));
  }
  const Shape* shape = find_shape(type.shape);
  if (shape == nullptr) fail(type.id, fmt::format("the shape “{}” is not known", type.shape));
  for (const std::string_view key : shape->required_fields()) {
    if (type.field(key) == nullptr) fail(type.id, fmt::format("its shape needs the field “{}”", key));
  }
  std::set<std::string_view> keys;
  for (const FieldSpec& field : type.fields) {
    if (!keys.insert(field.key).second) fail(type.id, fmt::format("the field “{}” stands twice", field.key));
    check_fallback(library, type.id, field);
  }
  if (type.citations.empty()) fail(type.id, "it names no source");
}

void check_fans(const Library& library) {
  constexpr std::string_view of_points[] = {"flow", "head"};
  for (const FanField& field : fan_fields()) {
    const FieldSpec* spec = library.fan_field(field.key);
    if (spec == nullptr) fail("fans", fmt::format("“{}” is missing", field.key));
    if (spec->kind != field.kind) fail("fans", fmt::format("“{}” is of another kind in the engine", field.key));
  }
  for (const std::string_view key : of_points) {
    if (library.fan_field(key) == nullptr) fail("fans", fmt::format("“{}” is missing", key));
  }
  if (library.fan_fields.size() != fan_fields().size() + std::size(of_points)) {
    fail("fans", "there are more entries than the engine knows");
  }
  for (const FanSheet& sheet : library.fans) {
    if (!makes_a_curve(sheet.points)) fail(sheet.id, "its points make no curve");
  }
}

void check_conditions(const Library& library) {
  for (const Condition& condition : conditions()) {
    const FieldSpec* spec = library.condition(condition.key);
    if (spec == nullptr) fail("conditions", fmt::format("“{}” is missing", condition.key));
    if (spec->kind != condition.kind)
      fail("conditions", fmt::format("“{}” is of another kind in the engine", condition.key));
    check_fallback(library, "conditions", *spec);
  }
  if (library.conditions.size() != conditions().size()) fail("conditions", "there are more than the engine knows");
}

}  // namespace

void check_library(const Library& library) {
  check_ids("materials", library.materials);
  check_ids("walls", library.walls);
  check_ids("woods", library.woods);
  check_ids("moisture states", library.moisture_states);
  check_ids("pieces", library.piece_types);
  check_ids("fans", library.fans);
  check_fans(library);
  for (const Wall& wall : library.walls) {
    for (const WallLayer& layer : wall.layers) {
      if (library.material(layer.material) == nullptr)
        fail(wall.id, fmt::format("“{}” is no material", layer.material));
    }
  }
  for (const PieceType& type : library.piece_types) check_piece_type(library, type);
  check_conditions(library);
}

}  // namespace fluewright
