// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/file_value.hpp"

#include "app/shared/field_check.hpp"
#include "app/shared/file_units.hpp"
#include "app/shared/schema_check.hpp"

#include <fmt/format.h>

namespace fluewright {

using nlohmann::ordered_json;

std::optional<FieldValue> value_in_file(const ordered_json& json, const FieldSpec& spec, const std::string& subject,
                                        std::vector<std::string>& faults) {
  std::optional<FieldValue> value;
  if (is_word_kind(spec.kind)) {
    if (json.is_string()) value = json.get<std::string>();
  } else if (json.is_number()) {
    value = from_file_number(json.get<double>(), spec.kind, spec.key);
  }
  if (value && is_allowed(*value, spec)) return value;
  faults.push_back(fmt::format("{}: {} is not allowed; it must be {}.", subject, quoted(json), allowed_in_file(spec)));
  return std::nullopt;
}

std::string text_in(const ordered_json& object, const char* key) {
  const auto found = object.find(key);
  return found == object.end() ? std::string{} : found->get<std::string>();
}

}  // namespace fluewright
