// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The working of a number: the steps from what was given to the result, each with its relation in symbols, its value
// and its source, so that a person with a pocket calculator gets the same digits. SI base units throughout.

#include "engine/heat/conduction.hpp"
#include "engine/library/citation.hpp"
#include "engine/quantities/quantities.hpp"
#include "engine/quantities/temperature.hpp"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace fluewright {

/// What a surface as a whole lets through per kelvin [W/K].
using Conductance = detail::quotient<Power, TemperatureDifference>;

/// A number of the working with its unit.
using WorkingValue =
    std::variant<Ratio, Length, Area, Volume, Time, Temperature, TemperatureDifference, Velocity, Pressure, Density,
                 MassFlow, MassFlux, VolumeFlow, Power, HeatFlux, SpecificEnergy, SpecificHeat, MolarMass, SpecificAmount,
                 FilmCoefficient, ThermalResistance, Conductivity, Conductance, DynamicViscosity, Diffusivity,
                 ArealHeatCapacity, Angle>;

/// The published range of a step's relation in words and whether the step has left it.
struct RelationRange {
  std::string text;  ///< "2300 < Re < 5e6"
  bool left = false;
};

/// One step.
struct WorkingStep {
  std::string part;      ///< heading under which it stands: "Air", "Fire", "Wall", ...
  std::string symbol;    ///< a plain identifier, once in a working: "Re"
  std::string meaning;   ///< "Reynolds number"
  /// In symbols, numbers, + - * / ^, sqrt ln exp abs min max acosh and pi: "G * D_h / mu". Empty where the value is given,
  /// read from a table or found by repetition; then the remark says which.
  std::string relation;
  std::vector<std::string> uses;  ///< symbols of earlier steps that the value depends on, in the order of the relation
  WorkingValue value;
  Citation citation;
  std::string remark;
  /// Significant digits worth printing, one more than comes back: with its inputs printed to theirs, the relation gives
  /// this value to within two units of the last digit but one (of the sixth at most).
  int digits = 7;
  std::optional<RelationRange> range;
  std::optional<std::size_t> piece;  ///< the piece whose own working the value comes from, index in Design::pieces
};

/// The steps in the order in which they are worked.
struct Working {
  std::string subject;  ///< "draft to spare, cold bench"
  std::optional<std::size_t> piece;
  std::vector<WorkingStep> steps;

  /// The step of that symbol, nullptr if there is none.
  [[nodiscard]] const WorkingStep* step(std::string_view symbol) const;
};

}  // namespace fluewright
