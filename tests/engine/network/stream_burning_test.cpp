// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/solve/stream_burning.hpp"

#include "engine/solve/burning.hpp"
#include "tests/engine/solve/hand_built_heater.hpp"

#include <gtest/gtest.h>

namespace fluewright::test {
namespace {

constexpr MassFlow wanted = 3.0 * kilogram_per_hour;

TEST(StreamBurning, agrees_with_the_fire_in_fresh_air_at_every_flow) {
  // The same stoichiometry written twice; 1e-12 is rounding.
  const Ratio water = 0.01;
  const Composition air = composition_of(moist_air(water));
  const StreamBurning stream{usual_wood(), wanted};
  const Burning fresh{usual_wood(), wanted, water};
  for (const double flow : {1e-6, 1e-3, 5e-3, 2e-2, 0.1}) {
    const FireState b = fresh.from_air_flow(flow * kilogram_per_second);
    const FireState a = stream.at(flow * kilogram_per_second, air, true);
    EXPECT_EQ(a.short_of_air, b.short_of_air) << flow;
    EXPECT_NEAR(in(a.flue / b.flue, Ratio(1.0)), 1.0, 1e-12) << flow;
    EXPECT_NEAR(in(a.added / b.added, Ratio(1.0)), 1.0, 1e-12) << flow;
    EXPECT_NEAR(a.excess_air_ratio.value(), b.excess_air_ratio.value(), 1e-12 * b.excess_air_ratio.value()) << flow;
    const GasMixture mixture = mixture_of(stream.leaving(air, a));
    const GasTable gas = fresh.gas(b);
    for (const Species s : all_species) {
      EXPECT_NEAR(mixture.mole_fraction(s).value(), gas.mixture().mole_fraction(s).value(), 1e-12) << flow;
    }
    EXPECT_NEAR(in(stream.stream_for(a.flue, air), kilogram_per_second), flow, 1e-12 * flow);
  }
}

TEST(StreamBurning, in_gas_that_has_burnt_before_is_held_back_by_the_oxygen_that_is_left) {
  const StreamBurning stream{usual_wood(), wanted};
  const Composition air = composition_of(dry_air());
  const MassFlow flow = 5e-3 * kilogram_per_second;
  const FireState first = stream.at(flow, air, true);
  const Composition burnt = stream.leaving(air, first);
  const FireState second = stream.at(first.flue, burnt, true);
  EXPECT_TRUE(second.short_of_air);
  // Oxygen left over 1.2 times what the wood needs, by the definition of the least excess air.
  const auto oxygen = first.flue * burnt[index_of(Species::oxygen)];
  EXPECT_NEAR(in(second.burn_rate * stream.reaction().oxygen_needed * least_excess_air / oxygen, Ratio(1.0)), 1.0, 1e-12);
  EXPECT_LT(second.burn_rate, first.burn_rate);
}

TEST(StreamBurning, keeps_mass) {
  // Amounts per kilogram times molar masses are a kilogram. The wood's composition is rounded to three digits and the
  // elements' molar masses to five: 1e-4 of the wood, 1e-5 of the gas.
  const StreamBurning stream{usual_wood(), wanted};
  const Composition air = composition_of(moist_air(0.01));
  const FireState fire = stream.at(8e-3 * kilogram_per_second, air, true);
  const Composition gas = stream.leaving(air, fire);
  double mass = 0.0;
  for (const Species s : all_species) mass += in(gas[index_of(s)] * molar_mass(s), Ratio(1.0));
  EXPECT_NEAR(mass, 1.0, 1e-5);
}

}  // namespace
}  // namespace fluewright::test
