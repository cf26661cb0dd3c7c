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

}  // namespace

std::string sentence(const PlanFault& fault, const Design& design, const Library& library) {
  const bool counted = fault.list != PlanList::plan;
  const std::string subject = counted ? fmt::format("{} {}", entry_word(fault.list), fault.index + 1) : std::string{entry_word(fault.list)};
  const std::string field = field_word(fault.field);
  const std::string value = value_text(fault.value);
  switch (fault.code) {
    case PlanFaultCode::negative: return fmt::format("{}: the {}, {}, is negative.", subject, field, value);
    case PlanFaultCode::nothing:
      return value.empty() ? fmt::format("{}: the {} is empty.", subject, field)
                           : fmt::format("{}: the {}, {}, must be more than nothing.", subject, field, value);
    case PlanFaultCode::beyond_the_run: return fmt::format("{}: the {}, {}, goes beyond the end of the run.", subject, field, value);
    case PlanFaultCode::out_of_order: return fmt::format("{}: the {}, {}, is before that of the entry before it.", subject, field, value);
    case PlanFaultCode::overlapping: return fmt::format("{}: the {}, {}, is before the entry before it has ended.", subject, field, value);
    case PlanFaultCode::unknown_piece: return fmt::format("{}: there is no piece {} in the design.", subject, value);
    case PlanFaultCode::wrong_piece:
      return fmt::format("{}: {} is no {} that can do this.", subject, piece_name(design, library, std::get<PieceId>(fault.value)), field);
    case PlanFaultCode::too_much: return fmt::format("{}: the {}, {}, is out of range.", subject, field, value);
    case PlanFaultCode::too_short: return fmt::format("{}: the course of temperatures does not reach over the whole run ({}).", subject, value);
  }
  return {};
}

}  // namespace fluewright
