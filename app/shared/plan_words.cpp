// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/burn_file.hpp"
#include "app/shared/said.hpp"
#include "app/shared/words.hpp"

#include <fmt/format.h>

namespace fluewright {
namespace {

std::string_view entry_word(PlanList list) {
  switch (list) {
    case PlanList::plan: return to_say("The time line");
    case PlanList::loads: return to_say("Load");
    case PlanList::feeds: return to_say("Feed");
    case PlanList::priming: return to_say("Priming fire");
    case PlanList::moves: return to_say("Move");
    case PlanList::fans: return to_say("Fan switch");
    case PlanList::hoods: return to_say("Range hood");
    case PlanList::cuts: return to_say("Power cut");
    case PlanList::outdoors: return to_say("Outdoor temperature");
  }
  return "";
}

std::string field_word(const std::string& field) {
  static const std::pair<std::string_view, std::string_view> words[] = {
      {"at", to_say("beginning")},      {"from", to_say("beginning")},       {"until", to_say("end")},           {"lasts", to_say("duration")},
      {"wood", to_say("wood")},         {"rate", to_say("rate")},            {"starter", to_say("amount")},      {"heating_value", to_say("heating value")},
      {"open", to_say("opening")},      {"speed", to_say("speed")},          {"runs_for", to_say("run-down")},   {"exhaust", to_say("exhaust")},
      {"length", to_say("length")},     {"begins_at", to_say("hour")},       {"temperature", to_say("value")},   {"mean", to_say("mean")},
      {"swing", to_say("swing")},       {"warmest_at", to_say("warmest hour")}, {"constant", to_say("value")},   {"series", to_say("series")},
      {"piece", to_say("piece")},       {"fan", to_say("fan")},              {"tee", to_say("tee")}};
  for (const auto& [key, word] : words) {
    if (key == field) return said(word);
  }
  return field;
}

std::string number(double value, std::string_view unit) { return with_decimal_mark(fmt::format("{:g} {}", value, unit)); }

std::string value_text(const PlanValue& value) {
  struct Text {
    std::string operator()(std::monostate) const { return {}; }
    std::string operator()(Time t) const { return number(in(t, minute), "min"); }
    std::string operator()(Mass m) const { return number(in(m, kilogram), "kg"); }
    std::string operator()(MassFlow m) const { return number(in(m, kilogram_per_hour), "kg/h"); }
    std::string operator()(VolumeFlow v) const { return number(in(v, VolumeFlow(cubic_metre / hour)), "m³/h"); }
    std::string operator()(Ratio r) const { return with_decimal_mark(fmt::format("{:g}", r.value())); }
    std::string operator()(Temperature t) const { return number(in_celsius(t), "°C"); }
    std::string operator()(SpecificEnergy e) const { return number(in(e, joule_per_kilogram) / 1e6, "MJ/kg"); }
    std::string operator()(const PieceId& id) const { return fmt::format("“{}”", id); }
  };
  return std::visit(Text{}, value);
}

/// " Allowed: 0 to 1.", with a space before it; empty where there is nothing to say.
std::string allowed_range(const PlanFault& fault) {
  const std::string lowest = value_text(fault.lowest);
  const std::string highest = value_text(fault.highest);
  const std::string more_than = fault.above ? said("more than ") : std::string{};
  if (lowest.empty() && highest.empty()) return {};
  if (lowest.empty()) return said(" Allowed: {}.", highest);
  if (highest.empty()) return fault.above ? said(" Allowed: more than {}.", lowest) : said(" Allowed: {} or more.", lowest);
  return said(" Allowed: {}{} to {}.", more_than, lowest, highest);
}

}  // namespace

std::string sentence(const PlanFault& fault, const Design& design, const Library& library) {
  const bool counted = fault.list != PlanList::plan;
  const std::string subject = counted ? fmt::format("{} {}", said(entry_word(fault.list)), fault.index + 1) : said(entry_word(fault.list));
  const std::string field = field_word(fault.field);
  const std::string value = value_text(fault.value);
  const std::string allowed = allowed_range(fault);
  switch (fault.code) {
    case PlanFaultCode::negative: return said("{}: the {}, {}, is negative.{}", subject, field, value, allowed);
    case PlanFaultCode::nothing:
      return value.empty() ? said("{}: the {} is empty.", subject, field)
                           : said("{}: the {}, {}, is too little.{}", subject, field, value, allowed);
    case PlanFaultCode::beyond_the_run: return said("{}: the {}, {}, goes beyond the end of the run.{}", subject, field, value, allowed);
    case PlanFaultCode::out_of_order: return said("{}: the {}, {}, is before that of the entry before it.{}", subject, field, value, allowed);
    case PlanFaultCode::overlapping: return said("{}: the {}, {}, is before the entry before it has ended.{}", subject, field, value, allowed);
    case PlanFaultCode::unknown_piece: return said("{}: there is no piece {} in the design.", subject, value);
    case PlanFaultCode::wrong_piece:
      return said("{}: {} is no {} that can do this.", subject, piece_name(design, library, std::get<PieceId>(fault.value)), field);
    case PlanFaultCode::too_much: return said("{}: the {}, {}, is out of range.{}", subject, field, value, allowed);
    case PlanFaultCode::too_short:
      return said("{}: the course of temperatures does not reach over the whole run: this end is at {}.{}", subject, value, allowed);
  }
  return {};
}

}  // namespace fluewright
