// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/direction_words.hpp"
#include "app/shared/field_check.hpp"
#include "app/shared/file_units.hpp"
#include "app/shared/report.hpp"
#include "app/shared/text_table.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

ordered_json citation_json(const Citation& citation) {
  return {{"source", citation.source}, {"standing", file_word(citation.standing)}};
}

ordered_json range_json(const FieldSpec& field, const std::optional<FieldValue>& low,
                        const std::optional<FieldValue>& high) {
  if (!low || !high) return nullptr;
  return ordered_json::array({to_file_value(*low, field.kind, field.key), to_file_value(*high, field.kind, field.key)});
}

ordered_json field_json(const FieldSpec& field) {
  ordered_json json = {{"key", file_key(field.kind, field.key)},
                       {"label", field.label},
                       {"kind", word(field.kind)},
                       {"help", field.help},
                       {"fallback", to_file_value(field.fallback, field.kind, field.key)}};
  if (field.lowest) json["allowed"] = range_json(field, field.lowest, field.highest);
  if (field.usual_low) json["usual"] = range_json(field, field.usual_low, field.usual_high);
  if (!field.choices.empty()) json["choices"] = field.choices;
  json["source"] = citation_json(field.citation);
  return json;
}

std::string citation_text(const Citation& citation) {
  return fmt::format("{} ({})", citation.source, word(citation.standing));
}

std::string field_text(const FieldSpec& field, UnitSystem units) {
  std::string text = fmt::format("{}: {}; {}", field.label, show(field.fallback, units, field.kind, field.key).text(),
                                 allowed_text(field, units));
  return text + " — " + citation_text(field.citation);
}

}  // namespace

ordered_json catalogue_json(const Library& library) {
  ordered_json pieces = ordered_json::array();
  for (const PieceType& type : library.piece_types) {
    ordered_json json = {{"id", type.id},
                         {"name", type.name},
                         {"family", type.family},
                         {"shape", type.shape},
                         {"summary", type.summary}};
    json["fields"] = ordered_json::array();
    for (const FieldSpec& field : type.fields) json["fields"].push_back(field_json(field));
    json["sources"] = ordered_json::array();
    for (const Citation& citation : type.citations) json["sources"].push_back(citation_json(citation));
    pieces.push_back(std::move(json));
  }
  return {{"pieces", std::move(pieces)}};
}

std::string catalogue_text(const Library& library, UnitSystem units) {
  constexpr std::size_t width = 100;
  std::string text;
  for (const PieceType& type : library.piece_types) {
    text += fmt::format("{}{} ({}, {})\n", text.empty() ? "" : "\n", type.name, type.id, type.family);
    text += wrapped(type.summary, width, 2);
    for (const FieldSpec& field : type.fields) text += wrapped(field_text(field, units), width, 4, 2);
    for (const Citation& citation : type.citations) text += wrapped("source: " + citation_text(citation), width, 4, 2);
  }
  return text;
}

}  // namespace fluewright
