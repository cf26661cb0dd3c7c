// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/schema_check.hpp"

#include "app/shared/library_reader.hpp"
#include "app/shared/said.hpp"

#include <fmt/format.h>
#include <valijson/adapters/nlohmann_json_adapter.hpp>
#include <valijson/schema.hpp>
#include <valijson/schema_parser.hpp>
#include <valijson/validation_results.hpp>
#include <valijson/validator.hpp>

#include <algorithm>
#include <charconv>
#include <memory>

namespace fluewright {

namespace {

using nlohmann::json;
using nlohmann::ordered_json;
using Steps = std::vector<std::string>;

/// The shipped schema, once as the validator wants it and once as text to explain it from.
struct ShippedSchema {
  json text;
  valijson::Schema compiled;

  ShippedSchema() : text(json::parse(design_schema())) {
    valijson::SchemaParser parser;
    parser.populateSchema(valijson::adapters::NlohmannJsonAdapter(text), compiled);
  }
};

const ShippedSchema& shipped_schema() {
  static const ShippedSchema schema;
  return schema;
}

/// "<root>", "[pieces]", "[3]" -> "pieces", "3".
Steps steps_of(const std::vector<std::string>& context) {
  Steps steps;
  for (const std::string& part : context) {
    if (part.size() >= 2 && part.front() == '[' && part.back() == ']') steps.push_back(part.substr(1, part.size() - 2));
  }
  return steps;
}

bool starts_with(const Steps& longer, const Steps& shorter) {
  return shorter.size() <= longer.size() && std::equal(shorter.begin(), shorter.end(), longer.begin());
}

std::size_t index_of(const std::string& step) {
  std::size_t index = 0;
  std::from_chars(step.data(), step.data() + step.size(), index);
  return index;
}

const ordered_json* value_at(const ordered_json& file, const Steps& steps) {
  const ordered_json* at = &file;
  for (const std::string& step : steps) {
    if (at->is_object() && at->contains(step)) {
      at = &(*at)[step];
    } else if (at->is_array() && index_of(step) < at->size()) {
      at = &(*at)[index_of(step)];
    } else {
      return nullptr;
    }
  }
  return at;
}

const json& resolved(const json& node) {
  if (!node.contains("$ref")) return node;
  const std::string ref = node["$ref"];
  return shipped_schema().text.at(json::json_pointer(ref.substr(1)));  // "#/definitions/piece"
}

const json* schema_at(const Steps& steps) {
  const json* node = &shipped_schema().text;
  for (const std::string& step : steps) {
    if (node->contains("properties") && (*node)["properties"].contains(step)) {
      node = &resolved((*node)["properties"][step]);
    } else if (node->contains("items")) {
      node = &resolved((*node)["items"]);
    } else {
      return nullptr;
    }
  }
  return node;
}

std::string number_text(const json& number) { return fmt::format("{}", number.get<double>()); }

/// "a number from 0 to 0.6", "one of east, north".
std::string allowed_text(const json& node) {
  if (node.contains("oneOf")) return node.value("description", "");
  if (node.contains("enum")) {
    std::string words;
    for (const json& word : node["enum"]) words += (words.empty() ? "" : ", ") + word.get<std::string>();
    return said("one of ") + words;
  }
  const std::string type = node.value("type", "");
  if (type == "number" || type == "integer") {
    std::string text = type == "integer" ? said("a whole number") : said("a number");
    if (node.contains("minimum")) text += " from " + number_text(node["minimum"]);
    if (node.contains("maximum")) text += " to " + number_text(node["maximum"]);
    return text;
  }
  if (type == "string") {
    std::string text = said("a text");
    if (node.contains("maxLength")) {
      text += said(" of {} to {} characters", node.value("minLength", 0), node["maxLength"].get<int>());
    } else if (node.contains("minLength")) {
      text += said(" that is not empty");
    }
    return text;
  }
  if (type == "array" && node.contains("minItems")) {
    return said("a list of {} to {}", node["minItems"].get<int>(), node.value("maxItems", 0));
  }
  return type == "array" ? said("a list [ ]") : said("an object { }");
}

/// "Piece “p4”, at.x_mm".
std::string subject(const ordered_json& file, const Steps& steps) {
  if (steps.empty()) return said("The design");
  std::string text;
  std::size_t next = 1;
  const auto numbered = [&](std::string_view one) {
    next = 2;
    const ordered_json* entry = value_at(file, {steps[0], steps[1]});
    const bool named = entry != nullptr && entry->is_object() && entry->contains("id") && (*entry)["id"].is_string();
    text = named ? fmt::format("{} “{}”", one, (*entry)["id"].get<std::string>())
                 : said("{} number {}", one, index_of(steps[1]) + 1);
  };
  if (steps.size() >= 2 && steps[0] == "pieces") {
    numbered(said("Piece"));
  } else if (steps.size() >= 2 && steps[0] == "joints") {
    numbered(said("Joint"));
  } else if (steps.size() >= 2 && steps[0] == "walls") {
    numbered(said("Wall"));
  } else if (steps.size() >= 2 && steps[0] == "fans") {
    numbered(said("Fan"));
  } else {
    text = steps[0];
  }
  std::string rest;
  for (; next < steps.size(); ++next) rest += (rest.empty() ? "" : ".") + steps[next];
  return rest.empty() ? text : text + ", " + rest;
}

std::vector<std::string> sentences(const ordered_json& file, const Steps& steps) {
  const ordered_json* value = value_at(file, steps);
  const json* node = schema_at(steps);
  if (value == nullptr || node == nullptr) return {};
  std::vector<std::string> missing;
  if (value->is_object() && node->contains("required")) {
    for (const json& key : (*node)["required"]) {
      if (!value->contains(key.get<std::string>())) {
        missing.push_back(said("{}: “{}” is missing.", subject(file, steps), key.get<std::string>()));
      }
    }
  }
  if (!missing.empty()) return missing;
  return {
      said("{}: {} is not allowed; it must be {}.", subject(file, steps), quoted(*value), allowed_text(*node))};
}

}  // namespace

std::string quoted(const ordered_json& value) {
  constexpr std::size_t longest = 60;
  if (value.is_object()) return said("an object");
  if (value.is_array()) return said("a list");
  std::string text = value.is_string() ? value.get<std::string>() : value.dump();
  if (text.size() > longest) {
    std::size_t cut = longest;
    while (cut > 0 && (static_cast<unsigned char>(text[cut]) & 0xC0u) == 0x80u) --cut;  // not inside a UTF-8 character
    text = text.substr(0, cut) + "…";
  }
  return value.is_string() ? "“" + text + "”" : text;
}

std::vector<std::string> check_against_schema(const ordered_json& file) {
  const json plain = file;
  valijson::Validator validator;
  valijson::ValidationResults results;
  if (validator.validate(shipped_schema().compiled, valijson::adapters::NlohmannJsonAdapter(plain), &results))
    return {};
  // An error cascades up to the root: only the deepest of each chain says anything.
  std::vector<Steps> deepest;
  for (const auto& error : results) {
    const Steps steps = steps_of(error.context);
    const bool told =
        std::any_of(deepest.begin(), deepest.end(), [&](const Steps& s) { return starts_with(s, steps); });
    if (!told) deepest.push_back(steps);
  }
  std::vector<std::string> messages;
  for (const Steps& steps : deepest) {
    for (std::string& sentence : sentences(file, steps)) messages.push_back(std::move(sentence));
  }
  if (messages.empty()) messages.emplace_back(said("The file does not follow the layout of a design."));
  return messages;
}

}  // namespace fluewright
