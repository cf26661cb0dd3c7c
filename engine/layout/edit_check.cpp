// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/edit_support.hpp"
#include "engine/layout/value_range.hpp"

#include <algorithm>

namespace fluewright::edit {

namespace {

/// Whether a field that names a wall, a material, a wood or a fan names one that exists.
bool answers(const Design& design, const Library& library, const FieldSpec& spec, const std::string& name) {
  const auto is_it = [&name](const auto& thing) { return thing.id == name; };
  switch (spec.kind) {
    case FieldKind::wall:
      return std::any_of(design.walls.begin(), design.walls.end(), is_it) || library.wall(name) != nullptr;
    case FieldKind::material: return library.material(name) != nullptr;
    case FieldKind::fan:
      return std::any_of(design.fans.begin(), design.fans.end(), is_it) || library.fan(name) != nullptr;
    case FieldKind::wood: return library.wood(name) != nullptr;
    default: return true;
  }
}

}  // namespace

std::optional<Refusal> check_value(const Design& design, const Library& library, const FieldSpec& spec,
                                   const FieldValue& value) {
  if (check_range(spec, value)) {
    return Refusal::out_of_range;
  }
  const auto* name = std::get_if<std::string>(&value);
  return name == nullptr || answers(design, library, spec, *name) ? std::nullopt : std::optional{Refusal::out_of_range};
}

std::optional<Refusal> check_run_length(const PieceType& type, Length length) {
  const FieldSpec* spec = type.field("length");
  if (spec == nullptr) {
    return Refusal::not_a_run;
  }
  const Length* lowest = spec->lowest ? std::get_if<Length>(&*spec->lowest) : nullptr;
  if (!(length > length_tolerance) || (lowest != nullptr && length < *lowest - 1e-9 * metre)) {
    return Refusal::too_short;
  }
  return check_range(*spec, length) ? std::optional{Refusal::out_of_range} : std::nullopt;
}

}  // namespace fluewright::edit
