// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/working_value.hpp"

#include "app/shared/said.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace fluewright {

namespace {

/// A number and the name of its unit.
struct Bare {
  double number = 0.0;
  std::string_view unit;
};

struct ToBare {
  Bare operator()(Ratio v) const { return {v.value(), ""}; }
  Bare operator()(Length v) const { return {in(v, metre), "m"}; }
  Bare operator()(Area v) const { return {in(v, square_metre), "m²"}; }
  Bare operator()(Volume v) const { return {in(v, cubic_metre), "m³"}; }
  Bare operator()(Time v) const { return {in(v, second), "s"}; }
  Bare operator()(Temperature v) const { return {in_kelvin(v), "K"}; }
  Bare operator()(TemperatureDifference v) const { return {in(v, kelvin), "K"}; }
  Bare operator()(Velocity v) const { return {in(v, metre_per_second), "m/s"}; }
  Bare operator()(Pressure v) const { return {in(v, pascal), "Pa"}; }
  Bare operator()(Density v) const { return {in(v, kilogram_per_cubic_metre), "kg/m³"}; }
  Bare operator()(MassFlow v) const { return {in(v, kilogram_per_second), "kg/s"}; }
  Bare operator()(MassFlux v) const { return {in(v, MassFlux(kilogram_per_second / square_metre)), "kg/(m² s)"}; }
  Bare operator()(VolumeFlow v) const { return {in(v, VolumeFlow(cubic_metre / second)), "m³/s"}; }
  Bare operator()(Power v) const { return {in(v, watt), "W"}; }
  Bare operator()(HeatFlux v) const { return {in(v, watt_per_square_metre), "W/m²"}; }
  Bare operator()(SpecificEnergy v) const { return {in(v, joule_per_kilogram), "J/kg"}; }
  Bare operator()(SpecificHeat v) const { return {in(v, joule_per_kilogram_kelvin), "J/(kg K)"}; }
  Bare operator()(MolarMass v) const { return {in(v, kilogram_per_mole), "kg/mol"}; }
  Bare operator()(SpecificAmount v) const { return {in(v, mole_per_kilogram), "mol/kg"}; }
  Bare operator()(FilmCoefficient v) const { return {in(v, watt_per_square_metre_kelvin), "W/(m² K)"}; }
  Bare operator()(ThermalResistance v) const { return {in(v, square_metre_kelvin_per_watt), "m² K/W"}; }
  Bare operator()(Conductivity v) const { return {in(v, watt_per_metre_kelvin), "W/(m K)"}; }
  Bare operator()(Conductance v) const { return {in(v, Conductance(watt / kelvin)), "W/K"}; }
  Bare operator()(DynamicViscosity v) const { return {in(v, pascal_second), "Pa s"}; }
  Bare operator()(Diffusivity v) const { return {in(v, Diffusivity(square_metre / second)), "m²/s"}; }
  Bare operator()(ArealHeatCapacity v) const {
    return {in(v, ArealHeatCapacity(joule / kelvin / square_metre)), "J/(m² K)"};
  }
  Bare operator()(Angle v) const { return {in(v, radian), "rad"}; }
};

Bare bare(const WorkingStep& step) { return std::visit(ToBare{}, step.value); }

/// Significant digits, zeros at the end left off, an exponent only where the number is far from one.
std::string to_digits(double number, int digits) {
  if (number == 0.0) return "0";
  const int exponent = static_cast<int>(std::floor(std::log10(std::abs(number))));
  constexpr int smallest = -4;
  if (exponent < smallest || exponent >= digits + 2) return fmt::format("{:.{}e}", number, digits - 1);
  std::string text = fmt::format("{:.{}f}", number, std::max(digits - 1 - exponent, 0));
  if (text.find('.') != std::string::npos) {
    text.erase(text.find_last_not_of('0') + 1);
    if (text.back() == '.') text.pop_back();
  }
  return text;
}

struct Aside {
  UnitSystem units;

  std::string operator()(Temperature v) const { return show(v, units).text(); }
  std::string operator()(MassFlow v) const { return show(v, units).text(); }
  std::string operator()(Power v) const { return show(v, units).text(); }
  std::string operator()(Length v) const { return units == UnitSystem::imperial ? show(v, units).text() : ""; }
  std::string operator()(Ratio) const { return {}; }
  std::string operator()(Angle) const { return {}; }
  template <class Quantity>
  std::string operator()(const Quantity& v) const {
    if constexpr (std::is_same_v<Quantity, Pressure> || std::is_same_v<Quantity, Velocity> ||
                  std::is_same_v<Quantity, Density> || std::is_same_v<Quantity, FilmCoefficient> ||
                  std::is_same_v<Quantity, Conductivity> || std::is_same_v<Quantity, TemperatureDifference> ||
                  std::is_same_v<Quantity, VolumeFlow> || std::is_same_v<Quantity, Volume>) {
      return units == UnitSystem::imperial ? show(v, units).text() : "";
    } else {
      return {};
    }
  }
};

}  // namespace

double working_number(const WorkingStep& step) { return bare(step).number; }

Shown working_value(const WorkingStep& step) {
  const Bare b = bare(step);
  return {with_decimal_mark(to_digits(b.number, step.digits)), std::string(b.unit)};
}

std::string working_aside(const WorkingStep& step, UnitSystem units) { return std::visit(Aside{units}, step.value); }

std::string working_cell(const WorkingStep& step, UnitSystem units) {
  const std::string aside = working_aside(step, units);
  return working_value(step).text() + (aside.empty() ? "" : " (" + aside + ")");
}

}  // namespace fluewright
