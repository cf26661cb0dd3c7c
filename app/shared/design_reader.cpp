// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/design_file.hpp"
#include "app/shared/direction_words.hpp"
#include "app/shared/fan_file.hpp"
#include "app/shared/field_check.hpp"
#include "app/shared/file_units.hpp"
#include "app/shared/file_value.hpp"
#include "app/shared/house_keys.hpp"
#include "app/shared/json_text.hpp"
#include "app/shared/said.hpp"
#include "app/shared/schema_check.hpp"
#include "app/shared/unknown_keys.hpp"
#include "engine/layout/conditions.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <set>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

/// Builds the design from JSON that follows the schema, and gathers everything that is wrong on the way.
class Reader {
 public:
  Reader(const ordered_json& file, const Library& library) : file_{file}, library_{library} {}

  ReadResult read();

 private:
  void read_conditions();
  void read_pieces();
  Piece read_piece(const ordered_json& json, ordered_json& kept);
  void read_fields(const ordered_json& json, const std::string& owner, Piece& piece, ordered_json& kept);
  GridPoint read_point(const ordered_json& json, const std::string& owner);
  void read_joints();
  std::optional<PortRef> read_port(const ordered_json& json, const std::string& owner);
  void read_walls();
  void read_fans();
  void read_acknowledged();
  void read_building();
  void read_others();

  const ordered_json& file_;
  const Library& library_;
  DesignDocument document_;
  std::vector<std::string> faults_;
};

void Reader::read_conditions() {
  for (const char* section : {"site", "room", "fire", "house"}) {
    ordered_json kept = ordered_json::object();
    const auto found = file_.find(section);
    if (found != file_.end()) {
      for (const auto& [key, value] : found->items()) kept[key] = value;
    }
    for (const Condition& condition : conditions()) {
      if (!condition.key.starts_with(section)) continue;
      const FieldSpec& spec = *library_.condition(condition.key);
      const std::string key = file_key(spec.kind, spec.key.substr(spec.key.find('.') + 1));
      const auto given = kept.find(key);
      if (given == kept.end()) {
        condition.set(document_.design, spec.fallback);
        continue;
      }
      if (auto value = value_in_file(*given, spec, fmt::format("{}, {}", section, key), faults_)) {
        condition.set(document_.design, *value);
      }
      kept.erase(key);
    }
    keep_under(document_.unknown, section, std::move(kept));
  }
}

GridPoint Reader::read_point(const ordered_json& json, const std::string& owner) {
  const auto count = [&](const char* key) {
    constexpr double counts_a_millimetre = 10.0;
    constexpr double rounding = 1e-6;
    const double counts = json.at(key).get<double>() * counts_a_millimetre;
    if (std::abs(counts - std::round(counts)) > rounding) {
      faults_.push_back(said("{}, at.{}: {} is not allowed; it must go in steps of 0.1 mm.", owner, key,
                                    quoted(json.at(key))));
    }
    return static_cast<std::int32_t>(std::lround(counts));
  };
  return {count("x_mm"), count("y_mm"), count("z_mm")};
}

void Reader::read_fields(const ordered_json& json, const std::string& owner, Piece& piece, ordered_json& kept) {
  ordered_json rest = json;
  const PieceType* type = library_.piece_type(piece.type);
  if (type != nullptr) {
    for (const FieldSpec& spec : type->fields) {
      const std::string key = file_key(spec.kind, spec.key);
      const auto given = json.find(key);
      if (given == json.end()) continue;
      if (auto value = value_in_file(*given, spec, fmt::format("{}, {}", owner, key), faults_)) piece.fields[spec.key] = *value;
      rest.erase(key);
    }
    for (const auto& [key, value] : rest.items()) {
      document_.remarks.push_back(said(
          "{} has a field “{}” that {} does not have here; it is kept and not used.", owner, key, type->name));
    }
  }
  keep_under(kept, "fields", std::move(rest));
}

Piece Reader::read_piece(const ordered_json& json, ordered_json& kept) {
  Piece piece;
  piece.id = text_in(json, "id");
  piece.type = text_in(json, "type");
  const std::string owner = said("Piece “{}”", piece.id);
  piece.label = text_in(json, "label");
  piece.notes = text_in(json, "notes");
  piece.at = read_point(json.at("at"), owner);
  piece.heading = heading_in(json);
  if (json.contains("turn")) piece.turn = *turn_of(text_in(json, "turn"));
  keep_unknown(json, {"id", "type", "label", "at", "heading", "facing", "facing_deg", "turn", "fields", "notes"}, kept);
  ordered_json kept_at = ordered_json::object();
  keep_unknown(json.at("at"), {"x_mm", "y_mm", "z_mm"}, kept_at);
  keep_under(kept, "at", std::move(kept_at));
  if (json.at("heading").is_object()) {
    ordered_json kept_heading = ordered_json::object();
    keep_unknown(json.at("heading"), {"azimuth_deg", "elevation_deg"}, kept_heading);
    keep_under(kept, "heading", std::move(kept_heading));
  }
  if (json.contains("fields")) read_fields(json["fields"], owner, piece, kept);
  if (library_.piece_type(piece.type) == nullptr) {
    document_.remarks.push_back(said(
        "{} is of a type “{}” that is not in the catalogue; it is kept and not calculated.", owner, piece.type));
  }
  return piece;
}

void Reader::read_pieces() {
  const auto found = file_.find("pieces");
  if (found == file_.end()) return;
  std::set<std::string, std::less<>> ids;
  ordered_json kept = ordered_json::object();
  for (const ordered_json& json : *found) {
    ordered_json kept_here = ordered_json::object();
    Piece piece = read_piece(json, kept_here);
    if (!ids.insert(piece.id).second) {
      faults_.push_back(
          said("Piece “{0}”, id: “{0}” stands twice; every piece needs an id of its own.", piece.id));
    }
    keep_under(kept, piece.id, std::move(kept_here));
    document_.design.pieces.push_back(std::move(piece));
  }
  keep_under(document_.unknown, "pieces", std::move(kept));
}

std::optional<PortRef> Reader::read_port(const ordered_json& json, const std::string& owner) {
  const auto text = json.get<std::string>();
  const auto dot = text.rfind('.');
  if (dot == std::string::npos || dot == 0 || dot + 1 == text.size()) {
    faults_.push_back(said("{}: {} is not allowed; it must be a piece, a dot and a port, like “p1.out”.", owner,
                                  quoted(json)));
    return std::nullopt;
  }
  return PortRef{text.substr(0, dot), text.substr(dot + 1)};
}

void Reader::read_joints() {
  const auto found = file_.find("joints");
  if (found == file_.end()) return;
  std::set<std::string, std::less<>> ids;
  for (const Piece& piece : document_.design.pieces) ids.insert(piece.id);
  ordered_json kept = ordered_json::object();
  std::size_t number = 0;
  for (const ordered_json& json : *found) {
    const std::string owner = said("Joint number {}", ++number);
    const auto a = read_port(json.at("a"), owner + ", a");
    const auto b = read_port(json.at("b"), owner + ", b");
    if (!a || !b) continue;
    for (const auto& [port, key] : {std::pair{*a, "a"}, std::pair{*b, "b"}}) {
      if (ids.find(port.piece) == ids.end()) {
        faults_.push_back(said("{}, {}: “{}” is not allowed; it must be the id of a piece of this design.",
                                      owner, key, port.piece));
      }
    }
    ordered_json kept_here = ordered_json::object();
    keep_unknown(json, {"a", "b"}, kept_here);
    keep_under(kept, json.at("a").get<std::string>() + " " + json.at("b").get<std::string>(), std::move(kept_here));
    document_.design.joints.push_back({*a, *b});
  }
  keep_under(document_.unknown, "joints", std::move(kept));
}

void Reader::read_walls() {
  const auto found = file_.find("walls");
  if (found == file_.end()) return;
  std::set<std::string, std::less<>> ids;
  ordered_json kept = ordered_json::object();
  for (const ordered_json& json : *found) {
    Wall wall;
    wall.id = text_in(json, "id");
    wall.name = text_in(json, "name");
    wall.citation.source = text_in(json, "source");
    wall.citation.standing = json.contains("standing") ? *standing_of(text_in(json, "standing")) : Standing::chosen;
    if (!ids.insert(wall.id).second) {
      faults_.push_back(said("Wall “{0}”, id: “{0}” stands twice; every wall needs an id of its own.", wall.id));
    }
    ordered_json kept_here = ordered_json::object();
    keep_unknown(json, {"id", "name", "source", "standing", "layers"}, kept_here);
    ordered_json kept_layers = ordered_json::object();
    for (const ordered_json& layer : json.at("layers")) {
      ordered_json kept_layer = ordered_json::object();
      keep_unknown(layer, {"material", "thickness_mm"}, kept_layer);
      keep_under(kept_layers, std::to_string(wall.layers.size()), std::move(kept_layer));
      wall.layers.push_back({text_in(layer, "material"), layer.at("thickness_mm").get<double>() * millimetre});
    }
    keep_under(kept_here, "layers", std::move(kept_layers));
    keep_under(kept, wall.id, std::move(kept_here));
    document_.design.walls.push_back(std::move(wall));
  }
  keep_under(document_.unknown, "walls", std::move(kept));
}

void Reader::read_fans() {
  const auto found = file_.find("fans");
  if (found == file_.end()) return;
  std::set<std::string, std::less<>> ids;
  ordered_json kept = ordered_json::object();
  for (const ordered_json& json : *found) {
    ordered_json kept_here = ordered_json::object();
    FanSheet sheet = read_fan_sheet(json, library_, faults_, kept_here);
    if (!ids.insert(sheet.id).second) {
      faults_.push_back(said("Fan “{0}”, id: “{0}” stands twice; every fan needs an id of its own.", sheet.id));
    }
    keep_under(kept, sheet.id, std::move(kept_here));
    document_.design.fans.push_back(std::move(sheet));
  }
  keep_under(document_.unknown, "fans", std::move(kept));
}

void Reader::read_acknowledged() {
  const auto found = file_.find("acknowledged");
  if (found == file_.end()) return;
  ordered_json kept = ordered_json::object();
  for (const ordered_json& json : *found) {
    ordered_json kept_here = ordered_json::object();
    keep_unknown(json, {"finding", "piece", "reason"}, kept_here);
    keep_under(kept, std::to_string(document_.design.acknowledged.size()), std::move(kept_here));
    document_.design.acknowledged.push_back({text_in(json, "finding"), text_in(json, "piece"), text_in(json, "reason")});
  }
  keep_under(document_.unknown, "acknowledged", std::move(kept));
}

void Reader::read_building() {
  const auto found = file_.find("building");
  if (found == file_.end()) return;
  HouseOutline house;
  ordered_json kept = *found;
  for (const auto& [key, length] : house_lengths(house)) {
    if (found->contains(key)) *length = (*found)[key].get<double>() * millimetre;
    kept.erase(key);
  }
  const bool sound = house.west < house.east && house.south < house.north && house.ceiling > 0.0 * metre &&
                     house.eaves <= house.ridge;
  if (!sound) {
    faults_.push_back(said("building: west must lie west of east, south south of north, the ceiling above the floor, the eaves "
                      "not above the ridge."));
  }
  document_.design.building = house;
  keep_under(document_.unknown, "building", std::move(kept));
}

void Reader::read_others() {
  document_.variant_name = text_in(file_, "variant");
  const auto found = file_.find("other_variants");
  if (found == file_.end()) return;
  for (const ordered_json& json : *found) {
    const std::string name = text_in(json, "variant");
    std::vector<std::string> faults = check_against_schema(json);
    if (faults.empty()) {
      ReadResult read = Reader(json, library_).read();
      if (auto* variant = std::get_if<DesignDocument>(&read)) {
        document_.others.push_back({name, std::move(variant->design), std::move(variant->unknown)});
        continue;
      }
      faults = std::get<FileFault>(read).messages;
    }
    for (const std::string& fault : faults) faults_.push_back(said("Variant “{}”: {}", name, fault));
  }
  if (file_.contains("variant_place")) {
    document_.place = std::min(file_["variant_place"].get<std::size_t>(), document_.others.size());
  }
}

ReadResult Reader::read() {
  document_.file_version = file_.at("fluewright_design").get<int>();
  document_.unknown = ordered_json::object();
  document_.design.title = text_in(file_, "title");
  document_.design.scene = text_in(file_, "scene");
  document_.design.notes = text_in(file_, "notes");
  read_conditions();
  read_pieces();
  read_joints();
  read_walls();
  read_fans();
  read_acknowledged();
  read_building();
  read_others();
  keep_unknown(file_,
               {"fluewright_design", "title", "scene", "site", "room", "fire", "house", "pieces", "joints", "walls", "fans",
                "acknowledged", "building", "notes", "variant", "variant_place", "other_variants"},
               document_.unknown);
  if (document_.file_version > current_file_version) {
    document_.read_only = true;
    document_.remarks.insert(
        document_.remarks.begin(),
        said(
            "This file is from a newer version of the program (its layout is number {}, this version knows number {}). "
            "It is open for reading only, so that nothing in it gets lost.",
            document_.file_version, current_file_version));
  }
  if (!faults_.empty()) return FileFault{std::move(faults_)};
  return std::move(document_);
}

std::string too_large(std::uintmax_t bytes) {
  return said("The file is {} MiB; a design may be at most {} MiB.",
                     decimal_text(static_cast<double>(bytes) / (1024.0 * 1024.0), 1), largest_design_file / (1024 * 1024));
}

/// The marker that says which layout a file has, or why there is none.
std::optional<std::string> marker_fault(const ordered_json& file) {
  if (!file.is_object() || !file.contains("fluewright_design")) {
    return said("This is JSON, but not a design: its marker “fluewright_design” is missing.");
  }
  const ordered_json& marker = file["fluewright_design"];
  constexpr std::int64_t highest = 1'000'000;
  if (!marker.is_number_integer() || marker.get<std::int64_t>() < 1 || marker.get<std::int64_t>() > highest) {
    return said("fluewright_design: {} is not allowed; it must be the number of a layout (1 in this version).",
                       quoted(marker));
  }
  return std::nullopt;
}

}  // namespace

std::string FileFault::text() const {
  constexpr std::size_t most = 20;
  std::string all;
  for (std::size_t i = 0; i < std::min(most, messages.size()); ++i) all += (i == 0 ? "" : "\n") + messages[i];
  if (messages.size() > most) all += "\n" + said("... and {} more.", messages.size() - most);
  return all;
}

ReadResult read_design_text(std::string_view text, const Library& library) {
  if (text.size() > largest_design_file) return FileFault{{too_large(text.size())}};
  auto parsed = parse_json(text);
  if (const auto* fault = std::get_if<JsonFault>(&parsed)) return FileFault{{fault->message}};
  const ordered_json& file = std::get<ordered_json>(parsed);
  if (auto fault = marker_fault(file)) return FileFault{{*fault}};
  auto faults = check_against_schema(file);
  ReadResult result = faults.empty() ? Reader(file, library).read() : ReadResult{FileFault{std::move(faults)}};
  auto* fault = std::get_if<FileFault>(&result);
  if (fault != nullptr && file["fluewright_design"].get<int>() > current_file_version) {
    fault->messages.insert(fault->messages.begin(),
                           said("This file is from a newer version of the program, and this version cannot make it out:"));
  }
  return result;
}

}  // namespace fluewright
