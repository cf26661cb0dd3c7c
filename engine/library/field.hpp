// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/citation.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace fluewright {

/// What a field holds. `choice` is one word of a list; `wall`, `material`, `wood` and `fan` are ids.
enum class FieldKind {
  length, angle, ratio, count, pressure, temperature, mass_flow, velocity, volume_flow, volume,
  density, power, choice, wall, material, wood, fan
};

/// A whole number of things (gores of a segmented bend).
struct Count {
  int value = 0;
  friend bool operator==(const Count&, const Count&) = default;
};

/// A field's value: its alternative is fixed by the field's kind (choice, wall, material, wood and fan are strings).
using FieldValue = std::variant<Length, Angle, Ratio, Count, Pressure, Temperature, MassFlow, Velocity, VolumeFlow,
                                Volume, Density, Power, std::string>;

/// What the data says about one field of a piece type, or about one condition of site, room or fire.
struct FieldSpec {
  std::string key;    ///< engine name, e.g. "bore"; the file adds the unit: "bore_mm"
  std::string label;  ///< what the user reads, e.g. "Bore"
  std::string help;   ///< one or two sentences: what it is
  FieldKind kind = FieldKind::length;
  FieldValue fallback;  ///< used where the design says nothing
  std::optional<FieldValue> lowest;      ///< allowed range, inclusive
  std::optional<FieldValue> highest;
  std::optional<FieldValue> usual_low;   ///< what builders usually have
  std::optional<FieldValue> usual_high;
  std::vector<std::string> choices;      ///< for FieldKind::choice
  Citation citation;                     ///< where fallback and range come from
};

}  // namespace fluewright
