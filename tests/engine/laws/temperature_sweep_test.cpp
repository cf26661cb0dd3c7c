// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Sweeps over what gas and walls may meet: no law of heat may return a NaN, change its sign or jump.

#include "engine/flow/friction.hpp"
#include "engine/fuel/combustion.hpp"
#include "engine/gas/gas_table.hpp"
#include "engine/heat/conduction.hpp"
#include "engine/heat/gas_radiation.hpp"
#include "engine/heat/inside_film.hpp"
#include "engine/heat/outside_film.hpp"
#include "engine/moisture/condensation.hpp"
#include "engine/moisture/saturation.hpp"
#include "tests/engine/laws/sweep.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace fluewright {
namespace {

WoodFuel some_wood() {
  WoodFuel fuel;
  fuel.analysis.carbon = between(0.45, 0.55);
  fuel.analysis.hydrogen = between(0.05, 0.07);
  fuel.analysis.nitrogen = 0.003;
  fuel.analysis.oxygen = 1.0 - fuel.analysis.carbon - fuel.analysis.hydrogen - fuel.analysis.nitrogen;
  fuel.analysis.ash = between(0.0, 0.04);
  fuel.moisture = between(0.0, 0.6);
  fuel.unburned_share = between(0.0, 0.2);
  return fuel;
}

RC_GTEST_PROP(Sweep, GasPropertiesArePositiveAndSmooth, ()) {
  const GasTable gas{flue_gas(some_wood(), over_decades(0.3, 30.0), between(0.0, 0.05)).mixture};
  const double t = between(200.0, 2800.0);
  const auto cp = [&](double x) { return gas.specific_heat(kelvins(x)).value(); };
  const auto mu = [&](double x) { return gas.viscosity(kelvins(x)).value(); };
  const auto k = [&](double x) { return gas.conductivity(kelvins(x)).value(); };
  RC_ASSERT(cp(t) > 900.0 && cp(t) < 2600.0);
  RC_ASSERT(mu(t) > 0.0 && mu(t + 1.0) > mu(t));
  RC_ASSERT(k(t) > 0.0 && k(t + 1.0) > k(t));
  expect_no_jump(cp, t, 1e-6, 1e-3);
  expect_no_jump(mu, t, 1e-6, 1e-12);
  expect_no_jump(k, t, 1e-6, 1e-9);
  const double prandtl = gas.prandtl(kelvins(t));
  RC_ASSERT(prandtl > 0.5 && prandtl < 1.1);
  const SpecificEnergy h = gas.specific_enthalpy(kelvins(t));
  RC_ASSERT(std::abs(in_kelvin(gas.temperature_at(h, kelvins(between(250.0, 2000.0)))) - t) <= 1e-12 * t);
}

RC_GTEST_PROP(Sweep, AStrongerDraftCoolsTheFire, ()) {
  const WoodFuel fuel = some_wood();
  const Temperature outdoors = celsius(between(-30.0, 35.0));
  const GasMixture air = moist_air(between(0.0, 0.03));
  const double ratio = between(1.0, 15.0);
  const auto flame = [&](double r) { return in_kelvin(adiabatic_flame_temperature(fuel, r, air, outdoors)); };
  RC_ASSERT(std::isfinite(flame(ratio)));
  RC_ASSERT(flame(1.05 * ratio) < flame(ratio));
  RC_ASSERT(flame(ratio) > in_kelvin(outdoors));
  RC_ASSERT(flame(ratio) < 3000.0);
  const FlueGas gas = flue_gas(fuel, ratio, 0.01);
  RC_ASSERT(gas.per_fuel > gas.air_per_fuel);
  // Through a ratio of 1 the gas does not jump.
  const FlueGas just_over = flue_gas(fuel, 1.0 + 1e-9, 0.01);
  const FlueGas just_under = flue_gas(fuel, 1.0 - 1e-9, 0.01);
  RC_ASSERT(std::abs(just_over.per_fuel - just_under.per_fuel) < 1e-6);
}

RC_GTEST_PROP(Sweep, SaturationRisesAndDewPointUndoesIt, ()) {
  const double t = between(190.0, 640.0);
  const auto p = [](double x) { return saturation_pressure(kelvins(x)).value(); };
  RC_ASSERT(std::isfinite(p(t)) && p(t) > 0.0);
  RC_ASSERT(p(t + 0.01) > p(t));
  RC_ASSERT(std::abs(in_kelvin(dew_point(p(t) * pascal)) - t) < 1e-5);
}

RC_GTEST_PROP(Sweep, CondensingGrowsAsTheWallCools, ()) {
  const GasTable gas{flue_gas(some_wood(), between(1.2, 6.0), 0.01).mixture};
  const Pressure total = between(70000.0, 103000.0) * pascal;
  const Pressure vapour = total * gas.mixture().mole_fraction(Species::water);
  const FilmCoefficient film = between(1.0, 40.0) * watt_per_square_metre_kelvin;
  const Temperature hot = celsius(between(60.0, 300.0));
  const double wall = between(-20.0, 90.0);
  const auto flux = [&](double w) { return condensing_flux(film, gas, vapour, total, celsius(w), hot).value(); };
  RC_ASSERT(std::isfinite(flux(wall)) && flux(wall) >= 0.0);
  RC_ASSERT(flux(wall - 1.0) >= flux(wall));
  // From the dew point downwards it starts without a jump.
  const double dew = in_celsius(dew_point(vapour));
  RC_ASSERT(flux(dew + 1e-9) == 0.0);
  RC_ASSERT(flux(dew - 1e-6) < 1e-9);
}

RC_GTEST_PROP(Sweep, InsideFilmRisesWithTheFlow, ()) {
  const double re = over_decades(1.0, 1e6);
  const double prandtl = between(0.6, 0.8);
  const double entry = over_decades(1e-3, 20.0);
  const double rough = between(0.0, 0.03);
  const auto nusselt = [&](double r) { return inside_nusselt(r, prandtl, friction_factor(r, rough), entry).value(); };
  RC_ASSERT(std::isfinite(nusselt(re)) && nusselt(re) >= 3.66);
  expect_no_jump(nusselt, re, 1e-6 * re, 1e-4 * nusselt(re));
  // Near the entrance the laminar film is the better one at Re 2300, and the blend dips a little: not asked there.
  if (entry < 0.03) {
    RC_ASSERT(nusselt(1.02 * re) >= nusselt(re));
  }
}

RC_GTEST_PROP(Sweep, OutsideFilmsAreFiniteAndPositive, ()) {
  const Length size = over_decades(0.02, 3.0) * metre;
  const double surface = between(-20.0, 700.0);
  const Temperature ambient = celsius(between(-40.0, 40.0));
  const Pressure p = between(60000.0, 103000.0) * pascal;
  for (const FilmCoefficient& h :
       {horizontal_cylinder_film(size, celsius(surface), ambient, p),
        vertical_wall_film(size, celsius(surface), ambient, p),
        plate_facing_up_film(size, celsius(surface), ambient, p),
        plate_facing_down_film(size, celsius(surface), ambient, p),
        cross_flow_film(size, celsius(surface), ambient, p, over_decades(1e-3, 30.0) * metre_per_second),
        radiation_film(between(0.05, 1.0), celsius(surface), ambient)}) {
    RC_ASSERT(std::isfinite(h.value()) && h.value() >= 0.0 && h.value() < 2000.0);
  }
  const auto wall = [&](double t) { return vertical_wall_film(size, celsius(t), ambient, p).value(); };
  if (surface > 41.0) {
    // More difference gives more flux even where the film itself, with hotter and thinner air, eases.
    const double rise = surface - in_celsius(ambient);
    RC_ASSERT(wall(surface + 1.0) * (rise + 1.0) > wall(surface) * rise);
  }
}

RC_GTEST_PROP(Sweep, GasRadiationIsPositiveAndSmooth, ()) {
  const Pressure carbon_dioxide = between(0.0, 20000.0) * pascal;
  const Pressure water = between(0.0, 30000.0) * pascal;
  const Length path = over_decades(0.01, 2.0) * metre;
  const double gas = between(250.0, 2600.0);
  const double wall = between(250.0, 1600.0);
  const double e = emissivity(kelvins(gas), carbon_dioxide, water, path);
  RC_ASSERT(e >= 0.0 && e < 1.0);
  const auto film = [&](double t) {
    return gas_radiation_film(kelvins(t), kelvins(wall), carbon_dioxide, water, path, 0.9).value();
  };
  RC_ASSERT(film(gas) >= 0.0);
  expect_no_jump(film, gas, 1e-6, 1e-5 * (1.0 + film(gas)));
  RC_ASSERT(std::isfinite(film(wall)));
}

RC_GTEST_PROP(Sweep, MassesResistMoreTheLongerTheyWarm, ()) {
  const Length radius = between(0.05, 0.3) * metre;
  const Conductivity k = between(0.1, 3.0) * watt_per_metre_kelvin;
  const Diffusivity a = over_decades(1e-7, 2e-6) * square_metre / second;
  const double t = over_decades(1.0, 1e6);
  const auto resistance = [&](double seconds) {
    return penetration_resistance(radius, k, a, seconds * second).value();
  };
  RC_ASSERT(std::isfinite(resistance(t)) && resistance(t) > 0.0);
  RC_ASSERT(resistance(1.01 * t) > resistance(t));
  expect_no_jump(resistance, t, 1e-9 * t, 1e-8 * resistance(t));
  // Curved outwards, a bore always loses more than a plane.
  RC_ASSERT(resistance(t) < plane_penetration_resistance(k, a, t * second).value());
}

}  // namespace
}  // namespace fluewright
