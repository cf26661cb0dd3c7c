// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Numbers as people read and type them. Desk, sheet and command line print through this one formatter.

#include "engine/library/field.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

#include <optional>
#include <string>
#include <string_view>

namespace fluewright {

enum class UnitSystem { metric, imperial };

/// What a number stands for; decides its unit and its digits. Results: `small_length` reads in mm | in, `run_length`
/// and `height` in m to the centimetre | feet and inches to a tenth. What someone set: `drawn_length` in mm,
/// `drawn_height` in m, both | feet and inches to a sixteenth, and `altitude` in whole m | ft.
enum class Meaning {
  small_length,
  run_length,
  height,
  drawn_length,
  drawn_height,
  altitude,
  angle,
  share,
  ratio,
  count,
  pressure,
  floor_load,
  temperature,
  temperature_step,
  mass_flow_hourly,
  mass_flow_gas,
  velocity,
  volume_flow,
  volume,
  power,
  electric_power,
  energy,
  density,
  film_coefficient,
  conductivity,
  water_rate
};

/// A number and its unit, apart: "3.4" and "Pa".
struct Shown {
  std::string number;
  std::string unit;
  [[nodiscard]] std::string text() const;  ///< "3.4 Pa" (no-break space); no unit for pure numbers
};

/// The unit a meaning is shown in: "mm", "in w.c.", "" for pure numbers. Feet and inches answer "ft".
[[nodiscard]] std::string unit_name(Meaning, UnitSystem);
/// How a field of that kind and key is shown: "bore" in mm, "altitude" in m, "moisture" in percent.
[[nodiscard]] Meaning meaning_of(FieldKind kind, std::string_view key);

/// A quantity as a plain number of the unit named by unit_name(): what an axis or a scale needs.
[[nodiscard]] double in_shown_unit(Length, UnitSystem, Meaning);
[[nodiscard]] double in_shown_unit(Pressure, UnitSystem);
[[nodiscard]] double in_shown_unit(Temperature, UnitSystem);
[[nodiscard]] double in_shown_unit(VolumeFlow, UnitSystem);

[[nodiscard]] Shown show(Length, UnitSystem, Meaning = Meaning::small_length);
[[nodiscard]] Shown show(Pressure, UnitSystem, Meaning = Meaning::pressure);
[[nodiscard]] Shown show(Temperature, UnitSystem);
[[nodiscard]] Shown show(MassFlow, UnitSystem, Meaning = Meaning::mass_flow_hourly);
[[nodiscard]] Shown show(Velocity, UnitSystem);
[[nodiscard]] Shown show(VolumeFlow, UnitSystem);
[[nodiscard]] Shown show(Volume, UnitSystem);
[[nodiscard]] Shown show(Power, UnitSystem, Meaning = Meaning::power);
[[nodiscard]] Shown show(Energy, UnitSystem);
[[nodiscard]] Shown show(Density, UnitSystem);
[[nodiscard]] Shown show(FilmCoefficient, UnitSystem);
[[nodiscard]] Shown show(Conductivity, UnitSystem);
[[nodiscard]] Shown show(TemperatureDifference, UnitSystem);
[[nodiscard]] Shown show(Angle, UnitSystem);
/// A share reads in percent, a ratio as it is.
[[nodiscard]] Shown show(Ratio, UnitSystem, Meaning = Meaning::ratio);
[[nodiscard]] Shown show(const FieldValue&, UnitSystem, FieldKind, std::string_view key);

/// Why a typed value was not understood.
struct ParseFailure {
  std::string message;  ///< one sentence for the user
};
template <class T>
struct Parsed {
  std::optional<T> value;
  ParseFailure failure;
};

/// "6 ft 4 in", "6' 4\"", "1.2 m", "1,2 m", "80 in", "1200" (in the system's own unit of that meaning). Either system
/// understands the other's units. Comma or dot.
[[nodiscard]] Parsed<Length> parse_length(std::string_view typed, UnitSystem, Meaning = Meaning::small_length);
/// Any field's value by its kind, unit optional: "20 C", "68 F", "5 Pa", "0.02 in", "35 %", "3 kg/h", "45 deg", "30 W".
[[nodiscard]] Parsed<FieldValue> parse_field(std::string_view typed, UnitSystem, FieldKind, std::string_view key);

}  // namespace fluewright
