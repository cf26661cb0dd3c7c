// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "engine/library/citation.hpp"
#include "engine/library/field.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace fluewright {

/// What a fan raises the pressure by at a flow.
struct FanPoint {
  VolumeFlow flow{};
  Pressure head{};
  friend bool operator==(const FanPoint&, const FanPoint&) = default;
};

/// A fan's data sheet, as its maker states it.
struct FanSheet {
  std::string id;
  std::string name;
  /// At full speed in gas of `reference_density`; two at least, flows rising from zero.
  std::vector<FanPoint> points;
  Density reference_density = 1.2 * kilogram_per_cubic_metre;
  Ratio off_loss = 5.0;                       ///< velocity heads of the bore that it takes standing still
  bool motor_in_stream = true;
  Temperature rated_gas = celsius(60.0);      ///< hottest gas that may pass it
  Temperature rated_motor = celsius(60.0);    ///< hottest that its motor may get
  Power power = 30.0 * watt;                  ///< electrical, at full speed in gas of `reference_density`
  Citation citation;
  friend bool operator==(const FanSheet&, const FanSheet&) = default;
};

/// Whether the points make a curve: two at least, finite, flows rising from zero, no head below zero, not all zero.
[[nodiscard]] bool makes_a_curve(std::span<const FanPoint> points);

/// One entry of a data sheet beside its points: its key, its kind, and how to read and write it.
struct FanField {
  std::string_view key;
  FieldKind kind;
  FieldValue (*get)(const FanSheet&);
  void (*set)(FanSheet&, const FieldValue&);  ///< the value must hold the alternative of `kind`
};

/// All entries, in the order in which a person would read them off a data sheet.
[[nodiscard]] std::span<const FanField> fan_fields();

/// Words of the entry "motor".
inline constexpr std::string_view motor_in_the_stream = "in the stream";
inline constexpr std::string_view motor_outside = "outside";

}  // namespace fluewright
