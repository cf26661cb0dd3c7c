// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/said.hpp"
#include "app/shared/unit_table.hpp"
#include "app/shared/units.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace fluewright {

namespace {

constexpr std::string_view minus_sign = "\u2212";
constexpr std::string_view no_break_space = "\u00A0";
constexpr std::string_view no_number = "\u2014";  // an em dash: nothing to show
constexpr double inches_a_foot = 12.0;
constexpr double sixteenths = 16.0;

/// A typographic minus, and none before a zero that only rounding made negative.
std::string with_sign(std::string digits) {
  if (digits.empty() || digits.front() != '-') return digits;
  digits.erase(0, 1);
  const bool zero = digits.find_first_of("123456789") == std::string::npos;
  return zero ? digits : std::string(minus_sign) + digits;
}

std::string decimal(double number, int decimals, Digits digits) {
  if (!std::isfinite(number)) return std::string(no_number);
  std::string text = fmt::format("{:.{}f}", number, decimals);
  if (digits == Digits::trimmed && decimals > 0) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  return with_sign(with_decimal_mark(std::move(text)));
}

/// "6", "1/2", "6 1/2" for a whole number of sixteenths, not negative.
std::string inch_fraction(long count) {
  const long whole = count / 16;
  const long rest = count % 16;
  if (rest == 0) return fmt::format("{}", whole);
  const long common = std::gcd(rest, 16L);
  const std::string fraction = fmt::format("{}/{}", rest / common, 16 / common);
  return whole == 0 ? fraction : fmt::format("{} {}", whole, fraction);
}

/// The nearest count of sixteenths if the value lies on it to a thousandth of an inch, else -1.
long sixteenths_of(double inches) {
  constexpr double on_the_mark = 0.001;
  const double count = std::round(inches * sixteenths);
  return std::abs(inches - count / sixteenths) < on_the_mark ? static_cast<long>(count) : -1;
}

/// Inches, not negative: on a tape's mark as the tape says it, else in decimals.
std::string inches_size(double size, int decimals) {
  const double step = std::pow(10.0, decimals);
  // Rounding may lead onto a mark: then the mark is what is said.
  const long marks = std::max(sixteenths_of(size), sixteenths_of(std::round(size * step) / step));
  return marks >= 0 ? inch_fraction(marks) : decimal_text(size, decimals);
}

std::string inches_text(double inches) {
  const std::string text = inches_size(std::abs(inches), std::abs(inches) < 1.0 ? 3 : 1);
  return with_sign(inches < 0.0 ? "-" + text : text);
}

/// Feet and inches, the inches to a tenth or, exactly, to a sixteenth.
std::string feet_text(double inches, bool to_the_mark) {
  const double parts = to_the_mark ? sixteenths : 10.0;
  const double size = std::round(std::abs(inches) * parts) / parts;
  const double feet = std::floor(size / inches_a_foot);
  const std::string rest = inches_size(size - feet * inches_a_foot, 1);
  std::string text = feet > 0.0 ? fmt::format("{:.0f} ft", feet) : "";
  if (rest != "0") text += (text.empty() ? "" : " ") + rest + " in";
  if (text.empty()) text = "0 ft";
  return with_sign(inches < 0.0 ? "-" + text : text);
}

Shown plain(double si, Meaning meaning, UnitSystem system) {
  const UnitRow& row = unit_row(meaning, system);
  return {decimal(row.from_si(si), row.decimals, row.digits), std::string(row.name)};
}

/// Metres to the centimetre, and to the tenth of a millimetre where someone set it so.
Shown drawn_metres(double metres) {
  constexpr int to_grid_count = 4;
  std::string text = decimal(metres, to_grid_count, Digits::trimmed);
  const std::string two = decimal(metres, 2, Digits::fixed);
  return {text.size() < two.size() ? two : text, "m"};
}

}  // namespace

std::string Shown::text() const {
  if (unit.empty()) return number;
  return unit == "°" ? number + unit : number + std::string(no_break_space) + unit;
}

std::string unit_name(Meaning meaning, UnitSystem system) { return std::string(unit_row(meaning, system).name); }

double in_shown_unit(Length length, UnitSystem system, Meaning meaning) {
  return unit_row(meaning, system).from_si(in(length, metre));
}
double in_shown_unit(Pressure pressure, UnitSystem system) {
  return unit_row(Meaning::pressure, system).from_si(in(pressure, pascal));
}
double in_shown_unit(Temperature temperature, UnitSystem system) {
  return unit_row(Meaning::temperature, system).from_si(in_kelvin(temperature));
}

double in_shown_unit(VolumeFlow flow, UnitSystem system) {
  return unit_row(Meaning::volume_flow, system).from_si(in(flow, VolumeFlow{cubic_metre / second}));
}

Shown show(Length length, UnitSystem system, Meaning meaning) {
  const double metres = in(length, metre);
  const bool finite = std::isfinite(metres);
  constexpr double thin = 0.00095;  // sheet metal: a digit more
  if (system == UnitSystem::metric && meaning == Meaning::small_length && std::abs(metres) < thin) {
    return {decimal(in(length, millimetre), 2, Digits::trimmed), "mm"};
  }
  if (finite && system == UnitSystem::metric && meaning == Meaning::drawn_height) return drawn_metres(metres);
  if (!finite || system == UnitSystem::metric || meaning == Meaning::altitude) return plain(metres, meaning, system);
  if (meaning == Meaning::small_length) return {inches_text(in(length, inch)), "in"};
  return {feet_text(in(length, inch), meaning == Meaning::drawn_length || meaning == Meaning::drawn_height), ""};
}

Shown show(Pressure value, UnitSystem system, Meaning meaning) { return plain(in(value, pascal), meaning, system); }
Shown show(Temperature value, UnitSystem system) { return plain(in_kelvin(value), Meaning::temperature, system); }
Shown show(TemperatureDifference value, UnitSystem system) {
  return plain(in(value, kelvin), Meaning::temperature_step, system);
}
Shown show(MassFlow value, UnitSystem system, Meaning meaning) {
  return plain(in(value, kilogram_per_second), meaning, system);
}
Shown show(Velocity value, UnitSystem system) { return plain(in(value, metre_per_second), Meaning::velocity, system); }
Shown show(VolumeFlow value, UnitSystem system) {
  return plain(in(value, VolumeFlow{cubic_metre / second}), Meaning::volume_flow, system);
}
Shown show(Volume value, UnitSystem system) { return plain(in(value, cubic_metre), Meaning::volume, system); }
Shown show(Power value, UnitSystem system, Meaning meaning) { return plain(in(value, watt), meaning, system); }
Shown show(Energy value, UnitSystem system) { return plain(in(value, joule), Meaning::energy, system); }
Shown show(Density value, UnitSystem system) {
  return plain(in(value, kilogram_per_cubic_metre), Meaning::density, system);
}
Shown show(FilmCoefficient value, UnitSystem system) {
  return plain(in(value, watt_per_square_metre_kelvin), Meaning::film_coefficient, system);
}
Shown show(Conductivity value, UnitSystem system) {
  return plain(in(value, watt_per_metre_kelvin), Meaning::conductivity, system);
}
Shown show(Angle value, UnitSystem system) { return plain(in(value, radian), Meaning::angle, system); }
Shown show(Ratio value, UnitSystem system, Meaning meaning) { return plain(value.value(), meaning, system); }

namespace {

struct ShowField {
  UnitSystem system;
  Meaning meaning;

  Shown operator()(Length v) const { return show(v, system, meaning); }
  Shown operator()(Pressure v) const { return show(v, system, meaning); }
  Shown operator()(MassFlow v) const { return show(v, system, meaning); }
  Shown operator()(Power v) const { return show(v, system, meaning); }
  Shown operator()(Ratio v) const { return show(v, system, meaning); }
  Shown operator()(Count v) const { return plain(v.value, Meaning::count, system); }
  Shown operator()(const std::string& v) const { return {v, ""}; }
  template <class Quantity>
  Shown operator()(const Quantity& v) const {
    return show(v, system);
  }
};

}  // namespace

Shown show(const FieldValue& value, UnitSystem system, FieldKind kind, std::string_view key) {
  return std::visit(ShowField{system, meaning_of(kind, key)}, value);
}

Meaning meaning_of(FieldKind kind, std::string_view key) {
  const auto ends_with = [&](std::string_view end) { return key.ends_with(end); };
  switch (kind) {
    case FieldKind::length:
      if (ends_with("altitude")) return Meaning::altitude;
      if (ends_with("house_height") || ends_with("neutral_plane") || ends_with("highest_near")) return Meaning::drawn_height;
      if (key == "length" || ends_with("_length")) return Meaning::drawn_length;
      return Meaning::small_length;
    case FieldKind::angle:
      return Meaning::angle;
    case FieldKind::ratio:
      if (ends_with("share") || ends_with("humidity") || ends_with("moisture") || key == "speed") return Meaning::share;
      return Meaning::ratio;
    case FieldKind::count:
      return Meaning::count;
    case FieldKind::pressure:
      if (ends_with("floor_capacity")) return Meaning::floor_load;
      return Meaning::pressure;
    case FieldKind::temperature:
      return Meaning::temperature;
    case FieldKind::mass_flow:
      return Meaning::mass_flow_hourly;
    case FieldKind::velocity:
      return Meaning::velocity;
    case FieldKind::volume_flow:
      return Meaning::volume_flow;
    case FieldKind::volume:
      return Meaning::volume;
    case FieldKind::density:
      return Meaning::density;
    case FieldKind::power:
      return Meaning::electric_power;
    case FieldKind::choice:
    case FieldKind::wall:
    case FieldKind::material:
    case FieldKind::wood:
    case FieldKind::fan:
      break;
  }
  return Meaning::ratio;
}

}  // namespace fluewright
