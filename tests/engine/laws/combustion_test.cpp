// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/fuel/combustion.hpp"
#include "engine/fuel/siegert.hpp"
#include "engine/fuel/wood.hpp"
#include "engine/moisture/saturation.hpp"
#include "tests/support/published_check.hpp"

#include <gtest/gtest.h>
#include <boost/math/tools/toms748_solve.hpp>

#include <cmath>
#include <cstdint>
#include <string>

namespace fluewright {
namespace {

using test::published_check;
using test::within;
using test::within_percent;

WoodFuel dry(double carbon, double hydrogen, double oxygen) {
  WoodFuel fuel;
  fuel.analysis = {carbon, hydrogen, oxygen, 1.0 - carbon - hydrogen - oxygen, 0.0, 18.9e6 * joule_per_kilogram};
  fuel.moisture = 0.0;
  return fuel;
}

TEST(Wood, LosesHeatingValueToItsWaterAsTheTradeTableSays) {
  WoodFuel fuel = dry(0.50, 0.062, 0.435);
  fuel.analysis.net_heating_value_daf = 19.0e6 * joule_per_kilogram;
  const std::pair<double, double> rows[] = {{0.0, 19.00}, {0.15, 15.79}, {0.20, 14.72}, {0.25, 13.72}, {0.30, 12.58}};
  for (const auto& [moisture, value] : rows) {
    fuel.moisture = moisture;
    published_check("net heating value at " + std::to_string(int(100 * moisture + 0.5)) + " % moisture [MJ/kg]",
                    "C.F. Nielsen, wood fuel table", Standing::published, value,
                    in(net_heating_value(fuel), 1e6 * joule_per_kilogram), within_percent(1.0));
  }
}

TEST(Wood, HasTheHeatingValueThatItsAnalysisImplies) {
  const WoodAnalysis wood = dry(0.50, 0.06, 0.435).analysis;
  published_check("gross heating value of C 50 H 6 O 43.5 [MJ/kg]", "Channiwala & Parikh 2002", Standing::published,
                  20.0, in(gross_heating_value_from_analysis(wood), 1e6 * joule_per_kilogram), within(0.1));
  published_check("net heating value of broadleaf wood, dry [MJ/kg]", "ISO 17225-1 Annex B, typical 18.4 to 19.2",
                  Standing::from_memory, 18.9,
                  in(net_heating_value_daf_from_analysis(WoodAnalysis{}), 1e6 * joule_per_kilogram), within(0.5));
}

TEST(StoichiometricAir, IsWhatWoodNeeds) {
  published_check("air for oven-dry wood [kg/kg]", "Kubler, Wood & Fiber Science", Standing::published, 6.0,
                  stoichiometric_air(dry(0.50, 0.062, 0.435)), within_percent(2.0));
  published_check("air for C 50 H 6 O 43.5 [kg/kg]", "stoichiometry with 21 % oxygen, worked by hand",
                  Standing::published, 5.93, stoichiometric_air(dry(0.50, 0.06, 0.435)), within_percent(0.6));
  published_check("air for C 51 H 6.3 O 42 [kg/kg]", "stoichiometry with 21 % oxygen, worked by hand",
                  Standing::published, 6.22, stoichiometric_air(dry(0.51, 0.063, 0.42)), within_percent(0.6));
}

TEST(MaximumCarbonDioxide, IsThatOfWood) {
  published_check("CO2max of dry flue gas, wood [%]", "fuel table, Testo 330-1 manual K.4.1", Standing::published, 20.3,
                  100.0 * maximum_carbon_dioxide(dry(0.50, 0.062, 0.435)), within(0.3));
  published_check("CO2max for C 50 H 6 O 43.5 [%]", "stoichiometry, worked by hand", Standing::published, 20.4,
                  100.0 * maximum_carbon_dioxide(dry(0.50, 0.06, 0.435)), within(0.1));
  published_check("CO2max for C 51 H 6.3 O 42 [%]", "stoichiometry, worked by hand", Standing::published, 20.0,
                  100.0 * maximum_carbon_dioxide(dry(0.51, 0.063, 0.42)), within(0.1));
}

TEST(FlueGas, ConservesMassAndEveryElement) {
  const WoodFuel fuel;
  for (const double ratio : {1.0, 1.5, 2.5, 6.0, 12.0}) {
    const FlueGas gas = flue_gas(fuel, ratio, 0.012);
    const double moles = gas.per_fuel / in(gas.mixture.molar_mass(), kilogram_per_mole);
    const double organic = combustible_share(fuel);
    const auto y = [&gas](Species s) { return gas.mixture.mole_fraction(s).value(); };
    const GasMixture air = moist_air(0.012);
    const double air_moles = gas.air_per_fuel / in(air.molar_mass(), kilogram_per_mole);
    // Mass: what went in, but for the ash.
    EXPECT_NEAR(gas.per_fuel, gas.air_per_fuel + 1.0 - fuel.analysis.ash * (1.0 - fuel.moisture), 1e-12);
    // Carbon and oxygen atoms per kilogram of wood.
    const double carbon = organic * fuel.analysis.carbon / 12.0107e-3;
    EXPECT_NEAR(moles * y(Species::carbon_dioxide), carbon + air_moles * air.mole_fraction(Species::carbon_dioxide),
                1e-3);
    const double oxygen_in = organic * fuel.analysis.oxygen / 15.9994e-3 + fuel.moisture / 18.01528e-3 +
                             air_moles * (2.0 * air.mole_fraction(Species::oxygen) + air.mole_fraction(Species::water) +
                                          2.0 * air.mole_fraction(Species::carbon_dioxide));
    const double oxygen_out = moles * (2.0 * y(Species::oxygen) + 2.0 * y(Species::carbon_dioxide) + y(Species::water));
    EXPECT_NEAR(oxygen_out, oxygen_in, 2e-3);
    if (ratio == 1.0) {
      EXPECT_NEAR(y(Species::oxygen), 0.0, 1e-12);
    }
  }
}

TEST(FlueGas, BurnsOnlyTheShareOfTheWoodThatTheAirAllows) {
  const WoodFuel fuel;
  const FlueGas full = flue_gas(fuel, 1.0, 0.01);
  const FlueGas starved = flue_gas(fuel, 0.6, 0.01);
  EXPECT_EQ(starved.mixture, full.mixture);
  EXPECT_DOUBLE_EQ(starved.burnt_share, 0.6);
  EXPECT_NEAR(starved.per_fuel, 0.6 * full.per_fuel, 1e-12);
  EXPECT_NEAR(starved.air_per_fuel, 0.6 * full.air_per_fuel, 1e-12);
  EXPECT_EQ(flue_gas(fuel, 3.0, 0.01).burnt_share.value(), 1.0);
}

TEST(FlueGas, WeighsWhatTheChimneyHandbookSaysPerHeat) {
  // 9 % CO2 in dry gas; the handbook counts heat by the gross value.
  WoodFuel fuel = dry(0.50, 0.06, 0.435);
  const double ratio = maximum_carbon_dioxide(fuel) / 0.09;
  const double gross = in(gross_heating_value_from_analysis(fuel.analysis), 1e6 * joule_per_kilogram);
  published_check("flue gas of wood at 9 % CO2 [kg/MJ]", "ASHRAE HVAC Systems & Equipment, chimney chapter",
                  Standing::published, 0.70, flue_gas(fuel, ratio, 0.0).per_fuel / gross, within_percent(4.0));
}

TEST(DewPoint, OfWoodFlueGasFollowsItsWater) {
  const WoodFuel fuel;
  for (const double ratio : {1.5, 2.5, 4.0}) {
    const FlueGas gas = flue_gas(fuel, ratio, 0.008);
    const double vapour = 101325.0 * gas.mixture.mole_fraction(Species::water);
    const double published = 4077.9 / (23.6448 - std::log(vapour)) - 236.67;
    published_check("dew point of wood flue gas, excess air " + std::to_string(ratio).substr(0, 3) + " [degC]",
                    "EN 13384-1 relation", Standing::from_memory, published, in_celsius(dew_point(vapour * pascal)),
                    within(0.05));
  }
}

TEST(StackLoss, AgreesWithSiegertWithinOnePoint) {
  const WoodFuel fuel;
  const Temperature air = celsius(20.0);
  for (const double ratio : {1.5, 2.0, 2.5, 3.0}) {
    for (const double t : {120.0, 160.0, 200.0}) {
      const FlueGas gas = flue_gas(fuel, ratio, 0.008);
      const Ratio dry_oxygen =
          gas.mixture.mole_fraction(Species::oxygen) / (1.0 - gas.mixture.mole_fraction(Species::water));
      const Ratio ours = gas.per_fuel *
                         (gas.mixture.specific_enthalpy(celsius(t)) - gas.mixture.specific_enthalpy(air)) /
                         net_heating_value(fuel);
      published_check("stack loss at " + std::to_string(int(t)) + " degC, excess air " +
                          std::to_string(ratio).substr(0, 3) + " [%]",
                      "Siegert, wood 0.765 (Testo 330-1 manual K.4.1)", Standing::published,
                      100.0 * siegert_stack_loss(celsius(t), air, dry_oxygen), 100.0 * ours, within(1.0));
    }
  }
}

/// Flame temperature from the enthalpies of formation of everything that goes in and comes out.
double flame_temperature_by_formation(const WoodFuel& fuel, double ratio, const GasMixture& air, Temperature air_at) {
  const FlueGas gas = flue_gas(fuel, ratio, air.mole_fraction(Species::water));
  const double moles = gas.per_fuel / in(gas.mixture.molar_mass(), kilogram_per_mole);
  const double air_moles = gas.air_per_fuel / in(air.molar_mass(), kilogram_per_mole);
  const auto enthalpy = [](const GasMixture& mixture, double amount, double t) {
    double sum = 0.0;
    for (const Species s : all_species) {
      sum += amount * mixture.mole_fraction(s) * in(molar_enthalpy(s, kelvins(t)), joule_per_mole);
    }
    return sum;
  };
  // The wood's own enthalpy is what its heating value leaves when everything is taken at 25 degC.
  const double reference = in_kelvin(reference_temperature);
  const double wood = in(net_heating_value(fuel), joule_per_kilogram) + enthalpy(gas.mixture, moles, reference) -
                      enthalpy(air, air_moles, reference);
  const double unburned = fuel.unburned_share * in(net_heating_value(fuel), joule_per_kilogram);
  const double in_total = wood - unburned + enthalpy(air, air_moles, in_kelvin(air_at));
  std::uintmax_t steps = 200;
  const auto bracket =
      boost::math::tools::toms748_solve([&](double t) { return enthalpy(gas.mixture, moles, t) - in_total; }, 250.0,
                                        4000.0, boost::math::tools::eps_tolerance<double>(48), steps);
  return bracket.first;
}

TEST(FlameTemperature, IsThatOfAnIndependentEnthalpyBalance) {
  const WoodFuel fuel;
  for (const double ratio : {1.0, 1.6, 2.5, 4.0, 8.0}) {
    const GasMixture air = moist_air(0.01);
    const double independent = flame_temperature_by_formation(fuel, ratio, air, celsius(5.0));
    const double ours = in_kelvin(adiabatic_flame_temperature(fuel, ratio, air, celsius(5.0)));
    EXPECT_NEAR(ours, independent, 0.02) << ratio;
  }
}

TEST(FlameTemperature, DoesNotChangeWhenThereIsTooLittleAir) {
  const WoodFuel fuel;
  const GasMixture air = dry_air();
  EXPECT_NEAR(in_kelvin(adiabatic_flame_temperature(fuel, 0.4, air, celsius(10.0))),
              in_kelvin(adiabatic_flame_temperature(fuel, 1.0, air, celsius(10.0))), 1e-9);
}

}  // namespace
}  // namespace fluewright
