// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/unit_table.hpp"

#include <algorithm>

namespace fluewright {

namespace {

// Exact by definition: international pound and foot; the International Table British thermal unit.
constexpr double pound = 0.45359237;
constexpr double ounce = pound / 16.0;
constexpr double cubic_foot = 0.3048 * 0.3048 * 0.3048;
constexpr double british_thermal_unit = 1055.05585262;
constexpr double fahrenheit_step = 1.0 / 1.8;
constexpr double fahrenheit_zero = 459.67 / 1.8;
constexpr double celsius_zero = ice_point_offset.value();

struct Row {
  Meaning meaning;
  UnitRow metric;
  UnitRow imperial;
};

constexpr auto trimmed = Digits::trimmed;
constexpr auto fixed = Digits::fixed;

// Lengths in inches and in feet and inches have digits of their own (units_show.cpp); the decimals here serve axes.
constexpr Row rows[] = {
    {Meaning::small_length, {"mm", 0.001, 1, trimmed}, {"in", 0.0254, 1, fixed}},
    {Meaning::run_length, {"m", 1.0, 2, fixed}, {"ft", 0.3048, 1, fixed}},
    {Meaning::height, {"m", 1.0, 2, fixed}, {"ft", 0.3048, 1, fixed}},
    {Meaning::drawn_length, {"mm", 0.001, 1, trimmed}, {"in", 0.0254, 1, fixed}},
    {Meaning::drawn_height, {"m", 1.0, 4, trimmed}, {"ft", 0.3048, 2, fixed}},
    {Meaning::altitude, {"m", 1.0, 0, fixed}, {"ft", 0.3048, 0, fixed}},
    {Meaning::angle, {"°", degree.value(), 1, trimmed}, {"°", degree.value(), 1, trimmed}},
    {Meaning::share, {"%", 0.01, 1, trimmed}, {"%", 0.01, 1, trimmed}},
    {Meaning::ratio, {"", 1.0, 2, trimmed}, {"", 1.0, 2, trimmed}},
    {Meaning::count, {"", 1.0, 0, fixed}, {"", 1.0, 0, fixed}},
    {Meaning::pressure, {"Pa", 1.0, 1, fixed}, {"in w.c.", inch_of_water.value(), 3, fixed}},
    {Meaning::floor_load, {"kPa", 1000.0, 1, trimmed}, {"psf", pound * standard_gravity.value() / (0.3048 * 0.3048), 0, fixed}},
    {Meaning::temperature, {"°C", 1.0, 0, fixed, celsius_zero}, {"°F", fahrenheit_step, 0, fixed, fahrenheit_zero}},
    {Meaning::temperature_step, {"K", 1.0, 0, fixed}, {"°F", fahrenheit_step, 0, fixed}},
    {Meaning::mass_flow_hourly, {"kg/h", 1.0 / 3600.0, 2, trimmed}, {"lb/h", pound / 3600.0, 2, trimmed}},
    {Meaning::mass_flow_gas, {"g/s", 0.001, 1, fixed}, {"lb/h", pound / 3600.0, 0, fixed}},
    {Meaning::velocity, {"m/s", 1.0, 2, trimmed}, {"ft/s", 0.3048, 1, fixed}},
    {Meaning::volume_flow, {"m³/h", 1.0 / 3600.0, 0, fixed}, {"cfm", cubic_foot / 60.0, 0, fixed}},
    {Meaning::volume, {"m³", 1.0, 1, trimmed}, {"ft³", cubic_foot, 0, fixed}},
    {Meaning::power, {"kW", 1000.0, 2, fixed}, {"Btu/h", british_thermal_unit / 3600.0, 0, fixed}},
    {Meaning::electric_power, {"W", 1.0, 0, fixed}, {"W", 1.0, 0, fixed}},
    {Meaning::energy, {"kWh", 3.6e6, 1, fixed}, {"Btu", british_thermal_unit, 0, fixed}},
    {Meaning::density, {"kg/m³", 1.0, 2, trimmed}, {"lb/ft³", pound / cubic_foot, 4, trimmed}},
    {Meaning::film_coefficient,
     {"W/(m²K)", 1.0, 1, fixed},
     {"Btu/(h ft² °F)", british_thermal_unit / (3600.0 * 0.3048 * 0.3048 * fahrenheit_step), 2, fixed}},
    {Meaning::conductivity,
     {"W/(m K)", 1.0, 3, trimmed},
     {"Btu/(h ft °F)", british_thermal_unit / (3600.0 * 0.3048 * fahrenheit_step), 3, trimmed}},
    {Meaning::water_rate, {"g/h", 0.001 / 3600.0, 0, fixed}, {"oz/h", ounce / 3600.0, 1, fixed}},
};

}  // namespace

const UnitRow& unit_row(Meaning meaning, UnitSystem system) {
  const auto* row = std::find_if(std::begin(rows), std::end(rows), [&](const Row& r) { return r.meaning == meaning; });
  return system == UnitSystem::metric ? row->metric : row->imperial;
}

}  // namespace fluewright
