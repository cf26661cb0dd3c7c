// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/gas/gas_table.hpp"
#include "engine/gas/mixture.hpp"
#include "engine/gas/species.hpp"
#include "engine/gas/species_data.hpp"
#include "tests/support/published_check.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <string>

namespace fluewright {
namespace {

using test::published_check;
using test::within;
using test::within_percent;

GasMixture some_flue_gas() {
  std::array<Ratio, species_count> y{};
  y[index_of(Species::nitrogen)] = 0.74;
  y[index_of(Species::oxygen)] = 0.11;
  y[index_of(Species::carbon_dioxide)] = 0.075;
  y[index_of(Species::water)] = 0.066;
  y[index_of(Species::argon)] = 0.009;
  return GasMixture{y};
}

TEST(SpeciesHeatCapacity, IsThatOfTheThermochemicalTables) {
  struct Row {
    const char* name;
    Species species;
    double at_300, at_600, at_1000;
  };
  const Row rows[] = {{"N2", Species::nitrogen, 29.125, 30.110, 32.697},
                      {"O2", Species::oxygen, 29.385, 32.090, 34.870},
                      {"CO2", Species::carbon_dioxide, 37.221, 47.321, 54.308},
                      {"H2O", Species::water, 33.596, 36.325, 41.268},
                      {"CO", Species::carbon_monoxide, 29.142, 30.440, 33.183}};
  for (const Row& row : rows) {
    const std::pair<double, double> points[] = {{300.0, row.at_300}, {600.0, row.at_600}, {1000.0, row.at_1000}};
    for (const auto& [t, cp] : points) {
      published_check("heat capacity of " + std::string{row.name} + " at " + std::to_string(int(t)) + " K [J/(mol K)]",
                      "NIST-JANAF 4th ed.", Standing::from_memory, cp,
                      in(molar_heat_capacity(row.species, kelvins(t)), joule_per_mole_kelvin), within_percent(0.5));
    }
  }
  // The monatomic gas has exactly 5/2 R.
  EXPECT_DOUBLE_EQ(in(molar_heat_capacity(Species::argon, kelvins(700.0)), joule_per_mole_kelvin), 2.5 * 8.314462618);
}

TEST(SpeciesEnthalpy, HoldsTheHeatOfFormation) {
  const auto at_reference = [](Species s) {
    return in(molar_enthalpy(s, reference_temperature), joule_per_mole) / 1e3;
  };
  published_check("enthalpy of formation of CO2 [kJ/mol]", "CODATA key values 1989", Standing::from_memory, -393.51,
                  at_reference(Species::carbon_dioxide), within(0.05));
  published_check("enthalpy of formation of water vapour [kJ/mol]", "CODATA key values 1989", Standing::from_memory,
                  -241.826, at_reference(Species::water), within(0.05));
  published_check("enthalpy of formation of CO [kJ/mol]", "CODATA key values 1989", Standing::from_memory, -110.53,
                  at_reference(Species::carbon_monoxide), within(0.05));
  EXPECT_NEAR(at_reference(Species::nitrogen), 0.0, 0.01);
  EXPECT_NEAR(at_reference(Species::oxygen), 0.0, 0.01);
}

TEST(SpeciesEnthalpy, HasTheHeatCapacityForItsSlopeAndNoStepBetweenItsRanges) {
  for (const Species s : all_species) {
    for (const double t : {250.0, 400.0, 800.0, 999.0, 1001.0, 1800.0}) {
      const double step = 0.01;
      const double rise =
          in(molar_enthalpy(s, kelvins(t + step)) - molar_enthalpy(s, kelvins(t - step)), joule_per_mole);
      const double cp = in(molar_heat_capacity(s, kelvins(t)), joule_per_mole_kelvin);
      EXPECT_NEAR(rise / (2.0 * step), cp, 1e-5 * cp) << t;
    }
    const double below = std::nextafter(1000.0, 0.0);
    EXPECT_NEAR(in(molar_enthalpy(s, kelvins(below)), joule_per_mole),
                in(molar_enthalpy(s, kelvins(1000.0)), joule_per_mole), 1e-6);
    // The join moves the published constant of the upper range by next to nothing.
    const double published_gap = std::abs(in(molar_heat_capacity(s, kelvins(below)), joule_per_mole_kelvin) -
                                          in(molar_heat_capacity(s, kelvins(1000.0)), joule_per_mole_kelvin));
    EXPECT_LT(published_gap, 1e-4);
  }
}

TEST(AirTransport, IsThatOfAHandbookTable) {
  struct Row {
    double t, viscosity, conductivity;
  };
  // 300-700 K: read in a published table of air at 1 atm. 800 and 1000 K: from memory.
  const Row read_rows[] = {{300.0, 1.850e-5, 0.0261},
                           {400.0, 2.290e-5, 0.0331},
                           {500.0, 2.680e-5, 0.0395},
                           {600.0, 3.030e-5, 0.0456},
                           {700.0, 3.350e-5, 0.0513}};
  const Row memory_rows[] = {{300.0, 184.6e-7, 26.3e-3}, {400.0, 230.1e-7, 33.8e-3}, {500.0, 270.1e-7, 40.7e-3},
                             {600.0, 305.8e-7, 46.9e-3}, {800.0, 369.8e-7, 57.3e-3}, {1000.0, 424.4e-7, 66.7e-3}};
  const GasMixture air = dry_air();
  const auto check = [&air](const Row& row, const char* source, Standing standing) {
    const std::string at = " at " + std::to_string(int(row.t)) + " K ";
    published_check("viscosity of air" + at + "[uPa s]", source, standing, 1e6 * row.viscosity,
                    1e6 * in(air.viscosity(kelvins(row.t)), pascal_second), within_percent(3.0));
    published_check("conductivity of air" + at + "[mW/(m K)]", source, standing, 1e3 * row.conductivity,
                    1e3 * in(air.conductivity(kelvins(row.t)), watt_per_metre_kelvin), within_percent(5.0));
  };
  for (const Row& row : read_rows) {
    check(row, "Neutrium, Properties of Air, table at 1 atm", Standing::published);
  }
  for (const Row& row : memory_rows) {
    check(row, "Incropera & DeWitt Table A.4", Standing::from_memory);
  }
  // Cengel, Heat and Mass Transfer, Table A-15, from 25 to 700 degC.
  const std::pair<double, double> cengel[] = {{25.0, 0.02551},  {100.0, 0.03095}, {200.0, 0.03779},
                                              {300.0, 0.04418}, {500.0, 0.05572}, {700.0, 0.06581}};
  for (const auto& [t, k] : cengel) {
    published_check("conductivity of air at " + std::to_string(int(t)) + " degC [mW/(m K)]",
                    "Cengel, Heat and Mass Transfer, Table A-15", Standing::published, 1e3 * k,
                    1e3 * in(air.conductivity(celsius(t)), watt_per_metre_kelvin), within_percent(5.0));
  }
}

TEST(Wilke, GivesTheWorkedMixture) {
  // 5 % of a gas of 64.06 g/mol and 1.34e-5 Pa s in one of 46.07 g/mol and 9.5029e-6 Pa s.
  const double y[] = {0.05, 0.95};
  const double mu[] = {1.34e-5, 9.5029e-6};
  const double m[] = {64.06, 46.07};
  double sum = 0.0;
  for (int i = 0; i < 2; ++i) {
    double weight = 0.0;
    for (int j = 0; j < 2; ++j) {
      weight += y[j] * gas_data::wilke_factor(mu[i], mu[j], m[i], m[j]);
    }
    sum += y[i] * mu[i] / weight;
  }
  published_check("viscosity of a two-gas mixture by Wilke [uPa s]", "worked example of the library chemicals",
                  Standing::published, 9.70161489, 1e6 * sum, within(1e-7));
}

TEST(GasMixture, HasTheMolarMassAndGasConstantOfStandardAir) {
  published_check("molar mass of dry air [g/mol]", "ISO 2533", Standing::from_memory, 28.9644,
                  1e3 * in(dry_air().molar_mass(), kilogram_per_mole), within(0.002));
  published_check("gas constant of dry air [J/(kg K)]", "ISO 2533", Standing::from_memory, 287.05287,
                  in(dry_air().gas_constant(), joule_per_kilogram_kelvin), within_percent(0.01));
}

TEST(GasMixture, AddsUpToOneAndForgetsTheScaleOfItsAmounts) {
  std::array<Ratio, species_count> amounts{};
  amounts[index_of(Species::nitrogen)] = 3.0;
  amounts[index_of(Species::oxygen)] = 1.0;
  const GasMixture mixture{amounts};
  EXPECT_DOUBLE_EQ(mixture.mole_fraction(Species::nitrogen), 0.75);
  amounts[index_of(Species::nitrogen)] = 0.75;
  amounts[index_of(Species::oxygen)] = 0.25;
  EXPECT_EQ(mixture, GasMixture{amounts});
  EXPECT_DOUBLE_EQ(moist_air(0.02).mole_fraction(Species::water), 0.02);
}

TEST(GasMixture, IsItsSpeciesWhenItHoldsOnlyOne) {
  for (const Species s : all_species) {
    std::array<Ratio, species_count> only{};
    only[index_of(s)] = 1.0;
    const GasMixture pure{only};
    const Temperature t = kelvins(700.0);
    EXPECT_NEAR(in(pure.viscosity(t), pascal_second), in(viscosity(s, t), pascal_second), 1e-18);
    EXPECT_NEAR(in(pure.conductivity(t), watt_per_metre_kelvin), in(conductivity(s, t), watt_per_metre_kelvin), 1e-14);
    EXPECT_NEAR(in(pure.specific_heat(t) * molar_mass(s), joule_per_mole_kelvin),
                in(molar_heat_capacity(s, t), joule_per_mole_kelvin), 1e-10);
  }
}

TEST(GasMixture, FindsTheTemperatureOfAnyEnthalpyAgain) {
  const GasMixture gas = some_flue_gas();
  const GasTable table{gas};
  EXPECT_EQ(in(gas.specific_enthalpy(reference_temperature), joule_per_kilogram), 0.0);
  for (double t = 210.0; t < 2600.0; t += 13.7) {
    const SpecificEnergy h = gas.specific_enthalpy(kelvins(t));
    EXPECT_NEAR(in_kelvin(gas.temperature_at(h)), t, 1e-12 * t);
    EXPECT_NEAR(in_kelvin(table.temperature_at(h, kelvins(900.0))), t, 1e-12 * t);
    EXPECT_NEAR(in_kelvin(table.temperature_at(h, kelvins(t + 20.0))), t, 1e-12 * t);
  }
}

TEST(GasMixture, BlendsByMassWithoutLosingAnySpecies) {
  const GasMixture gas = some_flue_gas();
  const GasMixture air = moist_air(0.01);
  const MassFlow one = 0.003 * kilogram_per_second;
  const MassFlow other = 0.001 * kilogram_per_second;
  const GasMixture both = blend(gas, one, air, other);
  for (const Species s : all_species) {
    const auto moles = [s](const GasMixture& g, MassFlow f) {
      return (f / g.molar_mass()).value() * g.mole_fraction(s);
    };
    EXPECT_NEAR(moles(both, one + other), moles(gas, one) + moles(air, other), 1e-15);
  }
  const GasMixture alone = blend(gas, one, air, 0.0 * kilogram_per_second);
  for (const Species s : all_species) {
    EXPECT_NEAR(alone.mole_fraction(s), gas.mole_fraction(s), 1e-15);
  }
}

TEST(GasTable, AgreesWithItsMixture) {
  const GasMixture gas = some_flue_gas();
  const GasTable table{gas};
  for (double t = 221.0; t < 2619.0; t += 7.3) {
    const Temperature at = kelvins(t);
    EXPECT_EQ(in(table.specific_heat(at), joule_per_kilogram_kelvin),
              in(gas.specific_heat(at), joule_per_kilogram_kelvin));
    EXPECT_EQ(in(table.specific_enthalpy(at), joule_per_kilogram), in(gas.specific_enthalpy(at), joule_per_kilogram));
    EXPECT_NEAR(in(table.viscosity(at) / gas.viscosity(at), Ratio{1.0}), 1.0, 1e-4) << t;
    EXPECT_NEAR(in(table.conductivity(at) / gas.conductivity(at), Ratio{1.0}), 1.0, 1e-4) << t;
    const Density rho = gas.density(at, 95000.0 * pascal);
    EXPECT_NEAR(in(table.density(at, 95000.0 * pascal) / rho, Ratio{1.0}), 1.0, 1e-14);
  }
}

TEST(GasTable, RunsOnSmoothlyBeyondItsEnds) {
  const GasTable table{some_flue_gas()};
  for (const double edge : {220.0, 2620.0}) {
    const double inner = in(table.viscosity(kelvins(edge - 0.5)), pascal_second);
    const double at = in(table.viscosity(kelvins(edge)), pascal_second);
    const double outer = in(table.viscosity(kelvins(edge + 0.5)), pascal_second);
    EXPECT_NEAR(outer - at, at - inner, 1e-3 * std::abs(outer - at));
  }
  EXPECT_GT(in(table.viscosity(kelvins(180.0)), pascal_second), 0.0);
}

TEST(ValidRanges, SayWhereTheFitsEnd) {
  EXPECT_TRUE(viscosity_range(Species::water).contains(kelvins(1073.0)));
  EXPECT_FALSE(viscosity_range(Species::water).contains(kelvins(1100.0)));
  EXPECT_FALSE(heat_capacity_range(Species::oxygen).contains(kelvins(150.0)));
  EXPECT_TRUE(conductivity_range(Species::nitrogen).contains(kelvins(1900.0)));
}

}  // namespace
}  // namespace fluewright
