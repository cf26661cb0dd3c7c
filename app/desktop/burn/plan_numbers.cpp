// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/burn/plan_numbers.hpp"

#include "app/shared/said.hpp"
#include "app/shared/typed_text.hpp"
#include "app/shared/unit_table.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <span>

namespace fluewright {

namespace {

constexpr double pound = 0.45359237;  // international pound, exact by definition
constexpr double ounce = pound / 16.0;
constexpr double btu_per_pound = 2326.0;  // [J/kg], International Table, exact by definition

/// A number's own row in one system: unit, SI per unit, decimals, step.
struct OwnRow {
  std::string_view unit;
  double si = 1.0;
  int decimals = 0;
  double step = 1.0;
};

OwnRow own_row(PlanMeaning meaning, UnitSystem units) {
  const bool metric = units == UnitSystem::metric;
  switch (meaning) {
    case PlanMeaning::wood: return metric ? OwnRow{"kg", 1.0, 2, 0.1} : OwnRow{"lb", pound, 2, 0.25};
    case PlanMeaning::starter: return metric ? OwnRow{"g", 0.001, 0, 50.0} : OwnRow{"oz", ounce, 1, 1.0};
    default: return metric ? OwnRow{"MJ/kg", 1e6, 1, 0.5} : OwnRow{"Btu/lb", btu_per_pound, 0, 100.0};
  }
}

bool has_own_row(PlanMeaning meaning) {
  return meaning == PlanMeaning::wood || meaning == PlanMeaning::starter || meaning == PlanMeaning::heating_value;
}

bool is_time(PlanMeaning meaning) {
  return meaning == PlanMeaning::moment || meaning == PlanMeaning::duration || meaning == PlanMeaning::clock;
}

/// How the fields of a design show the rest.
struct KnownField {
  FieldKind kind;
  std::string_view key;
  Meaning meaning;
};

KnownField known_field(PlanMeaning meaning) {
  switch (meaning) {
    case PlanMeaning::rate: return {FieldKind::mass_flow, "burn_rate", Meaning::mass_flow_hourly};
    case PlanMeaning::exhaust: return {FieldKind::volume_flow, "exhaust_flow", Meaning::volume_flow};
    case PlanMeaning::temperature: return {FieldKind::temperature, "temperature", Meaning::temperature};
    default: return {FieldKind::ratio, "free_share", Meaning::share};
  }
}

double si_of(const PlanNumber& number) {
  return std::visit(
      [](const auto& quantity) {
        if constexpr (std::is_same_v<std::decay_t<decltype(quantity)>, Temperature>) {
          return in_kelvin(quantity);
        } else {
          return quantity.value();
        }
      },
      number);
}

PlanNumber with_si(PlanMeaning meaning, double si) {
  switch (meaning) {
    case PlanMeaning::wood:
    case PlanMeaning::starter: return si * kilogram;
    case PlanMeaning::rate: return si * kilogram_per_second;
    case PlanMeaning::exhaust: return VolumeFlow::from_value(si);
    case PlanMeaning::share: return Ratio(si);
    case PlanMeaning::temperature: return kelvins(si);
    case PlanMeaning::step: return si * kelvin;
    case PlanMeaning::heating_value: return si * joule_per_kilogram;
    default: return si * second;
  }
}

std::string trimmed(double number, int decimals) {
  std::string text = fmt::format("{:.{}f}", number, decimals);
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  return text == "-0" ? "0" : with_decimal_mark(std::move(text));
}

Parsed<PlanNumber> failed(std::string message) { return {std::nullopt, {std::move(message)}}; }

struct TypedUnit {
  std::string_view name;
  double si;
};

const TypedUnit* find(std::span<const TypedUnit> units, std::string_view typed) {
  const auto found = std::find_if(units.begin(), units.end(), [&](const TypedUnit& u) { return u.name == typed; });
  return found == units.end() ? nullptr : &*found;
}

constexpr TypedUnit time_units[] = {{"s", 1.0},    {"sec", 1.0},    {"min", 60.0},    {"m", 60.0},      {"minutes", 60.0},
                                    {"h", 3600.0}, {"hr", 3600.0},  {"hours", 3600.0}, {"d", 86400.0},  {"days", 86400.0}};
constexpr TypedUnit mass_units[] = {{"kg", 1.0}, {"g", 0.001}, {"lb", pound}, {"lbs", pound}, {"oz", ounce}};
constexpr TypedUnit heating_units[] = {{"mj/kg", 1e6}, {"kj/kg", 1e3}, {"kwh/kg", 3.6e6}, {"btu/lb", btu_per_pound}};
constexpr TypedUnit step_units[] = {{"k", 1.0}, {"c", 1.0}, {"f", 1.0 / 1.8}, {"degc", 1.0}, {"degf", 1.0 / 1.8}};

/// "1:30" and "1:30:15" are hours first; a number with no unit is minutes, of the clock hours.
Parsed<PlanNumber> parse_time(std::string_view typed, PlanMeaning meaning) {
  const std::string wanted = meaning == PlanMeaning::duration ? said("45 min, 1 h 30 min or 1:30")
                             : meaning == PlanMeaning::clock  ? "17:00"
                                                              : said("1:30 or 90 min");
  const auto not_understood = [&] { return failed(said("“{}” is no time: write it like {}.", typed, wanted)); };
  TypedText text(typed);
  if (text.at_end()) return failed(said("Nothing is written: write a time like {}.", wanted));
  const double sign = text.take_sign();
  double sum = 0.0;
  double colon_unit = 3600.0;
  bool colons = false;
  while (!text.at_end()) {
    const TypedNumber number = text.take_number();
    if (!number.value) return number.complaint.empty() ? not_understood() : failed(number.complaint);
    const std::string unit = text.take_unit();
    if (unit == ":" || (colons && unit.empty())) {
      sum += *number.value * colon_unit;
      colon_unit /= 60.0;
      colons = true;
    } else if (unit.empty()) {
      sum += *number.value * (meaning == PlanMeaning::clock ? 3600.0 : 60.0);
    } else if (const TypedUnit* known = find(time_units, unit)) {
      sum += *number.value * known->si;
    } else {
      return not_understood();
    }
  }
  return {PlanNumber{sign * sum * second}, {}};
}

Parsed<PlanNumber> parse_own(std::string_view typed, PlanMeaning meaning, double own, std::span<const TypedUnit> units,
                             std::string_view example) {
  const auto not_understood = [&] { return failed(said("“{}” is not understood: write it like {}.", typed, example)); };
  TypedText text(typed);
  if (text.at_end()) return failed(said("Nothing is written: write it like {}.", example));
  const double sign = text.take_sign();
  const TypedNumber number = text.take_number();
  if (!number.value) return number.complaint.empty() ? not_understood() : failed(number.complaint);
  const std::string unit = text.take_rest_as_unit();
  const TypedUnit* known = find(units, unit);
  if (!unit.empty() && known == nullptr) return not_understood();
  return {with_si(meaning, sign * *number.value * (known != nullptr ? known->si : own)), {}};
}

double step_of(PlanMeaning meaning, UnitSystem units) {
  const bool metric = units == UnitSystem::metric;
  switch (meaning) {
    case PlanMeaning::moment: return 60.0;
    case PlanMeaning::duration: return 60.0;
    case PlanMeaning::clock: return 1800.0;
    case PlanMeaning::rate: return (metric ? 0.1 : 0.25 * pound) / 3600.0;
    case PlanMeaning::exhaust: return metric ? 10.0 / 3600.0 : 5.0 * unit_row(Meaning::volume_flow, units).si_per_unit;
    case PlanMeaning::share: return 0.05;
    case PlanMeaning::temperature:
    case PlanMeaning::step: return metric ? 1.0 : 1.0 / 1.8;
    default: return own_row(meaning, units).step * own_row(meaning, units).si;
  }
}

}  // namespace

std::string moment_text(Time at) {
  const auto seconds = static_cast<long>(std::lround(in(at, second)));
  const long rest = std::abs(seconds);
  const std::string sign = seconds < 0 ? "−" : "";
  if (rest % 60 == 0) return fmt::format("{}{}:{:02}", sign, rest / 3600, rest / 60 % 60);
  return fmt::format("{}{}:{:02}:{:02}", sign, rest / 3600, rest / 60 % 60, rest % 60);
}

std::string duration_text(Time lasts) {
  const auto seconds = static_cast<long>(std::lround(in(lasts, second)));
  const long rest = std::abs(seconds);
  std::string text = seconds < 0 ? "−" : "";
  if (rest < 60) return text + fmt::format("{} s", rest);
  if (rest >= 3600) text += fmt::format("{} h", rest / 3600);
  if (rest / 60 % 60 != 0) text += fmt::format("{}{} min", rest >= 3600 ? " " : "", rest / 60 % 60);
  if (rest % 60 != 0) text += fmt::format(" {} s", rest % 60);
  return text;
}

std::string clock_text(const BurnPlan& plan, Time at) {
  const auto seconds = static_cast<long>(std::lround(in(plan.begins_at + at, second)));
  const long day = seconds / 86400 + 1;
  const std::string hour_text = fmt::format("{}:{:02}", seconds / 3600 % 24, seconds / 60 % 60);
  return day > 1 ? said("day {}, {}", day, hour_text) : hour_text;
}

std::string wood_text(Mass wood, UnitSystem units) { return show(PlanNumber{wood}, PlanMeaning::wood, units).text(); }

std::string grams_text(Mass mass, UnitSystem units) { return show(PlanNumber{mass}, PlanMeaning::starter, units).text(); }

Shown show(const PlanNumber& number, PlanMeaning meaning, UnitSystem units) {
  const double si = si_of(number);
  switch (meaning) {
    case PlanMeaning::moment: return {moment_text(si * second), ""};
    case PlanMeaning::duration: return {duration_text(si * second), ""};
    case PlanMeaning::clock: {
      BurnPlan midnight;
      midnight.begins_at = {};
      return {clock_text(midnight, si * second), ""};
    }
    case PlanMeaning::step: {
      const UnitRow& row = unit_row(Meaning::temperature_step, units);
      return {trimmed(row.from_si(si), 1), std::string{row.name}};
    }
    default: break;
  }
  if (has_own_row(meaning)) {
    const OwnRow row = own_row(meaning, units);
    return {trimmed(si / row.si, row.decimals), std::string{row.unit}};
  }
  const UnitRow& row = unit_row(known_field(meaning).meaning, units);
  return {trimmed(row.from_si(si), std::max(row.decimals, meaning == PlanMeaning::temperature ? 1 : 0)), std::string{row.name}};
}

Parsed<PlanNumber> parse_plan_number(std::string_view typed, PlanMeaning meaning, UnitSystem units) {
  if (is_time(meaning)) return parse_time(typed, meaning);
  if (meaning == PlanMeaning::wood || meaning == PlanMeaning::starter) {
    return parse_own(typed, meaning, own_row(meaning, units).si, mass_units, meaning == PlanMeaning::wood ? said("4.5 kg or 10 lb") : said("400 g or 14 oz"));
  }
  if (meaning == PlanMeaning::heating_value) return parse_own(typed, meaning, own_row(meaning, units).si, heating_units, "17 MJ/kg");
  if (meaning == PlanMeaning::step) {
    return parse_own(typed, meaning, unit_row(Meaning::temperature_step, units).si_per_unit, step_units, said("4 K or 7 °F"));
  }
  const KnownField field = known_field(meaning);
  const auto parsed = parse_field(typed, units, field.kind, field.key);
  if (!parsed.value) return {std::nullopt, parsed.failure};
  return {std::visit(
              [](const auto& value) -> PlanNumber {
                using T = std::decay_t<decltype(value)>;
                if constexpr (std::is_same_v<T, Ratio> || std::is_same_v<T, MassFlow> || std::is_same_v<T, VolumeFlow> ||
                              std::is_same_v<T, Temperature>) {
                  return value;
                } else {
                  return Ratio(0.0);  // the kinds asked for are the four above
                }
              },
              *parsed.value),
          {}};
}

PlanNumber stepped(const PlanNumber& number, PlanMeaning meaning, UnitSystem units, int steps) {
  const double step = step_of(meaning, units);
  const double zero = meaning == PlanMeaning::temperature ? unit_row(Meaning::temperature, units).si_at_zero : 0.0;
  const double place = (si_of(number) - zero) / step;
  const double whole = steps > 0 ? std::floor(place + 1e-6) : std::ceil(place - 1e-6);
  const double next = zero + (whole + steps) * step;
  return with_si(meaning, meaning == PlanMeaning::temperature ? next : std::max(0.0, next));
}

bool same(const PlanNumber& a, const PlanNumber& b) {
  if (a.index() != b.index()) return false;
  const double x = si_of(a);
  const double y = si_of(b);
  return std::abs(x - y) <= 1e-9 * std::max(std::abs(x), std::abs(y));
}

}  // namespace fluewright
