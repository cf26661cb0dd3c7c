// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/fuel/wood.hpp"

namespace fluewright {

Ratio combustible_share(const WoodFuel& fuel) { return (1.0 - fuel.moisture) * (1.0 - fuel.analysis.ash); }

SpecificEnergy net_heating_value(const WoodFuel& fuel) {
  return fuel.analysis.net_heating_value_daf * combustible_share(fuel) - evaporation_heat * fuel.moisture;
}

SpecificEnergy gross_heating_value_from_analysis(const WoodAnalysis& a) {
  const Ratio organic = 1.0 - a.ash;
  return (organic * (34.91 * a.carbon + 117.83 * a.hydrogen - 10.34 * a.oxygen - 1.51 * a.nitrogen) - 2.11 * a.ash) *
         1e6 * joule_per_kilogram;
}

SpecificEnergy net_heating_value_daf_from_analysis(const WoodAnalysis& analysis) {
  WoodAnalysis ash_free = analysis;
  ash_free.ash = 0.0;
  constexpr double water_per_hydrogen = 8.936;  // 18.01528 / (2 x 1.00794)
  return gross_heating_value_from_analysis(ash_free) - evaporation_heat * (water_per_hydrogen * analysis.hydrogen);
}

}  // namespace fluewright
