// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// The one door to Boost.Units. Every other engine header speaks these aliases only.
//
// Enter the typed world by naming a unit:   150.0 * millimetre      or 150.0_mm
// Leave it by naming a unit:                in(bore, millimetre)
// A level on the temperature scale is a Temperature (see temperature.hpp); a step along it is a
// TemperatureDifference. The two do not convert into each other silently.

#include <boost/units/cmath.hpp>
#include <boost/units/conversion.hpp>
#include <boost/units/limits.hpp>
#include <boost/units/pow.hpp>
#include <boost/units/quantity.hpp>
#include <boost/units/systems/si.hpp>

#include <numbers>

namespace fluewright {

namespace bu = boost::units;
namespace si = boost::units::si;

/// A pure number. Converts to and from double by itself; nothing else does.
using Ratio = bu::quantity<si::dimensionless>;

using Length = bu::quantity<si::length>;
using Area = bu::quantity<si::area>;
using Volume = bu::quantity<si::volume>;
using Time = bu::quantity<si::time>;
using Mass = bu::quantity<si::mass>;
using AmountOfSubstance = bu::quantity<si::amount>;
using Velocity = bu::quantity<si::velocity>;
using Acceleration = bu::quantity<si::acceleration>;
using Pressure = bu::quantity<si::pressure>;
using Density = bu::quantity<si::mass_density>;
using DynamicViscosity = bu::quantity<si::dynamic_viscosity>;
using Energy = bu::quantity<si::energy>;
using Power = bu::quantity<si::power>;
/// A step along the temperature scale [K].
using TemperatureDifference = bu::quantity<si::temperature>;

namespace detail {
template <class A, class B>
using product = typename bu::multiply_typeof_helper<A, B>::type;
template <class A, class B>
using quotient = typename bu::divide_typeof_helper<A, B>::type;
}  // namespace detail

/// [kg/s]
using MassFlow = detail::quotient<Mass, Time>;
/// [kg/(m2 s)]
using MassFlux = detail::quotient<MassFlow, Area>;
/// [m3/s]
using VolumeFlow = detail::quotient<Volume, Time>;
/// [J/kg]
using SpecificEnergy = detail::quotient<Energy, Mass>;
/// Specific heat capacity or specific gas constant [J/(kg K)]
using SpecificHeat = detail::quotient<SpecificEnergy, TemperatureDifference>;
/// [mol/kg]
using SpecificAmount = detail::quotient<AmountOfSubstance, Mass>;
/// [kg/mol]
using MolarMass = detail::quotient<Mass, AmountOfSubstance>;
/// [J/(mol K)]
using MolarHeat = detail::quotient<detail::quotient<Energy, AmountOfSubstance>, TemperatureDifference>;
/// [W/m2]
using HeatFlux = detail::quotient<Power, Area>;
/// Heat transfer coefficient, film or overall [W/(m2 K)]
using FilmCoefficient = detail::quotient<HeatFlux, TemperatureDifference>;
/// Area-specific thermal resistance [m2 K/W]
using ThermalResistance = detail::quotient<Ratio, FilmCoefficient>;
/// Thermal conductivity [W/(m K)]
using Conductivity = detail::product<FilmCoefficient, Length>;
/// Thermal diffusivity [m2/s]
using Diffusivity = detail::quotient<Area, Time>;
/// Heat capacity of a whole body [J/K]
using HeatCapacity = detail::quotient<Energy, TemperatureDifference>;
/// Areal heat capacity of a thin wall [J/(m2 K)]
using ArealHeatCapacity = detail::quotient<HeatCapacity, Area>;
/// Absorption coefficient of a gas per length and partial pressure [1/(m Pa)]
using PressureAbsorption = detail::quotient<Ratio, detail::product<Length, Pressure>>;
/// Heat flow per length of run and kelvin [W/(m K)]: U times perimeter
using LineConductance = Conductivity;
/// 1/K, for thermal expansion of air
using Expansion = detail::quotient<Ratio, TemperatureDifference>;
/// Plain angle [rad]. Enter and leave by degree.
using Angle = bu::quantity<si::plane_angle>;

// Units, by name.
inline constexpr Length metre = 1.0 * si::metre;
inline constexpr Length millimetre = 0.001 * si::metre;
inline constexpr Length inch = 0.0254 * si::metre;
inline constexpr Length foot = 0.3048 * si::metre;
inline constexpr Area square_metre = 1.0 * si::square_metre;
inline constexpr Volume cubic_metre = 1.0 * si::cubic_metre;
inline constexpr Time second = 1.0 * si::second;
inline constexpr Time minute = 60.0 * si::second;
inline constexpr Time hour = 3600.0 * si::second;
inline constexpr Mass kilogram = 1.0 * si::kilogram;
inline constexpr Mass gram = 0.001 * si::kilogram;
inline constexpr AmountOfSubstance mole = 1.0 * si::mole;
inline constexpr Velocity metre_per_second = 1.0 * si::metre_per_second;
inline constexpr Pressure pascal = 1.0 * si::pascal;
/// Inch of water column at 4 degC (ISO 80000-4 conventional water column, 9806.65 N/m3).
inline constexpr Pressure inch_of_water = 249.08891 * si::pascal;
inline constexpr Density kilogram_per_cubic_metre = kilogram / cubic_metre;
inline constexpr DynamicViscosity pascal_second = pascal * second;
inline constexpr Energy joule = 1.0 * si::joule;
inline constexpr Power watt = 1.0 * si::watt;
inline constexpr TemperatureDifference kelvin = 1.0 * si::kelvin;
inline constexpr MassFlow kilogram_per_second = kilogram / second;
inline constexpr MassFlow kilogram_per_hour = kilogram / hour;
inline constexpr SpecificEnergy joule_per_kilogram = joule / kilogram;
inline constexpr SpecificHeat joule_per_kilogram_kelvin = joule_per_kilogram / kelvin;
inline constexpr SpecificAmount mole_per_kilogram = mole / kilogram;
inline constexpr MolarMass kilogram_per_mole = kilogram / mole;
inline constexpr MolarHeat joule_per_mole_kelvin = joule / mole / kelvin;
inline constexpr HeatFlux watt_per_square_metre = watt / square_metre;
inline constexpr FilmCoefficient watt_per_square_metre_kelvin = watt_per_square_metre / kelvin;
inline constexpr ThermalResistance square_metre_kelvin_per_watt = 1.0 / watt_per_square_metre_kelvin;
inline constexpr Conductivity watt_per_metre_kelvin = watt_per_square_metre_kelvin * metre;
inline constexpr Angle radian = 1.0 * si::radian;
inline constexpr Angle degree = (std::numbers::pi / 180.0) * si::radian;

/// Standard gravity [m/s2] (ISO 80000-3, exact).
inline constexpr Acceleration standard_gravity = 9.80665 * si::metre_per_second_squared;

/// How many of `unit` the quantity holds: the only way out of the typed world.
template <class Dimension>
[[nodiscard]] constexpr double in(const bu::quantity<Dimension>& quantity, const bu::quantity<Dimension>& unit) {
  return quantity.value() / unit.value();
}

namespace literals {
constexpr Length operator""_m(long double v) { return static_cast<double>(v) * metre; }
constexpr Length operator""_mm(long double v) { return static_cast<double>(v) * millimetre; }
constexpr Pressure operator""_Pa(long double v) { return static_cast<double>(v) * pascal; }
constexpr TemperatureDifference operator""_K(long double v) { return static_cast<double>(v) * kelvin; }
constexpr Time operator""_s(long double v) { return static_cast<double>(v) * second; }
constexpr Time operator""_min(long double v) { return static_cast<double>(v) * minute; }
constexpr Time operator""_h(long double v) { return static_cast<double>(v) * hour; }
constexpr Mass operator""_kg(long double v) { return static_cast<double>(v) * kilogram; }
constexpr MassFlow operator""_kg_h(long double v) { return static_cast<double>(v) * kilogram_per_hour; }
constexpr Velocity operator""_m_s(long double v) { return static_cast<double>(v) * metre_per_second; }
constexpr Angle operator""_deg(long double v) { return static_cast<double>(v) * degree; }
constexpr FilmCoefficient operator""_W_m2K(long double v) { return static_cast<double>(v) * watt_per_square_metre_kelvin; }
constexpr Conductivity operator""_W_mK(long double v) { return static_cast<double>(v) * watt_per_metre_kelvin; }
}  // namespace literals

}  // namespace fluewright
