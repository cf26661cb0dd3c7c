// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Worked ducts of textbooks in which hot air cools: flow, film, fall of temperature, heat. The books take Dittus and
// Boelter's relation for the film, which lies some 10 % above Gnielinski's at these Reynolds numbers; the tolerances
// say so. A published chimney worked through with cooling and draft together was looked for and not found.

#include "engine/flow/buoyancy.hpp"
#include "engine/flow/friction.hpp"
#include "engine/gas/gas_table.hpp"
#include "engine/heat/cooling.hpp"
#include "engine/heat/inside_film.hpp"
#include "engine/site/atmosphere.hpp"
#include "tests/support/published_check.hpp"

#include <gtest/gtest.h>

#include <numbers>

namespace fluewright {
namespace {

using test::published_check;
using test::one_atmosphere;
using test::within;
using test::within_percent;

const GasTable& air() {
  static const GasTable table{dry_air()};
  return table;
}

TEST(WorkedDucts, OfARoundDuctInACrawlspace) {
  // 0.05 kg/s of air in a bare duct of 150 mm and 5 m, 103 to 77 degC, film outside 6 W/(m2 K), air outside at 0 degC.
  const char* const book = "Incropera & DeWitt, example 8.6";
  const MassFlow flow = 0.05 * kilogram_per_second;
  const Length bore = 150.0 * millimetre;
  const Temperature end = celsius(77.0);
  const Power lost = flow * (air().specific_enthalpy(celsius(103.0)) - air().specific_enthalpy(end));
  published_check("heat lost by 0.05 kg/s of air from 103 to 77 degC [W]", book, Standing::from_memory, 1313.0,
                  in(lost, watt), within_percent(0.5));
  const Ratio reynolds = 4.0 * flow / (std::numbers::pi * bore * air().viscosity(end));
  published_check("Reynolds number of 0.05 kg/s in 150 mm at 77 degC", book, Standing::from_memory, 20384.0, reynolds,
                  within_percent(1.0));
  const Ratio nusselt = gnielinski_nusselt(reynolds, air().prandtl(end), friction_factor(reynolds, 0.0));
  published_check("Nusselt number far from the entry (book: Dittus & Boelter)", book, Standing::from_memory, 57.9, nusselt,
                  within_percent(12.0));
  const FilmCoefficient inside = nusselt * air().conductivity(end) / bore;
  const FilmCoefficient outside = 6.0 * watt_per_square_metre_kelvin;
  const HeatFlux through = (end - celsius(0.0)) / (1.0 / inside + 1.0 / outside);
  published_check("heat through the wall at the duct's end [W/m2]", book, Standing::from_memory, 304.5,
                  in(through, watt_per_square_metre), within_percent(5.0));
  published_check("wall at the duct's end [degC]", book, Standing::from_memory, 50.7, in_celsius(end - through / inside),
                  within(2.5));
}

TEST(WorkedDucts, OfASquareDuctThroughAnAttic) {
  // 0.1 m3/s of air at 85 degC into a square duct of 150 mm and 10 m whose wall is at 70 degC.
  const char* const book = "Cengel, Heat Transfer, problem 8-41";
  const Temperature mean = celsius(80.0);
  const Length side = 150.0 * millimetre;
  const Length length = 10.0 * metre;
  const Density density = air().density(mean, one_atmosphere);
  published_check("density of air at 80 degC [kg/m3]", book, Standing::published, 0.9994,
                  in(density, kilogram_per_cubic_metre), within_percent(0.2));
  published_check("conductivity of air at 80 degC [W/(m K)]", book, Standing::published, 0.02953,
                  in(air().conductivity(mean), watt_per_metre_kelvin), within_percent(3.0));
  const Velocity velocity = 0.1 * (cubic_metre / second) / (side * side);
  published_check("velocity of 0.1 m3/s in 150 mm square [m/s]", book, Standing::published, 4.444,
                  in(velocity, metre_per_second), within(0.001));
  const Ratio reynolds = density * velocity * side / air().viscosity(mean);
  published_check("Reynolds number in that duct", book, Standing::from_memory, 31791.0, reynolds, within_percent(1.0));
  const Ratio nusselt = inside_nusselt(reynolds, air().prandtl(mean), friction_factor(reynolds, 0.0), side / length);
  const FilmCoefficient film = nusselt * air().conductivity(mean) / side;
  const MassFlow flow = density * velocity * side * side;
  const Ratio number = cooling_number(film * (4.0 * side), length, flow, air().specific_heat(mean));
  const Temperature end = cooled(celsius(85.0), celsius(70.0), number);
  published_check("air that leaves the duct [degC]", book, Standing::from_memory, 75.7, in_celsius(end), within(0.5));
  published_check("heat lost in the duct [W]", book, Standing::from_memory, 941.0,
                  in(flow * (air().specific_enthalpy(celsius(85.0)) - air().specific_enthalpy(end)), watt),
                  within_percent(5.0));
}

TEST(WorkedChimneys, OfADesignSheetAfterTheHeatingHandbook) {
  // 1.912 kg/s at 965 K above 15 degC in a chimney of 35 m.
  const char* const sheet = "worked design sheet after ASHRAE HVAC Systems & Equipment 2016, ch. 35";
  const Temperature outdoors = celsius(15.0);
  const Density gas = moist_air_density(outdoors + 965.0 * kelvin, one_atmosphere, 0.0);
  published_check("density of the gas [kg/m3]", sheet, Standing::published, 0.28, in(gas, kilogram_per_cubic_metre),
                  within(0.005));
  published_check("flow of the gas [m3/s]", sheet, Standing::published, 6.79,
                  in(1.912 * kilogram_per_second / gas, VolumeFlow(cubic_metre / second)), within(0.02));
  published_check("draft of 35 m [Pa]", sheet, Standing::published, 323.5,
                  in(buoyancy(moist_air_density(outdoors, one_atmosphere, 0.0), gas, 35.0 * metre), pascal),
                  within_percent(0.2));
}

TEST(WorkedChimneys, OfAnOpenTableOfDrafts) {
  // 20 m, 200 degC in the flue, 0 degC outside, air of 1.292 kg/m3 cooled in proportion.
  published_check("draft of 20 m, 0/200 degC [Pa]", "engineering handbook on the web, chimney sizing", Standing::published,
                  107.0,
                  in(buoyancy(moist_air_density(celsius(0.0), 101325.0 * pascal, 0.0),
                              moist_air_density(celsius(200.0), 101325.0 * pascal, 0.0), 20.0 * metre),
                     pascal),
                  within_percent(0.5));
}

}  // namespace
}  // namespace fluewright
