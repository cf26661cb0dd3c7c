// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/desktop/fields/field_words.hpp"

#include "app/drawing/tr.hpp"

#include <algorithm>
#include <cmath>
#include <type_traits>

namespace fluewright {

namespace {

template <class T>
constexpr bool is_text = std::is_same_v<T, std::string>;

/// A step of the scale that is shown, and where that scale has its zero, both in SI.
struct Step {
  double size;
  double zero = 0.0;
};

Step step_of(Meaning meaning, UnitSystem units) {
  const bool metric = units == UnitSystem::metric;
  switch (meaning) {
    case Meaning::small_length:
      return {metric ? 0.005 : 0.25 * 0.0254};
    case Meaning::run_length:
      return {metric ? 0.05 : 0.0254};
    case Meaning::drawn_length:
      return {metric ? 0.025 : 0.0254};
    case Meaning::height:
    case Meaning::drawn_height:
      return {metric ? 0.1 : 3.0 * 0.0254};
    case Meaning::altitude:
      return {metric ? 10.0 : 50.0 * 0.3048};
    case Meaning::angle:
      return {in(5.0 * degree, radian)};
    case Meaning::share:
      return {0.01};
    case Meaning::ratio:
      return {0.1};
    case Meaning::count:
      return {1.0};
    case Meaning::pressure:
      return {metric ? 1.0 : 0.005 * in(inch_of_water, pascal)};
    case Meaning::temperature:
      return metric ? Step{1.0, in_kelvin(celsius(0.0))} : Step{1.0 / 1.8, in_kelvin(fahrenheit(0.0))};
    case Meaning::temperature_step:
      return {metric ? 1.0 : 1.0 / 1.8};
    case Meaning::mass_flow_hourly:
      return {(metric ? 0.1 : 0.25 * 0.45359237) / 3600.0};
    case Meaning::mass_flow_gas:
      return {metric ? 0.001 : 0.001 * 0.45359237};
    case Meaning::velocity:
      return {metric ? 0.5 : 0.44704};
    case Meaning::volume_flow:
      return {metric ? 10.0 / 3600.0 : 5.0 * 0.3048 * 0.3048 * 0.3048 / 60.0};
    case Meaning::volume:
      return {metric ? 10.0 : 500.0 * 0.3048 * 0.3048 * 0.3048};
    case Meaning::density:
      return {metric ? 0.05 : 0.005 * 16.01846337396014};
    default:
      return {1.0};
  }
}

}  // namespace

std::optional<double> magnitude(const FieldValue& value) {
  return std::visit(
      [](const auto& v) -> std::optional<double> {
        using T = std::decay_t<decltype(v)>;
        if constexpr (is_text<T>)
          return std::nullopt;
        else if constexpr (std::is_same_v<T, Count>)
          return static_cast<double>(v.value);
        else if constexpr (std::is_same_v<T, Temperature>)
          return in_kelvin(v);
        else
          return v.value();
      },
      value);
}

FieldValue with_magnitude(const FieldValue& like, double magnitude) {
  return std::visit(
      [magnitude](const auto& v) -> FieldValue {
        using T = std::decay_t<decltype(v)>;
        if constexpr (is_text<T>)
          return v;
        else if constexpr (std::is_same_v<T, Count>)
          return Count{static_cast<int>(std::lround(magnitude))};
        else if constexpr (std::is_same_v<T, Temperature>)
          return kelvins(magnitude);
        else
          return T::from_value(magnitude);
      },
      like);
}

bool same_value(const FieldValue& a, const FieldValue& b) {
  if (a.index() != b.index()) return false;
  const auto x = magnitude(a);
  const auto y = magnitude(b);
  if (!x || !y) return std::get<std::string>(a) == std::get<std::string>(b);
  return std::abs(*x - *y) <= 1e-9 * std::max(std::abs(*x), std::abs(*y));
}

bool is_allowed(const FieldSpec& spec, const FieldValue& value) {
  const auto number = magnitude(value);
  if (!number) return true;
  // A typed 600 mm and a stored 600 mm may differ in the last bit.
  const double slack = 1e-9 * std::abs(*number);
  if (spec.lowest && *number < *magnitude(*spec.lowest) - slack) return false;
  return !(spec.highest && *number > *magnitude(*spec.highest) + slack);
}

std::optional<FieldValue> stepped(const FieldSpec& spec, const FieldValue& value, UnitSystem units, int steps) {
  const auto number = magnitude(value);
  if (!number || steps == 0) return std::nullopt;
  const Step step = step_of(meaning_of(spec.kind, spec.key), units);
  const double place = (*number - step.zero) / step.size;
  // From between two marks the first step goes to the next mark. The small slack keeps 0.30000000004 on its mark.
  const double from = steps > 0 ? std::floor(place + 1e-6) : std::ceil(place - 1e-6);
  double next = step.zero + (from + steps) * step.size;
  if (spec.lowest) next = std::max(next, *magnitude(*spec.lowest));
  if (spec.highest) next = std::min(next, *magnitude(*spec.highest));
  FieldValue result = with_magnitude(value, next);
  // At the end of the range, or outside it and asked to go further out.
  const bool moved = steps > 0 ? *magnitude(result) > *number : *magnitude(result) < *number;
  if (!moved || same_value(result, value)) return std::nullopt;
  return result;
}

QString value_text(const FieldSpec& spec, const FieldValue& value, UnitSystem units) {
  return QString::fromStdString(show(value, units, spec.kind, spec.key).text());
}

namespace {

/// "2–3 kg/h": the unit once where both ends share it.
QString span_text(const FieldSpec& spec, const FieldValue& low, const FieldValue& high, UnitSystem units,
                  const QString& between) {
  const Shown a = show(low, units, spec.kind, spec.key);
  const Shown b = show(high, units, spec.kind, spec.key);
  const QString end = QString::fromStdString(b.text());
  if (a.number == b.number && a.unit == b.unit) return end;
  return QString::fromStdString(a.unit == b.unit ? a.number : a.text()) + between + end;
}

}  // namespace

namespace {

/// What is usual is rough: a range written in millimetres reads in whole inches, not in sixteenths.
FieldValue rounded_for_reading(const FieldValue& value, UnitSystem units) {
  const auto* length = std::get_if<Length>(&value);
  if (!length || units == UnitSystem::metric) return value;
  const double inches = in(*length, inch);
  const double step = std::abs(inches) >= 3.0 ? 1.0 : std::abs(inches) >= 1.0 ? 0.25 : 0.0625;
  return std::round(inches / step) * step * inch;
}

}  // namespace

QString usual_words(const FieldSpec& spec, UnitSystem units) {
  if (!spec.usual_low || !spec.usual_high) return {};
  const FieldValue low = rounded_for_reading(*spec.usual_low, units);
  const FieldValue high = rounded_for_reading(*spec.usual_high, units);
  // A dash between numbers, a word where a number may carry a sign of its own.
  const bool negative = magnitude(*spec.usual_low).value_or(0.0) < 0.0 || spec.kind == FieldKind::temperature;
  return tr("usual %1")
      .arg(span_text(spec, low, high, units, negative ? tr(" to ") : QStringLiteral("–")));
}

QString allowed_words(const FieldSpec& spec, UnitSystem units) {
  if (spec.lowest && spec.highest) return span_text(spec, *spec.lowest, *spec.highest, units, tr(" to "));
  if (spec.lowest) return tr("at least %1").arg(value_text(spec, *spec.lowest, units));
  if (spec.highest) return tr("at most %1").arg(value_text(spec, *spec.highest, units));
  return {};
}

QString full_stop(const QString& sentence) {
  return sentence.endsWith(QLatin1Char('.')) ? sentence : sentence + QLatin1Char('.');
}

QString source_words(const Citation& citation) {
  const QString source = QString::fromStdString(citation.source);
  switch (citation.standing) {
    case Standing::published:
      return tr("Published: %1").arg(source);
    case Standing::from_memory:
      return source.isEmpty() ? tr("From memory; check before relying on it")
                              : tr("%1 (from memory; check before relying on it)").arg(source);
    case Standing::common_practice:
      return source.isEmpty() ? tr("Common practice, no published source")
                              : tr("Common practice: %1").arg(source);
    case Standing::chosen:
      return source.isEmpty() ? tr("Our own modelling choice")
                              : tr("Our own choice: %1").arg(source);
  }
  return source;
}

}  // namespace fluewright
