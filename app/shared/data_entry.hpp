// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/citation.hpp"

#include <nlohmann/json.hpp>

#include <set>
#include <string>
#include <string_view>

namespace fluewright {

/// One object of a shipped data file, read strictly: every key must be asked for, every value be of its kind and within
/// bounds. A fault is a broken build and throws std::runtime_error naming file, entry and key.
class DataEntry {
 public:
  DataEntry(const nlohmann::ordered_json& json, std::string where);

  [[nodiscard]] bool has(const char* key) const { return json_.contains(key); }
  [[nodiscard]] std::string text(const char* key);
  [[nodiscard]] double number(const char* key, double lowest, double highest);
  [[nodiscard]] const nlohmann::ordered_json& list(const char* key);
  [[nodiscard]] const nlohmann::ordered_json& any(const char* key);
  /// {"source": "...", "standing": "..."} under the key.
  [[nodiscard]] Citation citation(const char* key);
  /// Every key was asked for, or it is a spelling mistake.
  void finish() const;

  [[nodiscard]] const std::string& where() const { return where_; }
  [[noreturn]] void fail(const std::string& what) const;

 private:
  const nlohmann::ordered_json& json_;
  std::string where_;
  std::set<std::string, std::less<>> asked_;
};

}  // namespace fluewright
