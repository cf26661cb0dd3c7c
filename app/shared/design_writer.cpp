// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/design_file.hpp"
#include "app/shared/direction_words.hpp"
#include "app/shared/fan_file.hpp"
#include "app/shared/file_units.hpp"
#include "app/shared/house_keys.hpp"
#include "app/shared/json_text.hpp"
#include "app/shared/unknown_keys.hpp"
#include "engine/layout/conditions.hpp"

#include <cmath>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

void put_text(ordered_json& object, const char* key, const std::string& text) {
  if (!text.empty()) object[key] = text;
}

ordered_json section_json(const Design& design, const Library& library, std::string_view section) {
  ordered_json json = ordered_json::object();
  for (const Condition& condition : conditions()) {
    if (!condition.key.starts_with(section)) continue;
    const FieldSpec& spec = *library.condition(condition.key);
    const std::string key = file_key(spec.kind, spec.key.substr(spec.key.find('.') + 1));
    json[key] = to_file_value(condition.get(design), spec.kind, spec.key);
  }
  return json;
}

/// Of the house only what differs from the usual: most designs say nothing of it.
ordered_json house_json(const Design& design, const Library& library) {
  ordered_json json = ordered_json::object();
  for (const Condition& condition : conditions()) {
    if (!condition.key.starts_with("house")) continue;
    const FieldSpec& spec = *library.condition(condition.key);
    if (condition.get(design) == spec.fallback) continue;
    json[file_key(spec.kind, spec.key.substr(spec.key.find('.') + 1))] =
        to_file_value(condition.get(design), spec.kind, spec.key);
  }
  return json;
}

ordered_json acknowledged_json(const Acknowledgement& acknowledged, const ordered_json& kept) {
  ordered_json json = {{"finding", acknowledged.finding}};
  put_text(json, "piece", acknowledged.piece);
  json["reason"] = acknowledged.reason;
  put_back(json, kept);
  return json;
}

ordered_json millimetres(std::int32_t counts) {
  const double number = in(static_cast<double>(counts) * grid_count, millimetre);
  return shortest_number(number, counts, [](double read) { return static_cast<double>(std::lround(read * 10.0)); });
}

ordered_json piece_json(const Piece& piece, const Library& library, const ordered_json& kept) {
  ordered_json json;
  json["id"] = piece.id;
  json["type"] = piece.type;
  put_text(json, "label", piece.label);
  json["at"] = {
      {"x_mm", millimetres(piece.at.x)}, {"y_mm", millimetres(piece.at.y)}, {"z_mm", millimetres(piece.at.z)}};
  put_back(json["at"], kept_under(kept, "at"));
  put_heading(json, piece.heading);
  if (json["heading"].is_object()) put_back(json["heading"], kept_under(kept, "heading"));
  if (piece.turn != Turn::left) json["turn"] = file_word(piece.turn);
  ordered_json fields = ordered_json::object();
  if (const PieceType* type = library.piece_type(piece.type)) {
    for (const FieldSpec& spec : type->fields) {
      const auto given = piece.fields.find(spec.key);
      if (given != piece.fields.end())
        fields[file_key(spec.kind, spec.key)] = to_file_value(given->second, spec.kind, spec.key);
    }
  }
  put_back(fields, kept_under(kept, "fields"));
  if (!fields.empty()) json["fields"] = std::move(fields);
  put_text(json, "notes", piece.notes);
  put_back(json, kept);
  return json;
}

std::string port_text(const PortRef& port) { return port.piece + "." + port.port; }

ordered_json joint_json(const Joint& joint, const ordered_json& kept) {
  ordered_json json = {{"a", port_text(joint.a)}, {"b", port_text(joint.b)}};
  put_back(json, kept_under(kept, port_text(joint.a) + " " + port_text(joint.b)));
  return json;
}

double enter_millimetres(double number) { return (number * millimetre).value(); }

ordered_json wall_json(const Wall& wall, const ordered_json& kept) {
  ordered_json json;
  json["id"] = wall.id;
  put_text(json, "name", wall.name);
  ordered_json layers = ordered_json::array();
  for (const WallLayer& layer : wall.layers) {
    ordered_json entry = {
        {"material", layer.material},
        {"thickness_mm", shortest_number(in(layer.thickness, millimetre), layer.thickness.value(), enter_millimetres)}};
    put_back(entry, kept_under(kept_under(kept, "layers"), std::to_string(layers.size())));
    layers.push_back(std::move(entry));
  }
  json["layers"] = std::move(layers);
  put_text(json, "source", wall.citation.source);
  if (!wall.citation.source.empty()) json["standing"] = file_word(wall.citation.standing);
  put_back(json, kept);
  return json;
}

ordered_json building_json(const HouseOutline& house, const ordered_json& kept) {
  ordered_json json;
  for (const auto& [key, length] : house_lengths(house)) {
    json[key] = shortest_number(in(*length, millimetre), length->value(), enter_millimetres);
  }
  put_back(json, kept);
  return json;
}

ordered_json design_json(const Design& design, const ordered_json& kept, const Library& library) {
  ordered_json file;
  file["fluewright_design"] = current_file_version;
  file["title"] = design.title;
  put_text(file, "scene", design.scene);
  for (const char* section : {"site", "room", "fire"}) {
    file[section] = section_json(design, library, section);
    put_back(file[section], kept_under(kept, section));
  }
  ordered_json house = house_json(design, library);
  put_back(house, kept_under(kept, "house"));
  if (!house.empty()) file["house"] = std::move(house);
  file["pieces"] = ordered_json::array();
  for (const Piece& piece : design.pieces) {
    file["pieces"].push_back(piece_json(piece, library, kept_under(kept_under(kept, "pieces"), piece.id)));
  }
  file["joints"] = ordered_json::array();
  for (const Joint& joint : design.joints) file["joints"].push_back(joint_json(joint, kept_under(kept, "joints")));
  if (!design.walls.empty()) {
    file["walls"] = ordered_json::array();
    for (const Wall& wall : design.walls) {
      file["walls"].push_back(wall_json(wall, kept_under(kept_under(kept, "walls"), wall.id)));
    }
  }
  if (!design.fans.empty()) {
    file["fans"] = ordered_json::array();
    for (const FanSheet& sheet : design.fans) {
      file["fans"].push_back(fan_sheet_json(sheet, library, kept_under(kept_under(kept, "fans"), sheet.id)));
    }
  }
  if (!design.acknowledged.empty()) {
    file["acknowledged"] = ordered_json::array();
    for (const Acknowledgement& acknowledged : design.acknowledged) {
      const std::string number = std::to_string(file["acknowledged"].size());
      file["acknowledged"].push_back(acknowledged_json(acknowledged, kept_under(kept_under(kept, "acknowledged"), number)));
    }
  }
  if (design.building) file["building"] = building_json(*design.building, kept_under(kept, "building"));
  put_text(file, "notes", design.notes);
  put_back(file, kept);
  return file;
}

}  // namespace

std::string write_design_text(const DesignDocument& document, const Library& library) {
  ordered_json file = design_json(document.design, document.unknown, library);
  put_text(file, "variant", document.variant_name);
  if (!document.others.empty()) {
    file["variant_place"] = document.place;
    file["other_variants"] = ordered_json::array();
    for (const Variant& other : document.others) {
      ordered_json json = design_json(other.design, other.unknown, library);
      put_text(json, "variant", other.name);
      file["other_variants"].push_back(std::move(json));
    }
  }
  return lay_out_json(file);
}

}  // namespace fluewright
