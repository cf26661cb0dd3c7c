// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/layout/value_range.hpp"

#include <algorithm>
#include <cmath>
#include <type_traits>

namespace fluewright {

namespace {

/// The value as a plain number, for comparing it with another of the same alternative; nothing for words.
std::optional<double> number_in(const FieldValue& value) {
  return std::visit(
      [](const auto& held) -> std::optional<double> {
        using Held = std::decay_t<decltype(held)>;
        if constexpr (std::is_same_v<Held, std::string>) {
          return std::nullopt;
        } else if constexpr (std::is_same_v<Held, Temperature>) {
          return in_kelvin(held);
        } else if constexpr (std::is_same_v<Held, Count>) {
          return static_cast<double>(held.value);
        } else {
          return held.value();
        }
      },
      value);
}

/// A limit read from data and a length added up from parts may differ in the last digits.
bool is_above(double value, double limit) { return value - limit > 1e-9 * std::max(1e-3, std::abs(limit)); }

bool is_within(const FieldSpec& spec, double value) {
  if (!std::isfinite(value)) return false;
  if (spec.lowest && is_above(*number_in(*spec.lowest), value)) return false;
  return !spec.highest || !is_above(value, *number_in(*spec.highest));
}

Finding finding_of(FindingCode code, const FieldSpec& spec, const FieldValue& value) {
  Finding finding;
  finding.code = code;
  finding.field = spec.key;
  finding.value = value;
  finding.lowest = spec.lowest;
  finding.highest = spec.highest;
  return finding;
}

std::optional<Finding> check_word(const FieldSpec& spec, const FieldValue& value, const std::string& word) {
  if (spec.kind != FieldKind::choice) return std::nullopt;
  if (std::find(spec.choices.begin(), spec.choices.end(), word) != spec.choices.end()) return std::nullopt;
  Finding finding = finding_of(FindingCode::out_of_range, spec, value);
  for (const std::string& choice : spec.choices) finding.text += (finding.text.empty() ? "" : ", ") + choice;
  return finding;
}

}  // namespace

std::optional<Finding> check_range(const FieldSpec& spec, const FieldValue& value) {
  if (value.index() != spec.fallback.index()) return finding_of(FindingCode::wrong_kind, spec, value);
  if (const auto* word = std::get_if<std::string>(&value)) return check_word(spec, value, *word);
  if (is_within(spec, *number_in(value))) return std::nullopt;
  return finding_of(FindingCode::out_of_range, spec, value);
}

}  // namespace fluewright
