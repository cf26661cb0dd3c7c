// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/quantities/quantities.hpp"

#include <compare>

namespace fluewright {

/// A level on the thermodynamic temperature scale, kept as a Boost.Units quantity above absolute zero.
///
/// A level and a step are different things: level - level = step, level + step = level, and
/// level + level does not compile. `above_zero()` hands out the level as kelvin above absolute zero for
/// the relations that need it (ideal gas, T^4).
class Temperature {
 public:
  constexpr Temperature() = default;
  /// From kelvin above absolute zero.
  [[nodiscard]] static constexpr Temperature above_zero(TemperatureDifference t) { return Temperature{t}; }

  [[nodiscard]] constexpr TemperatureDifference above_zero() const { return above_zero_; }

  constexpr Temperature& operator+=(TemperatureDifference d) { above_zero_ += d; return *this; }
  constexpr Temperature& operator-=(TemperatureDifference d) { above_zero_ -= d; return *this; }

  friend constexpr Temperature operator+(Temperature t, TemperatureDifference d) { return t += d; }
  friend constexpr Temperature operator+(TemperatureDifference d, Temperature t) { return t += d; }
  friend constexpr Temperature operator-(Temperature t, TemperatureDifference d) { return t -= d; }
  friend constexpr TemperatureDifference operator-(Temperature a, Temperature b) { return a.above_zero_ - b.above_zero_; }

  friend constexpr bool operator==(Temperature a, Temperature b) { return a.above_zero_.value() == b.above_zero_.value(); }
  friend constexpr std::partial_ordering operator<=>(Temperature a, Temperature b) {
    return a.above_zero_.value() <=> b.above_zero_.value();
  }

 private:
  constexpr explicit Temperature(TemperatureDifference t) : above_zero_{t} {}
  TemperatureDifference above_zero_{};
};

/// 0 degC on the thermodynamic scale (ISO 80000-5, exact).
inline constexpr TemperatureDifference ice_point_offset = 273.15 * kelvin;

[[nodiscard]] constexpr Temperature kelvins(double t) { return Temperature::above_zero(t * kelvin); }
[[nodiscard]] constexpr Temperature celsius(double t) { return Temperature::above_zero(t * kelvin + ice_point_offset); }
[[nodiscard]] constexpr Temperature fahrenheit(double t) { return Temperature::above_zero((t + 459.67) / 1.8 * kelvin); }

[[nodiscard]] constexpr double in_kelvin(Temperature t) { return in(t.above_zero(), kelvin); }
[[nodiscard]] constexpr double in_celsius(Temperature t) { return in(t.above_zero() - ice_point_offset, kelvin); }
[[nodiscard]] constexpr double in_fahrenheit(Temperature t) { return in_kelvin(t) * 1.8 - 459.67; }

/// The level halfway between two levels (a film temperature, say).
[[nodiscard]] constexpr Temperature midway(Temperature a, Temperature b) { return a + 0.5 * (b - a); }

namespace literals {
constexpr Temperature operator""_degC(long double v) { return celsius(static_cast<double>(v)); }
}  // namespace literals

}  // namespace fluewright
