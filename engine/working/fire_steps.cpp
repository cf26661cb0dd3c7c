// SPDX-FileCopyrightText: The Fluewright developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "engine/gas/species.hpp"
#include "engine/moisture/saturation.hpp"
#include "engine/site/house.hpp"
#include "engine/working/slice_case.hpp"

namespace fluewright {

namespace {

Citation ideal_gas() { return published("ideal gas"); }
Citation stoichiometry() { return published("stoichiometry; IUPAC conventional atomic weights"); }
Citation standard_air() { return published("ISO 2533"); }

/// Vapour and density of one body of air, its symbols ending in `tag`.
void add_body_of_air(Sheet& sheet, const std::string& tag, const std::string& whose, Temperature t, Ratio humidity,
                     Density density) {
  sheet.given("T_" + tag, "temperature of the " + whose + " air", t, as_drawn());
  sheet.given("phi_" + tag, "relative humidity of the " + whose + " air", humidity, as_drawn());
  const ValidRange<Temperature> range = saturation_range();
  sheet.read("p_s" + tag, "saturation pressure at T_" + tag, {"T_" + tag}, saturation_pressure(t),
             published(std::string{range.source}), "by the published equation").within("50 to 647 K", range.contains(t));
  sheet.step("rho_" + tag, "density of the " + whose + " air",
             "(p - 0.378 * phi_" + tag + " * p_s" + tag + ") / (287.05 * T_" + tag + ")", density, ideal_gas());
}

void add_house(Sheet& sheet, const Retrace& run) {
  const Room& room = run.design->room;
  sheet.given("z_np", "neutral plane above the floor", room.neutral_plane, as_drawn());
  sheet.given("dp_more", "measured suction of the house", room.extra_depressurisation, as_drawn());
  std::string all = "dp_more";
  if (room.exhaust_flow > VolumeFlow{}) {
    sheet.given("V_ex", "flow of the exhaust fans", room.exhaust_flow, as_drawn());
    sheet.given("V_house", "volume of the house", room.house_volume, as_drawn());
    sheet.given("n_50", "air changes an hour at 50 Pa", room.air_changes_at_50_pascal, as_drawn());
    sheet.step("dp_ex", "suction by the exhaust fans", "50 * (3600 * V_ex / (n_50 * V_house))^(1 / 0.65)",
               exhaust_depressurisation(room.exhaust_flow, room.house_volume, room.air_changes_at_50_pascal),
               published("power law of blower-door tests (ISO 9972), exponent customary"));
    all += " + dp_ex";
  }
  sheet.step("dp_house", "suction of the house", all, run.surround.depressurisation, by_definition(), Carries::sum);
}

void add_wood(Sheet& sheet, const Retrace& run) {
  const WoodFuel& f = run.fuel;
  const WoodAnalysis& a = f.analysis;
  sheet.given("c_C", "carbon, share of the dry, ash-free wood", a.carbon, run.wood_citation);
  sheet.given("c_H", "hydrogen, likewise", a.hydrogen, run.wood_citation);
  sheet.given("c_O", "oxygen, likewise", a.oxygen, run.wood_citation);
  sheet.given("c_N", "nitrogen, likewise", a.nitrogen, run.wood_citation);
  sheet.given("ash", "ash, share of the dry wood", a.ash, run.wood_citation);
  sheet.given("H_daf", "net heating value of the dry, ash-free wood", a.net_heating_value_daf, run.wood_citation);
  sheet.given("w", "moisture, share of the wood as fired", f.moisture, as_drawn());
  sheet.given("u", "share of the heat that leaves unburned", f.unburned_share, as_drawn());
  sheet.step("c", "dry, ash-free share of the wood as fired", "(1 - w) * (1 - ash)", combustible_share(f),
             by_definition());
  sheet.step("H_i", "net heating value as fired", "H_daf * c - 2.443e6 * w", net_heating_value(f),
             published("ISO 18125; evaporation at 25 degC 2.443 MJ/kg"), Carries::sum);
}

/// Amounts per kilogram of wood as fired.
struct Amounts {
  double c, carbon, formed, evaporated, nitrogen, oxygen;
};

Amounts amounts(const WoodFuel& f) {
  const WoodAnalysis& a = f.analysis;
  const double c = combustible_share(f);
  Amounts n{};
  n.c = c;
  n.carbon = c * a.carbon / 0.0120107;
  n.formed = c * a.hydrogen / (2.0 * 0.00100794);
  n.evaporated = f.moisture / 0.01801528;
  n.nitrogen = c * a.nitrogen / (2.0 * 0.0140067);
  n.oxygen = n.carbon + 0.5 * n.formed - c * a.oxygen / 0.0319988;
  return n;
}

void add_amounts(Sheet& sheet, const Retrace& run) {
  const Amounts n = amounts(run.fuel);
  const GasMixture dry = dry_air();
  sheet.step("n_C", "carbon in a kilogram of wood, and the CO2 it makes", "c * c_C / 0.0120107",
             n.carbon * mole_per_kilogram, stoichiometry());
  sheet.step("n_H", "water made by its hydrogen", "c * c_H / (2 * 0.00100794)", n.formed * mole_per_kilogram,
             stoichiometry());
  sheet.step("n_W", "water in the wood", "w / 0.01801528", n.evaporated * mole_per_kilogram, stoichiometry());
  sheet.step("n_N", "nitrogen in the wood", "c * c_N / (2 * 0.0140067)", n.nitrogen * mole_per_kilogram,
             stoichiometry());
  sheet.step("n_O", "oxygen needed from the air", "n_C + n_H / 2 - c * c_O / 0.0319988", n.oxygen * mole_per_kilogram,
             stoichiometry(), Carries::sum);
  sheet.step("x_O", "oxygen in dry air by volume", "0.209476 / (0.78084 + 0.209476 + 0.00934 + 0.000314)",
             dry.mole_fraction(Species::oxygen), standard_air());
  sheet.step("M_a", "molar mass of dry air",
             "(0.78084 * 0.0280134 + 0.209476 * 0.0319988 + 0.00934 * 0.039948 + 0.000314 * 0.0440095) / 0.99997",
             dry.molar_mass(), standard_air());
  sheet.step("n_a", "dry air that just burns a kilogram of wood", "n_O / x_O",
             n.oxygen / dry.mole_fraction(Species::oxygen) * mole_per_kilogram, stoichiometry());
  sheet.step("l_st", "the same by mass, stoichiometric air", "n_a * M_a", stoichiometric_air(run.fuel),
             stoichiometry());
  sheet.step("l", "moist air, with the vapour it brings", "l_st + n_a * 0.01801528 * x_w / (1 - x_w)",
             flue_gas(run.fuel, 1.0, run.air_water).air_per_fuel, stoichiometry());
}

constexpr const char* balanced = "where drive and losses balance along the path";

void add_flows_from_air(Sheet& sheet, const Retrace& run) {
  const FireState& fire = run.fire;
  const auto burn = sheet.given("B", "wood burnt", fire.burn_rate, as_drawn());
  if (fire.short_of_air) burn.remark(std::string{"less than wanted, the air allows no more: "} + balanced);
  const auto lambda = sheet.given("lambda", "excess-air ratio", fire.excess_air_ratio, as_drawn());
  if (fire.short_of_air) {
    lambda.remark("the least at which a stick fire burns (chosen)");
  } else {
    lambda.remark(run.age ? "as wanted" : balanced);
  }
  sheet.step("mdot_a", "air that reaches the fire", "B * lambda * l", fire.air, by_definition());
  sheet.step("mdot_g", "flue gas that leaves it", "mdot_a + B * (1 - ash * (1 - w))", fire.flue, by_definition());
}

void add_flows_from_gas(Sheet& sheet, const Retrace& run) {
  const FireState& fire = run.fire;
  sheet.given("mdot_g", "flue gas", fire.flue, from_the_walk()).remark(balanced);
  if (fire.short_of_air) {
    sheet.given("lambda", "excess-air ratio", fire.excess_air_ratio, chosen("the least at which a stick fire burns"));
    sheet.step("B", "wood burnt, less than wanted", "mdot_g / (1 - ash * (1 - w) + l * lambda)", fire.burn_rate,
               stoichiometry());
  } else {
    sheet.given("B", "wood burnt", fire.burn_rate, as_drawn());
    sheet.step("lambda", "excess-air ratio", "(mdot_g / B - (1 - ash * (1 - w))) / l", fire.excess_air_ratio,
               stoichiometry());
  }
  sheet.step("mdot_a", "air that reaches the fire", "B * lambda * l", fire.air, by_definition());
}

void add_heat(Sheet& sheet, const Retrace& run) {
  sheet.step("Q_r", "heat released", "B * H_i", run.fire.released, by_definition());
  sheet.step("Q_f", "heat added to the gas", "Q_r * (1 - u)", run.fire.added, by_definition());
}

}  // namespace

void add_air(Sheet& sheet, const Retrace& run) {
  const Surround& s = run.surround;
  const Site& site = run.design->site;
  sheet.part("Air");
  sheet.given("z_site", "altitude", site.altitude, as_drawn());
  sheet.step("p", "absolute pressure", "101325 * (1 - 2.25577e-5 * z_site)^5.25588", s.absolute, published("ISO 2533"))
      .within("-2 to 11 km", site.altitude > -2000.0 * metre && site.altitude < 11000.0 * metre);
  add_body_of_air(sheet, "o", "outdoor", s.outdoor, site.outdoor_humidity, s.outdoor_air);
  add_body_of_air(sheet, "r", "room", s.room, run.design->room.humidity, s.room_air);
  if (run.air_from == EndKind::node) {
    sheet.given("x_w", "vapour in the air that feeds the fire, by volume", run.air_water, from_the_walk())
        .remark("as it has mixed where the branches meet");
    add_house(sheet, run);
    return;
  }
  const bool from_room = run.air_from == EndKind::room_air;
  sheet.step("x_w", "vapour in the air that feeds the fire, by volume", from_room ? "phi_r * p_sr / p" : "phi_o * p_so / p",
             run.air_water, ideal_gas());
  add_house(sheet, run);
}

void add_fire(Sheet& sheet, const Retrace& run, FlowFrom from) {
  sheet.part("Wood and fire");
  add_wood(sheet, run);
  add_amounts(sheet, run);
  if (from == FlowFrom::excess_air) {
    add_flows_from_air(sheet, run);
  } else {
    add_flows_from_gas(sheet, run);
  }
  add_heat(sheet, run);
}

void add_flue_gas(Sheet& sheet, const Retrace& run) {
  sheet.part("Flue gas");
  const GasMixture& mix = run.gas->mixture();
  const Amounts n = amounts(run.fuel);
  const double lambda = run.fire.excess_air_ratio;
  const double air = lambda * n.oxygen / dry_air().mole_fraction(Species::oxygen);
  const double x = run.air_water;
  const double all = air / (1.0 - x) - n.oxygen + n.carbon + n.formed + n.evaporated + n.nitrogen;
  sheet.step("n", "flue gas of a kilogram of wood", "lambda * n_a / (1 - x_w) - n_O + n_C + n_H + n_W + n_N",
             all * mole_per_kilogram, stoichiometry(), Carries::sum);
  sheet.step("y_CO2", "carbon dioxide by volume", "(n_C + lambda * n_a * 0.000314 / 0.99997) / n",
             mix.mole_fraction(Species::carbon_dioxide), stoichiometry());
  sheet.step("y_H2O", "water vapour by volume", "(n_H + n_W + lambda * n_a * x_w / (1 - x_w)) / n",
             mix.mole_fraction(Species::water), stoichiometry());
  sheet.step("y_O2", "oxygen by volume", "(lambda - 1) * n_O / n", mix.mole_fraction(Species::oxygen), stoichiometry())
      .losing(lambda / (lambda - 1.0));
  sheet.step("y_N2", "nitrogen by volume", "(n_N + lambda * n_a * 0.78084 / 0.99997) / n",
             mix.mole_fraction(Species::nitrogen), stoichiometry());
  sheet.step("y_Ar", "argon by volume", "lambda * n_a * 0.00934 / 0.99997 / n", mix.mole_fraction(Species::argon),
             stoichiometry());
  sheet.step("M", "molar mass of the flue gas",
             "y_CO2 * 0.0440095 + y_H2O * 0.01801528 + y_O2 * 0.0319988 + y_N2 * 0.0280134 + y_Ar * 0.039948",
             mix.molar_mass(), stoichiometry(), Carries::sum);
}

}  // namespace fluewright
