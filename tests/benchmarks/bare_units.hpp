// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Boost.Units as it would be without units: every quantity a bare double, every unit the number one. The engine's
// sources, stripped by strip_units.cmake, are compiled with this header put before them: the same code in raw doubles,
// to measure what the types cost.

#include <math.h>

#include <cmath>

namespace boost::units {

template <class>
using quantity = double;
template <class, class>
struct multiply_typeof_helper {
  using type = double;
};
template <class, class>
struct divide_typeof_helper {
  using type = double;
};
using std::abs;
using std::sqrt;

namespace si {

struct dimensionless;
struct length;
struct area;
struct volume;
struct time;
struct mass;
struct amount;
struct velocity;
struct acceleration;
struct pressure;
struct mass_density;
struct dynamic_viscosity;
struct energy;
struct power;
struct temperature;
struct plane_angle;

inline constexpr double metre = 1.0;
inline constexpr double square_metre = 1.0;
inline constexpr double cubic_metre = 1.0;
inline constexpr double second = 1.0;
inline constexpr double kilogram = 1.0;
inline constexpr double mole = 1.0;
inline constexpr double metre_per_second = 1.0;
inline constexpr double metre_per_second_squared = 1.0;
inline constexpr double pascal = 1.0;
inline constexpr double joule = 1.0;
inline constexpr double watt = 1.0;
inline constexpr double kelvin = 1.0;
inline constexpr double radian = 1.0;

}  // namespace si
}  // namespace boost::units

namespace fluewright {  // another namespace in this build: see CMakeLists.txt

/// quantities.hpp's own is a template over dimensions, of which there are none here.
constexpr double in(double quantity, double unit) { return quantity / unit; }

}  // namespace fluewright
