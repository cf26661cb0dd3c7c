// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/working/slice_case.hpp"

namespace fluewright {

bool burns_here(const SliceCase& c) { return c.stretch->fire && c.slice->opens_stretch; }

Temperature before_fire(const SliceCase& c) {
  if (c.source != nullptr && c.source->first) return c.source->entering;
  if (c.row > 0) return c.run->visits[c.row - 1].heat.out;
  return c.run->path.branch->from.kind == EndKind::room_air ? c.run->surround.room : c.run->surround.outdoor;
}

void add_burning(Sheet& sheet, const Retrace& run, Temperature before) {
  const SpecificEnergy brought = run.air->specific_enthalpy(before);
  const SpecificEnergy held = (run.fire.air * brought + run.fire.added) / run.fire.flue;
  const Citation nasa = published("NASA TM-4513");
  sheet.part("Fire in the gas's way");
  sheet.given("T_air", "air that reaches the fire", before, from_the_walk());
  sheet.step("R_a", "gas constant of that air", "8.314462618 / ((1 - x_w) * M_a + x_w * 0.01801528)",
             run.air->gas_constant(), published("CODATA 2018"));
  sheet.read("h_a", "its enthalpy, nought at 25 degC", {"T_air", "x_w"}, brought, nasa, "by polynomial");
  sheet.step("h_fire", "enthalpy of the flue gas", "(mdot_a * h_a + Q_f) / mdot_g", held, published("first law"));
  sheet.read("T_fire", "gas behind the fire", {"h_fire", "y_CO2", "y_H2O", "y_O2", "y_N2", "y_Ar"}, run.totals.fire, nasa,
             "by polynomial: the temperature at which the gas holds that enthalpy")
      .within("200 to 6000 K, no dissociation", run.totals.fire < kelvins(2000.0));
}

}  // namespace fluewright
