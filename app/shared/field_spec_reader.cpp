// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/field_spec_reader.hpp"

#include "app/shared/data_entry.hpp"
#include "app/shared/field_check.hpp"
#include "app/shared/file_units.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

FieldValue value_in(const ordered_json& json, const FieldSpec& spec, const DataEntry& entry, const char* what) {
  if (is_word_kind(spec.kind)) {
    if (!json.is_string()) entry.fail(fmt::format("“{}” must be a word", what));
    return json.get<std::string>();
  }
  if (!json.is_number()) entry.fail(fmt::format("“{}” must be a number", what));
  const auto value = from_file_number(json.get<double>(), spec.kind, spec.key);
  if (!value) entry.fail(fmt::format("“{}” must be a whole number", what));
  return *value;
}

struct Range {
  FieldValue low;
  FieldValue high;
};

std::optional<Range> range_in(DataEntry& entry, const FieldSpec& spec, const char* key) {
  if (!entry.has(key)) return std::nullopt;
  const ordered_json& list = entry.list(key);
  if (list.size() != 2 || !list[0].is_number() || !list[1].is_number() || list[0] > list[1]) {
    entry.fail(fmt::format("“{}” must be two numbers, the lower first", key));
  }
  return Range{value_in(list[0], spec, entry, key), value_in(list[1], spec, entry, key)};
}

void read_numbers(DataEntry& entry, FieldSpec& spec) {
  if (entry.any("unit") != file_unit(spec.kind, spec.key)) {
    entry.fail(fmt::format("“unit” must be “{}”", file_unit(spec.kind, spec.key)));
  }
  const auto allowed = range_in(entry, spec, "allowed");
  if (!allowed) entry.fail("“allowed” is missing");
  spec.lowest = allowed->low;
  spec.highest = allowed->high;
  const auto usual = range_in(entry, spec, "usual");
  if (!usual) return;
  spec.usual_low = usual->low;
  spec.usual_high = usual->high;
  if (!is_allowed(usual->low, spec) || !is_allowed(usual->high, spec)) entry.fail("“usual” lies outside “allowed”");
}

}  // namespace

FieldSpec read_field_spec(const ordered_json& json, const std::string& where) {
  FieldSpec spec;
  DataEntry unnamed(json, where);
  spec.key = unnamed.text("key");
  DataEntry entry(json, fmt::format("{}, {}", where, spec.key));
  (void)entry.text("key");
  spec.label = entry.text("label");
  spec.help = entry.text("help");
  const auto kind = field_kind_of(entry.text("kind"));
  if (!kind) entry.fail("“kind” is not known");
  spec.kind = *kind;
  spec.fallback = value_in(entry.any("fallback"), spec, entry, "fallback");
  if (spec.kind == FieldKind::choice) {
    for (const ordered_json& choice : entry.list("choices")) spec.choices.push_back(choice.get<std::string>());
  }
  if (!is_word_kind(spec.kind)) read_numbers(entry, spec);
  if (!is_allowed(spec.fallback, spec)) entry.fail("“fallback” is not allowed by its own range or choices");
  spec.citation = entry.citation("source");
  entry.finish();
  return spec;
}

}  // namespace fluewright
