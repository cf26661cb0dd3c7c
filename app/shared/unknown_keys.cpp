// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/unknown_keys.hpp"

#include <algorithm>

namespace fluewright {

using nlohmann::ordered_json;

void keep_unknown(const ordered_json& from, std::initializer_list<std::string_view> known, ordered_json& kept) {
  for (const auto& [key, value] : from.items()) {
    if (std::find(known.begin(), known.end(), key) == known.end()) kept[key] = value;
  }
}

void keep_under(ordered_json& parent, const std::string& key, ordered_json kept) {
  if (!kept.empty()) parent[key] = std::move(kept);
}

const ordered_json& kept_under(const ordered_json& kept, const std::string& key) {
  static const ordered_json nothing = ordered_json::object();
  if (!kept.is_object()) return nothing;
  const auto found = kept.find(key);
  return found != kept.end() && found->is_object() ? *found : nothing;
}

void put_back(ordered_json& object, const ordered_json& kept) {
  if (!kept.is_object()) return;
  for (const auto& [key, value] : kept.items()) {
    if (!object.contains(key)) object[key] = value;
  }
}

}  // namespace fluewright
