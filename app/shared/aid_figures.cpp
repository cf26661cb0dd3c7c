// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/aid_figures.hpp"

#include "app/shared/data_entry.hpp"
#include "app/shared/json_text.hpp"
#include "resources/embedded.hpp"

#include <fmt/format.h>

#include <fstream>
#include <sstream>
#include <stdexcept>

namespace fluewright {
namespace {

using nlohmann::ordered_json;

constexpr double most_money = 1e6;
constexpr Time year = 365.25 * 24.0 * hour;

AidPrice* device_of(AidFigures& figures, const std::string& id) {
  if (id == "bypass") return &figures.bypass;
  if (id == "duct_fan") return &figures.duct_fan;
  if (id == "top_fan") return &figures.top_fan;
  if (id == "side_inducer") return &figures.side_inducer;
  return nullptr;
}

void read_habits(AidFigures& figures, const ordered_json& json, const std::string& name) {
  DataEntry habits(json, name + ", habits");
  figures.starts_per_year = habits.number("starts_per_year", 0.0, 1000.0);
  figures.burns_per_start = habits.number("burns_per_start_h", 0.0, 24.0) * hour;
  figures.price_per_kilowatt_hour = habits.number("price_per_kilowatt_hour", 0.0, most_money);
  figures.price_per_kilogram_of_starter = habits.number("price_per_kilogram_of_starter", 0.0, most_money);
  figures.habits = habits.citation("source");
  habits.finish();
}

AidFigures read_figures(const ordered_json& json, const std::string& name) {
  AidFigures figures;
  DataEntry top(json, name);
  (void)top.text("about");
  read_habits(figures, top.any("habits"), name);
  std::size_t read = 0;
  for (const ordered_json& entry : top.list("devices")) {
    DataEntry data(entry, name + ", devices");
    const std::string id = data.text("id");
    AidPrice* device = device_of(figures, id);
    if (device == nullptr) data.fail(fmt::format("there is no device “{}”", id));
    if (!device->citation.source.empty()) data.fail(fmt::format("“{}” stands twice", id));
    device->price = data.number("price", 0.0, most_money);
    device->life = data.number("life_years", 0.0, 100.0) * year;
    device->citation = data.citation("source");
    data.finish();
    ++read;
  }
  if (read != 4) top.fail("“devices” must name bypass, duct_fan, top_fan and side_inducer");
  top.finish();
  return figures;
}

}  // namespace

FiguresResult read_aid_figures_text(std::string_view text, const std::string& name) {
  const auto parsed = parse_json(text);
  if (const auto* fault = std::get_if<JsonFault>(&parsed)) return FileFault{{fmt::format("{}: {}", name, fault->message)}};
  try {
    return read_figures(std::get<ordered_json>(parsed), name);
  } catch (const std::runtime_error& fault) {
    return FileFault{{fault.what()}};
  }
}

FiguresResult read_aid_figures_file(const std::filesystem::path& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  if (!file || !(text << file.rdbuf())) return FileFault{{fmt::format("{}: cannot be read", path.string())}};
  return read_aid_figures_text(text.str(), path.filename().string());
}

const AidFigures& shipped_aid_figures() {
  static const AidFigures figures = [] {
    for (const EmbeddedFile& file : embedded_files()) {
      if (file.name != "aid_figures.json") continue;
      FiguresResult read = read_aid_figures_text(file.text, "aid_figures.json");
      if (const auto* fault = std::get_if<FileFault>(&read)) throw std::runtime_error(fault->text());
      return std::get<AidFigures>(std::move(read));
    }
    throw std::runtime_error("aid_figures.json: is not among the data of this program");
  }();
  return figures;
}

}  // namespace fluewright
