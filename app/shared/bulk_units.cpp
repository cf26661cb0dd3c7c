// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/shared/bulk_units.hpp"

#include "app/shared/said.hpp"

#include <fmt/format.h>

namespace fluewright {

namespace {

constexpr Mass pound = 0.45359237 * kilogram;  // exact: international pound
constexpr Area square_foot = foot * foot;
constexpr Volume cubic_foot = square_foot * foot;
constexpr Volume litre = 0.001 * cubic_metre;

Shown shown(double number, int decimals, const char* unit) { return {decimal_text(number, decimals), unit}; }

}  // namespace

Shown show_weight(Mass mass, UnitSystem units) {
  return units == UnitSystem::metric ? shown(in(mass, kilogram), 0, "kg") : shown(in(mass, pound), 0, "lb");
}

Shown show_heap(Volume volume, UnitSystem units) {
  return units == UnitSystem::metric ? shown(in(volume, litre), 0, "L") : shown(in(volume, cubic_foot), 1, "ft³");
}

Shown show_area(Area area, UnitSystem units) {
  return units == UnitSystem::metric ? shown(in(area, square_metre), 2, "m²") : shown(in(area, square_foot), 1, "ft²");
}

Shown show_load(MassPerArea load, UnitSystem units) {
  return units == UnitSystem::metric ? shown(in(load, MassPerArea{kilogram / square_metre}), 0, "kg/m²")
                                     : shown(in(load, MassPerArea{pound / square_foot}), 0, "lb/ft²");
}

}  // namespace fluewright
