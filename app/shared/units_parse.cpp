// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/said.hpp"
#include "app/shared/typed_text.hpp"
#include "app/shared/unit_table.hpp"
#include "app/shared/units.hpp"

#include <fmt/format.h>

#include <cmath>
#include <limits>
#include <span>

namespace fluewright {

namespace {

/// A unit as people type it, lower case, without spaces, dots and the degree sign's circle (see TypedText).
struct TypedUnit {
  std::string_view name;
  UnitRow row;
};

constexpr double pound_kg = 0.45359237;
constexpr double ounce_kg = pound_kg / 16.0;
constexpr double cubic_foot_m3 = 0.3048 * 0.3048 * 0.3048;

constexpr UnitRow millimetre_row{"mm", 0.001};
constexpr UnitRow centimetre_row{"cm", 0.01};
constexpr UnitRow metre_row{"m", 1.0};
constexpr UnitRow inch_row{"in", 0.0254};
constexpr UnitRow foot_row{"ft", 0.3048};

constexpr TypedUnit length_units[] = {
    {"mm", millimetre_row}, {"cm", centimetre_row}, {"m", metre_row}, {"in", inch_row}, {"inch", inch_row}, {"inches", inch_row},
    {"\"", inch_row},      {"''", inch_row},      {"ft", foot_row},  {"foot", foot_row}, {"feet", foot_row},   {"'", foot_row},
};
constexpr TypedUnit pressure_units[] = {
    {"pa", {"Pa", 1.0}},
    {"hpa", {"hPa", 100.0}},
    {"mbar", {"mbar", 100.0}},
    {"kpa", {"kPa", 1000.0}},
    {"in", {"in", inch_of_water.value()}},
    {"inwc", {"in", inch_of_water.value()}},
    {"\"wc", {"in", inch_of_water.value()}},
    {"\"", {"in", inch_of_water.value()}},
    {"inh2o", {"in", inch_of_water.value()}},
    {"mmwc", {"mm", 9.80665}},
    {"mmh2o", {"mm", 9.80665}},
};
constexpr UnitRow celsius_row{"C", 1.0, 0, Digits::fixed, ice_point_offset.value()};
constexpr UnitRow fahrenheit_row{"F", 1.0 / 1.8, 0, Digits::fixed, 459.67 / 1.8};
constexpr UnitRow kelvin_row{"K", 1.0};
constexpr TypedUnit temperature_units[] = {
    {"c", celsius_row},       {"degc", celsius_row},          {"celsius", celsius_row}, {"f", fahrenheit_row},
    {"degf", fahrenheit_row}, {"fahrenheit", fahrenheit_row}, {"k", kelvin_row},        {"kelvin", kelvin_row},
};
constexpr TypedUnit mass_flow_units[] = {
    {"kg/h", {"kg/h", 1.0 / 3600.0}},
    {"kg/hr", {"kg/h", 1.0 / 3600.0}},
    {"kgh", {"kg/h", 1.0 / 3600.0}},
    {"lb/h", {"lb/h", pound_kg / 3600.0}},
    {"lb/hr", {"lb/h", pound_kg / 3600.0}},
    {"lbs/h", {"lb/h", pound_kg / 3600.0}},
    {"lbs/hr", {"lb/h", pound_kg / 3600.0}},
    {"g/s", {"g/s", 0.001}},
    {"kg/s", {"kg/s", 1.0}},
    {"g/h", {"g/h", 0.001 / 3600.0}},
    {"oz/h", {"oz/h", ounce_kg / 3600.0}},
};
constexpr TypedUnit velocity_units[] = {
    {"m/s", {"m/s", 1.0}},           {"km/h", {"km/h", 1.0 / 3.6}},   {"kmh", {"km/h", 1.0 / 3.6}},
    {"kph", {"km/h", 1.0 / 3.6}},    {"ft/s", {"ft/s", 0.3048}},      {"fps", {"ft/s", 0.3048}},
    {"ft/min", {"ft/min", 0.00508}}, {"fpm", {"ft/min", 0.00508}},    {"mph", {"mph", 0.44704}},
    {"kn", {"kn", 1852.0 / 3600.0}}, {"kt", {"kn", 1852.0 / 3600.0}}, {"knots", {"kn", 1852.0 / 3600.0}},
};
constexpr TypedUnit volume_flow_units[] = {
    {"m3/h", {"m3/h", 1.0 / 3600.0}},
    {"m3/hr", {"m3/h", 1.0 / 3600.0}},
    {"m3/s", {"m3/s", 1.0}},
    {"l/s", {"L/s", 0.001}},
    {"cfm", {"cfm", cubic_foot_m3 / 60.0}},
    {"ft3/min", {"cfm", cubic_foot_m3 / 60.0}},
    {"cuft/min", {"cfm", cubic_foot_m3 / 60.0}},
};
constexpr TypedUnit volume_units[] = {
    {"m3", {"m3", 1.0}},
    {"l", {"L", 0.001}},
    {"ft3", {"ft3", cubic_foot_m3}},
    {"cuft", {"ft3", cubic_foot_m3}},
};
constexpr TypedUnit density_units[] = {
    {"kg/m3", {"kg/m3", 1.0}},
    {"lb/ft3", {"lb/ft3", pound_kg / cubic_foot_m3}},
    {"lb/cuft", {"lb/ft3", pound_kg / cubic_foot_m3}},
};
constexpr TypedUnit power_units[] = {{"w", {"W", 1.0}}, {"kw", {"kW", 1000.0}}, {"hp", {"hp", 745.69987158227022}}};
constexpr TypedUnit ratio_units[] = {{"%", {"%", 0.01}}, {"percent", {"%", 0.01}}};
constexpr TypedUnit angle_units[] = {
    {"deg", {"deg", degree.value()}},
    {"degree", {"deg", degree.value()}},
    {"degrees", {"deg", degree.value()}},
    {"rad", {"rad", 1.0}},
};

const TypedUnit* find_unit(std::span<const TypedUnit> units, std::string_view typed) {
  for (const TypedUnit& unit : units) {
    if (unit.name == typed) return &unit;
  }
  return nullptr;
}

template <class T>
Parsed<T> failed(std::string message) {
  return {std::nullopt, {std::move(message)}};
}

/// What kind of thing was expected, with an example in both systems.
struct Expected {
  std::string_view what;
  std::string_view examples;
};

std::string not_understood(std::string_view typed, const Expected& expected) {
  return said("“{}” is not {}: write it like {}.", typed, said(expected.what), said(expected.examples));
}

constexpr Expected expected_length{to_say("a length"), to_say("1200, 1.2 m, 80 in or 6 ft 4 in")};

/// One number and perhaps a unit, nothing else. In SI.
Parsed<double> parse_single(std::string_view typed, std::span<const TypedUnit> units, const UnitRow& own,
                            const Expected& expected) {
  TypedText text(typed);
  if (text.at_end()) return failed<double>(said("Nothing is written: {} is wanted here.", said(expected.what)));
  const double sign = text.take_sign();
  const TypedNumber number = text.take_number();
  if (!number.value) {
    return failed<double>(number.complaint.empty() ? not_understood(typed, expected) : number.complaint);
  }
  const std::string unit = text.take_rest_as_unit();
  const TypedUnit* known = find_unit(units, unit);
  if (!unit.empty() && known == nullptr) return failed<double>(not_understood(typed, expected));
  return {(known != nullptr ? known->row : own).to_si(sign * *number.value), {}};
}

}  // namespace

Parsed<Length> parse_length(std::string_view typed, UnitSystem system, Meaning meaning) {
  TypedText text(typed);
  if (text.at_end()) return failed<Length>(said("Nothing is written: a length is wanted here."));
  const double sign = text.take_sign();
  const UnitRow& own = unit_row(meaning, system);
  double sum = 0.0;
  double last_unit = std::numeric_limits<double>::infinity();
  bool after_feet = false;
  while (!text.at_end()) {
    const TypedNumber number = text.take_number();
    if (!number.value) {
      return failed<Length>(number.complaint.empty() ? not_understood(typed, expected_length) : number.complaint);
    }
    const std::string unit = text.take_unit();
    const TypedUnit* known = find_unit(length_units, unit);
    if (known == nullptr && !unit.empty()) return failed<Length>(not_understood(typed, expected_length));
    // A bare number after feet means inches ("6' 4"); a bare number alone is in the system's own unit.
    double per_unit = own.si_per_unit;
    if (known != nullptr) {
      per_unit = known->row.si_per_unit;
    } else if (after_feet) {
      per_unit = inch_row.si_per_unit;
    } else if (!text.at_end() || last_unit < std::numeric_limits<double>::infinity()) {
      return failed<Length>(not_understood(typed, expected_length));
    }
    // Units go downwards: "6 ft 4 in", never "4 in 6 ft" and never "6 ft 4 ft".
    if (!(per_unit < last_unit)) return failed<Length>(not_understood(typed, expected_length));
    last_unit = per_unit;
    after_feet = per_unit == foot_row.si_per_unit;
    sum += *number.value * per_unit;
    if (after_feet) text.skip_hyphen();
  }
  if (!std::isfinite(sum)) return failed<Length>(not_understood(typed, expected_length));
  return {sign * sum * metre, {}};
}

namespace {

Parsed<FieldValue> as_field(Parsed<double> si, FieldValue (*make)(double)) {
  if (!si.value) return {std::nullopt, std::move(si.failure)};
  return {make(*si.value), {}};
}

Parsed<FieldValue> parse_count(std::string_view typed, const UnitRow& own) {
  constexpr Expected expected{to_say("a whole number"), to_say("5")};
  const Parsed<double> number = parse_single(typed, {}, own, expected);
  if (!number.value) return {std::nullopt, number.failure};
  constexpr double most = 1e6;
  if (std::round(*number.value) != *number.value || std::abs(*number.value) > most) {
    return failed<FieldValue>(not_understood(typed, expected));
  }
  return {FieldValue{Count{static_cast<int>(*number.value)}}, {}};
}

Parsed<FieldValue> parse_word(std::string_view typed) {
  const auto first = typed.find_first_not_of(" \t");
  if (first == std::string_view::npos) return failed<FieldValue>(said("Nothing is written: a name is wanted here."));
  const auto last = typed.find_last_not_of(" \t");
  return {FieldValue{std::string(typed.substr(first, last - first + 1))}, {}};
}

}  // namespace

Parsed<FieldValue> parse_field(std::string_view typed, UnitSystem system, FieldKind kind, std::string_view key) {
  const UnitRow& own = unit_row(meaning_of(kind, key), system);
  switch (kind) {
    case FieldKind::length: {
      Parsed<Length> length = parse_length(typed, system, meaning_of(kind, key));
      if (!length.value) return {std::nullopt, std::move(length.failure)};
      return {FieldValue{*length.value}, {}};
    }
    case FieldKind::angle:
      return as_field(parse_single(typed, angle_units, own, {to_say("an angle"), to_say("45 or 45 deg")}),
                      [](double v) { return FieldValue{v * radian}; });
    case FieldKind::ratio:
      return as_field(parse_single(typed, ratio_units, own,
                                   meaning_of(kind, key) == Meaning::share ? Expected{to_say("a share"), to_say("18 %")}
                                                                           : Expected{to_say("a number"), to_say("2.5")}),
                      [](double v) { return FieldValue{Ratio{v}}; });
    case FieldKind::count:
      return parse_count(typed, own);
    case FieldKind::pressure:
      return as_field(parse_single(typed, pressure_units, own, {to_say("a pressure"), to_say("5 Pa or 0.02 in w.c.")}),
                      [](double v) { return FieldValue{v * pascal}; });
    case FieldKind::temperature:
      return as_field(parse_single(typed, temperature_units, own, {to_say("a temperature"), to_say("20 C or 68 F")}),
                      [](double v) { return FieldValue{kelvins(v)}; });
    case FieldKind::mass_flow:
      return as_field(parse_single(typed, mass_flow_units, own, {to_say("a burn rate"), to_say("3 kg/h or 6.6 lb/h")}),
                      [](double v) { return FieldValue{v * kilogram_per_second}; });
    case FieldKind::velocity:
      return as_field(parse_single(typed, velocity_units, own, {to_say("a speed"), to_say("4 m/s or 9 mph")}),
                      [](double v) { return FieldValue{v * metre_per_second}; });
    case FieldKind::volume_flow:
      return as_field(parse_single(typed, volume_flow_units, own, {to_say("a flow of air"), to_say("90 m3/h or 53 cfm")}),
                      [](double v) { return FieldValue{VolumeFlow{v * cubic_metre / second}}; });
    case FieldKind::volume:
      return as_field(parse_single(typed, volume_units, own, {to_say("a volume"), to_say("300 m3 or 10600 ft3")}),
                      [](double v) { return FieldValue{v * cubic_metre}; });
    case FieldKind::density:
      return as_field(parse_single(typed, density_units, own, {to_say("a density"), to_say("1.2 kg/m3 or 0.075 lb/ft3")}),
                      [](double v) { return FieldValue{Density{v * kilogram_per_cubic_metre}}; });
    case FieldKind::power:
      return as_field(parse_single(typed, power_units, own, {to_say("a power"), to_say("30 W")}),
                      [](double v) { return FieldValue{v * watt}; });
    case FieldKind::choice:
    case FieldKind::wall:
    case FieldKind::material:
    case FieldKind::wood:
    case FieldKind::fan:
      break;
  }
  return parse_word(typed);
}

}  // namespace fluewright
