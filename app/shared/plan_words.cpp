// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/burn_file.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

namespace fluewright {
namespace {

std::string_view entry_word(PlanList list) {
  switch (list) {
    case PlanList::plan: return "The time line";
    case PlanList::loads: return "Load";
    case PlanList::feeds: return "Feed";
    case PlanList::priming: return "Priming fire";
    case PlanList::moves: return "Move";
    case PlanList::fans: return "Fan switch";
    case PlanList::hoods: return "Range hood";
    case PlanList::cuts: return "Power cut";
    case PlanList::outdoors: return "Outdoor temperature";
  }
  return "";
}

std::string field_word(const std::string& field) {
  static const std::pair<std::string_view, std::string_view> words[] = {
      {"at", "beginning"},      {"from", "beginning"},       {"until", "end"},           {"lasts", "duration"},
      {"wood", "wood"},         {"rate", "rate"},            {"starter", "amount"},      {"heating_value", "heating value"},
      {"open", "opening"},      {"speed", "speed"},          {"runs_for", "run-down"},   {"exhaust", "exhaust"},
      {"length", "length"},     {"begins_at", "hour"},       {"temperature", "value"},   {"mean", "mean"},
      {"swing", "swing"},       {"warmest_at", "warmest hour"}, {"constant", "value"},   {"series", "series"},
      {"piece", "piece"},       {"fan", "fan"},              {"tee", "tee"}};
  for (const auto& [key, word] : words) {
    if (key == field) return std::string{word};
  }
  return field;
}

std::string value_text(const PlanValue& value) {
  struct Text {
    std::string operator()(std::monostate) const { return {}; }
    std::string operator()(Time t) const { return fmt::format("{:g} min", in(t, minute)); }
    std::string operator()(Mass m) const { return fmt::format("{:g} kg", in(m, kilogram)); }
    std::string operator()(MassFlow m) const { return fmt::format("{:g} kg/h", in(m, kilogram_per_hour)); }
    std::string operator()(VolumeFlow v) const { return fmt::format("{:g} m³/h", in(v, VolumeFlow(cubic_metre / hour))); }
    std::string operator()(Ratio r) const { return fmt::format("{:g}", r.value()); }
    std::string operator()(Temperature t) const { return fmt::format("{:g} °C", in_celsius(t)); }
    std::string operator()(SpecificEnergy e) const { return fmt::format("{:g} MJ/kg", in(e, joule_per_kilogram) / 1e6); }
    std::string operator()(const PieceId& id) const { return fmt::format("“{}”", id); }
  };
  return std::visit(Text{}, value);
}

/// " Allowed: 0 to 1.", with a space before it; empty where there is nothing to say.
std::string allowed_range(const PlanFault& fault) {
  const std::string lowest = value_text(fault.lowest);
  const std::string highest = value_text(fault.highest);
  const char* more_than = fault.above ? "more than " : "";
  if (lowest.empty() && highest.empty()) return {};
  if (lowest.empty()) return fmt::format(" Allowed: {}.", highest);
  if (highest.empty()) return fault.above ? fmt::format(" Allowed: more than {}.", lowest) : fmt::format(" Allowed: {} or more.", lowest);
  return fmt::format(" Allowed: {}{} to {}.", more_than, lowest, highest);
}

}  // namespace

std::string sentence(const PlanFault& fault, const Design& design, const Library& library) {
  const bool counted = fault.list != PlanList::plan;
  const std::string subject = counted ? fmt::format("{} {}", entry_word(fault.list), fault.index + 1) : std::string{entry_word(fault.list)};
  const std::string field = field_word(fault.field);
  const std::string value = value_text(fault.value);
  const std::string allowed = allowed_range(fault);
  const auto said = [&](std::string_view what) { return fmt::format("{}: the {}, {}, {}.{}", subject, field, value, what, allowed); };
  switch (fault.code) {
    case PlanFaultCode::negative: return said("is negative");
    case PlanFaultCode::nothing: return value.empty() ? fmt::format("{}: the {} is empty.", subject, field) : said("is too little");
    case PlanFaultCode::beyond_the_run: return said("goes beyond the end of the run");
    case PlanFaultCode::out_of_order: return said("is before that of the entry before it");
    case PlanFaultCode::overlapping: return said("is before the entry before it has ended");
    case PlanFaultCode::unknown_piece: return fmt::format("{}: there is no piece {} in the design.", subject, value);
    case PlanFaultCode::wrong_piece:
      return fmt::format("{}: {} is no {} that can do this.", subject, piece_name(design, library, std::get<PieceId>(fault.value)), field);
    case PlanFaultCode::too_much: return said("is out of range");
    case PlanFaultCode::too_short:
      return fmt::format("{}: the course of temperatures does not reach over the whole run: this end is at {}.{}", subject, value, allowed);
  }
  return {};
}

}  // namespace fluewright
