// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/file_units.hpp"

#include "app/shared/units.hpp"

#include <fmt/format.h>

#include <charconv>
#include <cmath>
#include <limits>

namespace fluewright {

namespace {

struct KindRow {
  FieldKind kind;
  std::string_view word;
  std::string_view unit;
};

constexpr KindRow kinds[] = {
    {FieldKind::length, "length", "mm"},
    {FieldKind::angle, "angle", "deg"},
    {FieldKind::ratio, "ratio", ""},
    {FieldKind::count, "count", ""},
    {FieldKind::pressure, "pressure", "Pa"},
    {FieldKind::temperature, "temperature", "C"},
    {FieldKind::mass_flow, "mass_flow", "kg_h"},
    {FieldKind::velocity, "velocity", "m_s"},
    {FieldKind::volume_flow, "volume_flow", "m3_h"},
    {FieldKind::volume, "volume", "m3"},
    {FieldKind::density, "density", "kg_m3"},
    {FieldKind::power, "power", "W"},
    {FieldKind::choice, "choice", ""},
    {FieldKind::wall, "wall", ""},
    {FieldKind::material, "material", ""},
    {FieldKind::wood, "wood", ""},
    {FieldKind::fan, "fan", ""},
};

const KindRow& row_of(FieldKind kind) {
  for (const KindRow& row : kinds) {
    if (row.kind == kind) return row;
  }
  return kinds[0];
}

constexpr VolumeFlow cubic_metre_per_hour = cubic_metre / hour;

bool in_metres(std::string_view key) { return key.ends_with("altitude"); }

/// The number in the file's unit.
struct ToNumber {
  std::string_view key;
  double operator()(Length v) const { return in(v, in_metres(key) ? metre : millimetre); }
  double operator()(Angle v) const { return in(v, degree); }
  double operator()(Ratio v) const { return v.value(); }
  double operator()(Count v) const { return v.value; }
  double operator()(Pressure v) const { return in(v, pascal); }
  double operator()(Temperature v) const { return in_celsius(v); }
  double operator()(MassFlow v) const { return in(v, kilogram_per_hour); }
  double operator()(Velocity v) const { return in(v, metre_per_second); }
  double operator()(VolumeFlow v) const { return in(v, cubic_metre_per_hour); }
  double operator()(Volume v) const { return in(v, cubic_metre); }
  double operator()(Density v) const { return in(v, kilogram_per_cubic_metre); }
  double operator()(Power v) const { return in(v, watt); }
  double operator()(const std::string&) const { return std::numeric_limits<double>::quiet_NaN(); }
};

/// A whole number is written without a decimal point.
nlohmann::ordered_json as_json(double number) {
  constexpr double largest_exact = 1e15;
  if (std::round(number) == number && std::abs(number) < largest_exact) return static_cast<std::int64_t>(number);
  return number;
}

/// The shortest decimal that `same` recognises.
template <class Same>
nlohmann::ordered_json shortest(double number, Same same) {
  for (int digits = 1; digits < std::numeric_limits<double>::max_digits10; ++digits) {
    const std::string text = fmt::format("{:.{}g}", number, digits);
    double read = 0.0;
    std::from_chars(text.data(), text.data() + text.size(), read);
    if (same(read)) return as_json(read);
  }
  return as_json(number);
}

}  // namespace

std::string_view word(FieldKind kind) { return row_of(kind).word; }

std::optional<FieldKind> field_kind_of(std::string_view word) {
  for (const KindRow& row : kinds) {
    if (row.word == word) return row.kind;
  }
  return std::nullopt;
}

bool is_word_kind(FieldKind kind) {
  return kind == FieldKind::choice || kind == FieldKind::wall || kind == FieldKind::material || kind == FieldKind::wood ||
         kind == FieldKind::fan;
}

std::string_view file_unit(FieldKind kind, std::string_view key) {
  return kind == FieldKind::length && in_metres(key) ? "m" : row_of(kind).unit;
}

std::string file_key(FieldKind kind, std::string_view key) {
  std::string text(key);
  if (kind == FieldKind::ratio) {
    if (meaning_of(kind, key) == Meaning::share && !key.ends_with("share")) text += "_share";
    return text;
  }
  const std::string_view unit = file_unit(kind, key);
  return unit.empty() ? text : fmt::format("{}_{}", text, unit);
}

std::optional<FieldValue> from_file_number(double number, FieldKind kind, std::string_view key) {
  switch (kind) {
    case FieldKind::length:
      return FieldValue{number * (in_metres(key) ? metre : millimetre)};
    case FieldKind::angle:
      return FieldValue{number * degree};
    case FieldKind::ratio:
      return FieldValue{Ratio{number}};
    case FieldKind::count:
      if (std::round(number) != number || std::abs(number) > std::numeric_limits<int>::max()) return std::nullopt;
      return FieldValue{Count{static_cast<int>(number)}};
    case FieldKind::pressure:
      return FieldValue{number * pascal};
    case FieldKind::temperature:
      return FieldValue{celsius(number)};
    case FieldKind::mass_flow:
      return FieldValue{number * kilogram_per_hour};
    case FieldKind::velocity:
      return FieldValue{number * metre_per_second};
    case FieldKind::volume_flow:
      return FieldValue{number * cubic_metre_per_hour};
    case FieldKind::volume:
      return FieldValue{number * cubic_metre};
    case FieldKind::density:
      return FieldValue{Density{number * kilogram_per_cubic_metre}};
    case FieldKind::power:
      return FieldValue{number * watt};
    case FieldKind::choice:
    case FieldKind::wall:
    case FieldKind::material:
    case FieldKind::wood:
    case FieldKind::fan:
      break;
  }
  return std::nullopt;
}

nlohmann::ordered_json to_file_value(const FieldValue& value, FieldKind kind, std::string_view key) {
  if (const auto* text = std::get_if<std::string>(&value)) return *text;
  const double number = std::visit(ToNumber{key}, value);
  return shortest(number, [&](double read) {
    const auto back = from_file_number(read, kind, key);
    return back && *back == value;
  });
}

nlohmann::ordered_json shortest_number(double number, double same_as, double (*enter)(double)) {
  return shortest(number, [&](double read) { return enter(read) == same_as; });
}

}  // namespace fluewright
