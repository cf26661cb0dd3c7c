// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/library_reader.hpp"

#include "app/shared/data_entry.hpp"
#include "app/shared/field_check.hpp"
#include "app/shared/field_spec_reader.hpp"
#include "app/shared/file_units.hpp"
#include "app/shared/json_text.hpp"
#include "app/shared/library_check.hpp"
#include "resources/embedded.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <stdexcept>

namespace fluewright {

namespace {

using nlohmann::ordered_json;

std::string_view embedded_text(std::string_view name) {
  for (const EmbeddedFile& file : embedded_files()) {
    if (file.name == name) return file.text;
  }
  throw std::runtime_error(fmt::format("{}: is not among the data of this program", name));
}

ordered_json embedded_json(std::string_view name) {
  auto parsed = parse_json(embedded_text(name));
  if (const auto* fault = std::get_if<JsonFault>(&parsed)) {
    throw std::runtime_error(fmt::format("{}: {}", name, fault->message));
  }
  return std::get<ordered_json>(std::move(parsed));
}

/// Reads every entry of a file's one list with `read`, and sees to it that no id stands twice.
template <class Item, class Read>
std::vector<Item> read_list(const char* file, const char* key, Read read) {
  const ordered_json json = embedded_json(file);
  DataEntry top(json, file);
  (void)top.text("about");
  std::vector<Item> items;
  for (const ordered_json& entry : top.list(key)) {
    const std::string name = entry.is_object() && entry.contains("id") && entry["id"].is_string()
                                 ? entry["id"].get<std::string>()
                                 : fmt::format("number {}", items.size() + 1);
    DataEntry data(entry, fmt::format("{}, {}", file, name));
    items.push_back(read(data));
    data.finish();
  }
  top.finish();
  return items;
}

Material read_material(DataEntry& data) {
  Material material;
  material.id = data.text("id");
  material.name = data.text("name");
  material.density = data.number("density_kg_m3", 1.0, 9000.0) * kilogram_per_cubic_metre;
  material.specific_heat = data.number("specific_heat_J_kgK", 100.0, 5000.0) * joule_per_kilogram_kelvin;
  for (const ordered_json& json : data.list("conductivity")) {
    DataEntry point(json, data.where() + ", conductivity");
    material.conductivity_points.push_back(
        {celsius(point.number("at_C", -50.0, 1600.0)), point.number("W_mK", 0.01, 500.0) * watt_per_metre_kelvin});
    point.finish();
    const auto count = material.conductivity_points.size();
    if (count > 1 && !(material.conductivity_points[count - 2].at < material.conductivity_points[count - 1].at)) {
      point.fail("the points must rise in temperature");
    }
  }
  if (material.conductivity_points.empty()) data.fail("“conductivity” needs at least one point");
  material.emissivity = data.number("emissivity", 0.01, 1.0);
  material.roughness = data.number("roughness_mm", 0.0, 20.0) * millimetre;
  material.thermal_citation = data.citation("thermal_source");
  material.roughness_citation = data.citation("roughness_source");
  material.emissivity_citation = data.citation("emissivity_source");
  return material;
}

Wall read_wall(DataEntry& data) {
  Wall wall;
  wall.id = data.text("id");
  wall.name = data.text("name");
  for (const ordered_json& json : data.list("layers")) {
    DataEntry layer(json, data.where() + ", layers");
    wall.layers.push_back({layer.text("material"), layer.number("thickness_mm", 0.1, 2000.0) * millimetre});
    layer.finish();
  }
  wall.citation = data.citation("source");
  return wall;
}

WoodSpecies read_wood(DataEntry& data) {
  WoodSpecies wood;
  wood.id = data.text("id");
  wood.name = data.text("name");
  wood.analysis.carbon = data.number("carbon_share", 0.3, 0.7);
  wood.analysis.hydrogen = data.number("hydrogen_share", 0.03, 0.1);
  wood.analysis.oxygen = data.number("oxygen_share", 0.3, 0.6);
  wood.analysis.nitrogen = data.number("nitrogen_share", 0.0, 0.05);
  wood.analysis.ash = data.number("ash_share", 0.0, 0.2);
  wood.analysis.net_heating_value_daf =
      data.number("net_heating_value_daf_MJ_kg", 15.0, 25.0) * 1e6 * joule_per_kilogram;
  wood.citation = data.citation("source");
  const double sum = wood.analysis.carbon + wood.analysis.hydrogen + wood.analysis.oxygen + wood.analysis.nitrogen;
  constexpr double rounding = 1e-6;
  if (!(sum > 1.0 - rounding && sum < 1.0 + rounding))
    data.fail("the shares of the dry, ash-free substance must add up to 1");
  return wood;
}

FanSheet read_fan(DataEntry& data, const std::vector<FieldSpec>& specs) {
  const auto value = [&specs](DataEntry& entry, std::string_view key) {
    const auto spec = std::find_if(specs.begin(), specs.end(), [key](const FieldSpec& s) { return s.key == key; });
    if (spec == specs.end()) entry.fail(fmt::format("“{}” is not among the fields", key));
    const std::string name = file_key(spec->kind, spec->key);
    const ordered_json& json = entry.any(name.c_str());
    const auto read = json.is_number()   ? from_file_number(json.get<double>(), spec->kind, spec->key)
                      : json.is_string() ? std::optional{FieldValue{json.get<std::string>()}}
                                         : std::nullopt;
    if (!read || !is_allowed(*read, *spec)) entry.fail(fmt::format("“{}” must be {}", name, allowed_in_file(*spec)));
    return *read;
  };
  FanSheet sheet;
  sheet.id = data.text("id");
  sheet.name = data.text("name");
  for (const ordered_json& json : data.list("points")) {
    DataEntry point(json, data.where() + ", points");
    sheet.points.push_back({std::get<VolumeFlow>(value(point, "flow")), std::get<Pressure>(value(point, "head"))});
    point.finish();
  }
  for (const FanField& field : fan_fields()) field.set(sheet, value(data, field.key));
  sheet.citation = data.citation("source");
  return sheet;
}

void read_fans(Library& library) {
  constexpr const char* file = "fans.json";
  const ordered_json json = embedded_json(file);
  DataEntry top(json, file);
  (void)top.text("about");
  for (const ordered_json& entry : top.list("fields")) library.fan_fields.push_back(read_field_spec(entry, file));
  for (const ordered_json& entry : top.list("fans")) {
    DataEntry data(entry, fmt::format("{}, number {}", file, library.fans.size() + 1));
    library.fans.push_back(read_fan(data, library.fan_fields));
    data.finish();
  }
  top.finish();
}

MoistureState read_moisture_state(DataEntry& data) {
  MoistureState state;
  state.id = data.text("id");
  state.name = data.text("name");
  state.usual_low = data.number("usual_low_share", 0.0, 0.6);
  state.usual = data.number("usual_share", state.usual_low, 0.6);
  state.usual_high = data.number("usual_high_share", state.usual, 0.6);
  state.citation = data.citation("source");
  return state;
}

UsualBurnRate read_burn_rate(DataEntry& data) {
  const double bore = data.number("bore_mm", 50.0, 500.0);
  const double low = data.number("low_kg_h", 0.1, 60.0);
  const double usual = data.number("usual_kg_h", low, 60.0);
  const double high = data.number("high_kg_h", usual, 60.0);
  return {bore * millimetre, low * kilogram_per_hour, usual * kilogram_per_hour, high * kilogram_per_hour,
          data.citation("source")};
}

PieceType read_piece_type(const std::string& id) {
  const std::string file = fmt::format("pieces/{}.json", id);
  const ordered_json json = embedded_json(file);
  DataEntry data(json, file);
  PieceType type;
  type.id = data.text("id");
  if (type.id != id) data.fail("“id” must be the file's name");
  type.name = data.text("name");
  type.family = data.text("family");
  type.shape = data.text("shape");
  type.summary = data.text("summary");
  if (data.has("passes")) {
    if (data.text("passes") != "house") data.fail("“passes” can only be “house”");
    type.passes_house = true;
  }
  for (const ordered_json& field : data.list("fields")) type.fields.push_back(read_field_spec(field, file));
  for (const ordered_json& source : data.list("sources")) {
    const ordered_json wrapped = {{"source", source}};
    DataEntry entry(wrapped, file + ", sources");
    type.citations.push_back(entry.citation("source"));
  }
  data.finish();
  return type;
}

std::vector<FieldSpec> read_conditions() {
  const ordered_json json = embedded_json("conditions.json");
  DataEntry top(json, "conditions.json");
  (void)top.text("about");
  std::vector<FieldSpec> specs;
  for (const ordered_json& entry : top.list("conditions")) specs.push_back(read_field_spec(entry, "conditions.json"));
  top.finish();
  return specs;
}

Library read_library() {
  Library library;
  library.materials = read_list<Material>("materials.json", "materials", read_material);
  library.walls = read_list<Wall>("walls.json", "walls", read_wall);
  library.woods = read_list<WoodSpecies>("woods.json", "woods", read_wood);
  library.moisture_states = read_list<MoistureState>("moisture_states.json", "moisture_states", read_moisture_state);
  library.burn_rates = read_list<UsualBurnRate>("burn_rates.json", "burn_rates", read_burn_rate);
  library.conditions = read_conditions();
  read_fans(library);
  for (const ordered_json& id : embedded_json("pieces/index.json")) {
    library.piece_types.push_back(read_piece_type(id.get<std::string>()));
  }
  check_library(library);
  return library;
}

}  // namespace

std::shared_ptr<const Library> shipped_library() {
  static const auto library = std::make_shared<const Library>(read_library());
  return library;
}

std::string_view design_schema() { return embedded_text("schema/design.schema.json"); }

const std::vector<Demo>& shipped_demos() {
  static const std::vector<Demo> demos = [] {
    std::vector<Demo> read;
    for (const ordered_json& id : embedded_json("demos/index.json")) {
      const std::string file = fmt::format("demos/{}.fluepath", id.get<std::string>());
      const ordered_json json = embedded_json(file);
      // Only the head is read here; the design itself is read like any other file when it is opened.
      Demo demo{id.get<std::string>(), json.value("title", ""), json.value("scene", ""),
                std::string(embedded_text(file))};
      if (demo.title.empty() || demo.scene.empty())
        throw std::runtime_error(file + ": a demo needs a title and a scene");
      read.push_back(std::move(demo));
    }
    return read;
  }();
  return demos;
}

}  // namespace fluewright
