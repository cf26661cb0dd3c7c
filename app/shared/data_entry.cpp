// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/data_entry.hpp"

#include "app/shared/direction_words.hpp"

#include <fmt/format.h>

#include <stdexcept>

namespace fluewright {

using nlohmann::ordered_json;

DataEntry::DataEntry(const ordered_json& json, std::string where) : json_{json}, where_{std::move(where)} {
  if (!json_.is_object()) fail("an object is wanted here");
}

void DataEntry::fail(const std::string& what) const { throw std::runtime_error(fmt::format("{}: {}", where_, what)); }

const ordered_json& DataEntry::any(const char* key) {
  const auto found = json_.find(key);
  if (found == json_.end()) fail(fmt::format("“{}” is missing", key));
  asked_.insert(key);
  return *found;
}

std::string DataEntry::text(const char* key) {
  const ordered_json& value = any(key);
  if (!value.is_string() || value.get_ref<const std::string&>().empty()) fail(fmt::format("“{}” must be a text", key));
  return value.get<std::string>();
}

double DataEntry::number(const char* key, double lowest, double highest) {
  const ordered_json& value = any(key);
  if (!value.is_number()) fail(fmt::format("“{}” must be a number", key));
  const double number = value.get<double>();
  if (!(number >= lowest && number <= highest)) {
    fail(fmt::format("“{}” is {}; it must lie from {} to {}", key, number, lowest, highest));
  }
  return number;
}

const ordered_json& DataEntry::list(const char* key) {
  const ordered_json& value = any(key);
  if (!value.is_array()) fail(fmt::format("“{}” must be a list", key));
  return value;
}

Citation DataEntry::citation(const char* key) {
  DataEntry entry(any(key), fmt::format("{}, {}", where_, key));
  Citation citation;
  citation.source = entry.text("source");
  const auto standing = standing_of(entry.text("standing"));
  if (!standing) entry.fail("“standing” must be published, from_memory, common_practice or chosen");
  citation.standing = *standing;
  entry.finish();
  return citation;
}

void DataEntry::finish() const {
  for (const auto& [key, value] : json_.items()) {
    if (asked_.find(key) == asked_.end()) fail(fmt::format("“{}” is no key that is known here", key));
  }
}

}  // namespace fluewright
