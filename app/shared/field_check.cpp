// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/field_check.hpp"

#include "app/shared/file_units.hpp"
#include "app/shared/said.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

/// a <= b for two values of one kind. False for not-a-number, so that it is never within a range.
bool not_above(const FieldValue& a, const FieldValue& b) {
  return a.index() == b.index() && std::visit(
                                       [&](const auto& left) {
                                         using Value = std::decay_t<decltype(left)>;
                                         const auto& right = std::get<Value>(b);
                                         if constexpr (std::is_same_v<Value, Count>)
                                           return left.value <= right.value;
                                         else
                                           return left <= right;
                                       },
                                       a);
}

std::string join(const std::vector<std::string>& words) {
  std::string text;
  for (const std::string& word : words) text += (text.empty() ? "" : ", ") + word;
  return text;
}

std::string kind_text(const FieldSpec& spec) {
  switch (spec.kind) {
    case FieldKind::choice:
      return said("one of ") + join(spec.choices);
    case FieldKind::wall:
      return said("the id of a wall");
    case FieldKind::material:
      return said("the id of a material");
    case FieldKind::wood:
      return said("the id of a wood");
    case FieldKind::fan:
      return said("the id of a fan");
    case FieldKind::count:
      return said("a whole number");
    default:
      return said("a number");
  }
}

}  // namespace

bool is_allowed(const FieldValue& value, const FieldSpec& spec) {
  if (spec.kind == FieldKind::choice) {
    const auto* word = std::get_if<std::string>(&value);
    return word != nullptr && std::find(spec.choices.begin(), spec.choices.end(), *word) != spec.choices.end();
  }
  if (is_word_kind(spec.kind))
    return std::holds_alternative<std::string>(value) && !std::get<std::string>(value).empty();
  if (spec.lowest && !not_above(*spec.lowest, value)) return false;
  if (spec.highest && !not_above(value, *spec.highest)) return false;
  return value.index() == spec.fallback.index();
}

std::string allowed_in_file(const FieldSpec& spec) {
  std::string text = kind_text(spec);
  if (is_word_kind(spec.kind)) return text;
  if (spec.lowest) text += " from " + to_file_value(*spec.lowest, spec.kind, spec.key).dump();
  if (spec.highest) text += " to " + to_file_value(*spec.highest, spec.kind, spec.key).dump();
  return text;
}

std::string allowed_text(const FieldSpec& spec, UnitSystem units) {
  if (is_word_kind(spec.kind) || !spec.lowest || !spec.highest) return kind_text(spec);
  return said("{} to {}", show(*spec.lowest, units, spec.kind, spec.key).text(),
                     show(*spec.highest, units, spec.kind, spec.key).text());
}

}  // namespace fluewright
