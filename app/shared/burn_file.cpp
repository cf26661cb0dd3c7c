// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/burn_file.hpp"

#include "app/shared/json_text.hpp"
#include "app/shared/said.hpp"
#include "app/shared/schema_check.hpp"

#include <fmt/format.h>

#include <fstream>
#include <iterator>
#include <optional>
#include <set>

namespace fluewright {
namespace {

using nlohmann::ordered_json;
namespace fs = std::filesystem;

/// One object of the file: hands out its values by key and knows which keys nobody asked for.
class Entry {
 public:
  Entry(const ordered_json& json, std::string subject, std::vector<std::string>& faults)
      : json_{&json}, subject_{std::move(subject)}, faults_{&faults} {
    if (!json.is_object()) faults.push_back(said("{}: {} is not allowed; it must be an object.", subject_, quoted(json)));
  }
  Entry(const Entry&) = delete;
  Entry& operator=(const Entry&) = delete;
  ~Entry() {
    if (!json_->is_object()) return;
    for (const auto& [key, value] : json_->items()) {
      if (!asked_.contains(key)) faults_->push_back(said("{}: “{}” is not known here.", subject_, key));
    }
  }

  [[nodiscard]] const ordered_json* find(const std::string& key) {
    asked_.insert(key);
    if (!json_->is_object()) return nullptr;
    const auto found = json_->find(key);
    return found == json_->end() ? nullptr : &*found;
  }
  [[nodiscard]] std::optional<double> number(const std::string& key, bool required = true) {
    const ordered_json* value = find(key);
    if (value == nullptr) {
      if (required && json_->is_object()) faults_->push_back(said("{}: “{}” is missing.", subject_, key));
      return std::nullopt;
    }
    if (value->is_number()) return value->get<double>();
    faults_->push_back(said("{}, “{}”: {} is not allowed; it must be a number.", subject_, key, quoted(*value)));
    return std::nullopt;
  }
  template <class Quantity>
  void put(const std::string& key, Quantity unit, Quantity& into, bool required = true) {
    if (const auto n = number(key, required)) into = *n * unit;
  }
  void put(const std::string& key, Temperature& into) {
    if (const auto n = number(key)) into = celsius(*n);
  }
  void put(const std::string& key, std::string& into, bool required = true) {
    const ordered_json* value = find(key);
    if (value == nullptr) {
      if (required && json_->is_object()) faults_->push_back(said("{}: “{}” is missing.", subject_, key));
    } else if (value->is_string()) {
      into = value->get<std::string>();
    } else {
      faults_->push_back(said("{}, “{}”: {} is not allowed; it must be a word.", subject_, key, quoted(*value)));
    }
  }
  template <class Item, class Read>
  void list(const std::string& key, std::vector<Item>& into, Read read) {
    const ordered_json* value = find(key);
    if (value == nullptr) return;
    if (!value->is_array()) {
      faults_->push_back(said("“{}”: {} is not allowed; it must be a list.", key, quoted(*value)));
      return;
    }
    for (std::size_t i = 0; i < value->size(); ++i) {
      Entry entry{(*value)[i], said("“{}”, entry {}", key, i + 1), *faults_};
      Item item;
      read(entry, item);
      into.push_back(std::move(item));
    }
  }
  [[nodiscard]] std::vector<std::string>& faults() { return *faults_; }

 private:
  const ordered_json* json_;
  std::string subject_;
  std::vector<std::string>* faults_;
  std::set<std::string, std::less<>> asked_;
};

constexpr Ratio share_unit = 1.0;
const VolumeFlow exhaust_unit = cubic_metre / hour;
constexpr SpecificEnergy megajoule_per_kilogram = 1e6 * joule_per_kilogram;

void read_priming(Entry& e, PrimingFire& p) {
  e.put("at_min", minute, p.at);
  e.put("lasts_min", minute, p.lasts);
  e.put("starter_g", gram, p.starter);
  e.put("starter", p.kind, false);
  const Starter* known = starter(p.kind);
  if (known != nullptr) p.heating_value = known->heating_value;
  e.put("heating_value_MJ_kg", megajoule_per_kilogram, p.heating_value, known == nullptr);
  e.put("tee", p.tee, false);
}

void read_outdoors(Entry& top, BurnPlan& plan, const fs::path& folder) {
  const ordered_json* value = top.find("outdoors");
  if (value == nullptr) return;
  Entry e{*value, "“outdoors”", top.faults()};
  if (!value->is_object()) return;
  if (value->size() != 1) {
    top.faults().push_back(said("“outdoors” must hold one of constant_C, day, series, weather_file."));
  }
  if (value->contains("constant_C")) {
    Temperature t;
    e.put("constant_C", t);
    plan.outdoors = t;
  }
  if (const ordered_json* day = e.find("day")) {
    Entry d{*day, said("“outdoors”, “day”"), top.faults()};
    OutdoorDay course;
    d.put("mean_C", course.mean);
    d.put("swing_K", kelvin, course.swing);
    d.put("warmest_h", hour, course.warmest_at, false);
    plan.outdoors = course;
  }
  std::vector<OutdoorPoint> points;
  e.list("series", points, [](Entry& p, OutdoorPoint& point) {
    p.put("at_min", minute, point.at);
    p.put("temperature_C", point.temperature);
  });
  if (value->contains("series")) plan.outdoors = std::move(points);
  std::string name;
  e.put("weather_file", name, false);
  if (name.empty()) return;
  std::ifstream stream(folder / name, std::ios::binary);
  if (!stream) {
    top.faults().push_back(said("The weather file “{}” cannot be opened.", (folder / name).string()));
    return;
  }
  const std::string text{std::istreambuf_iterator<char>(stream), {}};
  WeatherResult weather = read_weather_text(text, name);
  if (auto* fault = std::get_if<FileFault>(&weather)) {
    top.faults().insert(top.faults().end(), fault->messages.begin(), fault->messages.end());
  } else {
    plan.outdoors = std::get<std::vector<OutdoorPoint>>(std::move(weather));
  }
}

void read_all(Entry& top, BurnPlan& plan, const fs::path& folder) {
  const auto version = top.number("fluewright_burn");
  if (version && *version > current_burn_file_version) {
    top.faults().push_back(said("This time line comes from a newer version of the program."));
  }
  top.put("name", plan.name, false);
  top.put("length_min", minute, plan.length);
  top.put("begins_at_h", hour, plan.begins_at, false);
  top.list("loads", plan.loads, [](Entry& e, WoodLoad& l) {
    e.put("at_min", minute, l.at);
    e.put("wood_kg", kilogram, l.wood);
    e.put("lasts_min", minute, l.lasts);
  });
  top.list("feeds", plan.feeds, [](Entry& e, SteadyFeed& f) {
    e.put("from_min", minute, f.from);
    e.put("until_min", minute, f.until);
    e.put("rate_kg_h", kilogram_per_hour, f.rate);
  });
  top.list("priming", plan.priming, read_priming);
  top.list("moves", plan.moves, [](Entry& e, PieceMove& m) {
    e.put("at_min", minute, m.at);
    e.put("piece", m.piece);
    e.put("open_share", share_unit, m.open);
  });
  top.list("fans", plan.fans, [](Entry& e, FanSwitch& f) {
    e.put("at_min", minute, f.at);
    e.put("fan", f.fan);
    e.put("speed_share", share_unit, f.speed);
    if (const auto n = e.number("runs_for_min", false)) f.runs_for = *n * minute;
  });
  top.list("hoods", plan.hoods, [](Entry& e, HoodSwitch& h) {
    e.put("at_min", minute, h.at);
    e.put("exhaust_m3_h", exhaust_unit, h.exhaust);
  });
  top.list("power_cuts", plan.cuts, [](Entry& e, PowerCut& c) {
    e.put("at_min", minute, c.at);
    e.put("lasts_min", minute, c.lasts);
  });
  read_outdoors(top, plan, folder);
}

double minutes(Time t) { return in(t, minute); }

}  // namespace

PlanReadResult read_plan_text(std::string_view text, const fs::path& folder) {
  const auto parsed = parse_json(text);
  if (const auto* fault = std::get_if<JsonFault>(&parsed)) return FileFault{{fault->message}};
  std::vector<std::string> faults;
  BurnPlan plan;
  {
    Entry top{std::get<ordered_json>(parsed), said("The time line"), faults};
    read_all(top, plan, folder);
  }
  if (!faults.empty()) return FileFault{std::move(faults)};
  return plan;
}

PlanReadResult read_plan_file(const fs::path& path) {
  std::error_code error;
  if (!fs::is_regular_file(path, error)) {
    return FileFault{{said("“{}” could not be read: there is no such file.", path.string())}};
  }
  std::ifstream stream(path, std::ios::binary);
  if (!stream) return FileFault{{said("“{}” could not be read: it cannot be opened.", path.string())}};
  const std::string text{std::istreambuf_iterator<char>(stream), {}};
  return read_plan_text(text, path.parent_path());
}

std::string write_plan_text(const BurnPlan& plan) {
  ordered_json file;
  file["fluewright_burn"] = current_burn_file_version;
  file["name"] = plan.name;
  file["length_min"] = minutes(plan.length);
  file["begins_at_h"] = in(plan.begins_at, hour);
  const auto list = [&](const char* key, const auto& items, auto write) {
    if (items.empty()) return;
    file[key] = ordered_json::array();
    for (const auto& item : items) file[key].push_back(write(item));
  };
  list("loads", plan.loads, [](const WoodLoad& l) {
    return ordered_json{{"at_min", minutes(l.at)}, {"wood_kg", in(l.wood, kilogram)}, {"lasts_min", minutes(l.lasts)}};
  });
  list("feeds", plan.feeds, [](const SteadyFeed& f) {
    return ordered_json{{"from_min", minutes(f.from)}, {"until_min", minutes(f.until)}, {"rate_kg_h", in(f.rate, kilogram_per_hour)}};
  });
  list("priming", plan.priming, [](const PrimingFire& p) {
    ordered_json json{{"at_min", minutes(p.at)}, {"lasts_min", minutes(p.lasts)}, {"starter_g", in(p.starter, gram)},
                      {"starter", p.kind}, {"heating_value_MJ_kg", in(p.heating_value, megajoule_per_kilogram)}};
    if (!p.tee.empty()) json["tee"] = p.tee;
    return json;
  });
  list("moves", plan.moves, [](const PieceMove& m) {
    return ordered_json{{"at_min", minutes(m.at)}, {"piece", m.piece}, {"open_share", m.open.value()}};
  });
  list("fans", plan.fans, [](const FanSwitch& f) {
    ordered_json json{{"at_min", minutes(f.at)}, {"fan", f.fan}, {"speed_share", f.speed.value()}};
    if (f.runs_for) json["runs_for_min"] = minutes(*f.runs_for);
    return json;
  });
  list("hoods", plan.hoods, [](const HoodSwitch& h) {
    return ordered_json{{"at_min", minutes(h.at)}, {"exhaust_m3_h", in(h.exhaust, exhaust_unit)}};
  });
  list("power_cuts", plan.cuts, [](const PowerCut& c) {
    return ordered_json{{"at_min", minutes(c.at)}, {"lasts_min", minutes(c.lasts)}};
  });
  if (const auto* t = std::get_if<Temperature>(&plan.outdoors)) file["outdoors"] = {{"constant_C", in_celsius(*t)}};
  if (const auto* d = std::get_if<OutdoorDay>(&plan.outdoors)) {
    file["outdoors"] = {{"day", {{"mean_C", in_celsius(d->mean)}, {"swing_K", in(d->swing, kelvin)}, {"warmest_h", in(d->warmest_at, hour)}}}};
  }
  if (const auto* points = std::get_if<std::vector<OutdoorPoint>>(&plan.outdoors)) {
    ordered_json series = ordered_json::array();
    for (const OutdoorPoint& p : *points) series.push_back({{"at_min", minutes(p.at)}, {"temperature_C", in_celsius(p.temperature)}});
    file["outdoors"] = {{"series", std::move(series)}};
  }
  return lay_out_json(file);
}

}  // namespace fluewright
