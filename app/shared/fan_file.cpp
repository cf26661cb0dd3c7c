// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/fan_file.hpp"

#include "app/shared/direction_words.hpp"
#include "app/shared/field_check.hpp"
#include "app/shared/file_units.hpp"
#include "app/shared/file_value.hpp"
#include "app/shared/schema_check.hpp"
#include "app/shared/unknown_keys.hpp"

#include <fmt/format.h>

#include <optional>

namespace fluewright {

namespace {

using nlohmann::ordered_json;
using Faults = std::vector<std::string>;

std::string key_of(const FieldSpec& spec) { return file_key(spec.kind, spec.key); }

class PointsReader {
 public:
  PointsReader(const Library& library, std::string owner, Faults& faults)
      : flow_{*library.fan_field("flow")}, head_{*library.fan_field("head")}, owner_{std::move(owner)}, faults_{faults} {}

  void read(const ordered_json& json, ordered_json& kept) {
    const std::string at = fmt::format("{}, points.{}", owner_, points_.size());
    FanPoint point;
    const ordered_json& flow = json.at(key_of(flow_));
    if (const auto value = value_in_file(flow, flow_, at + "." + key_of(flow_), faults_)) {
      point.flow = std::get<VolumeFlow>(*value);
      check_order(point.flow, flow, at + "." + key_of(flow_));
    }
    if (const auto value = value_in_file(json.at(key_of(head_)), head_, at + "." + key_of(head_), faults_)) {
      point.head = std::get<Pressure>(*value);
    }
    ordered_json kept_here = ordered_json::object();
    keep_unknown(json, {key_of(flow_), key_of(head_)}, kept_here);
    keep_under(kept, std::to_string(points_.size()), std::move(kept_here));
    points_.push_back(point);
  }

  std::vector<FanPoint> take(std::size_t faults_before) {
    if (faults_.size() == faults_before && !makes_a_curve(points_)) {
      faults_.push_back(fmt::format("{}, points: every head is 0; at least one must be more.", owner_));
    }
    return std::move(points_);
  }

 private:
  void check_order(VolumeFlow flow, const ordered_json& json, const std::string& subject) {
    if (points_.empty()) {
      if (flow != VolumeFlow{}) {
        faults_.push_back(fmt::format("{}: {} is not allowed; it must be 0: the first point is the head at no flow.",
                                      subject, quoted(json)));
      }
    } else if (!(flow > points_.back().flow)) {
      faults_.push_back(fmt::format(
          "{}: {} is not allowed; it must be a number above {}, the flow of the point before.", subject, quoted(json),
          to_file_value(points_.back().flow, flow_.kind, flow_.key).dump()));
    }
  }

  const FieldSpec& flow_;
  const FieldSpec& head_;
  std::string owner_;
  Faults& faults_;
  std::vector<FanPoint> points_;
};

}  // namespace

FanSheet read_fan_sheet(const ordered_json& json, const Library& library, Faults& faults, ordered_json& kept) {
  FanSheet sheet;
  sheet.id = text_in(json, "id");
  sheet.name = text_in(json, "name");
  sheet.citation.source = text_in(json, "source");
  sheet.citation.standing = json.contains("standing") ? *standing_of(text_in(json, "standing")) : Standing::chosen;
  const std::string owner = fmt::format("Fan “{}”", sheet.id);
  const std::size_t faults_before = faults.size();
  PointsReader points{library, owner, faults};
  ordered_json kept_points = ordered_json::object();
  for (const ordered_json& point : json.at("points")) points.read(point, kept_points);
  sheet.points = points.take(faults_before);
  ordered_json rest = json;
  for (const char* key : {"id", "name", "points", "source", "standing"}) rest.erase(key);
  for (const FanField& field : fan_fields()) {
    const FieldSpec& spec = *library.fan_field(field.key);
    const auto given = json.find(key_of(spec));
    field.set(sheet, spec.fallback);
    if (given == json.end()) continue;
    if (const auto value = value_in_file(*given, spec, fmt::format("{}, {}", owner, key_of(spec)), faults)) {
      field.set(sheet, *value);
    }
    rest.erase(key_of(spec));
  }
  keep_unknown(rest, {}, kept);
  keep_under(kept, "points", std::move(kept_points));
  return sheet;
}

ordered_json fan_point_json(const FanPoint& point) {
  ordered_json json;
  json[file_key(FieldKind::volume_flow, "flow")] = to_file_value(point.flow, FieldKind::volume_flow, "flow");
  json[file_key(FieldKind::pressure, "head")] = to_file_value(point.head, FieldKind::pressure, "head");
  return json;
}

ordered_json fan_sheet_json(const FanSheet& sheet, const Library& library, const ordered_json& kept) {
  ordered_json json;
  json["id"] = sheet.id;
  if (!sheet.name.empty()) json["name"] = sheet.name;
  json["points"] = ordered_json::array();
  const ordered_json& kept_points = kept_under(kept, "points");
  for (const FanPoint& point : sheet.points) {
    ordered_json entry = fan_point_json(point);
    put_back(entry, kept_under(kept_points, std::to_string(json["points"].size())));
    json["points"].push_back(std::move(entry));
  }
  for (const FanField& field : fan_fields()) {
    const FieldSpec& spec = *library.fan_field(field.key);
    json[key_of(spec)] = to_file_value(field.get(sheet), spec.kind, spec.key);
  }
  if (!sheet.citation.source.empty()) json["source"] = sheet.citation.source;
  if (!sheet.citation.source.empty() || sheet.citation.standing != Standing::chosen) {
    json["standing"] = file_word(sheet.citation.standing);
  }
  put_back(json, kept);
  return json;
}

}  // namespace fluewright
